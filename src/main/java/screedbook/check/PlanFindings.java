package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** A plan and the sheet chosen for it give the findings of the plan; they speak of no entry and have no answers. */
public final class PlanFindings {
    private static final List<PlanRule> ALL = Stream.of(
                    LiftPlan.ALL, JointPlan.ALL, HeatPlan.ALL, SurfacePlan.ALL, WorkPlan.ALL)
            .flatMap(List::stream)
            .toList();

    private PlanFindings() {}

    /** Every rule by which a plan is looked at, in the order of their findings. */
    public static List<PlanRule> rules() {
        return ALL;
    }

    /** What does not fit, is missing, or is worth another look in a plan. */
    public static List<Finding> of(Job job, SpecSheet sheet) {
        List<Finding> all = new ArrayList<>();
        for (PlanRule rule : ALL) {
            rule.marks(job, sheet).forEach(mark -> all.add(finding(rule, mark)));
        }
        return List.copyOf(all);
    }

    private static Finding finding(PlanRule rule, Mark mark) {
        return new Finding(
                rule.id(),
                mark.sort() == null ? rule.sort() : mark.sort(),
                mark.of(),
                mark.seen(),
                mark.limit(),
                mark.clause(),
                mark.inside(),
                mark.working(),
                List.of());
    }
}
