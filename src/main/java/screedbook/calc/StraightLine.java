package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * Sums from which the straight line comes that lies nearest to points, measured upwards; sums of two sets of points add
 * up to those of all.
 *
 * <p>Source: least squares for {@code y = a + b x}; {@code b = (n Sxy - Sx Sy) / (n Sxx - Sx Sx)}, {@code a = (Sy - b Sx)
 * / n}, spread {@code sqrt(SSE / (n - 2))} (common practice, no source; held against a certified data set of NIST). All
 * sums are exact; quotients have 34 digits.
 *
 * @param n number of points
 * @param x sum of the first figures
 * @param y sum of the second ones
 */
public record StraightLine(int n, BigDecimal x, BigDecimal y, BigDecimal xx, BigDecimal xy, BigDecimal yy) {
    private static final MathContext DIGITS = MathContext.DECIMAL128;

    /** Of no points. */
    public static final StraightLine NONE =
            new StraightLine(0, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    /** With one point more. */
    public StraightLine and(BigDecimal px, BigDecimal py) {
        return new StraightLine(
                n + 1, x.add(px), y.add(py), xx.add(px.multiply(px)), xy.add(px.multiply(py)), yy.add(py.multiply(py)));
    }

    /** With all points of another. */
    public StraightLine plus(StraightLine other) {
        return new StraightLine(
                n + other.n, x.add(other.x), y.add(other.y), xx.add(other.xx), xy.add(other.xy), yy.add(other.yy));
    }

    /** Rise of y for one x more; empty with fewer than two different x. */
    public Optional<BigDecimal> slope() {
        BigDecimal wide = wide();
        return wide.signum() <= 0
                ? Optional.empty()
                : Optional.of(count().multiply(xy).subtract(x.multiply(y)).divide(wide, DIGITS));
    }

    /** Where the line is at an x; empty where there is no line. */
    public Optional<BigDecimal> at(BigDecimal px) {
        return slope().map(b -> meanY().add(b.multiply(px.subtract(meanX()))));
    }

    /** Where the line meets a y; empty where there is no line, or it lies level. */
    public Optional<BigDecimal> reaches(BigDecimal py) {
        return slope().filter(b -> b.signum() != 0)
                .map(b -> meanX().add(py.subtract(meanY()).divide(b, DIGITS)));
    }

    /** How far points lie off the line as a rule (their standard deviation about it); empty with fewer than three. */
    public Optional<BigDecimal> spread() {
        if (n < 3) {
            return Optional.empty();
        }
        BigDecimal both = count().multiply(xy).subtract(x.multiply(y));
        return slope().map(b -> {
            BigDecimal all = count().multiply(yy).subtract(y.multiply(y));
            BigDecimal rest = all.subtract(b.multiply(both)).divide(count(), DIGITS);
            BigDecimal spread = rest.max(BigDecimal.ZERO).divide(BigDecimal.valueOf(n - 2L), DIGITS);
            return spread.sqrt(DIGITS);
        });
    }

    /** Share of the points' variance that the line tells, 0 to 1; empty where there is no line or all y are equal. */
    public Optional<BigDecimal> told() {
        BigDecimal both = count().multiply(xy).subtract(x.multiply(y));
        BigDecimal high = count().multiply(yy).subtract(y.multiply(y));
        return wide().signum() <= 0 || high.signum() <= 0
                ? Optional.empty()
                : Optional.of(both.multiply(both).divide(wide().multiply(high), DIGITS));
    }

    /** Mean of the first figures; there must be one. */
    public BigDecimal meanX() {
        return x.divide(count(), DIGITS);
    }

    /** Mean of the second figures; there must be one. */
    public BigDecimal meanY() {
        return y.divide(count(), DIGITS);
    }

    private BigDecimal wide() {
        return count().multiply(xx).subtract(x.multiply(x));
    }

    private BigDecimal count() {
        return BigDecimal.valueOf(n);
    }
}
