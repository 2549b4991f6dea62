package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import screedbook.calc.StraightLine;
import screedbook.entry.Ticket;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The heat that a plant's loads lost between loading and discharge, against the minutes of haul and waiting: the
 * straight line that lies nearest to the loads.
 *
 * @param plant as the tickets name it; empty where they do not
 * @param line minutes first, loss of heat second
 * @param degree in which the loss is told, a difference
 */
public record HaulLoss(String plant, StraightLine line, Unit degree) {
    /** Loads of which a line is told; fewer say nothing. */
    public static final int FEWEST = 3;

    /** One load: how long it was on the way, and what it lost. */
    record Way(Load load, BigDecimal minutes, Amount loss) {}

    /** The way of a load; empty where a time or a temperature was not noted, or the times go backwards. */
    static Optional<Way> way(Load load, Unit temperature) {
        Ticket ticket = load.ticket().entry();
        Amount plant = ticket.heat().plant();
        Amount paver = ticket.heat().paver();
        OffsetDateTime loaded = ticket.times().loaded();
        OffsetDateTime discharged = ticket.times().discharged();
        if (!load.came() || plant == null || paver == null || loaded == null || discharged == null) {
            return Optional.empty();
        }
        boolean readable = plant.unit() == temperature && paver.unit() == temperature;
        if (!readable || discharged.isBefore(loaded)) {
            return Optional.empty();
        }
        BigDecimal minutes = BigDecimal.valueOf(
                        Duration.between(loaded, discharged).toSeconds())
                .divide(BigDecimal.valueOf(60), MathContext.DECIMAL64);
        Amount loss = new Amount(plant.value().subtract(paver.value()), temperature.difference());
        return Optional.of(new Way(load, minutes, loss));
    }

    /** The sums of each plant's loads, by its name. */
    static Map<String, StraightLine> lines(List<Load> loads, Unit temperature) {
        Map<String, StraightLine> lines = new TreeMap<>();
        for (Load load : loads) {
            way(load, temperature)
                    .ifPresent(way -> lines.merge(
                            plant(load),
                            StraightLine.NONE.and(way.minutes(), way.loss().value()),
                            StraightLine::plus));
        }
        return lines;
    }

    static String plant(Load load) {
        String plant = load.ticket().entry().paper().plant();
        return plant == null ? "" : plant;
    }

    /** What the loads of a shift lost, one for each plant that has enough of them. */
    public static List<HaulLoss> of(Totals totals, Unit temperature) {
        return of(lines(totals.loads(), temperature), temperature);
    }

    /** What the loads of shifts before lost, one for each plant that has enough of them. */
    public static List<HaulLoss> of(ToDate shifts, Unit temperature) {
        return of(new TreeMap<>(shifts.haul()), temperature);
    }

    /** What the loads of a shift and of those before it lost, one for each plant that has enough of them. */
    public static List<HaulLoss> toDate(Totals totals, Unit temperature) {
        Map<String, StraightLine> all = lines(totals.loads(), temperature);
        totals.before().haul().forEach((plant, line) -> all.merge(plant, line, StraightLine::plus));
        return of(all, temperature);
    }

    private static List<HaulLoss> of(Map<String, StraightLine> lines, Unit temperature) {
        return lines.entrySet().stream()
                .filter(each -> each.getValue().n() >= FEWEST)
                .map(each -> new HaulLoss(each.getKey(), each.getValue(), temperature.difference()))
                .toList();
    }

    public int loads() {
        return line.n();
    }

    public Amount meanMinutes() {
        return new Amount(line.meanX(), Unit.MINUTE);
    }

    public Amount meanLoss() {
        return new Amount(line.meanY(), degree);
    }

    /** Degrees a minute; empty where all loads were on the way equally long. */
    public Optional<BigDecimal> rate() {
        return line.slope();
    }

    /** How far a load's loss lies off the line as a rule. */
    public Optional<Amount> spread() {
        return line.spread().map(s -> new Amount(s, degree));
    }

    /** What the line says of so many minutes; empty where there is no line. */
    public Optional<Amount> at(Amount minutes) {
        return line.at(minutes.to(Unit.MINUTE).value()).map(loss -> new Amount(loss, degree));
    }

    /** {@code from Quarry Road}. */
    public String name() {
        return "from " + (plant.isEmpty() ? "a plant not noted" : plant);
    }

    /** In few words, for one degree that is known: {@code 12 °F in 34 min (57 loads), 0.24 a minute, ± 3}. */
    public String brief() {
        String rate = rate().map(r -> ", " + r.setScale(2, RoundingMode.HALF_UP).toPlainString() + " a minute")
                .orElse("");
        String spread =
                spread().map(s -> ", ± " + s.shown(0).value().toPlainString()).orElse("");
        return meanLoss().shown(0).text() + " in " + meanMinutes().shown(0).text() + " (" + loads() + " loads)" + rate
                + spread;
    }

    /** {@code 12 °F in 34 min of haul and waiting (mean of 57 loads), 0.24 °F a minute, ± 3 °F}. */
    public String text() {
        String rate = rate().map(r -> ", " + r.setScale(2, RoundingMode.HALF_UP).toPlainString() + " " + degree.symbol()
                        + " a minute")
                .orElse("");
        String spread = spread().map(s -> ", ± " + s.shown(0).text()).orElse("");
        return meanLoss().shown(0).text() + " in " + meanMinutes().shown(0).text() + " of haul and waiting (mean of "
                + loads() + " loads)" + rate + spread;
    }
}
