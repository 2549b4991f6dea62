package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.check.Cautions;
import screedbook.check.Guide;
import screedbook.check.LeftToRoll;
import screedbook.check.Verdict;
import screedbook.entry.Entry;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Tack;
import screedbook.entry.Told;
import screedbook.unit.Measure;

/**
 * An entry being keyed: blanks that are due stand large at the top with their limit and verdict, the others below them
 * close together; at the foot what is offered and what the figures come to.
 */
final class FormView {
    private static final int LABEL = 15;

    private FormView() {}

    static void draw(Model model, Form form, Frame frame) {
        Reading reading = Reading.of(form, model);
        Entry entry = reading.entry();
        int y = frame.top();
        title(model, form, entry, frame, y);
        y += 2;
        Foot below = foot(model, reading, frame.width() - 2);
        int foot = frame.bottom() - below.rows();
        List<Integer> main = main(form);
        for (int index : main) {
            if (y < foot) {
                blank(model, reading, entry, index, frame, y++);
            }
        }
        Optional<LeftToRoll> left = y < foot ? Guiding.left(model, reading, entry) : Optional.empty();
        left.ifPresent(l -> frame.pen().put(1, foot - 1, Frame.cut(l.text(), frame.width() - 2), Style.PLAIN));
        others(model, reading, main, frame, y + 1, left.isPresent() ? foot - 1 : foot);
        below.draw(frame);
    }

    private static void title(Model model, Form form, Entry entry, Frame frame, int y) {
        String what = form.amends() == null
                ? Told.kind(form.kind())
                : "other values for " + Told.kind(form.kind()) + " " + form.amends();
        String number = form.kind() == Kind.TICKET ? " " + form.text("number") : "";
        String how = form.source() == Source.LIVE && form.amends() == null
                ? Moment.clock(model.now()) + " live"
                : form.amends() == null ? "from notes" : "";
        frame.pen().put(1, y, Shown.text(what + number), Style.STRONG);
        frame.pen().put(LABEL + 20, y, how, Style.FAINT);
        if (model.writing()) {
            frame.pen().put(frame.width() - 12, y, "writing", Style.DUE);
        } else if (form.amends() == null) {
            String brief = Cautions.beside(entry).map(Cautions.Caution::brief).orElse("");
            frame.pen().put(frame.width() - brief.length() - 1, y, brief, Style.FAINT);
        }
    }

    /** The due blanks in order; the one with the cursor is among the small ones otherwise. */
    private static List<Integer> main(Form form) {
        List<Integer> main = new ArrayList<>();
        for (int i = 0; i < form.inputs().size(); i++) {
            if (form.inputs().get(i).due()) {
                main.add(i);
            }
        }
        if (main.isEmpty()) {
            main.add(form.at());
        }
        return main;
    }

    private static void blank(Model model, Reading reading, Entry entry, int index, Frame frame, int y) {
        Form form = reading.form();
        Input input = form.inputs().get(index);
        frame.pen().put(1, y, Frame.cut(input.field().label(), LABEL - 1), Style.PLAIN);
        int width = Math.min(input.field().width(), Math.max(4, frame.width() - LABEL - 6));
        field(form, index, frame, LABEL + 1, y, width);
        String unit = input.field()
                .measure()
                .map(m -> m.unit(model.shift().job().system()).symbol())
                .orElse("");
        int x = LABEL + width + 2;
        frame.pen().put(x, y, unit, Style.FAINT);
        guide(model, reading, entry, input, frame, Math.max(x + unit.length() + 2, LABEL + 17), y);
    }

