package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.shelf.KeptShift;

/** The page of a shift and its findings as they are printed, and what is said where they cannot be. */
class DayCommandTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void nameTheJob() {
        job = folder.resolve("bend");
    }

    @Test
    void dayPrintsTheNewestShiftUnlessAnotherIsNamed() throws IOException {
        ExampleShifts.two(job);

        Said newest = Said.by("day", job.toString());
        Said first = Said.by("day", job.toString(), "--shift", "2026-06-03-day");

        assertThat(newest.exit()).isZero();
        assertThat(newest.err()).isEmpty();
        assertThat(newest.out()).contains("Example overlay", "2026-06-04-night").contains("20.55");
        assertThat(newest.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(first.out()).contains("2026-06-03-day").doesNotContain("2026-06-04-night");
    }

    @Test
    void thePageOfAClosedShiftIsTheSameWheneverItIsPrinted() throws IOException {
        ExampleShifts.two(job);
        Said then = Said.by("day", job.toString());
        KeptShift.again(JobFolder.at(job), "2026-06-03-day", "paver", "18:00")
                .on("2026-06-09")
                .ticket("08:00", "48299", "21.00")
                .close();

        Said later = Said.at(Clock.fixed(Instant.parse("2031-01-01T00:00:00Z"), ZoneOffset.UTC), "day", job.toString());

        assertThat(later.out()).isEqualTo(then.out());
        assertThat(Said.by("day", job.toString(), "--shift", "2026-06-03-day").out())
                .contains("page revision 2")
                .contains("48299");
    }

    @Test
    void dayHasThreeForms() throws IOException {
        ExampleShifts.two(job);

        assertThat(Said.by("day", job.toString(), "--format", "text").out())
                .isEqualTo(Said.by("day", job.toString()).out());
        assertThat(Said.by("day", job.toString(), "--format", "csv").out())
                .startsWith("\"shift\",\"section\",")
                .contains("\"2026-06-04-night\"");
        assertThat(Said.by("day", job.toString(), "--format", "json").out())
                .startsWith("{")
                .contains("\"2026-06-04-night\"");
    }

    @Test
    void anotherFormIsNotKnown() throws IOException {
        ExampleShifts.two(job);

        assertThat(Said.by("day", job.toString(), "--format", "pdf"))
                .isEqualTo(new Said(
                        2, "", "screedbook day: --format pdf is not known; right would be one of text, csv, json\n"));
        assertThat(Said.by("findings", job.toString(), "--format", "csv"))
                .isEqualTo(new Said(
                        2, "", "screedbook findings: --format csv is not known; right would be one of text, json\n"));
    }

    @Test
    void aShiftThatIsNotThereIsSaidWithThoseThatAre() throws IOException {
        ExampleShifts.two(job);

        assertThat(Said.by("day", job.toString(), "--shift", "2026-06-05-day"))
                .isEqualTo(new Said(
                        3,
                        "",
                        "screedbook day: " + job
                                + " holds no shift 2026-06-05-day; its newest: 2026-06-03-day, 2026-06-04-night\n"));
        assertThat(Said.by("findings", job.toString(), "--shift", "2026-02-30-day"))
                .isEqualTo(new Said(
                        2,
                        "",
                        "screedbook findings: --shift 2026-02-30-day names no shift; right would be 2026-06-03-day,"
                                + " -night or -extra-2\n"));
    }

    @Test
    void findingsAreListedWithTheirLimits() throws IOException {
        ExampleShifts.cold(job);

        Said text = Said.by("findings", job.toString());
        Said json = Said.by("findings", job.toString(), "--format", "json");

        assertThat(text.exit()).isZero();
        assertThat(text.out()).contains("48217").contains("240");
        assertThat(json.exit()).isZero();
        assertThat(json.out()).startsWith("{").contains("paver/2");
    }

    @Test
    void aPageOfDamagedFilesIsPrintedAndTheDamageSaid() throws IOException {
        ExampleShifts.two(job);
        edit(job.resolve("diary/2026-06-03-day.paver.jsonl"), "\"net_ston\":20.10", "\"net_ston\":29.10");

        Said said = Said.by("day", job.toString(), "--shift", "2026-06-03-day");

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .contains("50.15")
                .containsSubsequence(
                        "FILES NOT AS THEY WERE WRITTEN",
                        " 2026-06-03-day.paver.jsonl:2: it is not as it was when line 3 was written",
                        "NEEDS A DECISION FROM YOU");
        assertThat(said.err())
                .isEqualTo(
                        "screedbook day: 2026-06-03-day.paver.jsonl:2: it is not as it was when line 3 was written\n");
    }

    @Test
    void aPageThatCannotBeWrittenToItsEndIsSaid() throws IOException {
        ExampleShifts.two(job);
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Commands.run(new String[] {"day", job.toString()}, full("No space left on device"), err, Said.CLOCK);

        assertThat(exit).isEqualTo(3);
        assertThat(err.toString(UTF_8))
                .isEqualTo(
                        "screedbook: the page could not be written: No space left on device; make room there, or name"
                                + " another folder\n");
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoTrouble() throws IOException {
        ExampleShifts.two(job);
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Commands.run(new String[] {"day", job.toString()}, full("Broken pipe"), err, Said.CLOCK);

        assertThat(exit).isZero();
        assertThat(err.toString(UTF_8)).isEmpty();
    }

    private static OutputStream full(String says) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(says);
            }
        };
    }

    private static void edit(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), to));
    }
}
