package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Person;
import screedbook.entry.Shown;

/** The first screen: what this is, who writes, which shifts are there. */
final class StartView {
    private static final List<String> CAUTIONS = List.of(
            "Limits come from the sheet chosen for the job. The contract documents, the",
            "engineer, local codes and licensed practice govern. This is no safety plan.");

    private StartView() {}

    static void draw(Model model, Screen.Start start, Frame frame) {
        int y = frame.top();
        for (String line : head(model)) {
            frame.pen().put(1, y++, Frame.cut(line, frame.width() - 2), Style.PLAIN);
        }
        for (String line : troubles(model, frame.width() - 2)) {
            if (y < frame.bottom() - 4) {
                frame.pen().put(1, y++, line, Style.ALERT);
            }
        }
        if (model.setting().job().isEmpty() && !model.writing()) {
            frame.pen().put(1, y, "j opens the job sheet, where a job is made and mended", Style.PLAIN);
            y += 2;
        }
        y = people(model, frame, y);
        shifts(model, start, frame, y);
        cautions(frame);
    }

    private static List<String> head(Model model) {
        List<String> lines = new ArrayList<>();
        lines.add("Screedbook, the daily log of a paving job");
        model.setting().job().ifPresent(j -> {
            List<String> words = new ArrayList<>();
            if (j.contract() != null) {
                words.add("contract " + j.contract());
            }
            if (j.place() != null && j.place().name() != null) {
                words.add(j.place().name());
            }
            words.add("limit sheet " + j.sheet());
            words.add("book " + model.setting().book());
            lines.add(Shown.text(String.join("  ", words)));
        });
        if (model.sheet() != null && model.sheet().touched()) {
            String parts = Shown.text(String.join(", ", model.sheet().edited()));
            lines.add("job sheet half typed, not written: " + parts + "; j goes on with it");
        }
        lines.add("");
        return lines;
    }

    private static List<String> troubles(Model model, int width) {
        List<String> lines = new ArrayList<>();
        for (String trouble : model.troubles()) {
            trouble.lines().forEach(l -> lines.addAll(Frame.wrapped(Shown.text(l.stripTrailing()), width)));
        }
        return lines;
    }

    private static int people(Model model, Frame frame, int from) {
        int y = from;
        List<Person> people = model.setting().job().map(j -> j.people()).orElse(List.of());
        if (people.isEmpty()) {
            return y;
        }
        frame.pen().put(1, y++, "who writes", Style.STRONG);
        for (int i = 0; i < people.size() && i < 9 && y < frame.bottom() - 5; i++) {
            Person p = people.get(i);
            boolean me = p.initials().equals(model.setting().who());
            String text = (me ? "> " : "  ") + (i + 1) + " " + p.initials() + "  " + (p.name() == null ? "" : p.name())
                    + (p.role() == null ? "" : ", " + p.role());
            frame.pen().put(1, y++, Frame.cut(Shown.text(text), frame.width() - 2), me ? Style.STRONG : Style.PLAIN);
        }
        return y + 1;
    }

    private static void shifts(Model model, Screen.Start start, Frame frame, int from) {
        int y = from;
        frame.pen().put(1, y++, heading(model), Style.STRONG);
        int rows = Math.max(1, frame.bottom() - CAUTIONS.size() - 1 - y);
        int top = start.walk().top(rows, model.shifts().size());
        for (int i = top; i < model.shifts().size() && i < top + rows; i++) {
            Msg.Row row = model.shifts().get(i);
            boolean on = i == start.walk().at();
            String text = (on ? "> " : "  ")
                    + pad(Frame.named(row.shift()), 22)
                    + pad(row.state(), 20)
                    + row.lines()
                    + (row.lines() == 1 ? " line  " : " lines  ")
                    + row.who();
            frame.pen().put(1, y++, Frame.cut(Shown.text(text), frame.width() - 2), on ? Style.CHOSEN : Style.PLAIN);
        }
    }

    private static String heading(Model model) {
        if (model.writing() && model.shifts().isEmpty()) {
            return "reading the job";
        }
        return model.shifts().isEmpty() ? "no shift yet" : "shifts";
    }

    private static void cautions(Frame frame) {
        int y = frame.bottom() - CAUTIONS.size();
        for (String line : CAUTIONS) {
            frame.pen().put(1, y++, Frame.cut(line, frame.width() - 2), Style.FAINT);
        }
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }
}
