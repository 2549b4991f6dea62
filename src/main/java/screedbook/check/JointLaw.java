package screedbook.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.calc.Rounding;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * What holds for the joints of one lift.
 *
 * @param offset how far from the joint of the lift below; of the sheet, else of the job
 * @param paths the sheet's own words on wheel paths; empty where it has none
 * @param line the sheet's own words on lane lines; empty where it has none
 */
record JointLaw(Bounds offset, Optional<Asked> paths, Optional<Asked> line) {
    static JointLaw of(Job job, SpecSheet sheet, Job.Lift lift) {
        Situation s = LiftPlan.situation(job, lift);
        Bounds said = Bounds.of(sheet, Quantity.JOINT_OFFSET, s);
        Bounds offset =
                said.noLimit() ? job.planning().rule().flatMap(JointLaw::own).orElse(said) : said;
        return new JointLaw(
                offset,
                Marks.asked(sheet, Demand.JOINT_OUT_OF_WHEEL_PATHS, s),
                Marks.asked(sheet, Demand.JOINT_ON_LINE, s));
    }

    private static Optional<Bounds> own(Planning.JointRule rule) {
        if (rule.least() == null && rule.most() == null) {
            return Optional.empty();
        }
        Bound bound = new Bound(
                rule.least(), rule.most(), true, rule.source(), Rounding.ABSOLUTE, "The job's own rule for joints.");
        return Optional.of(new Bounds(List.of(bound), List.of()));
    }

    /** The least offset in a unit, of all that may hold the widest. */
    Optional<BigDecimal> least(Unit unit) {
        return offset.all().stream()
                .map(Bound::low)
                .filter(Objects::nonNull)
                .map(a -> a.to(unit).value())
                .max(BigDecimal::compareTo);
    }

    /** The greatest offset in a unit, of all that may hold the narrowest. */
    Optional<BigDecimal> most(Unit unit) {
        return offset.all().stream()
                .map(Bound::high)
                .filter(Objects::nonNull)
                .map(a -> a.to(unit).value())
                .min(BigDecimal::compareTo);
    }

    static Amount between(Unit unit, BigDecimal a, BigDecimal b) {
        return new Amount(a.subtract(b).abs(), unit);
    }
}
