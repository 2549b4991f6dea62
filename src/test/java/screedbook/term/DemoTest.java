package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.diary.JobFolder;
import screedbook.diary.Verify;
import screedbook.entry.Opening;
import screedbook.entry.ShiftId;
import screedbook.entry.Ticket;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;

/** The shift that somebody finds who tries the desk for the first time, whenever that is. */
class DemoTest {
    @ParameterizedTest
    @CsvSource({
        "2026-11-25T10:00:00-07:00, 2026-11-25-day",
        "2031-07-01T13:30:00-06:00, 2031-07-01-day",
        "2027-05-04T23:10:00-06:00, 2027-05-04-night",
        "2028-02-29T00:40:00-07:00, 2028-02-28-night"
    })
    void aShiftHasGotGoingInWhichNothingIsFound(String clock, String shift, @TempDir Path copy) throws IOException {
        copied(Path.of("demo-logs", "harrow-bend"), copy);
        OffsetDateTime now = OffsetDateTime.parse(clock);

        Demo.begin(copy, "paver", "screedbook", Clock.fixed(now.toInstant(), now.getOffset()));

        ShiftFile file = Shelf.at(copy).shift(ShiftId.of(shift), now);
        assertThat(file.day().standing(Ticket.class)).hasSize(12);
        assertThat(file.findings())
                .as(
                        "that it follows the demo's other shifts late and on their ground is answered, and nothing else is found")
                .allSatisfy(f -> assertThat(f.rule()).isIn("days-without-shift", "paved-before"))
                .allSatisfy(f -> assertThat(f.answered()).isTrue());
        assertThat(file.day().standing(Ticket.class))
                .allSatisfy(t -> assertThat(t.entry().times().discharged().getOffset())
                        .as("what the clocks of the job show then")
                        .isEqualTo(now.getOffset()));
        assertThat(Verify.of(JobFolder.at(copy)).damages()).isEmpty();
        assertThat(file.day().standing(Opening.class).get(0).entry().jobSha256())
                .as("the job that is in force is the one in the folder")
                .isEqualTo(JobFolder.at(copy).accept("RK", now, null).sha256());
    }

    private static void copied(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path there = to.resolve(from.relativize(file).toString());
                Files.createDirectories(there.getParent());
                Files.copy(file, there);
            }
        }
    }
}
