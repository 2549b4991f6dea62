package screedbook.calc;

import java.math.BigDecimal;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * How cold it feels in the wind.
 *
 * <p>Source: US National Weather Service, wind chill of 2001: {@code 35.74 + 0.6215 T - 35.75 V^0.16 + 0.4275 T V^0.16},
 * T in degrees F, V in miles per hour.
 */
public final class WindChill {
    private WindChill() {}

    /**
     * Wind chill in the air temperature's unit, not rounded. Empty above 50 degrees F and up to 3 miles per hour, where it
     * is not defined (the bounds are from memory).
     *
     * @throws IllegalArgumentException when the amounts are not a temperature and a speed
     */
    public static Optional<Amount> of(Amount air, Amount wind) {
        double t = air.to(Unit.DEG_F).value().doubleValue();
        double v = wind.to(Unit.MILE_PER_HOUR).value().doubleValue();
        if (t > 50 || v <= 3) {
            return Optional.empty();
        }
        double gust = Math.pow(v, 0.16);
        double chill = 35.74 + 0.6215 * t - 35.75 * gust + 0.4275 * t * gust;
        return Optional.of(new Amount(BigDecimal.valueOf(chill), Unit.DEG_F).to(air.unit()));
    }
}
