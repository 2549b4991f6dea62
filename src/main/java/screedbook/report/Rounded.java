package screedbook.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import screedbook.tally.Figure;
import screedbook.tally.Totals;
import screedbook.unit.Amount;

/** Figures as the page prints them: rounded, without their unit, a dash for what is not there. */
final class Rounded {
    private Rounded() {}

    /** A figure's value to so many decimals; a dash where it was not worked out. */
    static String value(Totals totals, String id, int decimals) {
        return totals.figure(id)
                .map(Figure::value)
                .map(v -> v.setScale(decimals, RoundingMode.HALF_UP).toPlainString())
                .orElse("-");
    }

    /** A count, or a dash where it was not noted. */
    static String dash(Integer count) {
        return count == null ? "-" : count.toString();
    }

    static String two(Amount amount) {
        return shown(amount, 2);
    }

    /** An amount's value to so many decimals; a dash where it was not worked out. */
    static String shown(Optional<Amount> amount, int decimals) {
        return amount.map(a -> shown(a, decimals)).orElse("-");
    }

    static String shown(Amount amount, int decimals) {
        BigDecimal value = amount.value().setScale(decimals, RoundingMode.HALF_UP);
        return value.toPlainString();
    }
}
