package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.entry.Kind;
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

    /** Short tons of two jobs and tonnes of a third: what the page of all says, against the table's own figures. */
    @Test
    void manyJobsHaveAPageOfAllOnWhichNoSumMixesUnits() {
        List<String> said = Said.by("season", "demo-logs").out().lines().toList();
        List<String> all = said.subList(said.indexOf("by job"), said.size());

        String csv =
                Said.by("season", "demo-logs", "--format", "csv", "--by", "job").out();
        assertThat(all)
                .filteredOn(line -> line.startsWith(" all in T "))
                .singleElement()
                .satisfies(line -> {
                    assertThat(line).contains("  " + sum(csv, "placed-tons", "ston") + " T  ");
                    assertThat(line).contains("  " + sum(csv, "pay-tons", "ston") + " T  ");
                });
        assertThat(all)
                .filteredOn(line -> line.startsWith(" all in t "))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("  " + sum(csv, "placed-tons", "t") + " t  "));
        assertThat(all)
                .filteredOn(line -> line.matches(" 2026-\\d\\d in [Tt] .*"))
                .hasSize(3);
        assertThat(Said.by("season", "demo-logs/harrow-bend").out()).doesNotContain("by job");
    }

    private static BigDecimal sum(String csv, String figure, String unit) {
        return csv.lines()
                .filter(line -> line.contains("\"" + figure + "\"") && line.endsWith(",\"" + unit + "\""))
                .map(line -> new BigDecimal(line.split(",")[line.split(",").length - 2]))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void aJobThatIsNamedTwiceIsReadOnce() {
        String once = Said.by("season", "demo-logs", "--format", "csv").out();

        assertThat(Said.by("season", "demo-logs", "demo-logs/../demo-logs/tanager-flats", "--format", "csv")
                        .out())
                .isEqualTo(once);
    }

    /** The units of a job stand in its sheet, and nobody stops a later revision from changing them. */
    @Test
    void aJobThatChangedItsUnitsHasNoSumOfBoth() throws IOException {
        job("bend", "21.00");
        Path metric = Path.of("demo-logs", "brackwater-quay", "job.json");
        Files.writeString(folder.resolve("bend/job.json"), Files.readString(metric));
        KeptShift.opened(JobFolder.at(folder.resolve("bend")), "2026-06-04-day", "paver")
                .key(Kind.TICKET, "07:00", Map.of("number", "48202", "net_t", new BigDecimal("20.00")))
                .closed();

        Said said = Said.by("season", folder);

        assertThat(said.out()).contains(" placed: 21.00 T\n", " placed: 20.00 t\n");
        assertThat(said.out())
                .contains("21.00 T + 20.00 t")
                .doesNotContain("41.00", "From shift to shift", "each 1000");
        assertThat(said.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    }

    @Test
    void datesInWhichNothingLiesAreSaid() {
        for (String format : List.of("text", "csv", "json")) {
            Said said = Said.by("season", "demo-logs", "--from", "2031-01-01", "--format", format);
            assertThat(said.exit()).isZero();
            assertThat(said.err()).as(format).isEqualTo("screedbook season: no shift in these dates\n");
        }
        Said turned = Said.by("season", "demo-logs", "--from", "2026-05-14", "--to", "2026-05-01");
        assertThat(turned.exit()).isEqualTo(2);
        assertThat(turned.err())
                .contains("--from 2026-05-14 lies after --to 2026-05-01")
                .hasLineCount(1);
    }

    /** Harrow Bend laid 180 to 210 tons an hour; the finer mix lay in one shift alone. */
    @Test
    void leastAndGreatestStandInOneLine() {
        String page = Said.by("season", "demo-logs/harrow-bend").out();

        assertThat(page).contains(" an hour: 180 to 210 T/h\n", " 12.5-70A an hour: 193 T/h\n");
        assertThat(page).doesNotContain("ston", "dF", " an hour least");
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
