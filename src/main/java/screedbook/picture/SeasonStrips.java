package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.unit.Unit;

/**
 * What went up and down over a season: a strip for each of tons, spread rate, temperature at the paver and findings, a
 * digit for each shift, 0 the least of the strip and 9 the greatest.
 */
public final class SeasonStrips {
    private static final int NAME = 13;
    private static final int RANGE = 22;

    private SeasonStrips() {}

    /**
     * Which shifts the strips show: as many as there is room for, around one of them.
     *
     * @param first the place of the first one that is shown among all
     * @param column the column of the one around which they are shown
     */
    public record Window(int first, int size, int column) {
        /** @param width columns of the strips in all */
        public static Window around(int at, int shifts, int width) {
            int size = Math.min(shifts, room(width));
            int first = Math.max(0, Math.min(shifts - size, at - size / 2));
            return new Window(first, size, NAME + at - first);
        }
    }

    private static int room(int width) {
        return Math.max(1, width - NAME - RANGE);
    }

    /** The strips of the newest shifts. */
    public static List<String> lines(List<InShort> shifts, int width) {
        return lines(shifts, Window.around(shifts.size() - 1, shifts.size(), width), width);
    }

    /**
     * The strips, newer shifts to the right; what has no reading is blank.
     *
     * @param width columns in all
     */
    public static List<String> lines(List<InShort> shifts, Window window, int width) {
        int room = room(width);
        List<InShort> shown = shifts.subList(window.first(), window.first() + window.size());
        List<String> lines = new ArrayList<>();
        Optional<Unit> counted = shown.stream()
                .filter(SeasonStrips::worked)
                .map(s -> s.placed().unit())
                .findFirst();
        String unit = counted.map(u -> " " + u.symbol()).orElse("");
        String degrees = counted.map(u -> u == Unit.TONNE ? " °C" : " °F").orElse("");
        lines.add(strip("placed", shown, room, unit, s -> worked(s, s.placed().value())));
        lines.add(strip("spread", shown, room, " %", InShort::spread));
        lines.add(strip("at the paver", shown, room, degrees, InShort::paver));
        lines.add(strip("outside", shown, room, "", s -> worked(s, BigDecimal.valueOf(s.count(Sort.OUTSIDE)))));
        return List.copyOf(lines);
    }

    private static Optional<BigDecimal> worked(InShort shift, BigDecimal value) {
        return worked(shift) ? Optional.of(value) : Optional.empty();
    }

    private static boolean worked(InShort shift) {
        return !shift.state().equals("no work") && !shift.state().equals(InShort.NOT_READ);
    }

    private static String strip(
            String name, List<InShort> shifts, int room, String unit, Function<InShort, Optional<BigDecimal>> of) {
        List<BigDecimal> values =
                shifts.stream().flatMap(s -> of.apply(s).stream()).toList();
        StringBuilder line = new StringBuilder(name);
        line.append(" ".repeat(Math.max(0, NAME - name.length())));
        if (values.isEmpty()) {
            boolean all = shifts.stream().noneMatch(s -> s.state().equals(InShort.NOT_READ));
            return line.append(all ? "nothing noted" : "").toString().stripTrailing();
        }
        BigDecimal least = values.stream().reduce(BigDecimal::min).orElseThrow();
        BigDecimal most = values.stream().reduce(BigDecimal::max).orElseThrow();
        for (InShort each : shifts) {
            line.append(of.apply(each).map(value -> digit(value, least, most)).orElse(" "));
        }
        line.append(" ".repeat(Math.max(0, room - shifts.size())));
        int scale = Math.max(scale(least), scale(most));
        return line.append("  ")
                .append(plain(least, scale))
                .append(" to ")
                .append(plain(most, scale))
                .append(unit)
                .toString();
    }

    private static String digit(BigDecimal value, BigDecimal least, BigDecimal most) {
        BigDecimal span = most.subtract(least);
        return span.signum() == 0
                ? "9"
                : value.subtract(least)
                        .multiply(BigDecimal.valueOf(9))
                        .divide(span, 0, RoundingMode.HALF_UP)
                        .toString();
    }

    private static int scale(BigDecimal value) {
        return Math.min(1, Math.max(0, value.stripTrailingZeros().scale()));
    }

    private static String plain(BigDecimal value, int scale) {
        return value.setScale(scale, RoundingMode.HALF_UP).toPlainString();
    }
}
