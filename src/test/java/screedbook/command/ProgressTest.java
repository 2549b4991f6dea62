package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
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

    /** A terminal that shows both, and a clock that goes on by a second whenever it is looked at. */
    @Test
    void theLineOfATerminalIsWipedBeforeAPageAndHasNoSignsInIt() {
        ByteArrayOutputStream terminal = new ByteArrayOutputStream();
        Clock clock = new Clock() {
            @Override
            public ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
                return this;
            }

            @Override
            public Instant instant() {
                now = now.plusSeconds(1);
                return now;
            }
        };

        for (String[] words :
                List.of(new String[] {"season", "demo-logs"}, new String[] {"find", "demo-logs", "--truck", "T104"})) {
            terminal.reset();
            assertThat(Commands.run(words, terminal, terminal, clock, true)).isZero();

            String seen = terminal.toString(UTF_8);
            assertThat(seen).contains("\r2 of 7 shifts, 28 %, about ").doesNotContain("<U+000D>");
            assertThat(seen).as("what stands behind it before it is wiped").doesNotContainPattern("s left *[^ \r]");
        }
    }
}
