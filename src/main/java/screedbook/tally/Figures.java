package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Ref;
import screedbook.entry.Shown;
import screedbook.unit.Amount;

/** Figures of one section being put together, each with its text, its value for machines and its working. */
final class Figures {
    private final List<Figure> made = new ArrayList<>();

    Section section(String id, String heading) {
        return new Section(id, heading, List.copyOf(made));
    }

    void amount(String id, String label, Amount amount, int decimals, Working working) {
        add(
                id,
                label,
                amount.shown(decimals).text(),
                amount.value(),
                amount.unit().suffix(),
                working);
    }

    /** An amount that may be unknown; then there is no figure. */
    void amount(String id, String label, Optional<Amount> amount, int decimals, Working working) {
        amount.ifPresent(a -> amount(id, label, a, decimals, working));
    }

    /** An amount, or in its place why it was not worked out. */
    void reckoned(String id, String label, Reckoned reckoned, int decimals, Working working) {
        if (reckoned.known()) {
            amount(id, label, reckoned.amount(), decimals, working);
        } else {
            text(id, label, reckoned.text(decimals), working);
        }
    }

    void count(String id, String label, int count, Working working) {
        add(id, label, Integer.toString(count), BigDecimal.valueOf(count), "", working);
    }

    void text(String id, String label, String text, Working working) {
        add(id, label, text, null, "", working);
    }

    void add(String id, String label, String text, BigDecimal value, String unit, Working working) {
        made.add(new Figure(Shown.text(id), Shown.text(label), Shown.text(text), value, unit, working));
    }

    /** The mean of amounts of one unit, with their sum. */
    void mean(String id, String label, List<Amount> amounts, int decimals, Working working) {
        Amount mean = mean(amounts);
        String text = Shown.text(mean.shown(decimals).text());
        String unit = mean.unit().suffix();
        made.add(new Figure(Shown.text(id), Shown.text(label), text, mean.value(), unit, working, sum(amounts)));
    }

    private static BigDecimal sum(List<Amount> amounts) {
        return amounts.stream().map(Amount::value).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The mean of amounts of one unit, to two decimals, half up. */
    static Amount mean(List<Amount> amounts) {
        BigDecimal mean = sum(amounts).divide(BigDecimal.valueOf(amounts.size()), 2, RoundingMode.HALF_UP);
        return new Amount(mean, amounts.get(0).unit());
    }

    static Working working(String formula, List<String> put, List<Ref> entries, String source) {
        return new Working(formula, List.copyOf(put), List.copyOf(entries), source);
    }
}
