package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import screedbook.calc.MatDensity;
import screedbook.calc.PercentWithin;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The section of densities: each test of this shift, the means of the lots that it touched, correlations, growth curves. */
final class DensitySection {
    private static final String TESTS = "WSDOT 1-06.2(2)D5, amendment of 2018-2019: s with n - 1";

    private final Job job;
    private final Samples samples;

    DensitySection(Job job, Samples samples) {
        this.job = job;
        this.samples = samples;
    }

    Section section() {
        Figures figures = new Figures();
        Set<String> used = new LinkedHashSet<>();
        for (Density each : samples.densities().all()) {
            if (samples.here(each.of()) || samples.here(each.from())) {
                one(figures, each, used);
            }
        }
        Map<String, Filling.Where> touched = samples.touched();
        samples.densities().lots().stream()
                .filter(l -> touched.containsKey(Lot.name(l.mix(), l.lot())))
                .forEach(l -> mean(figures, l));
        samples.densities().pairs().forEach(p -> pairs(figures, p));
        samples.densities().growth().forEach(g -> growth(figures, g));
        return figures.section("density", "Density");
    }

    private void one(Figures figures, Density d, Set<String> used) {
        String word = d.by() == Density.By.CORE
                ? "core-density." + d.name().replaceFirst("^core ", "")
                : "gauge-density." + d.of().ref();
        String id = word;
        for (int i = 2; !used.add(id); i++) {
            id = word + "." + i;
        }
        String label = Stream.of(
                        d.name(),
                        d.where()
                                .map(Filling.Where::text)
                                .map(t -> t.replace(" sublot 0", ""))
                                .orElse(""),
                        d.place() == null ? "" : d.place().text())
                .filter(s -> !s.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElseThrow();
        String again = d.again() ? ", counts of the test and its repeat" : "";
        String not = d.counts() ? again : ", kept, does not count";
        String target = d.ofTarget()
                .map(t -> ", " + t.shown(1).text() + " of the target")
                .orElse("");
        Working working = d.working();
        if (d.percent().known()) {
            Amount percent = d.percent().amount();
            figures.add(
                    id,
                    label,
                    percent.shown(1).text() + target + not,
                    percent.shown(4).value().stripTrailingZeros(),
                    percent.unit().suffix(),
                    working);
        } else {
            figures.text(id, label, d.percent().text(1) + target + not, working);
        }
    }

    private void mean(Figures figures, Densities.OfLot lot) {
        String id = "." + lot.word();
        String label = "lot " + lot.lot() + " of " + lot.mix() + ", " + lot.of();
        List<String> put = new ArrayList<>();
        for (Density each : lot.kept()) {
            String why = !each.percent().known()
                    ? each.percent().text(1)
                    : each.percent().amount().shown(2).text() + (each.counts() ? "" : ", does not count");
            put.add(each.name() + ": " + why);
        }
        if (lot.kept().stream().anyMatch(Density::again)) {
            put.add(retest());
        }
        List<Ref> entries = lot.kept().stream()
                .map(Density::of)
                .filter(samples::here)
                .map(Standing::ref)
                .distinct()
                .toList();
        PercentWithin.Sample s = lot.sample();
        Amount mean = new Amount(s.mean(), Unit.PERCENT);
        figures.add(
                "density-mean" + id,
                label + ", mean",
                mean.shown(2).text() + ", voids "
                        + MatDensity.voids(mean).shown(2).text() + ", " + s.n() + (s.n() == 1 ? " test" : " tests"),
                mean.shown(4).value().stripTrailingZeros(),
                "pct",
                new Working(
                        "mean of the percentages, each with its own Gmm",
                        List.copyOf(put),
                        entries,
                        "NJDOT B-3 (2007)"));
        if (s.n() > 1) {
            figures.add(
                    "density-s" + id,
                    label + ", standard deviation",
                    s.s().setScale(2, RoundingMode.HALF_UP).toPlainString(),
                    s.s().setScale(4, RoundingMode.HALF_UP).stripTrailingZeros(),
                    "",
                    new Working("s = sqrt((n Sum x² - (Sum x)²) / (n (n - 1)))", List.copyOf(put), entries, TESTS));
        }
    }

    private String retest() {
        Lots.Retest rule = job.lots() == null ? null : job.lots().retest();
        return rule == null
                ? "the job does not say which of a test and its repeat counts; the first is taken here"
                : "of a test and its repeat counts by the job: " + rule.word();
    }

    private void pairs(Figures figures, Densities.Pairs pairs) {
        PercentWithin.Sample s = MatDensity.correlation(pairs.core());
        Unit unit = Measure.UNIT_WEIGHT.unit(job.system());
        Amount mean = new Amount(s.mean(), unit);
        figures.add(
                "gauge-correlation." + pairs.instrument() + "." + pairs.mix(),
                "gauge " + pairs.instrument() + " to " + pairs.mix() + ", core less gauge",
                mean.shown(2).text() + ", s "
                        + s.s().setScale(2, RoundingMode.HALF_UP).toPlainString() + ", " + s.n()
                        + (s.n() == 1 ? " place" : " places"),
                mean.shown(4).value().stripTrailingZeros(),
                unit.suffix(),
                new Working(
                        "mean of core less gauge, places where both were taken; Gmb x unit weight of water",
                        List.copyOf(pairs.put()),
                        List.copyOf(pairs.entries()),
                        "ten places for each project, lift, mix and gauge: Alberta ATT-48/95, 3.1"));
    }

    private static void growth(Figures figures, Densities.Growth growth) {
        int best = MatDensity.bestPasses(growth.percent());
        List<String> put = new ArrayList<>();
        growth.percent()
                .forEach((passes, percent) -> put.add(passes
                        + (passes == 1 ? " pass: " : " passes: ")
                        + new Amount(percent, Unit.PERCENT).shown(1).text()));
        figures.add(
                "density-passes." + growth.place().replace(' ', '-'),
                growth.place() + ", density by passes",
                "highest after " + best + (best == 1 ? " pass, " : " passes, ")
                        + new Amount(growth.percent().get(best), Unit.PERCENT)
                                .shown(1)
                                .text() + "; "
                        + String.join(", ", put),
                new BigDecimal(best),
                "",
                new Working(
                        "the number of passes with the highest density",
                        List.copyOf(put),
                        List.copyOf(growth.entries()),
                        "common practice, no source"));
    }
}
