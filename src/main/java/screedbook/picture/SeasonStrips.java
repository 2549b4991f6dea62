package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import screedbook.check.InShort;
import screedbook.check.Sort;

/**
 * What went up and down over a season: a strip for each of tons, spread rate, temperature at the paver and findings, a
 * digit for each shift, 0 the least of the strip and 9 the greatest.
 */
public final class SeasonStrips {
    private static final int NAME = 13;
    private static final int RANGE = 22;

    private SeasonStrips() {}

    /**
     * The strips, newest shift at the right end; what has no reading is blank.
     *
     * @param width columns in all; of more shifts than there is room for the newest are shown
     */
    public static List<String> lines(List<InShort> shifts, int width) {
        int room = Math.max(1, width - NAME - RANGE);
        List<InShort> shown = shifts.subList(Math.max(0, shifts.size() - room), shifts.size());
        List<String> lines = new ArrayList<>();
        String unit = shown.isEmpty() ? "" : " " + shown.get(0).placed().unit().symbol();
        lines.add(strip("placed", shown, room, unit, s -> worked(s, s.placed().value())));
        lines.add(strip("spread", shown, room, " %", InShort::spread));
        lines.add(strip("at the paver", shown, room, "", InShort::paver));
        lines.add(strip("outside", shown, room, "", s -> worked(s, BigDecimal.valueOf(s.count(Sort.OUTSIDE)))));
        return List.copyOf(lines);
    }

    private static Optional<BigDecimal> worked(InShort shift, BigDecimal value) {
        return shift.state().equals("no work") ? Optional.empty() : Optional.of(value);
    }

    private static String strip(
            String name, List<InShort> shifts, int room, String unit, Function<InShort, Optional<BigDecimal>> of) {
        List<BigDecimal> values =
                shifts.stream().flatMap(s -> of.apply(s).stream()).toList();
        StringBuilder line = new StringBuilder(name);
        line.append(" ".repeat(Math.max(0, NAME - name.length())));
        if (values.isEmpty()) {
            return line.append("nothing noted").toString();
        }
        BigDecimal least = values.stream().reduce(BigDecimal::min).orElseThrow();
        BigDecimal most = values.stream().reduce(BigDecimal::max).orElseThrow();
        for (InShort each : shifts) {
            line.append(of.apply(each).map(value -> digit(value, least, most)).orElse(" "));
        }
        line.append(" ".repeat(Math.max(0, room - shifts.size())));
        return line.append("  ")
                .append(plain(least))
                .append(" to ")
                .append(plain(most))
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

    private static String plain(BigDecimal value) {
        return value.setScale(Math.min(1, Math.max(0, value.stripTrailingZeros().scale())), RoundingMode.HALF_UP)
                .toPlainString();
    }
}
