package screedbook.desk;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Kind;
import screedbook.entry.Source;

/**
 * Everything that the desk knows, as a value.
 *
 * @param screens what lies on the desk, the topmost last; never empty
 * @param halfTyped entries that were begun and not written
 * @param source whether entries are keyed live or from notes
 * @param writing whether the disk has not answered yet
 * @param over whether the program is to end
 */
public record Model(
        Setting setting,
        List<String> troubles,
        List<Msg.Row> shifts,
        Shift shift,
        List<Screen> screens,
        Map<Kind, Form> halfTyped,
        Source source,
        Notice notice,
        OffsetDateTime now,
        int width,
        int height,
        boolean writing,
        boolean over) {
    /** The desk before anything was told. */
    public static Model start(Setting setting) {
        return new Model(
                setting,
                List.of(),
                List.of(),
                null,
                List.of(new Screen.Start(Walk.FIRST, "")),
                Map.of(),
                Source.LIVE,
                Notice.NONE,
                null,
                80,
                24,
                false,
                false);
    }

    public Screen top() {
        return screens.get(screens.size() - 1);
    }

    Model with(Setting other) {
        return new Model(
                other, troubles, shifts, shift, screens, halfTyped, source, notice, now, width, height, writing, over);
    }

    Model with(List<String> said, List<Msg.Row> rows) {
        return new Model(
                setting, said, rows, shift, screens, halfTyped, source, notice, now, width, height, writing, over);
    }

    Model with(Shift other) {
        return new Model(
                setting, troubles, shifts, other, screens, halfTyped, source, notice, now, width, height, writing,
                over);
    }

    Model screens(List<Screen> others) {
        return new Model(
                setting,
                troubles,
                shifts,
                shift,
                List.copyOf(others),
                halfTyped,
                source,
                notice,
                now,
                width,
                height,
                writing,
                over);
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
        Map<Kind, Form> others = new EnumMap<>(Kind.class);
        others.putAll(halfTyped);
        others.put(form.slot(), form);
        return halfTyped(others);
    }

    Model dropped(Kind kind) {
        Map<Kind, Form> others = new EnumMap<>(Kind.class);
        others.putAll(halfTyped);
        others.remove(kind);
        return halfTyped(others);
    }

    Model halfTyped(Map<Kind, Form> others) {
        return new Model(
                setting, troubles, shifts, shift, screens, others, source, notice, now, width, height, writing, over);
    }

    Model with(Source other) {
        return new Model(
                setting, troubles, shifts, shift, screens, halfTyped, other, notice, now, width, height, writing, over);
    }

    Model with(Notice other) {
        return new Model(
                setting, troubles, shifts, shift, screens, halfTyped, source, other, now, width, height, writing, over);
    }

    Model at(OffsetDateTime time) {
        return new Model(
                setting, troubles, shifts, shift, screens, halfTyped, source, notice, time, width, height, writing,
                over);
    }

    Model size(int w, int h) {
        return new Model(
                setting, troubles, shifts, shift, screens, halfTyped, source, notice, now, w, h, writing, over);
    }

    Model writing(boolean is) {
        return new Model(
                setting, troubles, shifts, shift, screens, halfTyped, source, notice, now, width, height, is, over);
    }

    Model ended() {
        return new Model(
                setting, troubles, shifts, shift, screens, halfTyped, source, notice, now, width, height, writing,
                true);
    }

    Model say(String text) {
        return with(Notice.of(text));
    }

    Model alert(String text) {
        return with(Notice.alert(text));
    }
}
