package screedbook.check;

import java.util.List;
import java.util.function.Function;

/** One thing that is looked for in a day: its permanent word, what holds in one sentence, and the looking. */
public final class Rule {
    private final String id;
    private final Sort sort;
    private final String says;
    private final Function<Look, List<Mark>> look;

    Rule(String id, Sort sort, String says, Function<Look, List<Mark>> look) {
        this.id = id;
        this.sort = sort;
        this.says = says;
        this.look = look;
    }

    /** The permanent word; answers name it for ever. */
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

    List<Mark> marks(Look at) {
        return look.apply(at);
    }
}