    private static void guide(Model model, Reading reading, Entry entry, Input input, Frame frame, int x, int y) {
        String trouble = reading.troubles().get(input.name());
        if (trouble != null) {
            frame.pen().put(x, y, Frame.cut(Shown.text(trouble), frame.width() - x - 1), Style.ALERT);
            return;
        }
        String shown = reading.shown().get(input.name());
        Guide guide = Guiding.of(model, reading, entry, input.name());
        int at = x;
        if (shown != null && !shown.equals(input.text())) {
            String said = "= " + Shown.text(shown);
            frame.pen().put(at, y, Frame.cut(said, frame.width() - at - 1), Style.PLAIN);
            at += said.length() + 2;
        }
        boolean verdict = guide.verdict() == Verdict.OUTSIDE || guide.verdict() == Verdict.LOOK_AGAIN;
        if (verdict && input.touched()) {
            frame.pen()
                    .put(
                            at,
                            y,
                            guide.verdict().text(),
                            guide.verdict() == Verdict.OUTSIDE ? Style.MARK : Style.LOOK_AGAIN);
            at += guide.verdict().text().length() + 2;
        }
        String limit = limit(guide, input, entry) + (guide.clause().isEmpty() ? "" : "  " + guide.clause());
        frame.pen().put(at, y, Frame.cut(Shown.text(limit), frame.width() - at - 1), Style.FAINT);
    }

    /** A tank's reading has no limit of its own; that the rate has none is said once, beside the last reading. */
    private static String limit(Guide guide, Input input, Entry entry) {
        boolean reading = entry instanceof Tack
                && input.field()
                        .measure()
                        .filter(m -> m == Measure.VOLUME || m == Measure.DEPTH)
                        .isPresent();
        boolean last = input.field().name().endsWith("after");
        String none = Verdict.NO_LIMIT.text();
        return reading && !last && guide.limit().startsWith(none)
                ? guide.limit().substring(none.length()).replaceFirst("^, ", "")
                : guide.limit();
    }

    static void field(Form form, int index, Frame frame, int x, int y, int width) {
        Input input = form.inputs().get(index);
        boolean active = index == form.at();
        Style style = active ? Style.FIELD_ACTIVE : input.carried() ? Style.CARRIED : Style.FIELD;
        String text = Shown.text(input.text());
        int caret = Shown.text(input.text().substring(0, input.caret())).length();
        int from = active && caret >= width ? caret - width + 1 : 0;
        String window = text.substring(Math.min(from, text.length()));
        frame.pen().fill(x, y, width, 1, active || !input.carried() ? '_' : ' ', style);
        frame.pen().put(x, y, window.length() > width ? window.substring(0, width) : window, style);
        if (active) {
            frame.pen().cursor(x + Math.min(caret - from, width), y);
        }
    }

    /** A blank among the others, at its place in rows that flow. */
    private record Small(int index, int row, int x, int width) {}

    private static void others(Model model, Reading reading, List<Integer> main, Frame frame, int from, int to) {
        Form form = reading.form();
        List<Small> cells = flow(form, main, frame.width());
        int rows = to - from;
        if (rows <= 0) {
            return;
        }
        int active = cells.stream()
                .filter(c -> c.index() == form.at())
                .mapToInt(Small::row)
                .findFirst()
                .orElse(0);
        int last = cells.isEmpty() ? 0 : cells.get(cells.size() - 1).row();
        int top = Math.max(0, Math.min(active - rows / 2, last - rows + 1));
        for (Small cell : cells) {
            int y = from + cell.row() - top;
            if (y >= from && y < to) {
                small(model, reading, cell, frame, y);
            }
        }
    }

    private static List<Small> flow(Form form, List<Integer> main, int width) {
        List<Small> cells = new ArrayList<>();
        int row = 0;
        int x = 1;
        for (int i = 0; i < form.inputs().size(); i++) {
            if (main.contains(i)) {
                continue;
            }
            Input input = form.inputs().get(i);
            int field = Math.max(input.field().width(), Math.min(input.text().length(), 40));
            int need = input.field().label().length() + 1 + field + 2;
            if (x > 1 && x + need > width) {
                row++;
                x = 1;
            }
            cells.add(new Small(i, row, x, field));
            x += need;
        }
        return cells;
    }

    private static void small(Model model, Reading reading, Small cell, Frame frame, int y) {
        Input input = reading.form().inputs().get(cell.index());
        String label = input.field().label();
        boolean trouble = reading.troubles().containsKey(input.name());
        frame.pen().put(cell.x(), y, label, trouble ? Style.ALERT : Style.FAINT);
        int x = cell.x() + label.length() + 1;
        int width = Math.min(cell.width(), Math.max(1, frame.width() - x - 1));
        field(reading.form(), cell.index(), frame, x, y, width);
    }

