package screedbook.spec;

import java.math.BigDecimal;

/**
 * Something that a sheet asks for in one case.
 *
 * @param count how often or how many; null where the sheet says no number
 * @param sure whether the sheet says, and the case tells, that it holds
 * @param document with edition
 * @param says the row's own sentence
 */
public record Asked(
        String id,
        Demand demand,
        BigDecimal count,
        boolean sure,
        String document,
        String clause,
        String known,
        String says) {
    /** Document and clause in short, as it stands beside a mark. */
    public String citation() {
        return document + " " + clause;
    }
}
