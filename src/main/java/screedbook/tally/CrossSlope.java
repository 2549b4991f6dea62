package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Straightedge;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The cross slopes that were read on a pull, beside the planned one: how far each lies off it, without sign, and the mean
 * of ten in a row, as Florida DOT 330-12.3 counts them (training slides on that section; the same way in 327-3.2 of the
 * package of 16 March 2011).
 *
 * @param pull never null
 * @param lift null where none was noted
 * @param planned null where the job does not settle it
 * @param readings in the order in which they were taken
 */
public record CrossSlope(String pull, Integer lift, Amount planned, List<Reading> readings) {
    /** So many readings in a row have a mean. */
    public static final int IN_A_ROW = 10;

    static final String SOURCE = "Florida DOT 330-12.3, training slides; 327-3.2, package of 16 March 2011";

    /**
     * One reading.
     *
     * @param off from the planned slope, without sign; null where none is planned
     */
    public record Reading(Standing<Straightedge> entry, Amount slope, Amount off) {}

    /** Those of a day, pull by pull. */
    public static List<CrossSlope> of(Day day, Job job) {
        Map<List<Object>, CrossSlope> pulls = new LinkedHashMap<>();
        for (Standing<Straightedge> each : day.standing(Straightedge.class)) {
            Straightedge read = each.entry();
            if (read.crossSlope() != null && read.pull() != null) {
                List<Object> key = List.of(read.pull(), Objects.requireNonNullElse(read.lift(), 0));
                CrossSlope on = pulls.computeIfAbsent(
                        key,
                        k -> new CrossSlope(
                                read.pull(),
                                read.lift(),
                                job.pull(read.pull(), read.lift())
                                        .map(Job.Pull::crossSlope)
                                        .orElse(null),
                                new ArrayList<>()));
                on.readings().add(new Reading(each, read.crossSlope(), off(read.crossSlope(), on.planned())));
            }
        }
        return List.copyOf(pulls.values());
    }

    private static Amount off(Amount slope, Amount planned) {
        return planned == null
                ? null
                : new Amount(slope.value().subtract(planned.value()).abs(), Unit.PERCENT);
    }

    /** {@code B lift 2}. */
    public String name() {
        return pull + (lift == null ? "" : " lift " + lift);
    }

    /** The mean of the last ten up to a reading, to two decimals; empty before the tenth or without a plan. */
    public Optional<Amount> mean(int last) {
        if (planned == null || last + 1 < IN_A_ROW) {
            return Optional.empty();
        }
        BigDecimal sum = readings.subList(last + 1 - IN_A_ROW, last + 1).stream()
                .map(r -> r.off().value())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return Optional.of(new Amount(sum.divide(BigDecimal.valueOf(IN_A_ROW), 2, RoundingMode.HALF_UP), Unit.PERCENT));
    }

    /** How many, the least and the greatest; with a plan also how far off at most, and the greatest mean of ten. */
    void add(Figures figures) {
        List<Ref> entries = readings.stream().map(r -> r.entry().ref()).toList();
        List<String> put = readings.stream()
                .map(r -> r.entry().ref() + " " + r.slope().text()
                        + (r.off() == null ? "" : ", off " + r.off().text()))
                .toList();
        String at = "cross slope of " + name();
        String tail = "." + name();
        Working range = Figures.working("the readings, signed as on the plans", put, entries, "the entries as keyed");
        figures.count("cross-slope-readings" + tail, at + ", readings", readings.size(), range);
        figures.text(
                "cross-slope-range" + tail,
                at,
                readings.stream()
                                .map(Reading::slope)
                                .min(Amount::compareTo)
                                .orElseThrow()
                                .value() + " to "
                        + readings.stream()
                                .map(Reading::slope)
                                .max(Amount::compareTo)
                                .orElseThrow()
                                .text()
                        + (planned == null ? ", none planned" : ", planned " + planned.text()),
                range);
        if (planned != null) {
            Working off = Figures.working("reading less planned, without sign", put, entries, SOURCE);
            Amount most =
                    readings.stream().map(Reading::off).max(Amount::compareTo).orElseThrow();
            figures.amount(
                    "cross-slope-off" + tail,
                    at + ", off at most",
                    most,
                    Math.max(0, most.value().scale()),
                    off);
            Optional<Amount> mean = IntStream.range(0, readings.size())
                    .mapToObj(this::mean)
                    .flatMap(Optional::stream)
                    .max(Amount::compareTo);
            mean.ifPresent(m -> figures.amount(
                    "cross-slope-mean" + tail,
                    at + ", greatest mean of ten in a row",
                    m,
                    2,
                    Figures.working("sum of ten / 10, without sign", put, entries, SOURCE)));
        }
    }
}
