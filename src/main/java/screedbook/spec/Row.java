package screedbook.spec;

import java.math.BigDecimal;
import java.util.List;
import screedbook.calc.Rounding;
import screedbook.unit.Amount;

/**
 * One row of a sheet.
 *
 * @param of the rows that a {@code lowers} row lowers
 * @param by how much it lowers their low end
 * @param notBelow under which it does not lower them
 * @param says the row's own sentence
 */
record Row(
        int line,
        String id,
        Sort sort,
        Quantity quantity,
        Demand demand,
        Amount low,
        Amount high,
        BigDecimal count,
        Rounding rounding,
        List<String> of,
        BigDecimal by,
        BigDecimal notBelow,
        When when,
        String document,
        String clause,
        String known,
        String says) {
    /** What a row does. */
    enum Sort {
        LIMIT("limit"),
        LOWERS("lowers"),
        SETS_NO_LIMIT("sets-no-limit"),
        /** The printed table has a gap here. */
        PRINTS_NOTHING("prints-nothing"),
        ASKS("asks");

        final String word;

        Sort(String word) {
            this.word = word;
        }

        /** Whether it says that there is no limit. */
        boolean silent() {
            return this == SETS_NO_LIMIT || this == PRINTS_NOTHING;
        }
    }

    /** The limit as the row prints it. */
    Limit limit() {
        return new Limit(id, quantity, low, high, document, clause, known, rounding.key(), says);
    }

    /** The row in words. */
    Printed printed() {
        String of = quantity == null ? demand.word() : quantity.word();
        String citation = document + " " + clause;
        return new Printed(line, id, of, figures(), when.text(), citation, known, says);
    }

    private String figures() {
        return switch (sort) {
            case LIMIT ->
                limit().text() + " " + (low == null ? high : low).unit().symbol();
            case LOWERS ->
                String.join(", ", of) + " lowered by " + by.toPlainString()
                        + (notBelow == null ? "" : ", not below " + notBelow.toPlainString());
            case SETS_NO_LIMIT -> "no limit set";
            case PRINTS_NOTHING -> "a gap in the printed table";
            case ASKS -> "asked for" + (count == null ? "" : ": " + count.toPlainString());
        };
    }

    Asked asked(boolean sure) {
        return new Asked(id, demand, count, sure, document, clause, known, says);
    }
}
