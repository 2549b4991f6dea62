package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text made safe to look at, tried with every code point there is. */
class ShownTest {
    /**
     * Code points that are drawn as nothing: the property Default_Ignorable_Code_Point of the Unicode Character Database,
     * version 14, as Perl 5.36 prints it ({@code \p{Default_Ignorable_Code_Point}} over all code points).
     */
    private static final int[][] IGNORABLE = {
        {0x00AD, 0x00AD}, {0x034F, 0x034F}, {0x061C, 0x061C}, {0x115F, 0x1160}, {0x17B4, 0x17B5},
        {0x180B, 0x180F}, {0x200B, 0x200F}, {0x202A, 0x202E}, {0x2060, 0x206F}, {0x3164, 0x3164},
        {0xFE00, 0xFE0F}, {0xFEFF, 0xFEFF}, {0xFFA0, 0xFFA0}, {0xFFF0, 0xFFF8}, {0x1BCA0, 0x1BCA3},
        {0x1D173, 0x1D17A}, {0xE0000, 0xE0FFF}
    };

    @Test
    void nothingThatUnicodeDrawsAsNothingPasses() {
        List<String> passed = new ArrayList<>();
        for (int[] range : IGNORABLE) {
            for (int c = range[0]; c <= range[1]; c++) {
                if (!Shown.text("T" + Character.toString(c) + "4").equals(String.format("T<U+%04X>4", c))) {
                    passed.add(String.format("U+%04X", c));
                }
            }
        }
        assertThat(passed).isEmpty();
    }

    @Test
    void everyCodePointIsJudgedByItsClass() {
        List<String> wrong = new ArrayList<>();
        for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
            boolean must = switch (Character.getType(c)) {
                case Character.CONTROL,
                        Character.FORMAT,
                        Character.SURROGATE,
                        Character.LINE_SEPARATOR,
                        Character.PARAGRAPH_SEPARATOR,
                        Character.UNASSIGNED,
                        Character.PRIVATE_USE -> true;
                case Character.SPACE_SEPARATOR -> c != 0x20;
                default -> ignorable(c) || c == 0x2800;
            };
            if (Shown.hidden(c) != must) {
                wrong.add(String.format("U+%04X", c));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static boolean ignorable(int c) {
        for (int[] range : IGNORABLE) {
            if (c >= range[0] && c <= range[1]) {
                return true;
            }
        }
        return false;
    }

    @Test
    void whatCameOutHasNothingHiddenInIt() {
        StringBuilder all = new StringBuilder();
        for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
            all.appendCodePoint(c);
        }
        String shown = Shown.text(all.toString());
        assertThat(shown.codePoints().noneMatch(Shown::hidden)).isTrue();
        assertThat(Shown.text(shown)).isSameAs(shown);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "é ñ ° ² ±", "Höhe Łódź", "│─┼", "12+50.5 <U+0041>", "=1+2", "Кран", "道路"})
    void whatCanBeSeenStaysAndIsTheSameObject(String text) {
        assertThat(Shown.text(text)).isSameAs(text);
    }

    @ParameterizedTest(name = "row 94: {0} is shown as {1}")
    @CsvSource({
        "9, <U+0009>",
        "10, <U+000A>",
        "13, <U+000D>",
        "27, <U+001B>",
        "0, <U+0000>",
        "127, <U+007F>",
        "155, <U+009B>",
        "160, <U+00A0>",
        "8203, <U+200B>",
        "8238, <U+202E>",
        "8294, <U+2066>",
        "8232, <U+2028>",
        "12288, <U+3000>",
        "65279, <U+FEFF>",
        "57344, <U+E000>",
        "917569, <U+E0041>",
        "1114111, <U+10FFFF>"
    })
    void whatCannotBeSeenIsNamed(int codePoint, String shown) {
        assertThat(Shown.text("a" + Character.toString(codePoint) + "b")).isEqualTo("a" + shown + "b");
    }

    @Test
    @DisplayName("row 94: half of a pair of code units is named, a whole pair stays")
    void aLoneSurrogateIsNamed() {
        assertThat(Shown.text("a\uD83Db")).isEqualTo("a<U+D83D>b");
        assertThat(Shown.text("\uDE00")).isEqualTo("<U+DE00>");
        assertThat(Shown.text("\uD83D\uDE00")).isEqualTo("\uD83D\uDE00");
    }
}
