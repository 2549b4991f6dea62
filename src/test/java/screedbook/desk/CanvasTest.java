package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CanvasTest {
    private static final int[] PLACES = IntStream.concat(
                    IntStream.rangeClosed(-9, 12), IntStream.of(Integer.MIN_VALUE, Integer.MAX_VALUE))
            .toArray();

    private static Canvas.Pen pen() {
        return Canvas.pen(7, 3);
    }

    @Test
    void textIsClippedAtEveryBorderForAllPlaces() {
        String text = "abcdefgh";
        for (int x : PLACES) {
            for (int y : PLACES) {
                Canvas drawn = pen().put(x, y, text, Style.MARK).done();
                for (int row = 0; row < 3; row++) {
                    for (int column = 0; column < 7; column++) {
                        long letter = (long) column - x;
                        boolean hit = row == y && letter >= 0 && letter < text.length();
                        assertThat(drawn.at(column, row)).isEqualTo(hit ? text.charAt((int) letter) : ' ');
                        assertThat(drawn.style(column, row)).isEqualTo(hit ? Style.MARK : Style.PLAIN);
                    }
                }
            }
        }
    }

    @Test
    void blocksAndStretchesAreClippedForAllPlaces() {
        for (int x : PLACES) {
            for (int y : PLACES) {
                Canvas filled = pen().fill(x, y, 2, 2, '#', Style.PICTURE).done();
                for (int column = 0; column < 7; column++) {
                    for (int row = 0; row < 3; row++) {
                        boolean across = column >= x && column < (long) x + 2;
                        boolean inside = across && row >= y && row < (long) y + 2;
                        assertThat(filled.at(column, row)).isEqualTo(inside ? '#' : ' ');
                    }
                }
            }
        }
    }

    @Test
    void negativeAndHugeExtentsAreHarmless() {
        assertThat(pen().fill(0, 0, -1, 5, '#', Style.PLAIN).done().text()).isEqualTo("\n\n");
        assertThat(pen().fill(-3, -3, Integer.MAX_VALUE, Integer.MAX_VALUE, '#', Style.PLAIN)
                        .done()
                        .text())
                .isEqualTo("#######\n#######\n#######");
        assertThat(Canvas.pen(-1, 4).put(0, 0, "x", Style.PLAIN).done().width()).isZero();
    }

    @Test
    void theCursorStandsInsideOrNowhere() {
        for (int x : PLACES) {
            for (int y : PLACES) {
                Canvas drawn = pen().cursor(x, y).done();
                boolean inside = x >= 0 && x < 7 && y >= 0 && y < 3;
                assertThat(drawn.cursorX()).isEqualTo(inside ? x : -1);
                assertThat(drawn.cursorY()).isEqualTo(inside ? y : -1);
            }
        }
    }

    @Test
    void aDrawingDoesNotChangeWhenItsPenGoesOn() {
        Canvas.Pen pen = pen().put(0, 0, "before", Style.PLAIN);
        Canvas drawn = pen.done();
        pen.put(0, 0, "after", Style.PLAIN);
        assertThat(drawn.row(0)).isEqualTo("before ");
    }

    @Test
    void equalDrawingsAreEqual() {
        assertThat(pen().put(1, 1, "x", Style.MARK).done())
                .isEqualTo(pen().put(1, 1, "x", Style.MARK).done())
                .hasSameHashCodeAs(pen().put(1, 1, "x", Style.MARK).done())
                .isNotEqualTo(pen().put(1, 1, "x", Style.PLAIN).done())
                .isNotEqualTo(pen().put(1, 1, "x", Style.MARK).cursor(0, 0).done());
    }

    @Test
    void everyColumnStaysWhereItBelongs() {
        assertThat(Canvas.pen(12, 1)
                        .put(0, 0, "a\tb\u0301c\u200Bd\uD83D\uDE00\u4E16e\033[m", Style.PLAIN)
                        .done()
                        .row(0))
                .isEqualTo("a?b?c?d??e?[");
        assertThat(Canvas.pen(6, 1)
                        .put(0, 0, "\uD83D|\uDE00|", Style.PLAIN)
                        .done()
                        .text())
                .isEqualTo("?|?|");
        assertThat(Canvas.pen(3, 1).fill(0, 0, 3, 1, '\n', Style.PLAIN).done().text())
                .isEqualTo("???");
    }

    @Test
    void whatTheDeskDrawsWithTakesOneColumn() {
        IntStream.concat(
                        IntStream.concat(IntStream.rangeClosed(0x20, 0x7E), "°²±½éµ·×–—’“”…€≤≥".chars()),
                        IntStream.rangeClosed(0x2500, 0x259F))
                .forEach(point ->
                        assertThat(OneColumn.test(point)).as("U+%04X", point).isTrue());
    }

    /** Unicode 14.0, EastAsianWidth.txt, first and last of each run of W or F below U+10000, read through Python 3.11's unicodedata. */
    @Test
    void noWideCharacterPassesForOneColumn() {
        int[][] wide = {
            {0x1100, 0x115F}, {0x231A, 0x231B}, {0x2329, 0x232A}, {0x23E9, 0x23EC}, {0x23F0, 0x23F0},
            {0x23F3, 0x23F3}, {0x25FD, 0x25FE}, {0x2614, 0x2615}, {0x2648, 0x2653}, {0x267F, 0x267F},
            {0x2693, 0x2693}, {0x26A1, 0x26A1}, {0x26AA, 0x26AB}, {0x26BD, 0x26BE}, {0x26C4, 0x26C5},
            {0x26CE, 0x26CE}, {0x26D4, 0x26D4}, {0x26EA, 0x26EA}, {0x26F2, 0x26F3}, {0x26F5, 0x26F5},
            {0x26FA, 0x26FA}, {0x26FD, 0x26FD}, {0x2705, 0x2705}, {0x270A, 0x270B}, {0x2728, 0x2728},
            {0x274C, 0x274C}, {0x274E, 0x274E}, {0x2753, 0x2755}, {0x2757, 0x2757}, {0x2795, 0x2797},
            {0x27B0, 0x27B0}, {0x27BF, 0x27BF}, {0x2B1B, 0x2B1C}, {0x2B50, 0x2B50}, {0x2B55, 0x2B55},
            {0x2E80, 0x303E}, {0x3041, 0x3247}, {0x3250, 0x4DBF}, {0x4E00, 0xA4C6}, {0xA960, 0xA97C},
            {0xAC00, 0xD7A3}, {0xF900, 0xFAD9}, {0xFE10, 0xFE19}, {0xFE30, 0xFE6B}, {0xFF01, 0xFF60},
            {0xFFE0, 0xFFE6},
        };
        for (int[] run : wide) {
            IntStream.rangeClosed(run[0], run[1])
                    .forEach(point -> assertThat(OneColumn.test(point))
                            .as("U+%04X", point)
                            .isFalse());
        }
    }

    @Test
    void aCellOutsideCannotBeRead() {
        assertThatThrownBy(() -> pen().done().at(7, 0)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> pen().done().row(3)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
