package screedbook.calc;

import java.math.BigDecimal;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * How hard it rains, by what is measured in an hour.
 *
 * <p>Source: Glossary of Meteorology, American Meteorological Society, "rain" (read): light up to 0.10 in/h, moderate 0.11
 * to 0.30, heavy above. Scales of other countries have other figures.
 */
public enum RainRate {
    NONE,
    LIGHT,
    MODERATE,
    HEAVY;

    private static final BigDecimal MOST_LIGHT = new BigDecimal("0.10");
    private static final BigDecimal MOST_MODERATE = new BigDecimal("0.30");

    /**
     * The word for a rate.
     *
     * @throws IllegalArgumentException when the amount is not a rate of rain
     */
    public static RainRate of(Amount rate) {
        BigDecimal inches = rate.to(Unit.INCH_PER_HOUR).value();
        if (inches.signum() <= 0) {
            return NONE;
        }
        return inches.compareTo(MOST_LIGHT) <= 0 ? LIGHT : inches.compareTo(MOST_MODERATE) <= 0 ? MODERATE : HEAVY;
    }
}
