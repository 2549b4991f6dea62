package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.entry.Fields;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.Shown;
import screedbook.entry.Standing;
import screedbook.entry.Told;

/** One entry in full: what stands, what was written first, corrections, findings, the raw line. */
final class EntryView {
    private EntryView() {}

    static void draw(Model model, Screen.Whole whole, Frame frame) {
        Optional<Standing<?>> found = model.shift().find(whole.ref());
        List<String> lines = new ArrayList<>();
        if (found.isEmpty()) {
            lines.add("entry " + whole.ref() + " is not in this shift");
        } else {
            lines(model, found.get(), frame.width() - 2, lines);
        }
        int top = Math.min(whole.top(), Math.max(0, lines.size() - frame.rows()));
        for (int i = top; i < lines.size() && i - top < frame.rows(); i++) {
            frame.pen()
                    .put(
                            1,
                            frame.top() + i - top,
                            Frame.cut(lines.get(i), frame.width() - 2),
                            i == 0 ? Style.STRONG : Style.PLAIN);
        }
    }

    private static void lines(Model model, Standing<?> s, int width, List<String> to) {
        Line line = s.line();
        to.add(s.ref() + "  " + Named.line(model.shift(), s.entry()));
        to.add("happened " + Moment.clock(s.time()) + "  keyed " + Moment.keyed(line.keyed()) + "  "
                + Shown.text(line.who()) + "  " + line.source().word());
        if (s.struck()) {
            to.add("struck by " + s.struckBy().ref() + "  "
                    + Told.line(s.struckBy().entry()));
        }
        for (Line amend : s.amendedBy()) {
            to.addAll(Frame.wrapped(amend.ref() + "  " + ShiftView.amended(s, amend), width));
        }
        for (Finding finding : model.shift().marks(s.ref())) {
            to.add("");
            to.add(finding.sort().text());
            for (String each : ListKeys.findingLines(finding)) {
                hung(Shown.text(each), width, to);
            }
        }
        to.add("");
        Map<String, Object> values = Fields.plain((Record) s.entry());
        values.putAll(Fields.plain(s.aside()));
        values.forEach(
                (key, value) -> to.addAll(Frame.wrapped("  " + pad(key) + Shown.text(Told.value(value)), width)));
        line.unknown().forEach(u -> to.add("  unknown here: " + Shown.text(u)));
        to.add("");
        to.add("as written");
        to.addAll(Frame.wrapped(Shown.text(line.raw()), width));
    }

    /** A line of a finding; what finds no room goes on under its text and not under its name. */
    private static void hung(String text, int width, List<String> to) {
        int name = Math.min(ListKeys.NAMED, text.length());
        List<String> told = Frame.wrapped(text.substring(name), width - 2 - ListKeys.NAMED);
        for (int i = 0; i < told.size(); i++) {
            to.add("  " + (i == 0 ? text.substring(0, name) : " ".repeat(name)) + told.get(i));
        }
    }

    private static String pad(String key) {
        return key + " ".repeat(Math.max(1, 18 - key.length()));
    }
}
