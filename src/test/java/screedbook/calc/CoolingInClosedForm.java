package screedbook.calc;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;

/**
 * Cooling that can be written down exactly: the oracle that the program's cells and steps are held against.
 *
 * <p>Source: Green function of a half space with surface transfer, Carslaw and Jaeger, Conduction of Heat in Solids, 2nd
 * ed. 1959 (from memory), integrated over the lift. Lift and base are of one material, radiation is left out.
 *
 * @param a thickness of the lift, m
 * @param h heat carried off by the air, W/m2K
 */
record CoolingInClosedForm(Stuff stuff, double a, double mix, double base, double air, double h) {
    private static final int PANELS = 120;

    private double alpha() {
        return stuff.k() / stuff.store();
    }

    /** Temperature at a depth, C, some seconds after laying. */
    double at(double x, double seconds) {
        double s = Math.sqrt(alpha() * seconds);
        double p = (erf((a - x) / (2 * s)) + erf((a + x) / (2 * s))) / 2
                - erf((x + a) / (2 * s))
                + erf(x / (2 * s))
                - e(x + a, s)
                + e(x, s);
        return air + (base - air) * (erf(x / (2 * s)) + e(x, s)) + (mix - base) * p;
    }

    /** Mean through the lift, by Simpson's rule. */
    double mean(double seconds) {
        double sum = 0;
        for (int i = 0; i <= PANELS; i++) {
            int weight = i == 0 || i == PANELS ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * at(a * i / PANELS, seconds);
        }
        return sum / (3 * PANELS);
    }

    /** {@code exp(-z^2/4s^2) erfcx(z/2s + Hs)}, which is {@code exp(Hz + H^2 s^2) erfc(z/2s + Hs)}. */
    private double e(double z, double s) {
        double bigH = h / stuff.k();
        double exponent = bigH * z + bigH * bigH * s * s;
        return exponent > 600 ? 0 : Math.exp(exponent) * Erf.erfc(z / (2 * s) + bigH * s);
    }

    private static double erf(double x) {
        return Erf.erf(x);
    }

    double minutesToMean(double stop) {
        return minutes(this::mean, stop);
    }

    double minutesToMiddle(double stop) {
        return minutes(t -> at(a / 2, t), stop);
    }

    double minutesToSurface(double stop) {
        return minutes(t -> at(0, t), stop);
    }

    /** When a falling temperature passes a value, by halving. */
    private static double minutes(DoubleUnaryOperator temperature, double stop) {
        double early = 0.01;
        double late = 24 * 3600;
        for (int i = 0; i < 50; i++) {
            double middle = (early + late) / 2;
            if (temperature.applyAsDouble(middle) > stop) {
                early = middle;
            } else {
                late = middle;
            }
        }
        return early / 60;
    }
}
