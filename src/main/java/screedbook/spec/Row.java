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

    Asked asked(boolean sure) {
        return new Asked(id, demand, count, sure, document, clause, known, says);
    }
}
