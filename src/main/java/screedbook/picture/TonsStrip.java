package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Tons placed against the clock: a dot where a load came, a dash where none did and the sum stood still; where work is
 * foretold, {@code :} from the last load to where it is done, {@code =} for the planned tons, {@code !} for the time by
 * which the last load has to be down.
 */
public final class TonsStrip {
    private TonsStrip() {}

    /**
     * What is foretold.
     *
     * @param tons placed so far and still to be placed
     * @param done when they are placed at the pace so far, after the last load
     * @param down by when the last load has to be discharged; empty where nothing ends the work
     */
    public record Target(BigDecimal tons, OffsetDateTime done, Optional<OffsetDateTime> down) {}

    /**
     * Exactly so many lines of exactly so many columns, the last line the clock; blank when there are no dots.
     *
     * @param dots sums so far, in the order of their times
     */
    public static List<String> of(List<Dot> dots, int width, int height) {
        return of(dots, Optional.empty(), width, height);
    }

    /** The same with what is foretold. */
    public static List<String> of(List<Dot> dots, Optional<Target> target, int width, int height) {
        if (dots.isEmpty() || height < 1) {
            return Collections.nCopies(Math.max(0, height), " ".repeat(Math.max(0, width)));
        }
        Dot last = dots.get(dots.size() - 1);
        OffsetDateTime first = dots.get(0).time();
        Optional<OffsetDateTime> down = target.flatMap(t -> down(t, first));
        OffsetDateTime ends =
                target.map(t -> later(t.done(), down.orElse(t.done()))).orElse(last.time());
        Plot plot = new Plot(width, height, first, later(ends, last.time()));
        BigDecimal most = target.map(t -> t.tons().max(last.value())).orElse(last.value());
        target.ifPresent(t -> planned(plot, t, most));
        placed(plot, dots, most);
        target.ifPresent(t -> foretold(plot, last, t, most));
        down.ifPresent(d -> upright(plot, plot.column(d)));
        plot.label(0, most.setScale(0, RoundingMode.HALF_UP).toPlainString());
        plot.clock();
        return plot.lines();
    }

    private static OffsetDateTime later(OffsetDateTime one, OffsetDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    /** What lies so far ahead that nothing else could be told apart is left out. */
    private static Optional<OffsetDateTime> down(Target target, OffsetDateTime first) {
        Duration half = Duration.between(first, target.done()).dividedBy(2);
        return target.down()
                .filter(d -> d.isAfter(first) && !d.isAfter(target.done().plus(half)));
    }

    private static void planned(Plot plot, Target target, BigDecimal most) {
        int row = row(target.tons(), most, plot.rows());
        for (int column = Plot.MARGIN; column < plot.width() && plot.rows() > 0; column++) {
            plot.put(row, column, '=');
        }
    }

    private static void placed(Plot plot, List<Dot> dots, BigDecimal most) {
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
    }

    private static void foretold(Plot plot, Dot last, Target target, BigDecimal most) {
        int from = plot.column(last.time());
        int to = plot.column(target.done());
        BigDecimal more = target.tons().subtract(last.value());
        for (int column = from + 1; column <= to; column++) {
            BigDecimal part = more.multiply(BigDecimal.valueOf(column - from))
                    .divide(BigDecimal.valueOf(to - from), 2, RoundingMode.HALF_UP);
            plot.put(row(last.value().add(part), most, plot.rows()), column, ':');
        }
    }

    private static void upright(Plot plot, int column) {
        for (int row = 0; row < plot.rows(); row++) {
            if (" =".indexOf(plot.at(row, column)) >= 0) {
                plot.put(row, column, '!');
            }
        }
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
