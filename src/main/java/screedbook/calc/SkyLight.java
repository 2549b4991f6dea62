package screedbook.calc;

import java.math.BigDecimal;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What comes down from the sky: the sun's heat, and the sky's own. */
public final class SkyLight {
    private static final int EIGHTHS = 8;

    private SkyLight() {}

    /**
     * Heat of the sun on level ground, W/m2, never below 0: {@code (910 sin h - 30)(1 - 0.75 (N/8)^3.4)}, h the sun's
     * height, N eighths of the sky covered (Kasten and Czeplak 1980, from memory).
     *
     * @param height of the sun in degrees; see {@link Sun#height}
     * @param eighths from 0 to 8
     * @throws IllegalArgumentException when the eighths are outside 0 to 8
     */
    public static double sun(double height, double eighths) {
        double clear = Math.max(0, 910 * Math.sin(Math.toRadians(height)) - 30);
        return clear * (1 - 0.75 * Math.pow(covered(eighths), 3.4));
    }

    /**
     * The temperature with which the sky radiates, in the air's unit: clear {@code Ta (0.8 + 0.004 Tdew)^(1/4)}, Ta in K
     * and Tdew in C (as a public model of pavement heat codes it, read: 10 C with a dew point of 2 C gives -4.7 C). Cloud
     * radiates as air does, by the share of the sky that it covers (common practice, no source).
     *
     * @param eighths from 0 to 8
     * @throws IllegalArgumentException when the eighths are outside 0 to 8, or an amount is not a temperature
     */
    public static Amount radiates(Amount air, Amount dewPoint, double eighths) {
        double ta = air.to(Unit.DEG_C).value().doubleValue() + SurfaceLoss.ZERO;
        double clear = 0.8 + 0.004 * dewPoint.to(Unit.DEG_C).value().doubleValue();
        double share = clear + (1 - clear) * covered(eighths);
        double sky = ta * Math.pow(share, 0.25) - SurfaceLoss.ZERO;
        return new Amount(BigDecimal.valueOf(sky), Unit.DEG_C).to(air.unit());
    }

    private static double covered(double eighths) {
        if (!(eighths >= 0 && eighths <= EIGHTHS)) {
            throw new IllegalArgumentException(eighths + " eighths of sky");
        }
        return eighths / EIGHTHS;
    }
}
