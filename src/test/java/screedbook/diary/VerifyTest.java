package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Damage;

class VerifyTest {
    private static final String NAME = "2026-06-03-day.paver.jsonl";
    private static final int LINES = 12;

    @TempDir
    Path job;

    private Path file;
    private List<String> lines;

    @BeforeEach
    void writeAShift() throws IOException {
        Shifts.whole(job, Shifts.THIRD, "paver", LINES - 2);
        file = job.resolve("diary").resolve(NAME);
        lines = new ArrayList<>(Files.readAllLines(file));
    }

    @Test
    void whatIsAsItWasWrittenIsSound() {
        Verdict verdict = Verify.of(JobFolder.at(job));
        assertThat(verdict.sound()).isTrue();
        assertThat(verdict.files()).hasSize(1);
        assertThat(verdict.files().get(0).lines()).isEqualTo(LINES);
        assertThat(verdict.beside())
                .extracting(Verdict.Beside::file)
                .containsExactly("diary/2026-06-03-day.paver.lock", "diary/2026-06-03-day.paver.seal");
    }

    /** One bit of every byte in turn: the line that is named first is the one that was changed. */
    @Test
    void oneChangedByteAnywhereIsFoundAndNamedByItsLine() throws IOException {
        byte[] whole = Files.readAllBytes(file);
        int row = 1;
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(file, changed);
            Verdict verdict = Verify.of(JobFolder.at(job));
            assertThat(verdict.sound()).as("byte %d", at).isFalse();
            assertThat(first(verdict))
                    .as("byte %d of line %d: %s", at, row, verdict.damages())
                    .isEqualTo(row);
            row += whole[at] == '\n' ? 1 : 0;
        }
    }

    @Test
    void aChangedLineIsNamedAndWhatStillHoldsIsSaid() throws IOException {
        lines.set(4, lines.get(4).replace("\"net_ston\":20.4", "\"net_ston\":21.4"));
        write();
        Verdict verdict = Verify.of(JobFolder.at(job));
        assertThat(verdict.damages())
                .containsExactly(new Damage(NAME, 5, "it is not as it was when line 6 was written"));
        assertThat(verdict.files().get(0).stands()).isEqualTo("lines 1 to 4, lines 6 to 12 hold together");
    }

    @Test
    void anyLineTakenOutIsNamed() throws IOException {
        for (int row = 1; row <= LINES; row++) {
            List<String> less = new ArrayList<>(lines);
            less.remove(row - 1);
            Files.writeString(file, String.join("\n", less) + "\n");
            assertThat(first(Verify.of(JobFolder.at(job)))).as("line %d", row).isEqualTo(row);
        }
    }

    @Test
    void anyTwoLinesSwappedAreNamed() throws IOException {
        for (int row = 1; row < LINES; row++) {
            List<String> swapped = new ArrayList<>(lines);
            Collections.swap(swapped, row - 1, row);
            Files.writeString(file, String.join("\n", swapped) + "\n");
            assertThat(first(Verify.of(JobFolder.at(job)))).as("line %d", row).isEqualTo(row);
        }
    }

    @Test
    void anyLineThatIsThereTwiceIsNamed() throws IOException {
        for (int row = 1; row <= LINES; row++) {
            List<String> more = new ArrayList<>(lines);
            more.add(row, lines.get(row - 1));
            Files.writeString(file, String.join("\n", more) + "\n");
            assertThat(first(Verify.of(JobFolder.at(job)))).as("line %d", row).isEqualTo(row + 1);
        }
    }

    @Test
    void aFileCutAtALineEndIsFoundByItsSeal() throws IOException {
        for (int kept = 1; kept < LINES; kept++) {
            Files.writeString(file, String.join("\n", lines.subList(0, kept)) + "\n");
            Verdict verdict = Verify.of(JobFolder.at(job));
            assertThat(verdict.damages())
                    .containsExactly(new Damage(
                            NAME, kept + 1, "the seal speaks of 12 lines and " + kept + " are there: the end is gone"));
        }
    }

    @Test
    void aFileCutAnywhereIsFound() throws IOException {
        byte[] whole = Files.readAllBytes(file);
        for (int cut = 1; cut < whole.length; cut += 7) {
            Files.write(file, Arrays.copyOf(whole, cut));
            assertThat(Verify.of(JobFolder.at(job)).sound())
                    .as("cut at %d", cut)
                    .isFalse();
        }
    }

    @Test
    void aClosedFileWithoutItsSealFileIsSaidToBeSo() throws IOException {
        Files.delete(job.resolve("diary/2026-06-03-day.paver.seal"));
        Verdict verdict = Verify.of(JobFolder.at(job));
        assertThat(verdict.sound()).isTrue();
        assertThat(verdict.files().get(0).notes()).hasSize(1).first().asString().contains("no seal file");
    }

    @Test
    void changedLineEndsAreToldApartFromChangedContent() throws IOException {
        Files.writeString(file, String.join("\r\n", lines) + "\r\n");
        assertThat(Verify.of(JobFolder.at(job)).damages())
                .containsExactly(new Damage(
                        NAME, 0, "12 line ends were turned into CR LF; what the lines say is as it was written"));
        Files.writeString(file, "\uFEFF" + String.join("\n", lines) + "\n");
        assertThat(Verify.of(JobFolder.at(job)).damages())
                .containsExactly(new Damage(
                        NAME,
                        0,
                        "a byte order mark was put before the first line; what the lines say is as it was written"));
        lines.set(4, lines.get(4).replace("\"net_ston\":20.4", "\"net_ston\":21.4"));
        Files.writeString(file, String.join("\r\n", lines) + "\r\n");
        assertThat(Verify.of(JobFolder.at(job)).damages())
                .containsExactly(
                        new Damage(NAME, 0, "12 line ends were turned into CR LF"),
                        new Damage(NAME, 5, "it is not as it was when line 6 was written"));
    }

    @Test
    void aShiftBeforeThatIsGoneIsMissed() throws IOException {
        Shifts.whole(job, Shifts.FOURTH, "paver", 1);
        assertThat(Verify.of(JobFolder.at(job)).sound()).isTrue();
        Files.delete(file);
        assertThat(Verify.of(JobFolder.at(job)).damages())
                .containsExactly(new Damage(
                        "2026-06-04-day.paver.jsonl", 1, "it goes on from a line that no file of its book holds"));
    }

    @Test
    void aFileUnderAnothersNameIsFound() throws IOException {
        Files.move(file, job.resolve("diary/2026-06-03-night.paver.jsonl"));
        Files.delete(job.resolve("diary/2026-06-03-day.paver.seal"));
        assertThat(Verify.of(JobFolder.at(job)).damages())
                .hasSize(LINES)
                .first()
                .isEqualTo(new Damage(
                        "2026-06-03-night.paver.jsonl", 1, "it says that it belongs to 2026-06-03-day of book paver"));
    }

    @Test
    void nothingIsChangedByLooking() throws IOException {
        Files.writeString(file, "{\"torn\":", java.nio.file.StandardOpenOption.APPEND);
        byte[] before = Files.readAllBytes(file);
        List<String> names = Folder.names(job.resolve("diary"));
        Verify.of(JobFolder.at(job));
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(Folder.names(job.resolve("diary"))).isEqualTo(names);
    }

    private void write() throws IOException {
        Files.write(file, (String.join("\n", lines) + "\n").getBytes(UTF_8));
    }

    private static int first(Verdict verdict) {
        return verdict.damages().stream().mapToInt(Damage::row).min().orElse(-1);
    }
}
