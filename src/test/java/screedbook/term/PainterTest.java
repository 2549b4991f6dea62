package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import screedbook.desk.Canvas;
import screedbook.desk.Look;
import screedbook.desk.Style;

class PainterTest {
    private final DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(20, 4));

    private String row(int y) {
        StringBuilder row = new StringBuilder();
        for (int x = 0; x < terminal.getTerminalSize().getColumns(); x++) {
            row.append(terminal.getCharacter(x, y).getCharacterString());
        }
        return row.toString().stripTrailing();
    }

    private static Canvas page(int width, int height) {
        return Canvas.pen(width, height)
                .put(0, 0, "ticket 48218", Style.HEAD)
                .put(2, 1, "22.31 T °F ½", Style.FIELD_ACTIVE)
                .cursor(3, 1)
                .done();
    }

    @Test
    void theTerminalShowsTheDrawingAndItsCursor() throws IOException {
        Painter painter = new Painter(terminal);
        painter.paint(page(20, 4), Look.MONO);
        assertThat(row(0)).isEqualTo("ticket 48218");
        assertThat(row(1)).isEqualTo("  22.31 T °F ½");
        assertThat(terminal.getCursorPosition()).isEqualTo(new TerminalPosition(3, 1));
        assertThat(terminal.getCharacter(2, 1).getModifiers()).containsExactly(SGR.REVERSE);
        assertThat(terminal.getCharacter(1, 1).getModifiers()).isEmpty();
    }

    @Test
    void aSmallerDrawingLeavesNothingOfTheOneBefore() throws IOException {
        Painter painter = new Painter(terminal);
        painter.paint(page(20, 4), Look.NIGHT);
        painter.paint(Canvas.pen(3, 1).put(0, 0, "abcdef", Style.PLAIN).done(), Look.NIGHT);
        assertThat(row(0)).isEqualTo("abc");
        assertThat(row(1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1,1", "1,4", "20,1", "2,2", "132,43", "5,3"})
    void anySizeIsPaintedAndTheFormerOneComesBackWhole(int columns, int rows) throws IOException {
        Painter painter = new Painter(terminal);
        painter.paint(page(20, 4), Look.SUN);
        terminal.setTerminalSize(new TerminalSize(columns, rows));
        assertThat(painter.measure()).isEqualTo(new TerminalSize(columns, rows));
        painter.paint(page(20, 4), Look.SUN);
        assertThat(row(0))
                .isEqualTo("ticket 48218".substring(0, Math.min(columns, 12)).stripTrailing());
        terminal.setTerminalSize(new TerminalSize(20, 4));
        painter.measure();
        painter.paint(page(20, 4), Look.SUN);
        assertThat(row(0)).isEqualTo("ticket 48218");
        assertThat(row(1)).isEqualTo("  22.31 T °F ½");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void whatMustStandOutDiffersFromOrdinaryTextInEveryLook(Look look) {
        TextCharacter plain = Palette.blank(look, Style.PLAIN);
        assertThat(Palette.blank(look, Style.MARK)).isNotEqualTo(plain);
        assertThat(Palette.blank(look, Style.ALERT)).isNotEqualTo(plain);
        assertThat(Palette.blank(look, Style.CHOSEN)).isNotEqualTo(plain);
        assertThat(Palette.blank(look, Style.FIELD)).isNotEqualTo(plain);
        assertThat(Palette.blank(look, Style.FIELD_ACTIVE))
                .isNotEqualTo(plain)
                .isNotEqualTo(Palette.blank(look, Style.FIELD))
                .isNotEqualTo(Palette.blank(look, Style.CARRIED));
    }

    /**
     * Contrast ratio (L1 + 0.05) / (L2 + 0.05) of at least 4.5 for ordinary text: WCAG 2.1, success criterion 1.4.3, from memory; relative
     * luminance: WCAG 2.2, definition of relative luminance, read. The colours are those that the terminal library gives for the sixteen
     * names; a terminal may be set to others.
     */
    @ParameterizedTest
    @EnumSource(Style.class)
    void everyColourStandsOutFromItsGround(Style style) {
        for (Look look : new Look[] {Look.NIGHT, Look.SUN}) {
            TextCharacter cell = Palette.blank(look, style);
            double text = luminance(cell.getForegroundColor());
            double ground = luminance(cell.getBackgroundColor());
            double ratio = (Math.max(text, ground) + 0.05) / (Math.min(text, ground) + 0.05);
            assertThat(ratio).as("%s %s", look, style).isGreaterThanOrEqualTo(4.5);
        }
    }

    /** What WCAG's own extremes come to, so that the check above is known to measure. */
    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        double ratio = (luminance(TextColor.ANSI.WHITE_BRIGHT) + 0.05) / (luminance(TextColor.ANSI.BLACK) + 0.05);
        assertThat(ratio).isCloseTo(21.0, within(0.01));
    }

    private static double luminance(TextColor colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int eightBits) {
        double part = eightBits / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
