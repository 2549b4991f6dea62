package screedbook.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import screedbook.calc.PayFormula;
import screedbook.calc.PercentWithin;
import screedbook.calc.Rounding;
import screedbook.entry.Ref;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Limit;
import screedbook.spec.Quantity;
import screedbook.spec.Ruling;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Densities;
import screedbook.tally.Density;
import screedbook.tally.Figure;
import screedbook.tally.Filling;
import screedbook.tally.Lot;
import screedbook.tally.Section;
import screedbook.tally.Totals;
import screedbook.tally.Working;
import screedbook.unit.Amount;

/** What the job's sheet makes of the densities of a shift's lots: the percent within limits and, where it gives a formula, pay. */
public final class Acceptance {
    /** What stands with every pay factor. */
    static final String ESTIMATE = "estimate, the pay office decides";

    private static final Map<Demand, PayFormula> PAY = Map.of(
            Demand.PAY_BY_FLORIDA_334, PayFormula.FLORIDA_334,
            Demand.PAY_BY_COLORADO_105_3, PayFormula.COLORADO_105_3,
            Demand.PAY_BY_HRT_12_027, PayFormula.HRT_12_027);

    private final Totals totals;
    private final Job job;
    private final SpecSheet sheet;
    private final List<Figure> figures = new ArrayList<>();

    private Acceptance(Totals totals, Job job, SpecSheet sheet) {
        this.totals = totals;
        this.job = job;
        this.sheet = sheet;
    }

    /** The totals with the figures that take a limit sheet; the same where job or sheet is not found. */
    public static Totals added(Totals totals, Ground ground) {
        if (ground.job().isEmpty() || ground.sheet().isEmpty()) {
            return totals;
        }
        Acceptance made =
                new Acceptance(totals, ground.job().get(), ground.sheet().get());
        told(totals).forEach(made::lot);
        return totals.with(new Section("quality", "Density within limits", List.copyOf(made.figures)));
    }

    /** The lots whose densities a shift tells of, each by its cores; by gauge readings where it has no core. */
    static List<Densities.OfLot> told(Totals totals) {
        List<Densities.OfLot> all = totals.samples().densities().lots();
        return all.stream()
                .filter(l -> totals.figure("density-mean." + l.word()).isPresent())
                .filter(l -> l.by() == Density.By.CORE
                        || all.stream()
                                .noneMatch(o ->
                                        o.by() == Density.By.CORE && o.mix().equals(l.mix()) && o.lot() == l.lot()))
                .toList();
    }

    /** The case of a lot: its mix on the lift that is planned with it. */
    static Situation situation(Job job, String mix) {
        List<Job.Lift> lifts =
                job.lifts().stream().filter(l -> mix.equals(l.mix())).toList();
        Optional<Job.Lift> lift = lifts.size() == 1 ? Optional.of(lifts.get(0)) : Optional.empty();
        return Cases.of(job, mix, lift, null, null);
    }

    /** The percent within limits of a lot; empty where the sheet has no ends for it. */
    static Optional<PercentWithin> within(Totals totals, Job job, SpecSheet sheet, Densities.OfLot lot) {
        Situation situation = situation(job, lot.mix());
        Ruling ruling = sheet.ruling(Quantity.DENSITY_QUALITY, situation);
        return ruling.inForce().stream().findFirst().map(limit -> {
            boolean row = Marks.asked(sheet, Demand.PWL_BY_NEXT_HIGHER_ROW, situation)
                    .filter(Asked::sure)
                    .isPresent();
            return PercentWithin.of(
                    values(sheet, situation, lot),
                    value(limit.low()),
                    value(limit.high()),
                    row ? PercentWithin.Way.NEXT_HIGHER_ROW : PercentWithin.Way.BETA,
                    Rounding.ofKey(limit.rounding()).orElse(Rounding.ABSOLUTE));
        });
    }

    private static BigDecimal value(Amount amount) {
        return amount == null ? null : amount.value();
    }

    /** The tests: each core or reading, or the mean of each sublot where the sheet counts so. */
    private static List<BigDecimal> values(SpecSheet sheet, Situation situation, Densities.OfLot lot) {
        boolean bySublot = Marks.asked(sheet, Demand.DENSITY_BY_SUBLOT, situation)
                .filter(Asked::sure)
                .isPresent();
        return bySublot ? List.copyOf(sublots(lot).values()) : lot.values();
    }

    private static Map<Integer, BigDecimal> sublots(Densities.OfLot lot) {
        Map<Integer, List<BigDecimal>> tests = new TreeMap<>();
        for (Density each : lot.tests()) {
            int sublot = each.where().map(Filling.Where::sublot).orElse(0);
            tests.computeIfAbsent(sublot, s -> new ArrayList<>())
                    .add(each.percent().amount().value());
        }
        Map<Integer, BigDecimal> means = new LinkedHashMap<>();
        tests.forEach((sublot, values) ->
                means.put(sublot, PercentWithin.Sample.of(values).mean()));
        return means;
    }

    private void lot(Densities.OfLot lot) {
        Situation situation = situation(job, lot.mix());
        Optional<PercentWithin> within = within(totals, job, sheet, lot);
        within.ifPresent(w -> within(lot, situation, w));
        weighed(lot, situation);
        PAY.forEach((demand, formula) -> Marks.asked(sheet, demand, situation)
                .filter(Asked::sure)
                .ifPresent(asked -> pay(lot, situation, within, asked, formula)));
    }

