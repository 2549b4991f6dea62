package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Amend;
import screedbook.entry.Built;
import screedbook.entry.Fields;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.tally.Due;

/** The shift: entries newest first on the left, what they come to and what is due on the right, the strip below. */
final class ShiftView {
    private static final int SIDE = 20;
    private static final int STRIP = 5;

    private ShiftView() {}

    /** One line of the list. */
    private record Row(String time, String text, Style style, boolean chosen) {}

    static void draw(Model model, Screen.Log log, Frame frame) {
        boolean side = sided(frame);
        int left = side ? parting(frame) : frame.width();
        int strip = frame.rows() >= 18 ? STRIP + Math.max(0, Math.min(5, (frame.rows() - 20) / 4)) : 0;
        list(model, log, frame, left, frame.rows() - strip);
        if (strip > 0) {
            strip(model, frame, left, strip);
        }
        if (side) {
            side(model, frame, left);
        }
    }

    private static boolean sided(Frame frame) {
        return frame.width() >= 60;
    }

    /** The column of the line between the entries and the side. */
    private static int parting(Frame frame) {
        return frame.width() - SIDE - 1;
    }

    /** Where the line between the entries and the side meets the rules. */
    static void join(Frame frame) {
        if (sided(frame)) {
            frame.pen().put(parting(frame), frame.top() - 1, "┬", Style.RULE);
            frame.pen().put(parting(frame), frame.bottom(), "┴", Style.RULE);
        }
    }

    private static void list(Model model, Screen.Log log, Frame frame, int width, int rows) {
        List<Standing<?>> all = model.shift().day().all();
        int at = log.walk().at();
        int first = at < 0 ? 0 : Math.max(0, at - rows / 3);
        int y = frame.top();
        int end = frame.top() + rows;
        y = uncounted(model, frame, width, y);
        for (int i = first; i < all.size() && y < end; i++) {
            Standing<?> each = all.get(all.size() - 1 - i);
            for (Row line : told(model, each, i == at, width - 7)) {
                if (y < end) {
                    line(frame, y++, width, line);
                }
            }
        }
        if (all.size() <= 1 && y < end - 3) {
            frame.pen().put(2, y + 1, "a digit begins a ticket and goes into its first blank", Style.FAINT);
            frame.pen().put(2, y + 2, "w weather   s surface temperature   k tack", Style.FAINT);
        }
    }

    private static int uncounted(Model model, Frame frame, int width, int y) {
        int lines = model.shift().seen().uncounted();
        int damages = model.shift().page().damages().size();
        if (lines == 0 && damages == 0) {
            return y;
        }
        String text = lines == 0
                ? damages + " damages in the file: findings tell"
                : lines + " lines could not be counted: findings tell";
        frame.pen().put(1, y, Frame.cut(text, width - 2), Style.ALERT);
        return y + 1;
    }

    private static void line(Frame frame, int y, int width, Row line) {
        if (line.chosen()) {
            frame.pen().fill(0, y, width, 1, ' ', Style.CHOSEN);
            frame.pen().put(0, y, ">", Style.CHOSEN);
        }
        frame.pen().put(1, y, line.time(), line.chosen() ? Style.CHOSEN : Style.FAINT);
        frame.pen().put(7, y, Frame.cut(line.text(), width - 7), line.chosen() ? Style.CHOSEN : line.style());
    }

    private static List<Row> told(Model model, Standing<?> each, boolean chosen, int width) {
        List<Row> lines = new ArrayList<>();
        String text = Named.line(model.shift(), each.entry());
        String time = each.time() == null ? "--:--" : Moment.clock(each.time());
        if (each.struck()) {
            lines.add(new Row(time, "struck (" + each.struckBy().who() + ")  " + text, Style.STRUCK, chosen));
            return lines;
        }
        lines.add(new Row(time, text, Style.PLAIN, chosen));
        for (Line amend : each.amendedBy()) {
            lines.add(new Row("", amended(each, amend), Style.FAINT, false));
        }
        for (Built.Slip slip : each.slips()) {
            lines.add(
                    new Row("", "look again  amendment not read: " + Shown.text(slip.text()), Style.LOOK_AGAIN, false));
        }
        for (Finding finding : model.shift().marks(each.ref())) {
            lines.addAll(mark(finding, width));
        }
        return lines;
    }

    /** {@code net_ston 21.96, was 22.96 (RK: misread)}: the old value stays legible beside the new one. */
    static String amended(Standing<?> each, Line amend) {
        Map<String, Object> old = Fields.plain((Record) each.line().entry());
        List<String> parts = new ArrayList<>();
        Amend words = (Amend) amend.entry();
        words.set().forEach((key, value) -> {
            Object was = key.equals("time") ? each.line().time() : old.get(key);
            parts.add(key + " " + (value == null ? "taken away" : Told.value(value)) + ", was "
                    + (was == null ? "blank" : Told.value(was)));
        });
        return Shown.text("amended  " + String.join("; ", parts) + "  (" + amend.who() + ": " + words.reason() + ")");
    }

