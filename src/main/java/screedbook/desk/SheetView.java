package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Blank;
import screedbook.entry.Field;
import screedbook.entry.Shown;
import screedbook.job.Job;
import screedbook.job.JobReading;
import screedbook.job.Revision;

/** The job sheet: its parts, the items of a list, one item as a form, and what changed between two revisions. */
final class SheetView {
    private static final int LABEL = 28;
    private static final int WIDEST = 37;

    private SheetView() {}

    static void draw(Model model, Screen screen, Frame frame) {
        if (screen instanceof Screen.Parts parts) {
            parts(model.sheet(), parts.walk(), frame);
        } else if (screen instanceof Screen.PlanFound found) {
            found(model.sheet(), found.walk(), frame);
        } else if (screen instanceof Screen.PlanDrawn drawn) {
            drawn(drawn, frame);
        } else if (screen instanceof Screen.PlanSums sums) {
            numbers(sums, frame);
        } else if (screen instanceof Screen.Items items) {
            items(model.sheet(), items, frame);
        } else if (screen instanceof Screen.Item item) {
            form(model, item.form(), title(model.sheet(), item.path()), frame);
        } else if (screen instanceof Screen.Reason reason) {
            form(
                    model,
                    reason.form(),
                    "write the job sheet: " + String.join(", ", model.sheet().edited()),
                    frame);
        } else if (screen instanceof Screen.Changes changes) {
            changes(changes, frame);
        }
    }

    private static void parts(Sheet sheet, Walk walk, Frame frame) {
        frame.pen().put(1, frame.top(), Frame.cut(Shown.text(state(sheet)), frame.width() - 2), Style.STRONG);
        plan(sheet, frame, frame.top() + 1);
        List<Field> fields = Sheet.parts();
        List<String> rows = new ArrayList<>();
        rows.add(part(sheet, List.of(), "the job", Sheet.typed(sheet.values().get("name"))));
        for (Field field : fields) {
            List<Object> path = List.of(field.name());
            rows.add(part(sheet, path, field.label(), SheetForms.summary(sheet, field, path)));
        }
        rows(frame, frame.top() + 3, rows, walk);
    }

    /** What is to settle, else what the limit sheet says of the plan. */
    private static void plan(Sheet sheet, Frame frame, int y) {
        int room = frame.width() - 2;
        Optional<String> named = sheet.job().map(Job::sheet);
        if (!sheet.doubts().isEmpty()) {
            String said = "missing or wrong: " + sheet.doubts().size() + ", t tells all";
            frame.pen().put(1, y, Frame.cut(said, room), Style.LOOK_AGAIN);
        } else if (named.isPresent() && !sheet.read().sheets().containsKey(named.get())) {
            String said = "no limit sheet " + named.get() + " can be read; the plan is not looked at";
            frame.pen().put(1, y, Frame.cut(Shown.text(said), room), Style.ALERT);
        } else if (sheet.findings().isEmpty()) {
            frame.pen().put(1, y, Frame.cut("nothing is missing, nothing of the plan is marked", room), Style.FAINT);
        } else {
            frame.pen()
                    .put(1, y, Frame.cut("of the plan: " + counts(sheet.findings()) + "; f tells", room), worst(sheet));
        }
    }

    private static Style worst(Sheet sheet) {
        boolean outside = sheet.findings().stream().anyMatch(f -> f.sort() == Sort.OUTSIDE);
        return outside ? Style.MARK : Style.LOOK_AGAIN;
    }

