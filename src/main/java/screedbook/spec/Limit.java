package screedbook.spec;

import screedbook.unit.Amount;

/**
 * A limit of a sheet as it is in force for one case, with its working.
 *
 * @param id permanent word of the row in its sheet
 * @param low the least that is inside; null where nothing is said
 * @param high the most that is inside; null where nothing is said
 * @param document with edition
 * @param clause of the document
 * @param known {@code read} or {@code common practice}
 * @param rounding how a value is rounded before it is compared: {@code none}, or a rule of calc's rounding and decimals
 * @param working the sentence that leads from the row to these figures: the 45, the 10 and the 35
 */
public record Limit(
        String id,
        Quantity quantity,
        Amount low,
        Amount high,
        String document,
        String clause,
        String known,
        String rounding,
        String working) {
    /** {@code at least 270}, {@code at most 325}, {@code 275 to 325}. */
    public String text() {
        if (low == null) {
            return "at most " + high.value().toPlainString();
        }
        if (high == null) {
            return "at least " + low.value().toPlainString();
        }
        return low.value().toPlainString() + " to " + high.value().toPlainString();
    }

    /** Document and clause in short, as it stands beside a mark. */
    public String citation() {
        return clause.isEmpty() ? document : document + " " + clause;
    }
}
