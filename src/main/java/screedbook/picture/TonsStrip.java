package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;

/** Tons placed against the clock: a dot where a load came, a dash where none did and the sum stood still. */
public final class TonsStrip {
    private TonsStrip() {}

    /**
     * Exactly so many lines of exactly so many columns, the last line the clock; blank when there are no dots.
     *
     * @param dots sums so far, in the order of their times
     */
    public static List<String> of(List<Dot> dots, int width, int height) {
        if (dots.isEmpty() || height < 1) {
            return Collections.nCopies(Math.max(0, height), " ".repeat(Math.max(0, width)));
        }
        Plot plot = new Plot(
                width, height, dots.get(0).time(), dots.get(dots.size() - 1).time());
        BigDecimal most = dots.get(dots.size() - 1).value();
        int column = Plot.MARGIN;
        int row = Math.max(0, plot.rows() - 1);
        for (Dot dot : dots) {
            int at = plot.column(dot.time());
            for (; column < at; column++) {
                still(plot, row, column);
            }
            row = row(dot.value(), most, plot.rows());
            plot.put(row, at, '.');
        }
        plot.label(0, most.setScale(0, RoundingMode.HALF_UP).toPlainString());
        plot.clock();
        return plot.lines();
    }

    private static void still(Plot plot, int row, int column) {
        for (int r = 0; r < plot.rows(); r++) {
            if (plot.at(r, column) == '.') {
                return;
            }
        }
        plot.put(row, column, '-');
    }

    private static int row(BigDecimal value, BigDecimal most, int rows) {
        if (rows < 1 || most.signum() <= 0) {
            return 0;
        }
        BigDecimal from = most.subtract(value).multiply(BigDecimal.valueOf(rows));
        int row = from.divide(most, 0, RoundingMode.FLOOR).intValue();
        return Math.min(rows - 1, Math.max(0, row));
    }
}
