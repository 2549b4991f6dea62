package screedbook.check;

import java.math.BigDecimal;
import java.util.List;
import screedbook.entry.Answer;
import screedbook.entry.Ref;
import screedbook.entry.Standing;

/**
 * Something that a reader should see: what was seen, the limit or rule with its clause, what would have been inside.
 *
 * @param rule permanent word of the rule
 * @param of the entries that it speaks of, the first one carries the mark; the opening where it speaks of the
 *     whole shift
 * @param seen {@code at the paver 264 °F}
 * @param limit {@code at least 270 °F}
 * @param clause {@code practice PG 70}, or where the rule comes from
 * @param inside what would have been inside
 * @param working steps that lead to the limit
 * @param beyond how far the value lies above the most or, with a minus, below the least, in the limit's unit; null where
 *     no value was held against a limit
 */
public record Finding(
        String rule,
        Sort sort,
        List<Ref> of,
        String seen,
        String limit,
        String clause,
        String inside,
        String working,
        List<Standing<Answer>> answers,
        BigDecimal beyond) {
    public Finding(
            String rule,
            Sort sort,
            List<Ref> of,
            String seen,
            String limit,
            String clause,
            String inside,
            String working,
            List<Standing<Answer>> answers) {
        this(rule, sort, of, seen, limit, clause, inside, working, answers, null);
    }

    /** The same with other answers. */
    public Finding with(List<Standing<Answer>> others) {
        return new Finding(rule, sort, of, seen, limit, clause, inside, working, others, beyond);
    }

    public boolean answered() {
        return !answers.isEmpty();
    }
}
