package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Field;
import screedbook.entry.Shown;

/** A plant's own list on its way in: where it lies, then which of its columns is which. */
final class PlantView {
    private static final int LABEL = 19;
    private static final int VALUE = 24;

    private PlantView() {}

    static void file(Frame frame, Screen.PlantFile file) {
        int y = frame.top();
        text(frame, y, "The list is copied as it comes and laid beside the shift; it changes no entry.", Style.PLAIN);
        text(frame, y + 2, "plant   " + (file.plant().isEmpty() ? "not noted" : file.plant()), Style.PLAIN);
        frame.pen().put(1, y + 3, "file", Style.PLAIN);
        String typed = Shown.text(file.typed());
        int room = Math.max(1, frame.width() - 11);
        String seen = typed.length() < room ? typed : typed.substring(typed.length() - room + 1);
        frame.pen().fill(9, y + 3, room, 1, '_', Style.FIELD_ACTIVE);
        frame.pen().put(9, y + 3, seen, Style.FIELD_ACTIVE);
        frame.pen().cursor(Math.min(9 + seen.length(), frame.width() - 2), y + 3);
    }

    private static void text(Frame frame, int y, String text, Style style) {
        frame.pen().put(1, y, Frame.cut(Shown.text(text), frame.width() - 2), style);
    }

    static void columns(Frame frame, Screen.PlantColumns screen) {
        int y = frame.top();
        text(
                frame,
                y,
                "list of " + screen.asked().plant() + "  " + screen.asked().path(),
                Style.STRONG);
        List<Field> fields = PlantKeys.fields();
        int room = Math.max(1, frame.bottom() - y - 6);
        int top = screen.walk().top(room, fields.size());
        for (int i = top; i < fields.size() && i - top < room; i++) {
            row(
                    frame,
                    y + 2 + i - top,
                    screen,
                    fields.get(i),
                    i == screen.walk().at());
        }
        foot(frame, screen, frame.bottom() - 4);
    }

    private static void row(Frame frame, int y, Screen.PlantColumns screen, Field field, boolean walked) {
        Style style = walked ? Style.CHOSEN : Style.PLAIN;
        if (walked) {
            frame.pen().fill(0, y, frame.width(), 1, ' ', Style.CHOSEN);
        }
        String value = screen.chosen().getOrDefault(field.name(), "-");
        String line =
                (walked ? ">" : " ") + ListView.pad(field.label(), LABEL) + ListView.pad(Shown.text(value), VALUE);
        String offered = PlantKeys.offered(screen, field)
                .map(o -> "  perhaps " + Shown.text(o))
                .orElse("");
        frame.pen().put(0, y, Frame.cut(line + offered, frame.width()), style);
    }

    /** What may be chosen for the row walked to, and what the list has in the chosen column. */
    private static void foot(Frame frame, Screen.PlantColumns screen, int y) {
        Field field = PlantKeys.field(screen);
        List<String> lines = new ArrayList<>();
        lines.addAll(Frame.wrapped(Shown.text(Picks.line(PlantKeys.choices(screen, field))), frame.width() - 2));
        while (lines.size() > 2) {
            lines.remove(lines.size() - 1);
        }
        lines.add(Shown.text(field.help()));
        String chosen = screen.chosen().get(field.name());
        int at = chosen == null ? -1 : screen.asked().heading().indexOf(chosen);
        if (at >= 0 && !field.type().isEnum()) {
            List<String> cells = new ArrayList<>();
            screen.asked().rows().forEach(r -> cells.add(at < r.size() ? r.get(at) : ""));
            lines.add("in its first rows: " + Shown.text(String.join(" | ", cells)));
        }
        for (int i = 0; i < lines.size() && y + i < frame.bottom(); i++) {
            frame.pen().put(1, y + i, Frame.cut(lines.get(i), frame.width() - 2), Style.FAINT);
        }
    }
}
