package screedbook.desk;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import screedbook.entry.Kind;
import screedbook.entry.Source;

/**
 * Everything that the desk knows, as a value.
 *
 * @param troubles sentences about a job file that cannot be read
 * @param sheet the job sheet while it lies on the desk; null when it does not
 * @param screens what lies on the desk, the topmost last; never empty
 * @param halfTyped entries that were begun and not written; corrections under their own kind
 * @param source whether entries are keyed live or from notes
 * @param writing whether the disk has not answered yet
 * @param ahead keys struck while the disk had not answered; they are taken when it has
 * @param over whether the program is to end
 */
public record Model(
        Setting setting,
        List<String> troubles,
        List<Msg.Row> shifts,
        Shift shift,
        Sheet sheet,
        List<Screen> screens,
        Map<Kind, Form> halfTyped,
        Source source,
        Notice notice,
        OffsetDateTime now,
        int width,
        int height,
        boolean writing,
        List<Key> ahead,
        boolean over) {
    /** The desk before anything was told: it waits for the disk to tell of the job. */
    public static Model start(Setting setting) {
        return new Model(
                setting,
                List.of(),
                List.of(),
                null,
                null,
                List.of(new Screen.Start(Walk.FIRST, "")),
                Map.of(),
                Source.LIVE,
                Notice.NONE,
                null,
                80,
                24,
                true,
                List.of(),
                false);
    }

    /** A copy in the making: what is not set stays as it was. */
    private static final class Copy {
        private Setting setting;
        private List<String> troubles;
        private List<Msg.Row> shifts;
        private Shift shift;
        private Sheet sheet;
        private List<Screen> screens;
        private Map<Kind, Form> halfTyped;
        private Source source;
        private Notice notice;
        private OffsetDateTime now;
        private int width;
        private int height;
        private boolean writing;
        private List<Key> ahead;
        private boolean over;

        Copy(Model of) {
            setting = of.setting;
            troubles = of.troubles;
            shifts = of.shifts;
            shift = of.shift;
            sheet = of.sheet;
            screens = of.screens;
            halfTyped = of.halfTyped;
            source = of.source;
            notice = of.notice;
            now = of.now;
            width = of.width;
            height = of.height;
            writing = of.writing;
            ahead = of.ahead;
            over = of.over;
        }

        Model done() {
            return new Model(
                    setting, troubles, shifts, shift, sheet, screens, halfTyped, source, notice, now, width, height,
                    writing, ahead, over);
        }
    }

    private Model but(Consumer<Copy> change) {
        Copy copy = new Copy(this);
        change.accept(copy);
        return copy.done();
    }

    public Screen top() {
        return screens.get(screens.size() - 1);
    }

    Model with(Setting other) {
        return but(c -> c.setting = other);
    }

    Model with(List<String> said, List<Msg.Row> rows) {
        return but(c -> {
            c.troubles = said;
            c.shifts = rows;
        });
    }

    Model with(Shift other) {
        return but(c -> c.shift = other);
    }

    /** With another job sheet on the desk; null puts it away. */
    Model with(Sheet other) {
        return but(c -> c.sheet = other);
    }

    Model screens(List<Screen> others) {
        return but(c -> c.screens = List.copyOf(others));
    }

    /** With the topmost screen in another state. */
    Model top(Screen screen) {
        List<Screen> others = new ArrayList<>(screens);
        others.set(others.size() - 1, screen);
        return screens(others);
    }

    Model push(Screen screen) {
        List<Screen> others = new ArrayList<>(screens);
        others.add(screen);
        return screens(others);
    }

    /** Without the topmost screen; the last one stays. */
    Model pop() {
        return screens.size() == 1 ? this : screens(screens.subList(0, screens.size() - 1));
    }

    Model halfTyped(Form form) {
        Map<Kind, Form> others = forms();
        others.put(form.slot(), form);
        return halfTyped(others);
    }

    Model dropped(Kind kind) {
        Map<Kind, Form> others = forms();
        others.remove(kind);
        return halfTyped(others);
    }

    private Map<Kind, Form> forms() {
        Map<Kind, Form> others = new EnumMap<>(Kind.class);
        others.putAll(halfTyped);
        return others;
    }

    Model halfTyped(Map<Kind, Form> others) {
        return but(c -> c.halfTyped = others);
    }

    Model with(Source other) {
        return but(c -> c.source = other);
    }

    Model with(Notice other) {
        return but(c -> c.notice = other);
    }

    Model at(OffsetDateTime time) {
        return but(c -> c.now = time);
    }

    Model size(int w, int h) {
        return but(c -> {
            c.width = w;
            c.height = h;
        });
    }

    /** Waiting for the disk, or not any more. */
    Model writing(boolean is) {
        return but(c -> c.writing = is);
    }

    Model ahead(List<Key> keys) {
        return but(c -> c.ahead = List.copyOf(keys));
    }

    Model ended() {
        return but(c -> c.over = true);
    }

    Model say(String text) {
        return with(Notice.of(text));
    }

    Model alert(String text) {
        return with(Notice.alert(text));
    }
}
