package screedbook.tally;

import java.util.Optional;
import java.util.function.Function;
import screedbook.unit.Amount;

/**
 * An amount that was worked out, or the reason why it was not.
 *
 * @param amount null when it was not worked out
 * @param why the reason; empty when it was
 */
public record Reckoned(Amount amount, String why) {
    static Reckoned of(Amount amount) {
        return new Reckoned(amount, "");
    }

    static Reckoned not(String why) {
        return new Reckoned(null, why);
    }

    public boolean known() {
        return amount != null;
    }

    public Optional<Amount> seen() {
        return Optional.ofNullable(amount);
    }

    /** The amount to so many decimals with its unit, or {@code not worked out: } and the reason. */
    public String text(int decimals) {
        return known() ? amount.shown(decimals).text() : "not worked out: " + why;
    }

    Reckoned then(Function<Amount, Reckoned> next) {
        return known() ? next.apply(amount) : this;
    }
}
