package screedbook.term;

import java.time.Clock;
import java.util.List;
import screedbook.desk.Canvas;
import screedbook.desk.Key;
import screedbook.desk.Key.Code;
import screedbook.desk.Look;
import screedbook.desk.Style;

/** The smallest program for a real terminal: it shows what was typed, its own process number, and how large it is drawn. */
final class SmallDesk {
    private SmallDesk() {}

    /** What was typed, and whether that is all. */
    record Typed(String text, boolean over) {}

    public static void main(String[] args) throws Exception {
        Sitting.hold(program(), (effect, post) -> {}, () -> {}, Clock.systemDefaultZone());
        System.out.println("small desk closed");
    }

    static Program<Typed, Object, Void> program() {
        return new Program<>(
                new Program.Step<>(new Typed("", false), List.of()),
                (typed, message) ->
                        new Program.Step<>(message instanceof Key key ? after(typed, key) : typed, List.of()),
                SmallDesk::draw,
                typed -> Look.NIGHT,
                Typed::over,
                key -> key,
                minute -> minute,
                (width, height) -> width + "x" + height);
    }

    private static Typed after(Typed typed, Key key) {
        if (key.is(Code.ESCAPE)) {
            return new Typed(typed.text(), true);
        }
        if (key.is("!")) {
            throw new IllegalStateException("struck !");
        }
        return new Typed(typed.text() + (key.text().isEmpty() ? "<" + key.code() + ">" : key.text()), false);
    }

    private static Canvas draw(Typed typed, int width, int height) {
        return Canvas.pen(width, height)
                .put(0, 0, "small desk " + ProcessHandle.current().pid() + " " + width + "x" + height, Style.HEAD)
                .put(0, 1, "typed " + typed.text(), Style.FIELD_ACTIVE)
                .cursor(6 + typed.text().length(), 1)
                .done();
    }
}
