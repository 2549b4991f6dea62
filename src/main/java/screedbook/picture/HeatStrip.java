package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Temperatures along the shift: a dot for each load, {@code #} for one outside, and a line where the limit lies. Dots
 * inside stand above the line, whatever the scale.
 */
public final class HeatStrip {
    private HeatStrip() {}

    /**
     * Exactly so many lines of exactly so many columns, the last line the clock; blank when there are no dots.
     *
     * @param limit the least that is inside; empty where no limit is set, or where the loads have different ones
     */
    public static List<String> of(List<Dot> dots, Optional<BigDecimal> limit, int width, int height) {
        if (dots.isEmpty() || height < 1) {
            return Collections.nCopies(Math.max(0, height), " ".repeat(Math.max(0, width)));
        }
        OffsetDateTime first =
                dots.stream().map(Dot::time).min(OffsetDateTime.timeLineOrder()).orElseThrow();
        OffsetDateTime last =
                dots.stream().map(Dot::time).max(OffsetDateTime.timeLineOrder()).orElseThrow();
        Plot plot = new Plot(width, height, first, last);
        Scale scale = Scale.of(dots, limit, plot.rows());
        scale.frame(plot);
        for (Dot dot : dots) {
            int row = scale.row(dot.value());
            int column = plot.column(dot.time());
            plot.put(row, column, dot.outside() || plot.at(row, column) == '#' ? '#' : '.');
        }
        plot.clock();
        return plot.lines();
    }

    /**
     * Where a temperature stands.
     *
     * @param above lines over the limit's line; all lines when there is no limit
     * @param below lines under it; when there are none, what is below the limit stands on its line
     */
    private record Scale(BigDecimal limit, BigDecimal least, BigDecimal most, int above, int below) {
        static Scale of(List<Dot> dots, Optional<BigDecimal> limit, int rows) {
            BigDecimal least =
                    dots.stream().map(Dot::value).min(Comparator.naturalOrder()).orElseThrow();
            BigDecimal most =
                    dots.stream().map(Dot::value).max(Comparator.naturalOrder()).orElseThrow();
            if (limit.isEmpty()) {
                return new Scale(null, least, most, rows, 0);
            }
            boolean under = least.compareTo(limit.get()) < 0;
            int below = under && rows > 2 ? Math.max(1, rows / 4) : 0;
            return new Scale(limit.get(), least, most.max(limit.get()), Math.max(0, rows - 1 - below), below);
        }

        int row(BigDecimal value) {
            if (limit == null) {
                return share(value, least, most, above);
            }
            if (value.compareTo(limit) >= 0) {
                return share(value, limit, most, above);
            }
            return below == 0 ? above : above + 1 + share(value, least, limit, below);
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
            if (above > 0) {
                plot.label(0, whole(most));
            }
            if (limit == null) {
                if (above > 1) {
                    plot.label(above - 1, whole(least));
                }
                return;
            }
            plot.line(above);
            plot.label(above, whole(limit));
            if (below > 0) {
                plot.label(above + below, whole(least));
            }
        }

        private static String whole(BigDecimal value) {
            return value.setScale(0, RoundingMode.HALF_UP).toPlainString();
        }
    }
}
