package screedbook.calc;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** How a figure is rounded before it is held against a printed limit; the clause says which. */
public enum Rounding {
    /** A lone 5 goes to the even digit (ASTM E29, rounding method; AASHTO R 11): 45.45 is 45.4. */
    HALF_EVEN("half-even", "5 to the even digit") {
        @Override
        public BigDecimal to(int decimals, BigDecimal value) {
            return value.setScale(decimals, RoundingMode.HALF_EVEN);
        }
    },
    /** A 5 always goes up, away from zero (Iowa DOT Materials IM 202, 6.4.3 as replaced there): 45.45 is 45.5. */
    HALF_UP("half-up", "5 always up") {
        @Override
        public BigDecimal to(int decimals, BigDecimal value) {
            return value.setScale(decimals, RoundingMode.HALF_UP);
        }
    },
    /** The figure is compared as it stands (ASTM E29, absolute method; Florida DOT 334-8.2.2 for pay). */
    ABSOLUTE("absolute", "not rounded") {
        @Override
        public BigDecimal to(int decimals, BigDecimal value) {
            return value;
        }
    };

    private final String key;
    private final String words;

    Rounding(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** The value to so many digits after the point; below zero a 5 is judged by the size alone. */
    public abstract BigDecimal to(int decimals, BigDecimal value);

    /** The word for it in a table. */
    public String key() {
        return key;
    }

    /** What it does, for the reader of a working. */
    public String words() {
        return words;
    }

    /** The rounding that a table calls by this word, if there is one. */
    public static Optional<Rounding> ofKey(String key) {
        for (Rounding rounding : values()) {
            if (rounding.key.equals(key)) {
                return Optional.of(rounding);
            }
        }
        return Optional.empty();
    }
}
