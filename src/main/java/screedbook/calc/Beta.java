package screedbook.calc;

/**
 * The regularized incomplete beta function I_x(a, b) for a = b, by its continued fraction (NIST Digital Library of
 * Mathematical Functions, 8.17.22; the formula from memory, the values held against another library). Binary floating
 * point, right to about 14 digits.
 */
final class Beta {
    private static final double TINY = 1e-300;
    private static final double CLOSE = 1e-16;
    private static final int MOST = 10_000;

    private Beta() {}

    /**
     * The part of a symmetric beta distribution that lies below x.
     *
     * @param x 0 to 1; beyond its ends 0 or 1
     * @param a above 0
     */
    static double below(double x, double a) {
        if (x <= 0) {
            return 0;
        }
        if (x >= 1) {
            return 1;
        }
        return x <= 0.5 ? part(x, a) : 1 - part(1 - x, a);
    }

    /** For x at most one half, where the fraction comes to its end quickly. */
    private static double part(double x, double a) {
        double front = Math.exp(logGamma(2 * a) - 2 * logGamma(a) + a * (Math.log(x) + Math.log1p(-x)));
        return front / (a * fraction(x, a));
    }

    /** The fraction's denominator, from its front to its end (Lentz). */
    private static double fraction(double x, double a) {
        double value = 1;
        double c = 1;
        double d = 0;
        for (int k = 1; k <= MOST; k++) {
            int m = k / 2;
            double term = k % 2 == 0
                    ? m * (a - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
                    : -(a + m) * (2 * a + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = away(1 + term * d);
            c = away(1 + term / c);
            d = 1 / d;
            value *= c * d;
            if (Math.abs(c * d - 1) < CLOSE) {
                break;
            }
        }
        return value;
    }

    private static double away(double from) {
        return Math.abs(from) < TINY ? TINY : from;
    }

    /**
     * The logarithm of the gamma function: Stirling's series after lifting the argument above 15 (NIST Digital Library of
     * Mathematical Functions, 5.11.1; from memory).
     */
    static double logGamma(double at) {
        double z = at;
        double lifted = 0;
        while (z < 15) {
            lifted += Math.log(z);
            z++;
        }
        double r = 1 / (z * z);
        double series = (1 / 12.0 - r * (1 / 360.0 - r * (1 / 1260.0 - r * (1 / 1680.0 - r / 1188.0)))) / z;
        return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - lifted;
    }
}
