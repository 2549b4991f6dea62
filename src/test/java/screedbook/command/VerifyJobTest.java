package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Seal;
import screedbook.shelf.KeptShift;

/** The record of a job, or of a folder of jobs, looked at line by line. */
class VerifyJobTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void nameTheJob() {
        job = folder.resolve("bend");
    }

    @Test
    void verifyIsContentWithWhatIsAsItWasWritten() throws IOException {
        List<Seal> seals = ExampleShifts.two(job);

        Said said = Said.by("verify", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines())
                .startsWith(
                        job.toString(),
                        "  job.jsonl  1 line",
                        "  2026-06-03-day.paver.jsonl  4 lines, closed",
                        "  2026-06-04-night.paver.jsonl  3 lines, closed",
                        "  seal of 2026-06-03-day paver  " + seals.get(0).shortForm(),
                        "  seal of 2026-06-04-night paver  " + seals.get(1).shortForm())
                .contains(
                        "    diary/2026-06-03-day.paver.seal",
                        "    diary/2026-06-04-night.paver.lock",
                        "as it was written: 3 files, 8 lines");
    }

    @Test
    void verifyNamesTheLineOfOneChangedByteInAClosedFile() throws IOException {
        ExampleShifts.two(job);
        edit(job.resolve("diary/2026-06-03-day.paver.jsonl"), "\"net_ston\":20.10", "\"net_ston\":29.10");

        Said said = Said.by("verify", job.toString());

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out().lines())
                .contains(
                        "2026-06-03-day.paver.jsonl:2: it is not as it was when line 3 was written",
                        "    line 1, lines 3 to 4 hold together",
                        "not as it was written: 1 place in 3 files, 8 lines")
                .noneMatch(line -> line.startsWith("as it was written"));
    }

    @Test
    void verifySaysWhenWhatAShiftWasJudgedByIsGone() throws IOException {
        ExampleShifts.two(job);
        Files.delete(job.resolve("job.jsonl"));

        Said job = Said.by("verify", this.job.toString());

        assertThat(job.exit()).isEqualTo(1);
        assertThat(job.out().lines())
                .contains(
                        "2026-06-03-day.paver.jsonl:1: plan not found: no line of job.jsonl has the hash it names",
                        "not as it was written: 2 places in 2 files, 7 lines");
    }

    @Test
    void verifyLooksAtEveryJobOfAFolder() throws IOException {
        ExampleShifts.two(job);
        Path other = folder.resolve("attic/juniper");
        KeptShift.opened(KeptShift.job(other), "2026-06-03-day", "paver").close();
        Files.createDirectories(folder.resolve("attic/empty"));
        Files.move(job, folder.resolve("attic/bend"));

        Said sound = Said.by("verify", folder.resolve("attic").toString());
        edit(other.resolve("diary/2026-06-03-day.paver.jsonl"), "\"RK\"", "\"JD\"");
        Said changed = Said.by("verify", folder.resolve("attic").toString());

        assertThat(sound.exit()).isZero();
        assertThat(sound.out().lines())
                .contains(folder.resolve("attic/bend").toString(), other.toString())
                .contains("The last lines of a shift that is not closed are not protected yet.");
        assertThat(changed.exit())
                .as("the only line of an open file, which nothing protects yet")
                .isZero();
        Files.writeString(other.resolve("diary/2026-06-03-day.paver.jsonl"), "{}\n{}\n");
        assertThat(Said.by("verify", folder.resolve("attic").toString()).exit()).isEqualTo(1);
    }

    @Test
    void verifySaysWhenThereIsNothingToLookAt() throws IOException {
        assertThat(Said.by("verify", folder.toString()).exit()).isEqualTo(3);
        Said.by("new", job.toString());

        assertThat(Said.by("verify", job.toString()))
                .isEqualTo(new Said(3, "", "screedbook verify: " + job + " holds no record yet\n"));
    }

    private static void edit(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), to));
    }
}
