package screedbook.picture;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import screedbook.check.InShort;

/** A season's days, a month a line, a sign a day, with the days that have no record. */
public final class CalendarPicture {
    /** What the signs mean. */
    public static final String KEY = "d day, n night, e extra, 2 several shifts, o no work; . no record";

    private static final String RULER = "1   5    10   15   20   25   30";

    private CalendarPicture() {}

    /** The lines; 8 columns of month and 31 of days. Before the first shift and behind the last it is empty. */
    public static List<String> lines(List<InShort> shifts) {
        if (shifts.isEmpty()) {
            return List.of();
        }
        Map<LocalDate, String> signs = new HashMap<>();
        shifts.forEach(s -> signs.merge(s.shift().date(), sign(s), (one, other) -> "2"));
        LocalDate first = shifts.get(0).shift().date();
        LocalDate last = shifts.get(shifts.size() - 1).shift().date();
        List<String> lines = new ArrayList<>(List.of(" ".repeat(9) + RULER));
        for (YearMonth month = YearMonth.from(first);
                !month.isAfter(YearMonth.from(last));
                month = month.plusMonths(1)) {
            lines.add(month + "  " + days(month, first, last, signs));
        }
        return List.copyOf(lines);
    }

    private static String days(YearMonth month, LocalDate first, LocalDate last, Map<LocalDate, String> signs) {
        StringBuilder line = new StringBuilder();
        for (int day = 1; day <= month.lengthOfMonth(); day++) {
            LocalDate date = month.atDay(day);
            boolean inside = !date.isBefore(first) && !date.isAfter(last);
            line.append(inside ? signs.getOrDefault(date, ".") : " ");
        }
        return line.toString().stripTrailing();
    }

    private static String sign(InShort shift) {
        return shift.state().equals("no work") ? "o" : shift.shift().word().substring(0, 1);
    }

    /** Stretches of days without a record between the first shift and the last: {@code 2026-05-15 to 2026-05-17}. */
    public static List<String> gaps(List<InShort> shifts) {
        List<String> gaps = new ArrayList<>();
        for (int i = 1; i < shifts.size(); i++) {
            LocalDate from = shifts.get(i - 1).shift().date().plusDays(1);
            LocalDate to = shifts.get(i).shift().date().minusDays(1);
            if (from.isBefore(to)) {
                gaps.add(from + " to " + to);
            } else if (from.equals(to)) {
                gaps.add(from.toString());
            }
        }
        return List.copyOf(gaps);
    }
}