    private String label(Densities.OfLot lot) {
        return "lot " + lot.lot() + " of " + lot.mix();
    }

    private List<Ref> entries(Densities.OfLot lot) {
        return totals.figure("density-mean." + lot.word())
                .map(f -> f.working().entries())
                .orElse(List.of());
    }

    private void within(Densities.OfLot lot, Situation situation, PercentWithin w) {
        Limit limit =
                sheet.ruling(Quantity.DENSITY_QUALITY, situation).inForce().get(0);
        List<String> put = new ArrayList<>();
        put.add(w.sample().n() + " tests: " + told(values(sheet, situation, lot)));
        put.add("mean " + two(w.sample().mean()) + ", s " + four(w.sample().s()));
        side(put, "QL", w.low());
        side(put, "QU", w.high());
        Optional<Asked> way = Marks.asked(sheet, Demand.PWL_BY_NEXT_HIGHER_ROW, situation)
                .or(() -> Marks.asked(sheet, Demand.PWL_BY_BETA, situation));
        put.add(way.map(a -> a.says() + " " + a.citation())
                .orElse("the sheet names no way from Q to percent; the beta distribution behind the printed tables"));
        String text = w.percent()
                .map(p ->
                        two(p) + " % within " + limit.text() + ", " + w.sample().n() + " tests")
                .orElse("no percent within limits: " + w.why());
        figures.add(new Figure(
                "density-within." + lot.mix() + "." + lot.lot(),
                label(lot) + ", within limits, " + lot.of(),
                text,
                w.percent().map(BigDecimal::stripTrailingZeros).orElse(null),
                w.percent().isPresent() ? "pct" : "",
                new Working(
                        "Q = (mean - low) / s, (high - mean) / s; with both ends PL + PU - 100",
                        List.copyOf(put),
                        entries(lot),
                        limit.citation())));
    }

    private static void side(List<String> put, String name, PercentWithin.Side side) {
        if (side.q() != null) {
            put.add(name + " " + four(side.q()) + " from " + side.limit().toPlainString()
                    + (side.percent() == null ? "" : ": " + two(side.percent()) + " %"));
        }
    }

    private static String told(List<BigDecimal> values) {
        return String.join(", ", values.stream().map(Acceptance::two).toList());
    }

    private static String two(BigDecimal value) {
        return value.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    private static String four(BigDecimal value) {
        return value.setScale(4, RoundingMode.HALF_UP).toPlainString();
    }

    /** Only where the sheet prints it: sublots weigh by their tons. */
    private void weighed(Densities.OfLot lot, Situation situation) {
        Optional<Asked> asked =
                Marks.asked(sheet, Demand.DENSITY_BY_TONS, situation).filter(Asked::sure);
        if (asked.isEmpty()) {
            return;
        }
        BigDecimal tons = BigDecimal.ZERO;
        BigDecimal sum = BigDecimal.ZERO;
        List<String> put = new ArrayList<>();
        for (Map.Entry<Integer, BigDecimal> each : sublots(lot).entrySet()) {
            Optional<BigDecimal> weight = totals.samples()
                    .filling()
                    .sublot(lot.mix(), lot.lot(), each.getKey())
                    .map(Lot.Sublot::tons)
                    .map(t -> t.value());
            if (weight.isPresent()) {
                tons = tons.add(weight.get());
                sum = sum.add(weight.get().multiply(each.getValue()));
                put.add("sublot " + each.getKey() + ": " + two(each.getValue()) + " x "
                        + weight.get().toPlainString());
            }
        }
        if (tons.signum() > 0) {
            BigDecimal mean = sum.divide(tons, MathContext.DECIMAL64);
            figures.add(new Figure(
                    "density-weighed." + lot.mix() + "." + lot.lot(),
                    label(lot) + ", mean weighed by tons",
                    two(mean) + " %",
                    mean.setScale(4, RoundingMode.HALF_UP).stripTrailingZeros(),
                    "pct",
                    new Working(
                            "sum of mean x tons / sum of tons, sublots",
                            List.copyOf(put),
                            entries(lot),
                            asked.get().citation())));
        }
    }

    private void pay(
            Densities.OfLot lot, Situation situation, Optional<PercentWithin> within, Asked asked, PayFormula formula) {
        Boolean coarse = job.mix(lot.mix())
                .map(Mix::gradation)
                .map(g -> g == Mix.Gradation.COARSE)
                .orElse(null);
        PayFormula.Factor factor = formula.factor(new PayFormula.Lot(
                values(sheet, situation, lot),
                within.flatMap(PercentWithin::percent).orElse(null),
                coarse));
        boolean over = totals.samples()
                .filling()
                .lot(lot.mix(), lot.lot())
                .map(Lot::over)
                .orElse(false);
        String text = factor.value()
                .map(f -> f.toPlainString() + (over ? "" : " so far") + ", " + ESTIMATE)
                .orElse("not worked out: " + factor.how());
        figures.add(new Figure(
                "pay-factor." + lot.mix() + "." + lot.lot(),
                label(lot) + ", pay factor for density",
                text,
                factor.value().orElse(null),
                "",
                new Working(
                        factor.how() + "; " + ESTIMATE,
                        List.of(asked.says(), "formula: " + formula.source()),
                        entries(lot),
                        asked.citation())));
    }
}
