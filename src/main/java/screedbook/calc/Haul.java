package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Trucks between a plant and a paver: how long a round takes, how many are needed, how far apart they run. */
public final class Haul {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private Haul() {}

    /**
     * Trucks counted by whole rounds.
     *
     * @param trips loads that the tons make, a part of one counted as one
     * @param loads whole rounds of one truck in the time
     */
    public record Rounds(int trips, int loads, int trucks) {}

    /** A truck's round: the sum of its parts in minutes (Brock, Technical Paper T-135, Fig. F1). */
    public static Amount cycle(List<Amount> parts) {
        return parts.stream().reduce(Amount.of("0", Unit.MINUTE), Amount::plus);
    }

    /**
     * Trucks by whole rounds: {@code trips = tons / truck load}, {@code loads = time / cycle} rounded down,
     * {@code trucks = trips / loads} rounded up (mix delivery production form, an industry worksheet). Empty where no
     * truck comes round in the time.
     *
     * @param time in hours, above 0
     * @throws IllegalArgumentException when a figure is not above 0
     */
    public static Optional<Rounds> byRounds(Amount tons, BigDecimal time, Amount truckLoad, Amount cycle) {
        BigDecimal minutes = positive(time, "hours").multiply(SIXTY);
        BigDecimal round = positive(cycle.to(Unit.MINUTE).value(), "minutes of a round");
        BigDecimal load = positive(truckLoad.to(tons.unit()).value(), "tons of a load");
        int loads = minutes.divideToIntegralValue(round).intValueExact();
        int trips = up(quotient(positive(tons.value(), "tons"), load));
        return loads == 0
                ? Optional.empty()
                : Optional.of(
                        new Rounds(trips, loads, up(quotient(BigDecimal.valueOf(trips), BigDecimal.valueOf(loads)))));
    }

    /**
     * Trucks by rate, not rounded: {@code rate x cycle / (60 x truck load)}. The form's rounds can ask for one more:
     * here a truck need not be back at the end of the time.
     *
     * @param perHour tons in one hour
     * @throws IllegalArgumentException when the load is not above 0
     */
    public static BigDecimal byRate(Amount perHour, Amount truckLoad, Amount cycle) {
        BigDecimal load = positive(truckLoad.to(perHour.unit()).value(), "tons of a load");
        return quotient(perHour.value().multiply(cycle.to(Unit.MINUTE).value()), SIXTY.multiply(load));
    }

    /** Whole trucks: always the next higher number (Asphalt Handbook, NAPA, 6.2: 13.1 is 14). */
    public static int whole(BigDecimal trucks) {
        return up(trucks);
    }

    /**
     * Minutes from one truck to the next: {@code 60 x truck load / rate}; common practice, no source.
     *
     * @param perHour tons in one hour, above 0
     * @throws IllegalArgumentException when the rate is not above 0
     */
    public static Amount spacing(Amount perHour, Amount truckLoad) {
        BigDecimal rate = positive(perHour.value(), "tons in an hour");
        return new Amount(quotient(SIXTY.multiply(truckLoad.to(perHour.unit()).value()), rate), Unit.MINUTE);
    }

    /**
     * Tons in an hour that mix lying in a silo adds through a shift: {@code silo / hours} (Asphalt Handbook, NAPA, 6.2).
     *
     * @param hours above 0
     * @throws IllegalArgumentException when the hours are not above 0
     */
    public static Amount fromSilo(Amount silo, BigDecimal hours) {
        return new Amount(quotient(silo.value(), positive(hours, "hours")), silo.unit());
    }

    /**
     * The one-way distance up to which so many trucks carry away what the plant makes:
     * {@code trucks x speed x truck load / (2 x rate)} (US Army EN5459, lesson 3; the formula was put together again from
     * its terms, because its picture was missing in the copy read). In miles or kilometres, as the speed is by.
     *
     * @param perHour tons in one hour, above 0
     * @throws IllegalArgumentException when the rate is not above 0
     */
    public static BigDecimal reach(int trucks, BigDecimal speed, Amount truckLoad, Amount perHour) {
        BigDecimal rate = positive(perHour.value(), "tons in an hour");
        BigDecimal carried = BigDecimal.valueOf(trucks)
                .multiply(speed)
                .multiply(truckLoad.to(perHour.unit()).value());
        return quotient(carried, TWO.multiply(rate));
    }

    private static int up(BigDecimal value) {
        return value.setScale(0, RoundingMode.CEILING).intValueExact();
    }

    private static BigDecimal positive(BigDecimal value, String what) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(what + " are above 0: " + value.toPlainString());
        }
        return value;
    }

    private static BigDecimal quotient(BigDecimal over, BigDecimal under) {
        return over.divide(under, MathContext.DECIMAL128);
    }
}
