package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** What came of a command: its exit code and both outputs. */
record Said(int exit, String out, String err) {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-05T12:00:00Z"), ZoneOffset.UTC);

    static Said by(Object... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] typed = new String[words.length];
        for (int i = 0; i < words.length; i++) {
            typed[i] = words[i].toString();
        }
        int exit = Commands.run(typed, out, err, CLOCK);
        return new Said(exit, out.toString(UTF_8), err.toString(UTF_8));
    }
}