    /** {@code 2 outside, 1 look again}. */
    private static String counts(List<Finding> findings) {
        List<String> counts = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            long count = findings.stream().filter(f -> f.sort() == sort).count();
            if (count > 0) {
                counts.add(sort.counted((int) count));
            }
        }
        return String.join(", ", counts);
    }

    /** Each with its limit below it; only its first row is walked to. */
    private static void found(Sheet sheet, Walk walk, Frame frame) {
        List<ListView.Row> rows = new ArrayList<>();
        for (int i = 0; i < sheet.findings().size(); i++) {
            Finding f = sheet.findings().get(i);
            List<String> seen = Frame.wrapped(f.seen(), frame.width() - 13);
            Style style = f.sort() == Sort.OUTSIDE ? Style.MARK : Style.LOOK_AGAIN;
            rows.add(new ListView.Row(ListView.pad(f.sort().mark(), 11) + seen.get(0), style, i));
            List<String> below = new ArrayList<>(seen.subList(1, seen.size()));
            below.addAll(Frame.wrapped((f.limit() + "  " + f.clause()).strip(), frame.width() - 13));
            below.forEach(line -> rows.add(new ListView.Row(" ".repeat(11) + line, Style.FAINT, -1)));
        }
        if (rows.isEmpty()) {
            rows.add(ListView.Row.text("nothing of the plan is marked"));
        }
        ListView.walked(frame, rows, walk);
    }

    private static void drawn(Screen.PlanDrawn drawn, Frame frame) {
        int top = Math.min(drawn.top(), Math.max(0, drawn.lines().size() - frame.rows()));
        for (int i = top; i < drawn.lines().size() && i - top < frame.rows(); i++) {
            String line = Frame.cut(Shown.text(drawn.lines().get(i)), frame.width() - 2);
            frame.pen().put(1, frame.top() + i - top, line, Style.PLAIN);
        }
    }

    private static void numbers(Screen.PlanSums sums, Frame frame) {
        List<ListView.Row> rows = sums.sections().isEmpty()
                ? List.of(ListView.Row.text(
                        "the plan comes to no numbers yet: stretches, rates and hauls are not settled"))
                : ListView.figures(sums.sections());
        ListView.walked(frame, rows, sums.walk());
    }

    /** Which revision it is, or what of it is not written yet. */
    private static String state(Sheet sheet) {
        List<String> edited = sheet.edited();
        if (!edited.isEmpty()) {
            return "typed here, not written: " + String.join(", ", edited);
        }
        List<Revision> revisions = sheet.read().revisions();
        return revisions.isEmpty()
                ? "no revision is accepted yet"
                : ChangeKeys.told(revisions.get(revisions.size() - 1));
    }

    private static String part(Sheet sheet, List<Object> path, String label, String summary) {
        List<JobReading.Doubt> doubts = sheet.doubts(path);
        return ListView.pad(label, LABEL) + (doubts.isEmpty() ? summary : "!  " + sheet.told(doubts.get(0)));
    }

    private static String title(Sheet sheet, List<Object> path) {
        if (path.isEmpty()) {
            return "the job";
        }
        Field field = Sheet.field(path).orElseThrow();
        boolean item = path.get(path.size() - 1) instanceof Integer;
        return field.label() + (item ? "  " + (sheet.at(path) == null ? "new" : sheet.name(path)) : "");
    }

    private static void items(Sheet sheet, Screen.Items items, Frame frame) {
        Field field = Sheet.field(items.path()).orElseThrow();
        String title = title(sheet, items.path().subList(0, items.path().size() - 1), field);
        frame.pen().put(1, frame.top(), Frame.cut(Shown.text(title), frame.width() - 2), Style.STRONG);
        List<String> rows = new ArrayList<>();
        int size = sheet.list(items.path()).size();
        for (int i = 0; i < SheetKeys.rows(sheet, items.path()); i++) {
            List<Object> path = Sheet.step(items.path(), i);
            String half = sheet.half().containsKey(path) ? "half typed  " : "";
            String doubt = sheet.doubts(path).stream()
                    .map(d -> "!  " + sheet.told(d) + "  ")
                    .findFirst()
                    .orElse("");
            rows.add(half + doubt + (i < size ? SheetForms.told(path, sheet.record(path)) : ""));
        }
        if (rows.isEmpty()) {
            frame.pen().put(1, frame.top() + 2, "none yet: n puts one in", Style.PLAIN);
        }
        rows(frame, frame.top() + 2, rows, items.walk());
    }

    /** A list inside an item is told with the item. */
    private static String title(Sheet sheet, List<Object> owner, Field field) {
        return owner.isEmpty() ? field.label() : title(sheet, owner) + ", " + field.label();
    }

    private static void rows(Frame frame, int from, List<String> rows, Walk walk) {
        int room = frame.bottom() - from;
        int top = walk.top(Math.max(1, room), rows.size());
        for (int i = top; i < rows.size() && i - top < room; i++) {
            boolean on = i == walk.at();
            int y = from + i - top;
            if (on) {
                frame.pen().fill(0, y, frame.width(), 1, ' ', Style.CHOSEN);
            }
            String text = (on ? ">" : " ") + Shown.text(rows.get(i));
            frame.pen().put(0, y, Frame.cut(text, frame.width()), on ? Style.CHOSEN : Style.PLAIN);
        }
    }

    /** One blank a row; the window moves with the cursor when there are more blanks than rows. */
    private static void form(Model model, Form form, String title, Frame frame) {
        frame.pen().put(1, frame.top(), Frame.cut(Shown.text(title), frame.width() - 14), Style.STRONG);
        if (model.writing()) {
            frame.pen().put(frame.width() - 12, frame.top(), "writing", Style.DUE);
        }
        Filled filled = Filled.of(form, model.sheet());
        int label = 2
                + form.inputs().stream()
                        .mapToInt(i -> i.field().label().length())
                        .max()
                        .orElse(0);
        int foot = frame.bottom() - 2;
        int from = frame.top() + 2;
        int room = Math.max(1, foot - from);
        int top = new Walk(form.at()).top(room, form.inputs().size());
        for (int i = top; i < form.inputs().size() && i - top < room && from + i - top < foot; i++) {
            blank(model, form, filled, i, Math.min(label, WIDEST), frame, from + i - top);
        }
        foot(model.sheet(), form.active(), filled, frame, foot);
    }

    private static void blank(Model model, Form form, Filled filled, int index, int label, Frame frame, int y) {
        Input input = form.inputs().get(index);
        Field field = input.field();
        frame.pen().put(1, y, Frame.cut(field.label(), label - 1), Style.PLAIN);
        boolean free = field.type() == String.class || field.element().isPresent() || Sheet.nested(field);
        int wanted = free ? 44 : field.type().isEnum() ? 22 : 14;
        int width = Math.min(Math.max(field.width(), wanted), Math.max(4, frame.width() - label - 14));
        FormView.field(form, index, frame, label + 1, y, width);
        int x = label + width + 2;
        frame.pen()
                .put(
                        x,
                        y,
                        Frame.cut(beside(model.sheet(), input, filled), frame.width() - x - 1),
                        filled.troubles().containsKey(input.name()) ? Style.ALERT : Style.FAINT);
    }

    /** What stands behind a blank: why it cannot be read, how it is read, its unit, whether it has to be there. */
    private static String beside(Sheet sheet, Input input, Filled filled) {
        String trouble = filled.troubles().get(input.name());
        if (trouble != null) {
            return Shown.text(trouble);
        }
        String shown = filled.shown().get(input.name());
        if (shown != null) {
            return "= " + Shown.text(shown);
        }
        String unit = input.field()
                .measure()
                .map(m -> m.unit(sheet.system()).symbol())
                .orElse("");
        boolean missing =
                input.field().due() == Blank.Due.ALWAYS && input.text().isBlank();
        return unit + (missing ? (unit.isEmpty() ? "" : "  ") + "missing" : "");
    }

    private static void foot(Sheet sheet, Input input, Filled filled, Frame frame, int y) {
        String trouble = filled.troubles().get(input.name());
        List<String> words = Sheet.nested(input.field()) ? List.of() : SheetPicks.of(sheet, input.field());
        String line = trouble != null ? trouble : Picks.line(words);
        String help = Sheet.nested(input.field())
                ? "Enter opens it, Tab goes on, Ctrl-S keeps the rest"
                : input.field().help();
        List<String> lines = new ArrayList<>();
        for (String each : new String[] {line, help}) {
            if (!each.isEmpty()) {
                lines.addAll(Frame.wrapped(Shown.text(each), frame.width() - 2));
            }
        }
        for (int i = 0; i < 2 && i < lines.size(); i++) {
            frame.pen()
                    .put(
                            1,
                            y + i,
                            Frame.cut(lines.get(i), frame.width() - 2),
                            trouble != null && i == 0 ? Style.ALERT : Style.FAINT);
        }
    }

    private static void changes(Screen.Changes changes, Frame frame) {
        List<String> lines = new ArrayList<>();
        for (String line : changes.lines()) {
            lines.addAll(Frame.wrapped(Shown.text(line), frame.width() - 3));
        }
        int top = Math.min(changes.top(), Math.max(0, lines.size() - frame.rows()));
        for (int i = top; i < lines.size() && i - top < frame.rows(); i++) {
            frame.pen()
                    .put(
                            1,
                            frame.top() + i - top,
                            Frame.cut(lines.get(i), frame.width() - 2),
                            i < 2 ? Style.STRONG : Style.PLAIN);
        }
    }
}
