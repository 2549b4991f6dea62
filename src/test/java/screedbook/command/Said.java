package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;

/** What came of a command: its exit code and both outputs. */
record Said(int exit, String out, String err) {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-05T12:00:00Z"), ZoneOffset.UTC);

    static Said by(Object... words) {
        return at(CLOCK, words);
    }

    static Said at(Clock clock, Object... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] typed = Stream.of(words).map(Object::toString).toArray(String[]::new);
        int exit = Commands.run(typed, out, err, clock);
        return new Said(exit, out.toString(UTF_8), err.toString(UTF_8));
    }
}
