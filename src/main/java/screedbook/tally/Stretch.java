package screedbook.tally;

import java.math.BigDecimal;
import java.util.List;
import screedbook.entry.Ref;

/**
 * A piece of road and the entries that made it.
 *
 * @param low distance of the lower end along the road, station equations counted, in feet or metres
 * @param high distance of the upper end; never below {@code low}
 */
public record Stretch(BigDecimal low, BigDecimal high, List<Ref> by) {
    public Stretch {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("a stretch runs from its lower end: " + low + " to " + high);
        }
        by = List.copyOf(by);
    }

    /** Between two distances, whichever is lower. */
    public static Stretch between(BigDecimal a, BigDecimal b, List<Ref> by) {
        return new Stretch(a.min(b), a.max(b), by);
    }

    public BigDecimal length() {
        return high.subtract(low);
    }

    /** What of it lies between two distances; of no length where nothing does. */
    Stretch within(BigDecimal from, BigDecimal to) {
        BigDecimal a = low.max(from).min(high);
        return new Stretch(a, high.min(to).max(a), by);
    }

    boolean empty() {
        return low.compareTo(high) == 0;
    }
}
