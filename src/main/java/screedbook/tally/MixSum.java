package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Day;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * Loads, weights and mix temperatures of one mix: what is asked most of an archive. The same figures as in
 * {@link Totals}, with no working.
 *
 * @param loads that came
 * @param received net as printed
 * @param placed net less what was not placed
 * @param paver readings at the paver of the loads that were laid
 * @param plant readings at the plant of the loads that were laid
 */
public record MixSum(
        String mix, UnitSystem system, int loads, BigDecimal received, BigDecimal placed, Heat paver, Heat plant) {
    /**
     * Readings of one place.
     *
     * @param sum of all readings; its mean is {@link #mean()}
     * @param least null without a reading
     * @param most null without a reading
     */
    public record Heat(int readings, BigDecimal sum, BigDecimal least, BigDecimal most) {
        static final Heat NONE = new Heat(0, BigDecimal.ZERO, null, null);

        Heat with(BigDecimal reading) {
            return plus(new Heat(1, reading, reading, reading));
        }

        Heat plus(Heat other) {
            if (other.readings == 0 || readings == 0) {
                return readings == 0 ? other : this;
            }
            return new Heat(
                    readings + other.readings, sum.add(other.sum), least.min(other.least), most.max(other.most));
        }

        /** To two decimals, half up; null without a reading. */
        public BigDecimal mean() {
            return readings == 0 ? null : sum.divide(BigDecimal.valueOf(readings), 2, RoundingMode.HALF_UP);
        }
    }

    /** A day's mixes in the order in which they came. */
    public static List<MixSum> of(Day day, UnitSystem system) {
        Unit degree = Measure.TEMPERATURE.unit(system);
        Map<String, MixSum> sums = new LinkedHashMap<>();
        for (Load load : Loads.of(day, Measure.LOAD.unit(system)).loads()) {
            boolean laid = load.laid();
            Heat paver = laid ? heat(load.ticket().entry().heat().paver(), degree) : Heat.NONE;
            Heat plant = laid ? heat(load.ticket().entry().heat().plant(), degree) : Heat.NONE;
            MixSum one = new MixSum(
                    load.mix(),
                    system,
                    load.came() ? 1 : 0,
                    load.received().value(),
                    load.placed().value(),
                    paver,
                    plant);
            sums.merge(load.mix(), one, MixSum::plus);
        }
        return List.copyOf(sums.values());
    }

    private static Heat heat(Amount seen, Unit degree) {
        return seen == null || seen.unit() != degree ? Heat.NONE : Heat.NONE.with(seen.value());
    }

    /** This and another shift's of the same mix and system. */
    public MixSum plus(MixSum other) {
        return new MixSum(
                mix,
                system,
                loads + other.loads,
                received.add(other.received),
                placed.add(other.placed),
                paver.plus(other.paver),
                plant.plus(other.plant));
    }
}
