package screedbook.tally;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.calc.SpreadRate;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.job.Job;
import screedbook.unit.Amount;

/** The sections of yield checks and of thickness as probed. */
final class YieldSections {
    private static final String FIVE =
            "mean of the last five truckloads (Florida DOT training on spread rates, slide 24)";

    private final Job job;
    private final boolean metric;

    YieldSections(Job job) {
        this.job = job;
        this.metric = job.units() == Job.Units.METRIC;
    }

    /** Stands where yield is checked, or where the job settles something of it. */
    Section yield(Yields yields, List<Load> loads) {
        Figures figures = new Figures();
        yields.checks().forEach(c -> check(figures, c));
        means(figures, yields.checks());
        if (!yields.checks().isEmpty() || asked()) {
            yields.ahead().forEach(o -> ahead(figures, o));
            pavers(figures, loads);
        }
        return figures.section("yield", "Yield");
    }

    private boolean asked() {
        return job.checks().paidUpTo() != null || job.checks().others().stream().anyMatch(o -> o.kind() == Kind.YIELD);
    }

    private void check(Figures figures, Yields.Check check) {
        Yielded y = check.yielded();
        String tail = "." + check.entry().ref();
        List<Ref> entries = new ArrayList<>(List.of(check.entry().ref()));
        entries.addAll(y.entries());
        Working working =
                new Working(RoadSections.rateFormula(metric), y.put(), List.copyOf(entries), RoadSections.UNITS);
        String loads = y.loads() == 0 ? "" : ", " + y.loads() + (y.loads() == 1 ? " load" : " loads");
        figures.reckoned("yield-rate" + tail, check.where() + loads, y.rate(), 1, working);
        figures.amount("yield-percent" + tail, check.where() + " of target", y.percent(), 1, working);
        figures.amount("yield-thickness" + tail, check.where() + " worth", y.thickness(), metric ? 0 : 2, working);
    }

    /** All checks of a pull together: their tons over their areas. */
    private void means(Figures figures, List<Yields.Check> checks) {
        Map<String, List<Yields.Check>> pulls = new LinkedHashMap<>();
        checks.stream()
                .filter(c -> c.yielded().rate().known())
                .forEach(c ->
                        pulls.computeIfAbsent(c.name(), n -> new ArrayList<>()).add(c));
        pulls.forEach((name, list) -> {
            Amount weight =
                    sum(list.stream().map(c -> c.yielded().weight().amount()).toList());
            Amount area =
                    sum(list.stream().map(c -> c.yielded().area().amount()).toList());
            Optional<Amount> rate = SpreadRate.of(weight, area);
            Optional<Amount> percent =
                    rate.flatMap(r -> list.get(0).yielded().target().flatMap(t -> SpreadRate.percentOf(t, r)));
            Working working = new Working(
                    "tons of all checks over their areas",
                    List.of(
                            list.size() + " checks",
                            weight.text(),
                            area.shown(1).text()),
                    list.stream().map(c -> c.entry().ref()).toList(),
                    RoadSections.UNITS);
            figures.amount("yield-checked." + name, name + " all checks together", rate, 1, working);
            figures.amount("yield-checked-percent." + name, name + " all checks of target", percent, 1, working);
        });
    }

    private static Amount sum(List<Amount> amounts) {
        return amounts.stream().reduce(Amount::plus).orElseThrow();
    }

    private void ahead(Figures figures, Outlook o) {
        String of = o.run().name() + " ";
        String tail = "." + o.run().name();
        Working last = new Working(FIVE, o.lastPut(), o.lastEntries(), RoadSections.UNITS);
        figures.amount(
                "yield-last" + tail,
                of + "last " + o.loads() + (o.loads() == 1 ? " load" : " loads"),
                o.last(),
                1,
                last);
        figures.amount("yield-last-percent" + tail, of + "last loads of target", o.lastPercent(), 1, last);
        Working left = new Working(
                "planned area that is not laid x rate; and the tons laid",
                o.leftPut(),
                o.run().entries(),
                "the job's planned stretches; " + RoadSections.UNITS);
        if (o.areaLeft().isPresent()) {
            figures.amount("yield-length-left" + tail, of + "planned, not laid", o.ahead(), metric ? 1 : 0, left);
            figures.amount("yield-left" + tail, of + "takes to its end", o.left(), 0, left);
            figures.amount("yield-left-planned" + tail, of + "to its end as planned", o.planned(), 0, left);
            figures.amount("yield-at-end" + tail, of + "this shift and to its end", o.atEnd(), 0, left);
        }
    }

    /** With two pavers or more, each by itself; the pulls' own figures stand for all together. */
    private void pavers(Figures figures, List<Load> loads) {
        Set<String> names = new LinkedHashSet<>();
        loads.forEach(
                l -> Optional.ofNullable(l.ticket().entry().spot().paver()).ifPresent(names::add));
        if (names.size() < 2) {
            return;
        }
        for (String name : names) {
            List<Run> runs = Runs.of(
                    loads.stream()
                            .filter(l -> name.equals(l.ticket().entry().spot().paver()))
                            .toList(),
                    job);
            for (Run run : runs) {
                Working working = new Working(
                        "loads of this paver over what they covered", run.put(), run.entries(), RoadSections.UNITS);
                figures.amount(
                        "yield-paver." + name + "." + run.name(),
                        run.name() + " by " + name + " spread rate",
                        run.rate(),
                        1,
                        working);
            }
        }
    }

    /** What was probed, by pull, lift and state. */
    Section depth(List<Probed> all) {
        Figures figures = new Figures();
        int decimals = metric ? 0 : 2;
        for (Probed each : all) {
            String tail = "." + each.name() + "." + each.stateText().replace(' ', '-');
            String of = each.name() + " " + each.stateText() + " ";
            List<Ref> entries = each.probes().stream().map(p -> p.ref()).toList();
            List<String> put = each.probes().stream()
                    .map(p -> p.ref() + " "
                            + (p.entry().place() == null ? "" : p.entry().place() + " ")
                            + p.entry().thickness().text())
                    .toList();
            String source = "the probes as keyed";
            Working mean = new Working("sum of the probes / their number", put, entries, source);
            figures.count("depth-probes" + tail, of + "probes", each.probes().size(), mean);
            Amount least = each.amounts().stream().min(Amount::compareTo).orElseThrow();
            Amount most = each.amounts().stream().max(Amount::compareTo).orElseThrow();
            figures.amount(
                    "depth-least" + tail, of + "least", least, decimals, new Working("least", put, entries, source));
            figures.amount("depth-mean" + tail, of + "mean", each.mean(), decimals, mean);
            figures.amount(
                    "depth-most" + tail, of + "most", most, decimals, new Working("greatest", put, entries, source));
            each.planned()
                    .ifPresent(p -> figures.amount(
                            "depth-planned" + tail,
                            of + "planned, compacted",
                            p,
                            Math.max(decimals, p.value().scale()),
                            new Working(
                                    "planned thickness of the lift", List.of(p.text()), List.of(), "the job's lifts")));
        }
        return figures.section("depth", "Thickness as probed");
    }
}
