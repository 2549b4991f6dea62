package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.desk.Canvas;
import screedbook.desk.Look;
import screedbook.desk.Style;

class TtyTest {
    private final Paper paper = new Paper();

    private static Canvas page(String text) {
        return Canvas.pen(80, 24).put(0, 0, text, Style.PLAIN).cursor(0, 0).done();
    }

    @Test
    void aDrawingIsOneWriteWithoutNulBytes() throws IOException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Painter painter = new Painter(tty);
            paper.taken();
            painter.paint(page("é ½ ° ± ² µ ─ │ ┬ ┴"), Look.NIGHT);
            assertThat(paper.taken())
                    .singleElement()
                    .asString()
                    .contains("é ½ ° ± ² µ ─ │ ┬ ┴")
                    .doesNotContain("\0");
        }
    }

    @Test
    void onlyWhatDiffersIsWritten() throws IOException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Painter painter = new Painter(tty);
            painter.paint(page("ticket 48218"), Look.NIGHT);
            paper.taken();
            painter.paint(page("ticket 48219"), Look.NIGHT);
            assertThat(paper.taken())
                    .singleElement()
                    .asString()
                    .contains("9")
                    .doesNotContain("ticket")
                    .hasSizeLessThan(60);
        }
    }

    @Test
    void afterForgettingEverythingIsWritten() throws IOException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Painter painter = new Painter(tty);
            painter.paint(page("ticket 48218"), Look.NIGHT);
            paper.taken();
            painter.forget();
            painter.paint(page("ticket 48218"), Look.NIGHT);
            assertThat(paper.taken()).singleElement().asString().contains("ticket 48218");
        }
    }

    @Test
    void withoutColourNoColourIsWritten() throws IOException {
        String colours = "(?s).*\033\\[(3[0-7]|4[0-7]|9[0-7]|10[0-7])m.*";
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Painter painter = new Painter(tty);
            Canvas.Pen pen = Canvas.pen(80, 24);
            for (Style style : Style.values()) {
                pen.put(0, style.ordinal(), style.name(), style);
            }
            paper.taken();
            painter.paint(pen.done(), Look.MONO);
            assertThat(String.join("", paper.taken())).contains("FIELD_ACTIVE").doesNotMatch(colours);
            painter.paint(pen.done(), Look.NIGHT);
            assertThat(String.join("", paper.taken())).matches(colours);
        }
    }

    @Test
    void theScreenIsTakenAndGivenBack() throws IOException {
        StubTty tty = new StubTty(new Keyboard(), paper);
        new Painter(tty);
        assertThat(String.join("", paper.taken())).contains("\033[?1049h").contains("\033[?2004h");
        tty.close();
        assertThat(String.join("", paper.taken()))
                .contains("\033[?2004l")
                .contains("\033[0m")
                .contains("\033[?25h")
                .endsWith("\033[?1049l");
    }

    @Test
    void afterTheScreenIsGivenBackNothingIsDrawnOnIt() throws IOException {
        StubTty tty = new StubTty(new Keyboard(), paper);
        Painter painter = new Painter(tty);
        tty.close();
        paper.taken();
        painter.paint(page("too late"), Look.NIGHT);
        assertThat(paper.taken()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"24 80, 80, 24", "1 1, 1, 1", "43 132, 132, 43", "0 0, 80, 24", "'', 80, 24", "no answer, 80, 24"})
    void theSizeIsWhatTheSystemSaysOrTheUsualOne(String answer, int columns, int rows) throws IOException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            tty.answerSize(answer);
            assertThat(tty.getTerminalSize()).isEqualTo(new TerminalSize(columns, rows));
        }
    }
}