    /** A mark takes two lines at the most; the findings tell it in full. */
    private static List<Row> mark(Finding finding, int width) {
        Style style = finding.answered() ? Style.FAINT : finding.sort() == Sort.OUTSIDE ? Style.MARK : Style.LOOK_AGAIN;
        String limit = finding.limit().isEmpty() ? "" : ", " + finding.limit();
        String clause = finding.clause().isEmpty() ? "" : "  " + finding.clause();
        String answered = finding.answered() ? "answered: " : "";
        String text = Shown.text(answered + finding.sort().mark() + "  " + finding.seen() + limit + clause);
        List<String> lines = Frame.wrapped(text, width - 2);
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("", lines.get(0), style, false));
        if (lines.size() > 1) {
            String rest = String.join(" ", lines.subList(1, lines.size()));
            rows.add(new Row("", "  " + Frame.cut(rest, width - 2), style, false));
        }
        return rows;
    }

    private static void side(Model model, Frame frame, int x) {
        for (int y = frame.top(); y < frame.bottom(); y++) {
            frame.pen().put(x, y, "│", Style.RULE);
        }
        int y = frame.top();
        for (Side line : sideLines(model, frame.rows())) {
            if (y < frame.bottom()) {
                frame.pen().put(x + 2, y++, Frame.cut(line.text(), SIDE - 1), line.style());
            }
        }
    }

    private record Side(String text, Style style) {}

    private static List<Side> sideLines(Model model, int rows) {
        List<Side> above = new ArrayList<>();
        stopped(model, above);
        Echo.side(model.shift()).forEach(t -> above.add(new Side(t, Style.STRONG)));
        model.shift().ahead().work().forEach(t -> above.add(new Side(t, Style.STRONG)));
        model.shift().ahead().lateLine().ifPresent(t -> above.add(new Side(t, Style.STRONG)));
        above.add(new Side("", Style.PLAIN));
        List<Side> below = new ArrayList<>();
        model.shift().ahead().limits().forEach(l -> below.add(new Side(" " + l, Style.PLAIN)));
        below.add(new Side("", Style.PLAIN));
        below.add(new Side("to answer", Style.PLAIN));
        Map<Sort, Integer> open = model.shift().seen().open();
        open.forEach((sort, count) ->
                below.add(new Side("  " + sort.counted(count), sort == Sort.OUTSIDE ? Style.MARK : Style.LOOK_AGAIN)));
        if (open.isEmpty()) {
            below.add(new Side(" nothing", Style.PLAIN));
        }
        state(model, below);
        List<Side> lines = new ArrayList<>(above);
        lines.addAll(awaited(model.shift(), rows - above.size() - below.size()));
        lines.addAll(below);
        return lines;
    }

    /** Books of other laptops that differ from the shift as a whole. */
    private static List<Side> books(Shift shift) {
        return shift.seen().books().stream()
                .map(said -> new Side(said, Style.ALERT))
                .toList();
    }

    /** What is due, the most urgent first; what finds no room is counted. */
    private static List<Side> awaited(Shift shift, int rows) {
        if (shift.closed()) {
            List<Side> lines = new ArrayList<>(
                    List.of(new Side("closed: late lines", Style.ALERT), new Side("go behind the close", Style.PLAIN)));
            lines.addAll(books(shift));
            return lines;
        }
        if (shift.over()) {
            return List.of(new Side("closed", Style.STRONG), new Side("y: checks as made", Style.PLAIN));
        }
        List<Due> dues =
                shift.totals().dues().stream().sorted(Due.MOST_URGENT_FIRST).toList();
        List<Side> lines = new ArrayList<>(books(shift));
        lines.add(new Side("due", Style.PLAIN));
        for (int i = 0; i < dues.size(); i++) {
            List<Side> told = due(dues.get(i));
            int more = dues.size() - i;
            if (lines.size() + told.size() + (more > 1 ? 1 : 0) > rows && i > 0) {
                lines.add(new Side(" +" + more + " more", Style.PLAIN));
                break;
            }
            lines.addAll(told);
        }
        return lines;
    }

    /** While the paver stands: since when, and what waits. */
    private static void stopped(Model model, List<Side> lines) {
        model.shift().stopped().ifPresent(stop -> {
            String minutes =
                    stop.minutes(model.now()).map(m -> " " + m + " min").orElse("");
            lines.add(new Side("stopped" + minutes, Style.DUE));
            Integer waiting = stop.stop().entry().waiting();
            if (waiting != null) {
                lines.add(new Side(waiting + (waiting == 1 ? " truck waiting" : " trucks waiting"), Style.STRONG));
            }
        });
    }

    /** In one line where it fits, else the hour or count under the name. */
    private static List<Side> due(Due due) {
        Style style = due.now() ? Style.DUE : Style.PLAIN;
        String what = due.what().replace("surface temperature", "surface");
        String when = due.now() && !due.missed().isEmpty() ? due.when() + ", over" : due.when();
        String text = " " + what + " " + when;
        if (text.length() < SIDE) {
            return List.of(new Side(text, style));
        }
        List<Side> lines = new ArrayList<>(List.of(new Side(" " + what, Style.PLAIN)));
        Frame.wrapped(when, SIDE - 4).forEach(part -> lines.add(new Side("   " + part, style)));
        return lines;
    }

    private static void state(Model model, List<Side> lines) {
        lines.add(new Side("", Style.PLAIN));
        if (!model.halfTyped().isEmpty()) {
            lines.add(new Side("half typed:", Style.DUE));
            lines.add(new Side(" " + Update.names(model.halfTyped()), Style.STRONG));
        }
        if (!model.shift().writable()) {
            lines.add(new Side("to look at only", Style.ALERT));
            return;
        }
        lines.add(new Side(
                (model.source() == Source.LIVE ? "keyed live" : "keyed from notes") + ", "
                        + model.setting().who(),
                Style.FAINT));
    }

    private static void strip(Model model, Frame frame, int width, int rows) {
        int y = frame.bottom() - rows;
        for (String line : Echo.strip(model.shift(), width - 2, rows)) {
            if (y < frame.bottom()) {
                frame.pen().put(1, y++, line, Style.PICTURE);
            }
        }
    }
}
