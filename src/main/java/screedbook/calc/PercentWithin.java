package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * The percent of a lot that is estimated to lie within limits, from its tests: the standard deviation method.
 *
 * <p>Q = (mean - low) / s and (high - mean) / s, s with n - 1 (WSDOT 1-06.2(2)D5, amendment of 2018-2019: S = sqrt((n Sum x²
 * - (Sum x)²) / (n (n - 1)))). From a Q comes a percent, by one of two ways. With both limits the percents are added, less
 * 100 (FHWA-HRT-12-027, appendix B, figure 104).
 */
public record PercentWithin(Sample sample, Side low, Side high, Optional<BigDecimal> percent, String why) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Fewer tests than these say nothing of their spread. */
    public static final int LEAST = 3;

    /** How a percent is found from a quality index. */
    public enum Way {
        /**
         * 100 (1 - I_x(a, a)), a = n / 2 - 1, x = 1/2 - Q sqrt(n) / (2 (n - 1)) and not below 0: the beta distribution behind
         * the published tables (from memory; gives 251 of the 255 cells that were read of FHWA T 5080.12 Table 1B to the
         * hundredth, each with the first number of tests of its column).
         */
        BETA,
        /**
         * The row of a table with the next higher Q (WSDOT 1-06.2(2)D5, amendment of 2018-2019); below zero 100 less the row
         * of the same Q above zero. The table is {@link QualityTable}.
         */
        NEXT_HIGHER_ROW
    }

    /**
     * What the tests come to.
     *
     * @param s the sample standard deviation; zero with fewer than two tests
     */
    public record Sample(int n, BigDecimal mean, BigDecimal s) {
        /** @param values at least one */
        public static Sample of(List<BigDecimal> values) {
            BigDecimal n = BigDecimal.valueOf(values.size());
            BigDecimal sum = values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal squares = values.stream().map(v -> v.multiply(v)).reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal mean = sum.divide(n, MathContext.DECIMAL64);
            if (values.size() < 2) {
                return new Sample(values.size(), mean, BigDecimal.ZERO);
            }
            BigDecimal over = n.multiply(squares).subtract(sum.multiply(sum));
            BigDecimal variance = over.divide(n.multiply(n.subtract(BigDecimal.ONE)), MathContext.DECIMAL128);
            return new Sample(values.size(), mean, variance.sqrt(MathContext.DECIMAL64));
        }
    }

    /**
     * One limit's side.
     *
     * @param q the quality index as it was used; null where there is no limit, or no index
     * @param percent within this limit; null where it was not worked out
     */
    public record Side(BigDecimal limit, BigDecimal q, BigDecimal percent) {
        private static Side bare(BigDecimal limit) {
            return new Side(limit, null, null);
        }
    }

    /**
     * The percent within limits, or why there is none: fewer than three tests, no spread between them, or a quality index
     * that lies beyond the table.
     *
     * @param low null for no lower limit; not both null
     * @param high null for no upper limit
     * @param rounding how the index is brought to the two decimals of the table; {@link Rounding#ABSOLUTE} leaves it
     */
    public static PercentWithin of(
            List<BigDecimal> values, BigDecimal low, BigDecimal high, Way way, Rounding rounding) {
        Sample sample = Sample.of(values);
        String none = none(sample);
        if (!none.isEmpty()) {
            return new PercentWithin(sample, Side.bare(low), Side.bare(high), Optional.empty(), none);
        }
        Side below =
                low == null ? Side.bare(null) : side(sample, low, sample.mean().subtract(low), way, rounding);
        Side above = high == null ? Side.bare(null) : side(sample, high, high.subtract(sample.mean()), way, rounding);
        if (off(below) || off(above)) {
            return new PercentWithin(
                    sample, below, above, Optional.empty(), beyond(off(below) ? below : above, sample.n()));
        }
        BigDecimal percent = low == null
                ? above.percent()
                : high == null
                        ? below.percent()
                        : below.percent().add(above.percent()).subtract(HUNDRED);
        return new PercentWithin(sample, below, above, Optional.of(percent), "");
    }

    private static String none(Sample sample) {
        if (sample.n() < LEAST) {
            return sample.n() + (sample.n() == 1 ? " test" : " tests") + ", at least " + LEAST + " are needed";
        }
        return sample.s().signum() == 0 ? "all tests are alike, their standard deviation is 0" : "";
    }

    private static boolean off(Side side) {
        return side.limit() != null && side.percent() == null;
    }

    private static String beyond(Side side, int n) {
        return "Q " + side.q().setScale(2, RoundingMode.HALF_UP).toPlainString()
                + " lies beyond the table, whose last row for "
                + n + " tests is " + QualityTable.q(100, n).toPlainString() + "; the formula behind the table gives "
                + formula(side.q(), n).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    private static Side side(Sample sample, BigDecimal limit, BigDecimal over, Way way, Rounding rounding) {
        BigDecimal q = over.divide(sample.s(), MathContext.DECIMAL64);
        if (way == Way.BETA) {
            return new Side(limit, q, formula(q, sample.n()).setScale(2, RoundingMode.HALF_UP));
        }
        BigDecimal used = rounding.to(2, q);
        return new Side(limit, used, QualityTable.percent(used, sample.n()).orElse(null));
    }

    /** The beta formula's percent; Q of either sign, n from 3. */
    static BigDecimal formula(BigDecimal q, int n) {
        double x = 0.5 - q.doubleValue() * Math.sqrt(n) / (2.0 * (n - 1));
        return BigDecimal.valueOf(100 * (1 - Beta.below(x, n / 2.0 - 1)));
    }

    /** The Q at which the beta formula gives a percent from 50 to below 100. */
    static double inverse(double percent, int n) {
        double low = 0;
        double high = (n - 1) / Math.sqrt(n);
        for (int i = 0; i < 200 && low < high; i++) {
            double middle = (low + high) / 2;
            if (formula(BigDecimal.valueOf(middle), n).doubleValue() < percent) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
