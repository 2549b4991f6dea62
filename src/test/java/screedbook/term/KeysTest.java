package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.desk.Key;
import screedbook.desk.Key.Code;

/**
 * Keys as the bytes of a terminal. Sequences: xterm's "PC-style function keys" and "VT220-style" tables in ctlseqs, rxvt's 7~ and 8~,
 * the Linux console's bracketed F1; from memory, and tried with tmux.
 */
class KeysTest {

    /** All keys of these bytes, batch after batch, until the input ends. */
    private static List<Key> keys(Keyboard keyboard) throws IOException {
        List<Key> all = new ArrayList<>();
        try (StubTty tty = new StubTty(keyboard, new Paper())) {
            for (List<Key> batch = tty.nextKeys(); !batch.isEmpty(); batch = tty.nextKeys()) {
                all.addAll(batch);
            }
        }
        return all;
    }

    private static List<Key> keys(String bytes) throws IOException {
        return keys(new Keyboard().then(bytes));
    }

    @ParameterizedTest
    @CsvSource({
        "[A, UP",
        "[B, DOWN",
        "[C, RIGHT",
        "[D, LEFT",
        "[H, HOME",
        "[F, END",
        "OH, HOME",
        "OF, END",
        "[1~, HOME",
        "[4~, END",
        "[7~, HOME",
        "[8~, END",
        "[2~, INSERT",
        "[3~, DELETE",
        "[5~, PAGE_UP",
        "[6~, PAGE_DOWN",
        "[Z, BACK_TAB",
        "OM, ENTER",
    })
    void anEscapeSequenceIsOneKey(String tail, Code code) throws IOException {
        assertThat(keys("\033" + tail)).containsExactly(Key.of(code));
    }

    @ParameterizedTest
    @CsvSource({"OP, 1", "[[A, 1", "[15~, 5", "[24~, 12"})
    void aFunctionKeyKnowsItsNumber(String tail, String number) throws IOException {
        assertThat(keys("\033" + tail)).containsExactly(new Key(Code.F, number, false, false, false));
    }

    @Test
    void heldKeysAreTold() throws IOException {
        assertThat(keys("\033[1;2A\033[1;3C\033[1;5D\033[3;5~"))
                .containsExactly(
                        new Key(Code.UP, "", false, false, true),
                        new Key(Code.RIGHT, "", false, true, false),
                        new Key(Code.LEFT, "", true, false, false),
                        new Key(Code.DELETE, "", true, false, false));
        assertThat(keys("\033x")).containsExactly(new Key(Code.CHAR, "x", false, true, false));
    }

    @Test
    void controlLettersAreKeysAndTheFourWithKeysOfTheirOwnAreThose() throws IOException {
        assertThat(keys("\u0001\u0003\u0013\u0011\u001A\u001C"))
                .containsExactly(
                        Key.ctrl("a"), Key.ctrl("c"), Key.ctrl("s"), Key.ctrl("q"), Key.ctrl("z"), Key.ctrl("\\"));
        assertThat(keys("\n\r\t\b\u007F"))
                .containsExactly(
                        Key.of(Code.ENTER),
                        Key.of(Code.ENTER),
                        Key.of(Code.TAB),
                        Key.of(Code.BACKSPACE),
                        Key.of(Code.BACKSPACE));
    }

    @Test
    void theNumberBlockTypesInBothItsModes() throws IOException {
        assertThat(keys("22.5\n")).hasSize(5);
        assertThat(keys("\033Or\033Or\033On\033Ou\033OM"))
                .containsExactly(Key.of("2"), Key.of("2"), Key.of("."), Key.of("5"), Key.of(Code.ENTER));
        assertThat(keys("\033Oj\033Ok\033Om\033Oo\033OX"))
                .containsExactly(Key.of("*"), Key.of("+"), Key.of("-"), Key.of("/"), Key.of("="));
    }

    @Test
    void signsBeyondAsciiAndBeyondTheBasicPlaneAreOneKeyEach() throws IOException {
        assertThat(keys("é½°µ")).containsExactly(Key.of("é"), Key.of("½"), Key.of("°"), Key.of("µ"));
        assertThat(keys("a\uD83D\uDE00b")).containsExactly(Key.of("a"), Key.of("\uD83D\uDE00"), Key.of("b"));
    }

    @Test
    void aPasteIsOneKeyWithItsTextWhole() throws IOException {
        assertThat(keys("1\033[200~48218\t22.31 T\nsecond ½\033[201~2"))
                .containsExactly(Key.of("1"), Key.paste("48218\t22.31 T\nsecond ½"), Key.of("2"));
        assertThat(keys("\033[200~\033[201~")).containsExactly(Key.paste(""));
    }

    @Test
    void pastedLettersAndTheirAccentsAreComposed() throws IOException {
        assertThat(keys("\033[200~Re\u0301sume\u0301\033[201~")).containsExactly(Key.paste("R\u00E9sum\u00E9"));
    }

    @Test
    void aPasteThatArrivesInPartsIsStillOneKey() throws IOException {
        assertThat(keys(new Keyboard()
                        .then("\033[200~482")
                        .soon("18 ti")
                        .soon("cket\033[20")
                        .soon("1~x")))
                .containsExactly(Key.paste("48218 ticket"), Key.of("x"));
    }

    @Test
    void aPasteThatIsOverIsNotWaitedFor() throws IOException {
        try (StubTty tty =
                new StubTty(new Keyboard().then("\033[200~482").soon("18").soon("\033[201~"), new Paper())) {
            long from = System.nanoTime();
            assertThat(tty.nextKeys()).containsExactly(Key.paste("48218"));
            assertThat(Duration.ofNanos(System.nanoTime() - from)).isLessThan(Duration.ofMillis(800));
        }
    }

    @Test
    void aPasteWhoseEndNeverComesIsHandedOverAfterAWhile() throws IOException {
        assertThat(keys(new Keyboard().then("\033[200~482").then("7"))).containsExactly(Key.paste("482"), Key.of("7"));
    }

    @ParameterizedTest
    @CsvSource({"[I", "[O", "[27;5;9~", "[97;5u", "[?62;22c", "[99~", "Ow\u0020"})
    void anUnknownSequenceIsOneUnknownKeyAndTypesNothing(String tail) throws IOException {
        List<Key> found = keys("\033" + tail + "5");
        assertThat(found.get(found.size() - 1)).isEqualTo(Key.of("5"));
        assertThat(found).noneMatch(key -> key.alt()).noneMatch(key -> key.is("[") || key.is("~"));
    }

    @Test
    void aSequenceThatArrivesInTwoPartsIsOneKey() throws IOException {
        assertThat(keys(new Keyboard().then("\033").soon("[A"))).containsExactly(Key.of(Code.UP));
        assertThat(keys(new Keyboard().then("\033[").soon("3").soon("~"))).containsExactly(Key.of(Code.DELETE));
    }

    @Test
    void aLoneEscapeIsEscape() throws IOException {
        assertThat(keys(new Keyboard().then("\033").then("["))).containsExactly(Key.of(Code.ESCAPE), Key.of("["));
        assertThat(keys("\033")).containsExactly(Key.of(Code.ESCAPE));
    }

    @Test
    void halfACharacterIsNoKeyAndNoEnd() throws IOException {
        assertThat(keys(new Keyboard().then("\uD83D\uDE00").then("x"))).hasSize(2);
        assertThat(keys("\u00851")).containsExactly(Key.of("1"));
    }
}
