package screedbook.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.UnaryOperator;
import screedbook.entry.Ref;
import screedbook.spec.Asked;

/**
 * A finding as a rule makes it, without the rule and the answers.
 *
 * @param sort null for the sort of the rule
 * @param beyond as of a finding
 */
record Mark(
        Sort sort,
        List<Ref> of,
        String seen,
        String limit,
        String clause,
        String inside,
        String working,
        BigDecimal beyond) {
    Mark(Sort sort, List<Ref> of, String seen, String limit, String clause, String inside, String working) {
        this(sort, of, seen, limit, clause, inside, working, null);
    }

    Mark(List<Ref> of, String seen, String limit, String clause, String inside) {
        this(null, of, seen, limit, clause, inside, "");
    }

    Mark(Ref of, String seen, String limit, String clause, String inside) {
        this(List.of(of), seen, limit, clause, inside);
    }

    /** What a sheet asks for and was not seen; asked about where it is not sure that the sheet asks it of this. */
    static Mark asked(Asked asked, Ref of, String seen, String inside) {
        Sort sort = asked.sure() ? null : Sort.LOOK_AGAIN;
        return new Mark(sort, List.of(of), seen, Marks.told(asked), asked.citation(), inside, "");
    }

    /** The same said of another entry, whose name goes before what was seen. */
    Mark on(Ref entry, String name) {
        return new Mark(sort, List.of(entry), name + seen, limit, clause, inside, working, beyond);
    }

    Mark as(Sort other) {
        return new Mark(other, of, seen, limit, clause, inside, working, beyond);
    }

    /** With each of its sentences put in other words. */
    Mark told(UnaryOperator<String> words) {
        return new Mark(
                sort,
                of,
                words.apply(seen),
                words.apply(limit),
                clause,
                words.apply(inside),
                words.apply(working),
                beyond);
    }

    Mark because(String steps) {
        return new Mark(sort, of, seen, limit, clause, inside, steps, beyond);
    }
}