    /**
     * What stands below the blanks.
     *
     * @param lines what is offered for the blank with the cursor, in at most two lines
     * @param echo what the figures come to; empty where they come to nothing
     */
    private record Foot(List<String> lines, Style style, String echo) {
        int rows() {
            return Math.max(2, lines.size() + (echo.isEmpty() ? 0 : 1));
        }

        void draw(Frame frame) {
            int y = frame.bottom() - rows();
            for (String line : lines) {
                frame.pen().put(1, y++, Frame.cut(line, frame.width() - 2), style);
            }
            frame.pen().put(1, frame.bottom() - 1, Frame.cut(echo, frame.width() - 2), Style.STRONG);
        }
    }

    private static Foot foot(Model model, Reading reading, int width) {
        Form form = reading.form();
        Input input = form.active();
        List<Guide.Offer> offers = Guiding.offers(model, form);
        String line = offers.isEmpty()
                ? help(model, form, input)
                : "Ctrl-O takes: " + offers.get(0).asks();
        Style style = offers.isEmpty() ? Style.FAINT : Style.LOOK_AGAIN;
        String trouble = reading.troubles().get(input.name());
        if (trouble != null && !input.due()) {
            line = trouble;
            style = Style.ALERT;
        }
        List<String> lines = offered(Shown.text(line), width);
        return new Foot(
                lines.size() < 3 ? lines : List.of(lines.get(0), lines.get(1) + " ~"),
                style,
                Shown.text(Echo.of(model, reading)));
    }

    /** Lines in which a number stays with the word that it stands for, where words are offered by number. */
    private static List<String> offered(String text, int width) {
        if (!text.startsWith("1 ")) {
            return Frame.wrapped(text, width);
        }
        List<String> lines = new ArrayList<>(List.of(""));
        for (String each : text.split("  ")) {
            String last = lines.get(lines.size() - 1);
            if (last.isEmpty() || last.length() + 2 + each.length() <= width) {
                lines.set(lines.size() - 1, last.isEmpty() ? each : last + "  " + each);
            } else {
                lines.add(each);
            }
        }
        return lines;
    }

    private static String help(Model model, Form form, Input input) {
        List<String> words = Picks.of(model, form.kind(), input.field());
        if (!words.isEmpty()) {
            boolean fixed = !input.field().words().isEmpty();
            return Picks.line(fixed ? words.stream().map(FormView::spoken).toList() : words);
        }
        String shown = input.field().help();
        String guided = input.due() ? "" : guided(model, form, input);
        boolean marked = guided.startsWith(Verdict.OUTSIDE.text()) || guided.startsWith(Verdict.LOOK_AGAIN.text());
        String said = shown.isEmpty() || marked ? guided : shown;
        return input.due() ? said : (unit(model, input) + said).strip();
    }

    /** A blank that is due has its unit beside it; any other says it while it holds the cursor. */
    private static String unit(Model model, Input input) {
        return input.field()
                .measure()
                .filter(m -> m != Measure.TIMES)
                .map(m -> "in " + m.unit(model.shift().job().system()).symbol() + "  ")
                .orElse("");
    }

    /** A word of a fixed list as people write it; it is taken either way. */
    private static String spoken(String word) {
        return word.replace('-', ' ')
                .replace("gmb", "Gmb")
                .replace("gmm", "Gmm")
                .replace("sunday", "Sunday");
    }

    private static String guided(Model model, Form form, Input input) {
        Guide guide = Guiding.of(model, form, input.name());
        String verdict = guide.verdict() == Verdict.OUTSIDE || guide.verdict() == Verdict.LOOK_AGAIN
                ? guide.verdict().text() + "  "
                : "";
        return verdict + guide.limit() + (guide.clause().isEmpty() ? "" : "  " + guide.clause());
    }
}
