package screedbook.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.entry.Shown;
import screedbook.picture.CalendarPicture;
import screedbook.picture.SeasonStrips;
import screedbook.unit.Amount;

/** The season: a calendar with its gaps, strips of what went up and down, one line a shift. */
final class SeasonView {
    /** The fewest months and shifts in sight; half of the rows that are left over goes to either. */
    private static final int MONTHS = 4;

    private static final int SHIFTS = 9;
    private static final int MONTH = 9;
    private static final int STRIPS = 4;
    private static final int BESIDE = 45;
    private static final int NAME = 23;
    private static final int LOADS = 7;

    private final Screen.Season season;
    private final Frame frame;
    private final int width;
    private final InShort at;
    private final SeasonStrips.Window window;
    private int y;

    private SeasonView(Screen.Season season, Frame frame) {
        this.season = season;
        this.frame = frame;
        this.width = frame.width() - 2;
        this.at = shift(season, season.walk().at());
        this.y = frame.top();
        List<InShort> all = season.shifts();
        this.window = SeasonStrips.Window.around(
                all.size() - 1 - Math.max(0, season.walk().at()), all.size(), width);
    }

    static void draw(Screen.Season season, Frame frame) {
        if (season.shifts().isEmpty()) {
            frame.pen().put(1, frame.top(), "no shift yet", Style.PLAIN);
            return;
        }
        SeasonView view = new SeasonView(season, frame);
        view.calendar();
        view.line(CalendarPicture.KEY, Style.FAINT);
        for (String strip : SeasonStrips.lines(season.shifts(), view.window, view.width)) {
            view.line(strip, Style.PLAIN);
            view.chosen(strip, view.window.column());
        }
        view.shifts();
    }

    private void line(String line, Style style) {
        if (y < frame.bottom() - 2) {
            frame.pen().put(1, y, Frame.cut(line, width), style);
        }
        y++;
    }

    /** The sign of the shift walked to, in the line just drawn; its words stand in the list. */
    private void chosen(String line, int column) {
        if (y - 1 < frame.bottom() - 2 && column < width) {
            String sign = column < line.length() ? line.substring(column, column + 1) : " ";
            frame.pen().put(1 + column, y - 1, sign, Style.FIELD_ACTIVE);
        }
    }

    /** The ruler and the months around the shift walked to; beside them what the season comes to. */
    private void calendar() {
        List<String> all = season.calendar();
        LocalDate date = at.shift().date();
        int months = Math.min(all.size() - 1, MONTHS + Math.max(0, spare() / 2));
        int here = 1;
        for (int i = 1; i < all.size(); i++) {
            here = all.get(i).startsWith(month(date)) ? i : here;
        }
        int from = Math.max(1, Math.min(here - months / 2, all.size() - months));
        List<String> beside = beside();
        for (int row = 0; row <= months; row++) {
            String line = row == 0 ? all.get(0) : all.get(from + row - 1);
            boolean on = line.startsWith(month(date));
            String note = row < beside.size() ? beside.get(row) : "";
            line(left(left(line, MONTH + 32) + (on ? "<" : ""), BESIDE) + note, Style.PLAIN);
            if (on) {
                chosen(line, MONTH + date.getDayOfMonth() - 1);
            }
        }
    }

    /** Rows beyond those that are always there: the calendar with its ruler and key, strips, the head of the list. */
    private int spare() {
        return frame.rows() - (MONTHS + 2 + STRIPS + 1 + SHIFTS);
    }

    private static String month(LocalDate date) {
        return date.toString().substring(0, 7);
    }

    private List<String> beside() {
        List<String> notes = new ArrayList<>(season.sums());
        notes.add("below: 0 the least, 9 the most of");
        notes.add(window.size() + " shifts, newer to the right");
        return notes;
    }

    /** What the shifts come to as far as they are read. */
    static List<String> sums(List<InShort> all) {
        List<String> notes = new ArrayList<>();
        long unread = count(all, s -> s.state().equals(InShort.NOT_READ));
        long damaged = count(all, s -> s.damages() > 0);
        notes.add(
                all.size() + (all.size() == 1 ? " shift" : " shifts") + (unread > 0 ? ", " + unread + " to read" : ""));
        all.stream()
                .filter(s -> !s.state().equals(InShort.NOT_READ))
                .map(InShort::placed)
                .reduce(Amount::plus)
                .ifPresent(placed ->
                        notes.add(all.stream().mapToInt(InShort::loads).sum() + " loads  " + shown(placed)));
        if (damaged > 0) {
            notes.add(damaged + " not as written, see verify");
        }
        return notes;
    }

    private static String shown(Amount placed) {
        return placed.shown(2).text() + " placed";
    }

    private static long count(List<InShort> all, Predicate<InShort> which) {
        return all.stream().filter(which).count();
    }

    private void shifts() {
        y = Math.min(y, frame.bottom() - 2);
        String head = "  shift                    loads   placed spread  paver  out missing look adds";
        frame.pen().put(1, y++, Frame.cut(head, width), Style.STRONG);
        int rows = Math.max(1, frame.bottom() - y);
        int size = season.shifts().size();
        int top = season.walk().top(rows, size);
        for (int i = top; i < size && i < top + rows; i++) {
            boolean on = i == season.walk().at();
            String text = (on ? "> " : "  ") + told(shift(season, i));
            frame.pen().put(1, y++, Frame.cut(Shown.text(text), width), on ? Style.CHOSEN : Style.PLAIN);
        }
    }

    /** The newest first. */
    static InShort shift(Screen.Season season, int at) {
        List<InShort> shifts = season.shifts();
        return shifts.get(shifts.size() - 1 - Math.max(0, Math.min(at, shifts.size() - 1)));
    }

    private static String told(InShort s) {
        String name = Frame.named(s.shift()) + said(s);
        if (s.state().equals(InShort.NOT_READ)) {
            return left(name, NAME + 2) + "to read";
        }
        String laid = s.state().equals("no work")
                ? left(name, NAME) + right(s.state(), LOADS + 9)
                : left(name, NAME + LOADS - Integer.toString(s.loads()).length())
                        + s.loads()
                        + right(s.placed().shown(2).value().toPlainString(), 9);
        return laid
                + right(s.spread().map(BigDecimal::toPlainString).orElse(""), 7)
                + right(s.paver().map(BigDecimal::toPlainString).orElse(""), 7)
                + right(s.count(Sort.OUTSIDE), 5)
                + right(s.count(Sort.MISSING), 8)
                + right(s.count(Sort.LOOK_AGAIN), 5)
                + right(s.count(Sort.DOES_NOT_ADD_UP), 5);
    }

    /** What has to be known of a shift before its figures are. */
    private static String said(InShort s) {
        return (s.state().equals("open") ? " open" : "") + (s.damages() > 0 ? " damaged" : "");
    }

    private static String left(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String right(Object value, int width) {
        String text = value.toString();
        return " ".repeat(Math.max(1, width - text.length())) + text;
    }
}
