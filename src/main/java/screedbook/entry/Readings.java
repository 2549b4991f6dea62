package screedbook.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Readings of one sort taken together.
 *
 * @param sum of all readings; its mean is {@link #mean()}
 * @param least null without a reading
 * @param most null without a reading
 */
public record Readings(int count, BigDecimal sum, BigDecimal least, BigDecimal most) {
    public static final Readings NONE = new Readings(0, BigDecimal.ZERO, null, null);

    public static Readings of(BigDecimal reading) {
        return new Readings(1, reading, reading, reading);
    }

    /** These and others of the same sort and unit. */
    public Readings plus(Readings other) {
        if (other.count == 0 || count == 0) {
            return count == 0 ? other : this;
        }
        return new Readings(count + other.count, sum.add(other.sum), least.min(other.least), most.max(other.most));
    }

    /** To two decimals, half up; null without a reading. */
    public BigDecimal mean() {
        return count == 0 ? null : sum.divide(BigDecimal.valueOf(count), 2, RoundingMode.HALF_UP);
    }
}
