package screedbook.check;

import java.util.List;
import java.util.Optional;
import screedbook.calc.Rounding;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;

/** The limits of yield and of thickness as probed: the job's own where it settles them, else the sheet's. */
final class YieldBounds {
    private YieldBounds() {}

    /** Up to what part of the planned spread rate mix is paid for. */
    static Bounds paid(Job job, Optional<SpecSheet> sheet, Situation situation) {
        Amount own = job.checks().paidUpTo();
        if (own != null) {
            return new Bounds(
                    List.of(settled(
                            job, null, own, "The job pays for " + AmountText.text(own) + " of the planned rate.")),
                    List.of());
        }
        return sheet.map(s -> Bounds.of(s, Quantity.SPREAD_PAID, situation)).orElse(Bounds.NONE);
    }

    /** What a probe of the rolled mat is held against; no limit where neither job nor sheet has one. */
    static Bounds depth(Job job, Optional<SpecSheet> sheet, Situation situation, Amount planned) {
        Amount own = job.checks().depthWithin();
        if (own != null) {
            Amount low = planned.minus(own);
            return new Bounds(
                    List.of(settled(
                            job,
                            low,
                            planned.plus(own),
                            "The job has the rolled mat within " + AmountText.text(own) + " of the planned "
                                    + AmountText.text(planned) + ".")),
                    List.of());
        }
        return sheet.map(s -> Bounds.NONE.and(Bounds.around(s, situation, Quantity.DEPTH_DIFFERENCE, planned)))
                .orElse(Bounds.NONE);
    }

    private static Bound settled(Job job, Amount low, Amount high, String says) {
        return new Bound(low, high, true, PlanRules.source(job.checks()), Rounding.ABSOLUTE, says);
    }
}
