package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.entry.Shown;
import screedbook.picture.CalendarPicture;
import screedbook.picture.SeasonStrips;

/** The season: a calendar with its gaps, strips of what went up and down, one line a shift. */
final class SeasonView {
    private static final int MONTHS = 4;
    private static final int MONTH = 9;

    private SeasonView() {}

    static void draw(Screen.Season season, Frame frame) {
        if (season.shifts() == null) {
            frame.pen().put(1, frame.top(), "reading every shift", Style.PLAIN);
            return;
        }
        if (season.shifts().isEmpty()) {
            frame.pen().put(1, frame.top(), "no shift yet", Style.PLAIN);
            return;
        }
        int y = frame.top();
        for (String line : calendar(season)) {
            y = line(frame, y, line, Style.PLAIN);
        }
        y = line(frame, y, CalendarPicture.KEY, Style.FAINT);
        for (String strip : SeasonStrips.lines(season.shifts(), frame.width() - 2)) {
            y = line(frame, y, strip, Style.PLAIN);
        }
        shifts(season, frame, y);
    }

    private static int line(Frame frame, int y, String line, Style style) {
        if (y < frame.bottom() - 2) {
            frame.pen().put(1, y, Frame.cut(line, frame.width() - 2), style);
        }
        return y + 1;
    }

    /** The ruler and the months around the shift walked to. */
    private static List<String> calendar(Screen.Season season) {
        List<String> all = CalendarPicture.lines(season.shifts());
        String month =
                shift(season, season.walk().at()).shift().date().toString().substring(0, 7);
        int at = 1;
        for (int i = 1; i < all.size(); i++) {
            at = all.get(i).startsWith(month) ? i : at;
        }
        int from = Math.max(1, Math.min(at - MONTHS / 2, all.size() - MONTHS));
        List<String> lines = new ArrayList<>(List.of(all.get(0)));
        for (String line : all.subList(from, Math.min(all.size(), from + MONTHS))) {
            lines.add(
                    (line.startsWith(month)
                            ? line + " ".repeat(Math.max(0, MONTH + 31 - line.length())) + "  <"
                            : line));
        }
        return lines;
    }

    private static void shifts(Screen.Season season, Frame frame, int from) {
        int y = Math.min(from, frame.bottom() - 2);
        String head = "  shift                    loads   placed spread  paver  out missing look adds";
        frame.pen().put(1, y++, Frame.cut(head, frame.width() - 2), Style.STRONG);
        int rows = Math.max(1, frame.bottom() - y);
        int size = season.shifts().size();
        int top = season.walk().top(rows, size);
        for (int i = top; i < size && i < top + rows; i++) {
            boolean on = i == season.walk().at();
            String text = (on ? "> " : "  ") + told(shift(season, i));
            frame.pen().put(1, y++, Frame.cut(Shown.text(text), frame.width() - 2), on ? Style.CHOSEN : Style.PLAIN);
        }
    }

    /** The newest first. */
    static InShort shift(Screen.Season season, int at) {
        List<InShort> shifts = season.shifts();
        return shifts.get(shifts.size() - 1 - Math.max(0, Math.min(at, shifts.size() - 1)));
    }

    private static String told(InShort s) {
        String name = Frame.named(s.shift()) + (s.state().equals("open") ? " open" : "");
        String laid = s.state().equals("no work")
                ? right(s.state(), 16)
                : right(s.loads(), 7) + right(s.placed().shown(2).value().toPlainString(), 9);
        return left(name, 23)
                + laid
                + right(s.spread().map(v -> v.toPlainString()).orElse(""), 7)
                + right(s.paver().map(v -> v.toPlainString()).orElse(""), 7)
                + right(s.count(Sort.OUTSIDE), 5)
                + right(s.count(Sort.MISSING), 8)
                + right(s.count(Sort.LOOK_AGAIN), 5)
                + right(s.count(Sort.DOES_NOT_ADD_UP), 5);
    }

    private static String left(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String right(Object value, int width) {
        String text = value.toString();
        return " ".repeat(Math.max(1, width - text.length())) + text;
    }
}
