package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.shelf.KeptShift;

/** The season as it is typed. */
class SeasonCommandTest {

    @TempDir
    Path folder;

    private void job(String name, String net) throws IOException {
        Path job = folder.resolve(name);
        KeptShift.job(job);
        KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")
                .ticket("07:00", "48201", net)
                .closed();
    }

    @Test
    void thePageOfTheDemoIsEightyWideAndSaysWhatTheShiftsComeTo() {
        Said said = Said.by("season", "demo-logs");

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(said.out()).contains("by month", "by week", "by shift", "days without a record");
    }

    @Test
    void anyNumberOfJobsBelowAFolderIsRead() throws IOException {
        job("east/bend", "21.00");
        job("west/mill", "20.00");

        Said said = Said.by("season", folder.toString(), "--format", "csv", "--by", "job");

        assertThat(said.exit()).isZero();
        List<String> tons = said.out()
                .lines()
                .filter(line -> line.contains("\"placed-tons\""))
                .toList();
        assertThat(tons).hasSize(2);
        assertThat(tons.get(0)).contains("21.00");
        assertThat(tons.get(1)).contains("20.00");
    }

    @Test
    void jsonIsOneObjectALine() throws IOException {
        job("bend", "21.00");

        Said said = Said.by("season", folder.toString(), "--format", "json", "--by", "day,mix");

        assertThat(said.out().lines())
                .hasSize(2)
                .allMatch(
                        line -> line.startsWith("{\"form\":\"screedbook season 1\",\"part\":\"") && line.endsWith("}"));
    }

    @Test
    void aChangedFileIsNamedInTheResult() throws IOException {
        job("bend", "21.00");
        Path diary = folder.resolve("bend/diary/2026-06-03-day.paver.jsonl");
        Files.writeString(diary, Files.readString(diary).replace("21.00", "31.00"));

        Said said = Said.by("season", folder.toString(), "--format", "csv", "--by", "job");

        assertThat(said.exit()).isZero();
        assertThat(said.out()).contains("\"damage\"").contains("2026-06-03-day.paver.jsonl:2");
        assertThat(said.err()).contains("2026-06-03-day.paver.jsonl:2");
    }

    @Test
    void whatCannotBeMeantIsSaid() {
        assertThat(Said.by("season", "demo-logs", "--by", "year").exit()).isEqualTo(2);
        assertThat(Said.by("season", "demo-logs", "--from", "May").exit()).isEqualTo(2);
        assertThat(Said.by("season", "demo-logs", "--format", "pdf").exit()).isEqualTo(2);
        assertThat(Said.by("season", folder.toString()).exit()).isEqualTo(3);
        assertThat(Said.by("season", folder.resolve("nowhere").toString()).exit())
                .isEqualTo(3);
    }
}
