package screedbook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import screedbook.entry.Moment;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;

/** What stands around every screen: the heading, the rules, the sentence and the keys at the foot. */
final class Frame {
    private final Canvas.Pen pen;
    private final Model model;

    Frame(Canvas.Pen pen, Model model) {
        this.pen = pen;
        this.model = model;
    }

    Canvas.Pen pen() {
        return pen;
    }

    int width() {
        return pen.width();
    }

    /** The first row of the body. */
    int top() {
        return 2;
    }

    /** Rows of the body. */
    int rows() {
        return Math.max(0, pen.height() - 4);
    }

    /** The row below the body. */
    int bottom() {
        return top() + rows();
    }

    /** Drawn over the body, so that no body runs into it however small the window is. */
    void draw() {
        head();
        rule(1);
        rule(pen.height() - 2);
        if (model.top() instanceof Screen.Log) {
            ShiftView.join(this);
        }
        notice();
        foot();
    }

    private void head() {
        pen.fill(0, 0, width(), 1, ' ', Style.HEAD);
        String clock = model.now() == null ? "" : Moment.clock(model.now());
        pen.put(1, 0, heading(width() - clock.length() - 3), Style.HEAD);
        pen.put(width() - clock.length() - 1, 0, clock, Style.HEAD);
    }

    /** When it gets narrow the job's name gives way first: the shift and the pull have to be read. */
    private String heading(int room) {
        String name = Shown.text(
                model.setting().job().map(j -> j.name()).orElse(model.setting().folder()));
        String rest = Shown.text(String.join("", rest()));
        int left = Math.max(12, room - rest.length());
        return cut(cut(name, left) + rest, room);
    }

    private List<String> rest() {
        List<String> words = new ArrayList<>();
        if (model.shift() != null && model.screens().stream().anyMatch(s -> s instanceof Screen.Log)) {
            words.add(named(model.shift().id()));
            boolean keyed = model.top() instanceof Screen.Log || model.top() instanceof Screen.Keying;
            words.addAll(keyed ? Echo.now(model) : List.of());
        }
        if (!(model.top() instanceof Screen.Log) && model.top().place() != Place.FORM) {
            words.add(model.top().place().title());
        }
        return words.stream().map(w -> "  " + w).toList();
    }

    /** {@code 3 Jun 2026 night}. */
    static String named(ShiftId shift) {
        LocalDate date = shift.date();
        String month = date.getMonth().name();
        return date.getDayOfMonth() + " " + month.charAt(0)
                + month.substring(1, 3).toLowerCase(Locale.ROOT) + " " + date.getYear() + " " + shift.word();
    }

    void rule(int y) {
        pen.fill(0, y, width(), 1, '─', Style.RULE);
    }

    private void notice() {
        Notice notice = model.notice();
        if (!notice.text().isEmpty()) {
            String text = " " + Shown.text(notice.text()) + " ";
            pen.put(1, pen.height() - 2, cut(text, width() - 2), notice.alert() ? Style.ALERT : Style.STRONG);
        }
    }

    private void foot() {
        pen.fill(0, pen.height() - 1, width(), 1, ' ', Style.KEYLINE);
        pen.put(1, pen.height() - 1, fitting(model.top().place(), width() - 2), Style.KEYLINE);
    }

    /** Whole keys only: what does not fit is left to the help, whose own key is always there. */
    private static String fitting(Place place, int width) {
        String text = KeyTable.foot(place);
        String help = KeyTable.helpKey(place);
        if (text.length() <= width || help.isEmpty()) {
            return text;
        }
        int at = text.lastIndexOf("  ", Math.max(0, width - help.length() - 2));
        return (at < 0 ? "" : text.substring(0, at) + "  ") + help;
    }

    static String cut(String text, int width) {
        if (width <= 0) {
            return "";
        }
        return text.length() <= width ? text : text.substring(0, Math.max(0, width - 1)) + "~";
    }

    /** A text broken at blanks into lines of at most so many characters. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        int room = Math.max(8, width);
        while (rest.length() > room) {
            int at = rest.lastIndexOf(' ', room);
            int cut = at <= 0 ? room : at;
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut).stripLeading();
        }
        lines.add(rest);
        return lines;
    }
}
