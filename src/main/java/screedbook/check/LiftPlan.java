package screedbook.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about the planned thickness of a lift and the mix that it is made of. */
final class LiftPlan {
    static final List<PlanRule> ALL = List.of(
            new PlanRule(
                    "plan-lift-thickness",
                    Sort.OUTSIDE,
                    "A lift is planned as thick as the sheet says for its mix.",
                    LiftPlan::thickness),
            new PlanRule(
                    "plan-lift-sizes",
                    Sort.LOOK_AGAIN,
                    "A lift is planned some aggregate sizes thick.",
                    LiftPlan::sizes),
            new PlanRule(
                    "plan-core-height",
                    Sort.OUTSIDE,
                    "A lift is planned at least as thick as a core has to be high.",
                    LiftPlan::cores),
            new PlanRule(
                    "plan-mix-unsettled",
                    Sort.MISSING,
                    "The job says of a mix what its limits depend on.",
                    LiftPlan::unsettled));

    private LiftPlan() {}

    static Situation situation(Job job, Job.Lift lift) {
        return Cases.of(job, null, Optional.of(lift), null, null);
    }

    static String name(Job.Lift lift) {
        return "lift " + lift.number() + " of " + lift.mix();
    }

    private static List<Mark> thickness(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Job.Lift lift : job.lifts()) {
            marks.addAll(Marks.judged(
                    Bounds.of(sheet, Quantity.LIFT, situation(job, lift)),
                    List.of(),
                    name(lift) + " is planned",
                    lift.thickness(),
                    ""));
        }
        return marks;
    }

    /** How many sizes of its largest aggregate a lift is thick; empty where the size is not settled. */
    static Optional<Amount> sizes(Job job, Job.Lift lift) {
        return job.mix(lift.mix())
                .map(Mix::nmas)
                .filter(size -> size.value().signum() > 0)
                .map(size -> new Amount(
                        lift.thickness()
                                .to(Unit.MILLIMETRE)
                                .value()
                                .divide(size.to(Unit.MILLIMETRE).value(), MathContext.DECIMAL128),
                        Unit.TIMES));
    }

    private static List<Mark> sizes(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Job.Lift lift : job.lifts()) {
            sizes(job, lift).ifPresent(sizes -> marks.addAll(sizes(job, lift, sizes)));
        }
        return marks;
    }

    private static List<Mark> sizes(Job job, Job.Lift lift, Amount sizes) {
        Mix mix = job.mix(lift.mix()).orElseThrow();
        boolean coarse = mix.gradation() != Mix.Gradation.FINE;
        Bounds usual = Marks.usual(coarse ? Quantity.LIFT_SIZES_COARSE : Quantity.LIFT_SIZES_FINE);
        String doubt = mix.gradation() == null ? " The job does not say whether the mix is fine or coarse." : "";
        List<Mark> marks = new ArrayList<>();
        for (Bound bound : usual.broken(sizes)) {
            BigDecimal least = bound.low().value();
            Amount enough = new Amount(
                            mix.nmas().value().multiply(least), mix.nmas().unit())
                    .to(lift.thickness().unit());
            marks.add(new Mark(
                    null,
                    List.of(),
                    name(lift) + " is planned " + AmountText.text(lift.thickness()) + ", "
                            + AmountText.plain(sizes.shown(1)) + " times its " + AmountText.text(mix.nmas())
                            + " aggregate",
                    "at least " + AmountText.plain(bound.low()) + " times for a "
                            + (mix.gradation() == null
                                    ? "coarse"
                                    : mix.gradation().word()) + " mix",
                    bound.clause(),
                    AmountText.text(up(enough)) + " or more",
                    bound.working() + doubt));
        }
        return marks;
    }

    private static Amount up(Amount amount) {
        return new Amount(amount.value().setScale(2, RoundingMode.CEILING), amount.unit());
    }

    private static List<Mark> cores(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Job.Lift lift : job.lifts()) {
            marks.addAll(Marks.judged(
                    Bounds.of(sheet, Quantity.CORE_HEIGHT, situation(job, lift)),
                    List.of(),
                    name(lift) + ", cores from it would be about as high as planned,",
                    lift.thickness(),
                    ""));
        }
        return marks;
    }

    private static List<Mark> unsettled(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Mix mix : job.mixes()) {
            List<String> open = new ArrayList<>();
            open(open, mix.nmas(), "nominal maximum size");
            open(open, mix.highGrade().orElse(null), "binder grade");
            open(open, mix.gradation(), "gradation, fine or coarse");
            open(open, mix.targetPlant(), "target at the plant");
            if (!open.isEmpty()) {
                marks.add(new Mark(
                        List.of(),
                        "mix " + mix.name() + " has no " + String.join(", no ", open),
                        "what limits depend on is settled before paving",
                        "job, mixes",
                        String.join(", ", open) + " under mixes"));
            }
        }
        return marks;
    }

    private static void open(List<String> open, Object settled, String what) {
        if (settled == null) {
            open.add(what);
        }
    }
}
