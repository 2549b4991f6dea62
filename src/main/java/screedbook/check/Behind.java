package screedbook.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.calc.SpreadRate;
import screedbook.entry.Area;
import screedbook.entry.Day;
import screedbook.entry.Depth;
import screedbook.entry.Standing;
import screedbook.entry.Waste;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.tally.Cover;
import screedbook.tally.Figure;
import screedbook.tally.Probed;
import screedbook.tally.Run;
import screedbook.tally.Stretch;
import screedbook.tally.Totals;
import screedbook.unit.Amount;

/**
 * What may be behind a spread rate that is not the planned one, with the figures that the record has of it. For the
 * person at the desk, who can go and look; it stands on no page.
 */
public final class Behind {
    private final Run run;
    private final Day day;
    private final Totals totals;
    private final Optional<Job.Pull> pull;
    private final boolean more;
    private final List<String> seen = new ArrayList<>();
    private final List<String> open = new ArrayList<>();

    private Behind(Run run, Day day, Totals totals, Job job) {
        this.run = run;
        this.day = day;
        this.totals = totals;
        this.pull = job.pull(run.pull(), run.lift());
        this.more = run.percent().orElseThrow().value().compareTo(BigDecimal.valueOf(100)) > 0;
    }

    /** The pull and lift that a figure speaks of, when it is one of spread rate or yield. */
    public static Optional<Run> run(Figure figure, Totals totals) {
        boolean rate = Stream.of("spread-rate.", "spread-percent.", "equivalent-thickness.", "yield-last")
                .anyMatch(figure.id()::startsWith);
        return totals.runs().stream()
                .filter(r -> rate && figure.id().endsWith("." + r.name()))
                .findFirst();
    }

    /** The pull and lift that a finding speaks of, when it is one of spread rate or yield. */
    public static Optional<Run> run(Finding finding, Day day, Totals totals) {
        if (finding.rule().equals("spread-rate") || finding.rule().equals("spread-paid")) {
            return totals.runs().stream()
                    .filter(r -> r.entries().equals(finding.of()))
                    .findFirst();
        }
        return finding.rule().equals("yield-check") && !finding.of().isEmpty()
                ? day.find(finding.of().get(0))
                        .map(Standing::entry)
                        .filter(Yield.class::isInstance)
                        .map(Yield.class::cast)
                        .flatMap(y -> totals.runs().stream()
                                .filter(r -> Objects.equals(r.pull(), y.pull()) && Objects.equals(r.lift(), y.lift()))
                                .findFirst())
                : Optional.empty();
    }

    /** One line for each; what the record bears out comes first. Nothing where there is no rate or no target. */
    public static List<String> of(Run run, Day day, Totals totals, Job job) {
        if (run.percent().isEmpty() || run.area().isEmpty() || run.target().isEmpty() || even(run)) {
            return List.of();
        }
        Behind behind = new Behind(run, day, totals, job);
        behind.tons();
        behind.length();
        behind.thickness();
        behind.width();
        List<String> lines = new ArrayList<>();
        lines.add("may be behind " + run.percent().get().shown(1).text() + " of the planned rate");
        lines.addAll(behind.seen);
        lines.addAll(behind.open);
        return List.copyOf(lines);
    }

    private static boolean even(Run run) {
        return run.percent().orElseThrow().shown(0).value().compareTo(BigDecimal.valueOf(100)) == 0;
    }

    private void say(boolean borneOut, String text) {
        (borneOut ? seen : open).add(text);
    }

    /** How many tons lie beyond the plan, or lack to it. */
    private Amount apart() {
        Amount planned =
                SpreadRate.weightFor(run.area().orElseThrow(), run.target().orElseThrow());
        return AmountText.size(run.laid().minus(planned.to(run.laid().unit()))).shown(1);
    }

