package screedbook.calc;

import java.math.BigDecimal;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The temperature at which the air's moisture begins to settle on a surface, over water (below freezing a frost point
 * would be a little higher).
 *
 * <p>Source: WMO-No. 8, Annex 4.B: {@code g = ln(RH/100) + 17.62 t / (243.12 + t)}, {@code td = 243.12 g / (17.62 - g)},
 * t in degrees C.
 */
public final class DewPoint {
    private static final double A = 17.62;
    private static final double B = 243.12;

    private DewPoint() {}

    /**
     * Dew point in the air temperature's unit, not rounded. Empty where the humidity is not above 0 to 100 percent or the
     * air is outside -45 to 60 degrees C (the range of the formula, from memory).
     *
     * @throws IllegalArgumentException when the first amount is not a temperature
     */
    public static Optional<Amount> of(Amount air, BigDecimal humidity) {
        double celsius = air.to(Unit.DEG_C).value().doubleValue();
        double percent = humidity.doubleValue();
        if (percent <= 0 || percent > 100 || celsius < -45 || celsius > 60) {
            return Optional.empty();
        }
        return Optional.of(new Amount(BigDecimal.valueOf(celsius(celsius, percent)), Unit.DEG_C).to(air.unit()));
    }

    private static double celsius(double air, double humidity) {
        double g = Math.log(humidity / 100) + A * air / (B + air);
        return B * g / (A - g);
    }
}
