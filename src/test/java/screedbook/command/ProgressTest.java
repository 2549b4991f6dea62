package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** What long work says at a terminal, with a clock that the test moves. */
class ProgressTest {
    private final StringWriter out = new StringWriter();
    private Instant now = Instant.parse("2026-06-05T12:00:00Z");

    @Test
    void shortWorkSaysNothing() {
        Progress progress = new Progress(new PrintWriter(out), 2, () -> now);
        progress.one();
        progress.one();
        progress.end();

        assertThat(out.toString()).isEmpty();
    }

    @Test
    void longWorkSaysWhatIsLeftAndWipesItAway() {
        Progress progress = new Progress(new PrintWriter(out), 8, () -> now);
        for (int i = 0; i < 2; i++) {
            now = now.plusSeconds(1);
            progress.one();
        }
        progress.end();

        assertThat(out.toString())
                .startsWith("\r2 of 8 shifts, 25 %, about 6 s left")
                .endsWith("\r" + " ".repeat(60) + "\r");
    }

    @Test
    void nobodyIsToldWhereNobodyLooksOn() {
        Progress progress = new Progress(null, 1, () -> now);
        now = now.plusSeconds(60);
        progress.one();
        progress.end();

        assertThat(out.toString()).isEmpty();
    }
}