    private void tons() {
        if (more) {
            List<Amount> loose = day.standing(Waste.class).stream()
                    .filter(w -> w.entry().of() == null && w.entry().weight() != null)
                    .map(w -> w.entry().weight())
                    .filter(w -> w.unit() == run.laid().unit())
                    .toList();
            say(
                    !loose.isEmpty(),
                    "waste: " + apart().text() + " are over; "
                            + (loose.isEmpty()
                                    ? "no waste is noted that is not taken off already"
                                    : loose.stream()
                                                    .reduce(Amount::plus)
                                                    .orElseThrow()
                                                    .text() + " of waste bear no ticket and are still in the rate"));
            return;
        }
        boolean elsewhere = run.elsewhere().value().signum() > 0;
        long open = totals.loads().stream()
                .filter(l -> l.laid() && l.received().value().signum() == 0)
                .count();
        say(
                elsewhere || open > 0,
                "tons: " + apart().text() + " lack; "
                        + (elsewhere ? run.elsewhere().text() + " at no known place, " : "")
                        + (open > 0 ? Look.loads((int) open) + " without a weight" : "every load has its weight"));
    }

    private void length() {
        Amount fits = scaled(run.length());
        List<Stretch> pieces = Cover.of(run.stretches()).joined();
        BigDecimal gap = BigDecimal.ZERO;
        for (int i = 1; i < pieces.size(); i++) {
            gap = gap.add(pieces.get(i).low().subtract(pieces.get(i - 1).high()));
        }
        boolean gaps = more && gap.signum() > 0;
        say(
                gaps,
                "length: " + run.length().text() + " by the stations; these tons make " + fits.text()
                        + (gaps
                                ? "; between the first and the last "
                                        + new Amount(gap, run.length().unit()).text() + " are in no load"
                                : ""));
    }

    /** What would be as planned with these tons. */
    private Amount scaled(Amount measure) {
        BigDecimal part = run.percent().orElseThrow().value().movePointLeft(2);
        return new Amount(
                measure.value().multiply(part, MathContext.DECIMAL64).setScale(1, RoundingMode.HALF_UP),
                measure.unit());
    }

    private void thickness() {
        String worth = run.thickness()
                .map(t -> "the tons are worth " + t.shown(2).text())
                .orElse("");
        Optional<Probed> probed = totals.yields().depths().stream()
                .filter(p -> p.state() == Depth.State.COMPACTED
                        && Objects.equals(p.pull(), run.pull())
                        && Objects.equals(p.lift(), run.lift()))
                .findFirst();
        Optional<Amount> planned = probed.flatMap(Probed::planned);
        if (planned.isEmpty()) {
            say(false, "thickness, as over a low or high base: " + worth + "; no probe of the rolled mat is noted");
            return;
        }
        Amount mean = probed.get().mean();
        int above = mean.compareTo(planned.get());
        say(
                more ? above > 0 : above < 0,
                "thickness, as over a low or high base: " + worth + "; "
                        + probed.get().probes().size() + " probed, mean "
                        + mean.text() + ", planned " + planned.get().text());
    }

    private void width() {
        List<Amount> measured = day.standing(Yield.class).stream()
                .filter(y -> Objects.equals(y.entry().pull(), run.pull())
                        && y.entry().width() != null)
                .map(y -> y.entry().width())
                .distinct()
                .toList();
        boolean parts = day.standing(Area.class).stream()
                .anyMatch(a -> Objects.equals(a.entry().pull(), run.pull()));
        pull.map(Job.Pull::width).ifPresent(width -> {
            boolean other = measured.stream().anyMatch(m -> more ? m.compareTo(width) > 0 : m.compareTo(width) < 0);
            say(
                    other,
                    "width: " + width.text() + " as planned; these tons make "
                            + scaled(width).text() + " over this length"
                            + (measured.isEmpty()
                                    ? "; no width was measured"
                                    : "; measured "
                                            + String.join(
                                                    ", ",
                                                    measured.stream()
                                                            .map(Amount::text)
                                                            .toList()))
                            + (parts ? "" : "; no taper or odd area is noted"));
        });
    }
}
