package screedbook.tally;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import screedbook.job.Job;

/** What the planned work comes to before any of it is done: tons and lots, tack, haul and paver, each with its working. */
public final class PlannedWork {
    private PlannedWork() {}

    /**
     * The sections of a plan; one without figures is left out.
     *
     * @param sprays how warm a tack product is sprayed, where somebody says so
     */
    public static List<Section> of(Job job, Function<Job.Product, Optional<Spray>> sprays) {
        return Stream.of(LotPlan.of(job), TackPlan.of(job, sprays), HaulPlan.of(job))
                .filter(section -> !section.figures().isEmpty())
                .toList();
    }
}
