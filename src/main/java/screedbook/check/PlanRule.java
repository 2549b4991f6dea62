package screedbook.check;

import java.util.List;
import java.util.function.BiFunction;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** One thing that is looked for in a plan before paving: its permanent word, what holds, and the looking. */
public final class PlanRule {
    private final String id;
    private final Sort sort;
    private final String says;
    private final BiFunction<Job, SpecSheet, List<Mark>> look;

    PlanRule(String id, Sort sort, String says, BiFunction<Job, SpecSheet, List<Mark>> look) {
        this.id = id;
        this.sort = sort;
        this.says = says;
        this.look = look;
    }

    /** The permanent word; it begins with {@code plan-}. */
    public String id() {
        return id;
    }

    /** The sort of its findings; where a limit is not sure to hold it is {@link Sort#LOOK_AGAIN} all the same. */
    public Sort sort() {
        return sort;
    }

    /** What holds where there is no finding. */
    public String says() {
        return says;
    }

    List<Mark> marks(Job job, SpecSheet sheet) {
        return look.apply(job, sheet);
    }
}
