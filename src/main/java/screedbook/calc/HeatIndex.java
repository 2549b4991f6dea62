package screedbook.calc;

import java.math.BigDecimal;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * How hot it feels in the shade with the humidity.
 *
 * <p>Source: US National Weather Service, Weather Prediction Center, heat index equation page: a simple form decides, the
 * regression of Rothfusz follows from 80 degrees F, with the page's two adjustments for very dry and very damp air. (The
 * printed chart leaves the adjustments out and differs in a few cells for it.)
 */
public final class HeatIndex {
    private static final double MODERATE = 91;

    private HeatIndex() {}

    /**
     * Heat index in the air temperature's unit, not rounded. Empty where the humidity is not 0 to 100 percent.
     *
     * @throws IllegalArgumentException when the first amount is not a temperature
     */
    public static Optional<Amount> of(Amount air, BigDecimal humidity) {
        double t = air.to(Unit.DEG_F).value().doubleValue();
        double rh = humidity.doubleValue();
        if (rh < 0 || rh > 100) {
            return Optional.empty();
        }
        double simple = (0.5 * (t + 61 + (t - 68) * 1.2 + rh * 0.094) + t) / 2;
        double index = simple < 80 ? simple : regression(t, rh) + adjustment(t, rh);
        return Optional.of(new Amount(BigDecimal.valueOf(index), Unit.DEG_F).to(air.unit()));
    }

    /**
     * The word for how much care a heat index asks: lower below 91 degrees F, moderate from 91, high from 103, very high
     * above 115 (OSHA, Using the Heat Index: A Guide for Employers, read as quoted by a university).
     *
     * @throws IllegalArgumentException when the amount is not a temperature
     */
    public static String band(Amount index) {
        double f = index.to(Unit.DEG_F).value().doubleValue();
        return f < MODERATE ? "lower" : f < 103 ? "moderate" : f <= 115 ? "high" : "very high";
    }

    /**
     * Whether a heat index asks for care: from 91 degrees F, where the band called moderate begins (OSHA, as above).
     *
     * @throws IllegalArgumentException when the amount is not a temperature
     */
    public static boolean asksForCare(Amount index) {
        return index.to(Unit.DEG_F).value().doubleValue() >= MODERATE;
    }

    private static double regression(double t, double rh) {
        return -42.379
                + 2.04901523 * t
                + 10.14333127 * rh
                - 0.22475541 * t * rh
                - 0.00683783 * t * t
                - 0.05481717 * rh * rh
                + 0.00122874 * t * t * rh
                + 0.00085282 * t * rh * rh
                - 0.00000199 * t * t * rh * rh;
    }

    private static double adjustment(double t, double rh) {
        if (rh < 13 && t >= 80 && t <= 112) {
            return -(13 - rh) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
        }
        return rh > 85 && t >= 80 && t <= 87 ? (rh - 85) / 10 * (87 - t) / 5 : 0;
    }
}
