package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.job.Planning;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;

/** Rules about the target discharge temperatures of a plan. */
final class HeatPlan {
    static final List<PlanRule> ALL = List.of(
            new PlanRule(
                    "plan-heat-window",
                    Sort.OUTSIDE,
                    "There is a target that keeps loads inside at the plant and at the paver.",
                    HeatPlan::window),
            new PlanRule(
                    "plan-heat-target",
                    Sort.OUTSIDE,
                    "The target of a mix keeps loads inside at the plant and at the paver.",
                    HeatPlan::target),
            new PlanRule(
                    "plan-haul", Sort.MISSING, "The loss of heat on the way is settled for each mix.", HeatPlan::haul),
            new PlanRule(
                    "plan-haul-source", Sort.MISSING, "A loss of heat says where it comes from.", HeatPlan::source));

    private HeatPlan() {}

    private static List<Mark> window(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (HeatBand band : HeatBand.all(job, sheet)) {
            if (band.empty()) {
                marks.add(new Mark(
                        band.sure() ? null : Sort.LOOK_AGAIN,
                        List.of(),
                        band.name() + ": the target has to be " + ends(band),
                        limits(band),
                        clauses(band),
                        String.join("; or ", band.opens()),
                        steps(band)));
            }
        }
        return marks;
    }

    private static String ends(HeatBand band) {
        String sign = " " + band.unit().symbol();
        return "at least " + HeatBand.plain(band.floor().orElseThrow().at()) + " and at most "
                + HeatBand.plain(band.ceiling().orElseThrow().at()) + sign;
    }

    /** The limits that loads are held to, as they are printed. */
    private static String limits(HeatBand band) {
        List<String> limits = new ArrayList<>();
        String sign = " " + band.unit().symbol();
        band.floor().ifPresent(f -> limits.add("at least " + HeatBand.plain(f.limit()) + sign + " " + f.where()));
        band.ceiling().ifPresent(c -> limits.add("at most " + HeatBand.plain(c.limit()) + sign + " " + c.where()));
        return String.join(", ", limits);
    }

    private static String clauses(HeatBand band) {
        List<String> clauses = new ArrayList<>();
        band.floor().ifPresent(f -> clauses.add(f.clause()));
        band.ceiling()
                .map(HeatBand.End::clause)
                .filter(c -> !clauses.contains(c))
                .ifPresent(clauses::add);
        return String.join(", ", clauses);
    }

    static String steps(HeatBand band) {
        List<String> steps = new ArrayList<>();
        band.floor().ifPresent(f -> steps.add("At least: " + f.steps() + "."));
        band.ceiling().ifPresent(c -> steps.add("At most: " + c.steps() + "."));
        if (!band.tolerance()) {
            steps.add("The sheet sets no tolerance around the target; none is counted.");
        }
        return String.join(" ", steps);
    }

    private static List<Mark> target(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (HeatBand band : HeatBand.all(job, sheet)) {
            if (!band.empty() && band.holdsTarget().filter(in -> !in).isPresent()) {
                marks.add(new Mark(
                        band.sure() ? null : Sort.LOOK_AGAIN,
                        List.of(),
                        band.name() + ": the target at the plant is " + new Amount(band.target(), band.unit()).text(),
                        limits(band),
                        clauses(band),
                        "a target of " + band.text(),
                        steps(band)));
            }
        }
        return marks;
    }

    private static List<Mark> haul(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Mix mix : job.mixes()) {
            if (job.planning().hauls(mix.name()).isEmpty()) {
                String most = HeatBand.all(job, sheet).stream()
                        .filter(b -> b.mix().equals(mix.name()))
                        .flatMap(b -> b.mostLoss().stream())
                        .min(Amount::compareTo)
                        .filter(m -> m.value().signum() >= 0)
                        .map(m -> "; the limits leave room for a loss of at most " + HeatBand.plain(m.value()) + " "
                                + m.unit().symbol())
                        .orElse("");
                marks.add(new Mark(
                        List.of(),
                        "no haul is settled for " + mix.name() + most,
                        "the loss of heat on the way is expected before paving, with its source",
                        "job, haul",
                        "plant, minutes and loss under haul"));
            }
        }
        return marks;
    }

    private static List<Mark> source(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Planning.Haul haul : job.planning().haul()) {
            if (haul.source() == null || haul.source().isBlank()) {
                marks.add(new Mark(
                        List.of(),
                        "the haul from " + haul.plant() + " expects a loss of "
                                + haul.loss().text() + " and does not say why",
                        "a loss of heat has a source until the job's own loads teach it",
                        "job, haul",
                        "a source under haul"));
            }
        }
        return marks;
    }
}
