package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a temperature stands among the lines of a strip.
 *
 * @param low the least that is inside, or null
 * @param high the most that is inside, or null
 * @param over lines above the line of the most
 * @param inside lines between both, or all lines where there is no limit
 * @param under lines below the line of the least; when there are none, what is below it stands on its line
 */
record HeatScale(BigDecimal low, BigDecimal high, BigDecimal least, BigDecimal most, int over, int inside, int under) {
    /** The upper line is left out where both would leave no room between them. */
    private static final int BOTH = 4;

    static HeatScale of(List<Dot> dots, Optional<BigDecimal> low, Optional<BigDecimal> high, int rows) {
        BigDecimal least =
                dots.stream().map(Dot::value).min(Comparator.naturalOrder()).orElseThrow();
        BigDecimal most =
                dots.stream().map(Dot::value).max(Comparator.naturalOrder()).orElseThrow();
        BigDecimal bottom = low.orElse(null);
        BigDecimal top = rows < BOTH && bottom != null ? null : high.orElse(null);
        int lines = (bottom == null ? 0 : 1) + (top == null ? 0 : 1);
        int room = Math.max(0, rows - lines);
        boolean above = top != null && most.compareTo(top) > 0 && room > 1;
        boolean below = bottom != null && least.compareTo(bottom) < 0 && room > 1;
        int over = above ? Math.max(1, rows / 4) : 0;
        int under = below && room - over > 1 ? Math.max(1, rows / 4) : 0;
        BigDecimal greatest = bottom == null ? most : most.max(bottom);
        BigDecimal smallest = top == null ? least : least.min(top);
        return new HeatScale(bottom, top, smallest, greatest, over, Math.max(0, room - over - under), under);
    }

    /** The first line between the limits. */
    private int from() {
        return high == null ? 0 : over + 1;
    }

    int row(BigDecimal value) {
        if (high != null && value.compareTo(high) > 0) {
            return over == 0 ? 0 : share(value, high, most, over);
        }
        if (low != null && value.compareTo(low) < 0) {
            int line = from() + inside;
            return under == 0 ? line : line + 1 + share(value, least, low, under);
        }
        BigDecimal bottom = low == null ? least : low;
        BigDecimal top = high == null ? most : high;
        return from() + share(value, bottom, top, inside);
    }

    /** The line of a value between two others, counted from the top: 0 is the highest. */
    private static int share(BigDecimal value, BigDecimal low, BigDecimal high, int rows) {
        if (rows <= 1 || high.compareTo(low) <= 0) {
            return Math.max(0, rows - 1);
        }
        BigDecimal from = high.subtract(value).multiply(BigDecimal.valueOf(rows));
        int row = from.divide(high.subtract(low), 0, RoundingMode.FLOOR).intValue();
        return Math.min(rows - 1, Math.max(0, row));
    }

    void frame(Plot plot) {
        if (high == null && inside > 0 || over > 0) {
            plot.label(0, whole(most));
        }
        if (high != null) {
            plot.line(over);
            plot.label(over, whole(high));
        }
        if (low == null) {
            if (inside > 1) {
                plot.label(from() + inside - 1, whole(least));
            }
            return;
        }
        plot.line(from() + inside);
        plot.label(from() + inside, whole(low));
        if (under > 0) {
            plot.label(from() + inside + under, whole(least));
        }
    }

    private static String whole(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}
