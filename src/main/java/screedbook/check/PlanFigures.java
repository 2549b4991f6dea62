package screedbook.check;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import screedbook.job.Job;
import screedbook.spec.Limit;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.PlannedWork;
import screedbook.tally.Section;
import screedbook.tally.Spray;
import screedbook.unit.Amount;

/** The figures of a plan with what its sheet says beside them. */
public final class PlanFigures {
    private PlanFigures() {}

    /** Tons and lots, tack, haul and paver of a plan. */
    public static List<Section> of(Job job, SpecSheet sheet) {
        return PlannedWork.of(job, product -> spray(sheet, product));
    }

    /** The range in which the sheet has a product sprayed, by its grade; empty where it sets none. */
    static Optional<Spray> spray(SpecSheet sheet, Job.Product product) {
        if (product.grade() == null) {
            return Optional.empty();
        }
        Situation of = Situation.UNKNOWN.tacked(null, product.grade());
        List<Limit> limits = sheet.ruling(Quantity.TACK_MATERIAL, of).inForce();
        Optional<Amount> low =
                limits.stream().map(Limit::low).filter(Objects::nonNull).max(Comparator.naturalOrder());
        Optional<Amount> high =
                limits.stream().map(Limit::high).filter(Objects::nonNull).min(Comparator.naturalOrder());
        String source = limits.stream().map(Limit::citation).distinct().collect(Collectors.joining(", "));
        return limits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Spray(low.orElse(null), high.orElse(null), source));
    }
}
