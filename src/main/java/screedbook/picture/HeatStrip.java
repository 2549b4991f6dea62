package screedbook.picture;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Temperatures along the shift: a dot for each reading, {@code #} for one outside, and a line where a limit lies. Dots
 * inside stand above the line of the least and below that of the most, whatever the scale.
 *
 * @param name what stands over it
 * @param low the least that is inside; empty where no limit is set, or where readings have different ones
 * @param high the most that is inside, likewise
 */
public record HeatStrip(String name, List<Dot> dots, Optional<BigDecimal> low, Optional<BigDecimal> high) {
    /**
     * One strip: exactly so many lines of exactly so many columns, the last line the clock; blank when there are no dots.
     *
     * @param limit the least that is inside; empty where no limit is set, or where the loads have different ones
     */
    public static List<String> of(List<Dot> dots, Optional<BigDecimal> limit, int width, int height) {
        return of(List.of(new HeatStrip("", dots, limit, Optional.empty())), width, height);
    }

    /**
     * Strips under each other over one clock, each under its name where it has one, exactly so many lines of exactly so
     * many columns; those without dots are left out, and all is blank when there are no dots at all.
     */
    public static List<String> of(List<HeatStrip> strips, int width, int height) {
        List<HeatStrip> seen = strips.stream().filter(s -> !s.dots().isEmpty()).toList();
        if (seen.isEmpty() || height < 1) {
            return blank(width, height);
        }
        List<OffsetDateTime> times = seen.stream()
                .flatMap(s -> s.dots().stream())
                .map(Dot::time)
                .sorted(OffsetDateTime.timeLineOrder())
                .toList();
        OffsetDateTime first = times.get(0);
        OffsetDateTime last = times.get(times.size() - 1);
        List<String> lines = new ArrayList<>();
        int left = height - 1;
        for (int i = 0; i < seen.size(); i++) {
            int share = left / (seen.size() - i);
            left -= share;
            lines.addAll(seen.get(i).drawn(width, share, first, last));
        }
        Plot clock = new Plot(width, 1, first, last);
        clock.clock();
        lines.addAll(clock.lines());
        return lines;
    }

    private static List<String> blank(int width, int height) {
        return Collections.nCopies(Math.max(0, height), " ".repeat(Math.max(0, width)));
    }

    private List<String> drawn(int width, int height, OffsetDateTime first, OffsetDateTime last) {
        List<String> lines = new ArrayList<>();
        int named = name.isEmpty() || height < 2 ? 0 : 1;
        if (named > 0) {
            String cut = name.length() > width ? name.substring(0, Math.max(0, width)) : name;
            lines.add(cut + " ".repeat(Math.max(0, width) - cut.length()));
        }
        Plot plot = new Plot(width, height - named + 1, first, last);
        HeatScale scale = HeatScale.of(dots, low, high, plot.rows());
        scale.frame(plot);
        for (Dot dot : dots) {
            int row = scale.row(dot.value());
            int column = plot.column(dot.time());
            plot.put(row, column, dot.outside() || plot.at(row, column) == '#' ? '#' : dot.sign());
        }
        lines.addAll(plot.lines().subList(0, plot.rows()));
        return lines;
    }
}
