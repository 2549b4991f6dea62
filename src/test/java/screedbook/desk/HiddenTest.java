package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import screedbook.entry.Kind;
import screedbook.entry.Shown;

/**
 * Whatever is typed or pasted, no character without a shape of its own and none that can drive a terminal reaches a cell;
 * it stands there as its number. Which those are: the general categories of the Unicode Character Database as Java has
 * them, and the fillers and selectors that {@link Shown#hidden} names.
 */
class HiddenTest {
    /** Control, format and separators whole; of the large classes one in some hundreds; selectors and fillers by name. */
    private static final List<Integer> POINTS = IntStream.concat(
                    IntStream.rangeClosed(0, Character.MAX_CODE_POINT).filter(HiddenTest::sampled),
                    IntStream.of(
                            0x034F, 0x115F, 0x1160, 0x2800, 0x3164, 0xFE00, 0xFE0F, 0xFFA0, 0xE0100, 0xE01EF, 0xD800,
                            0xDBFF, 0xDC00, 0xDFFF, 0xE000, 0xF8FF, 0xFFFF, 0x10FFFF))
            .boxed()
            .toList();

    private static boolean sampled(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> true;
            case Character.SURROGATE -> point % 97 == 0;
            case Character.UNASSIGNED, Character.PRIVATE_USE -> point % 4001 == 0;
            default -> false;
        };
    }

    private static Model pasted(Model model, String text) {
        return Update.of(model, new Msg.Struck(Key.paste(text))).model();
    }

    /** Question marks on the screen: the canvas puts one where a character takes no column or two. */
    private static long asked(Model model) {
        return View.of(model, 132, 43).text().chars().filter(c -> c == '?').count();
    }

    private static void clean(DeskRig rig, String as) {
        clean(rig.model(), as);
    }

    @Test
    void theSampleHoldsEveryHiddenClass() {
        assertThat(POINTS).hasSizeGreaterThan(450).contains(0x1B, 0x9B, 0x202E, 0x200B, 0x2028, 0x2029, 0xFEFF);
        assertThat(POINTS.stream().map(Character::getType).distinct().toList())
                .contains(
                        (int) Character.CONTROL,
                        (int) Character.FORMAT,
                        (int) Character.SURROGATE,
                        (int) Character.LINE_SEPARATOR,
                        (int) Character.PARAGRAPH_SEPARATOR,
                        (int) Character.UNASSIGNED,
                        (int) Character.PRIVATE_USE);
    }

    /** The blank is gone to, the character pasted into it, its number read off the screen, and all taken away again. */
    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"OPENING", "AMEND", "CLOCK", "PLAN", "SET_ASIDE"},
            mode = EnumSource.Mode.EXCLUDE)
    void noBlankOfAFormShowsAHiddenCharacterRaw(Kind kind) {
        DeskRig rig = DeskRig.open();
        Model begun = ShiftKeys.begin(rig.model(), kind).model();
        int blanks = ((Screen.Keying) begun.top()).form().inputs().size();
        for (int at = 0; at < blanks; at++) {
            Form form = ((Screen.Keying) begun.top()).form().at(at);
            for (int i = at; i < POINTS.size(); i += blanks) {
                int point = POINTS.get(i);
                String as = kind + " " + form.active().name() + " " + point;
                Model typed = begun.top(new Screen.Keying(form));
                Model plain = typed;
                for (String text : List.of("%s", "a%sb")) {
                    typed = pasted(typed, String.format(text, Character.toString(point)));
                    plain = pasted(plain, String.format(text, "q"));
                    clean(typed, as);
                    assertThat(asked(typed))
                            .as(as + ": a cell that could not hold what it was given")
                            .isEqualTo(asked(plain));
                }
            }
        }
    }

    private static void clean(Model model, String as) {
        for (int[] size : new int[][] {{132, 43}, {24, 9}}) {
            Canvas canvas = View.of(model, size[0], size[1]);
            for (int y = 0; y < canvas.height(); y++) {
                for (int x = 0; x < canvas.width(); x++) {
                    char c = canvas.at(x, y);
                    if (Shown.hidden(c) || !OneColumn.test(c)) {
                        throw new AssertionError(String.format("%s: U+%04X at %d,%d", as, (int) c, x, y));
                    }
                }
            }
        }
    }

    /** The canvas would put a question mark for what it cannot hold; here the number stands, so nothing was lost on the way. */
    @Test
    void everyHiddenCharacterOfANoteStandsAsItsNumberWhileTypedAndInEveryListAfterwards() {
        for (int point : POINTS) {
            if (point == '\t' || point == '\n' || point == '\r') {
                continue;
            }
            String number = String.format("<U+%04X>", point);
            DeskRig rig = DeskRig.open().keys("n").key(Key.paste("x" + Character.toString(point) + "y"));
            assertThat(rig.screen()).contains("x" + number + "y");
            rig.keys("<C-s>");
            assertThat(rig.screen()).as("shift").contains("x" + number + "y");
            rig.keys("<down><enter>");
            assertThat(rig.screen()).as("entry").contains("x" + number + "y");
        }
    }

    @Test
    void wordsLookedForAndFoldersAndSentencesOfTheDiskAreShownSafely() {
        for (int point : POINTS) {
            String text = "a" + Character.toString(point) + "b";
            String as = Integer.toHexString(point);
            DeskRig rig = DeskRig.open();
            clean(rig.keys("/").key(Key.paste(text)), as);
            rig.send(new Msg.Found(text, List.of()));
            clean(rig, as);
            clean(rig.keys("<esc><C-f>").key(Key.paste(text)), as);
            rig.send(new Msg.Refused(text));
            clean(rig, as);
            rig.send(new Msg.Said(text));
            clean(rig, as);
            assertThat(rig.canvas(80, 24).row(22)).contains(String.format("<U+%04X>", point));
        }
    }
}
