package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.diary.Verify;
import screedbook.entry.ListColumns;
import screedbook.shelf.KeptShift;
import screedbook.shelf.Shelf;

/** A plant's list brought in by the command: which column is which is asked once; the record stays as it is. */
class PlantListCommandTest {
    private static final String LIST = "Date;Time;Ticket No;Vehicle;Net lb\n"
            + "6/3/2026;06:40;48217;104;40,200\n"
            + "6/3/2026;06:50;48218;104;41,000\n"
            + "6/3/2026;07:00;48219;104;40,000\n";
    private static final String[] COLUMNS = {
        "--number",
        "Ticket No",
        "--truck",
        "Vehicle",
        "--net",
        "Net lb",
        "--weights",
        "lb",
        "--loaded",
        "Time",
        "--date",
        "Date",
        "--dates",
        "mdy"
    };

    @TempDir
    Path folder;

    private Path job;
    private Path list;

    @BeforeEach
    void keepAShiftAndGetAList() throws IOException {
        job = folder.resolve("bend");
        list = folder.resolve("from the plant.csv");
        Files.writeString(list, LIST);
        try (KeptShift kept = KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")) {
            kept.ticket("07:00", "48217", "20.10")
                    .ticket("07:10", "48219", "20.10")
                    .ticket("07:20", "48220", "20.00");
        }
    }

    private Said brought(String... more) {
        String[] words = new String[5 + more.length];
        System.arraycopy(new String[] {"plant-list", job.toString(), list.toString(), "--who", "AB"}, 0, words, 0, 5);
        System.arraycopy(more, 0, words, 5, more.length);
        return Said.by((Object[]) words);
    }

    @Test
    void whichColumnIsWhichIsOfferedAndNotTaken() throws IOException {
        Said said = brought();

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err())
                .contains("it is not said yet how the list of Quarry Road is read")
                .contains("its columns: Date, Time, Ticket No, Vehicle, Net lb")
                .contains("they may be: --number 'Ticket No' --truck Vehicle --net 'Net lb' --weights lb --loaded Time"
                        + " --date Date");
        assertThat(job.resolve("plant")).doesNotExist();
        assertThat(Files.readAllLines(job.resolve("diary/2026-06-03-day.paver.jsonl")))
                .hasSize(4);
    }

    @Test
    void theListIsLaidBesideTheShiftAndItsColumnsAreKeptInTheJob() throws IOException {
        Said said = brought(COLUMNS);

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines().toList().get(0))
                .matches("line 5 on disk in book paver; the list is kept as"
                        + " plant/2026-06-03-day\\.quarry-road\\.[0-9a-f]{8}\\.csv, 3 loads, 60\\.60 T");
        assertThat(said.out().lines().skip(1))
                .containsExactly(
                        "Quarry Road's list: 1 matched, 1 missing here, 1 missing there, 1 different",
                        "  different: line 4, paver/3 ticket 48219: net 20.10 T here, 40000 lb (20.00 T) in the list",
                        "  missing here: line 3, ticket 48218, truck 104, 41000 lb, loaded 06:50",
                        "  missing there: paver/4 ticket 48220 20.00 T");
        assertThat(said.err()).contains("the job keeps its columns: revision 2");
        ListColumns kept = JobFolder.at(job)
                .job()
                .job()
                .orElseThrow()
                .plant("Quarry Road")
                .orElseThrow()
                .list();
        assertThat(kept)
                .isEqualTo(new ListColumns(
                        "Ticket No",
                        "Vehicle",
                        "Net lb",
                        "Time",
                        "Date",
                        null,
                        ListColumns.Weights.LB,
                        ListColumns.Dates.MDY));
        assertThat(Verify.of(JobFolder.at(job)).damages()).isEmpty();
    }

    @Test
    void theSecondListIsReadAsTheFirstWithoutAsking() throws IOException {
        brought(COLUMNS);
        Files.writeString(list, LIST + "6/3/2026;07:10;48220;104;40,000\n");

        Said said = brought();

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .contains("line 6 on disk")
                .contains("2 matched, 1 missing here, 0 missing there, 1 different");
        assertThat(Files.list(job.resolve("plant"))).hasSize(2);
    }

    @Test
    void noEntryIsChangedByAList() throws IOException {
        List<String> before = Files.readAllLines(job.resolve("diary/2026-06-03-day.paver.jsonl"));
        BigDecimal tons = tons();

        brought(COLUMNS);

        assertThat(Files.readAllLines(job.resolve("diary/2026-06-03-day.paver.jsonl")))
                .startsWith(before.toArray(new String[0]));
        assertThat(tons()).isEqualByComparingTo(tons);
    }

    private BigDecimal tons() {
        return Shelf.at(job)
                .shift(screedbook.entry.ShiftId.of("2026-06-03-day"))
                .totals()
                .figure("received-tons")
                .orElseThrow()
                .value();
    }

    @Test
    void aListThatComesAfterTheCloseGoesBehindIt() throws IOException {
        KeptShift.again(JobFolder.at(job), "2026-06-03-day", "paver", "18:00").closed();

        assertThat(brought(COLUMNS).exit()).isZero();

        assertThat(job.resolve("diary/2026-06-03-day.paver.r2.jsonl")).exists();
        assertThat(Verify.of(JobFolder.at(job)).sound()).isTrue();
        assertThat(Said.by("day", job.toString()).out())
                .contains("page revision 2")
                .contains("Quarry Road's list: 1 matched, 1 missing here, 1 missing there, 1 different");
    }

    @Test
    void whatCannotBeReadOfItIsToldWithItsLine() throws IOException {
        Files.writeString(list, LIST + "total;;;;121,200\n6/3/2026;25:10;48221;104;heavy\n");

        Said said = brought(COLUMNS);

        assertThat(said.exit()).isZero();
        assertThat(said.err())
                .contains("from the plant.csv:5: no ticket number; it is compared with nothing")
                .contains("from the plant.csv:6: net \"heavy\" is not read")
                .contains("right would be: a weight in lb such as 43,920");
    }

    @Test
    void whatIsMissingIsSaidBeforeAnythingIsWritten() throws IOException {
        assertThat(Said.by(
                        "plant-list", job.toString(), folder.resolve("none.csv").toString(), "--who", "AB"))
                .satisfies(s -> {
                    assertThat(s.exit()).isEqualTo(3);
                    assertThat(s.err()).contains("none.csv");
                });
        assertThat(brought("--plant", "River").err())
                .contains("--plant River is not in the job; right would be one of Quarry Road");
        assertThat(brought("--book", "plant").err())
                .contains("the shift has no book plant; right would be one of paver");
        assertThat(brought("--weights", "stone").err()).contains("right would be one of tons, lb, tonnes, kg");
        String[] other = COLUMNS.clone();
        other[1] = "Load";
        assertThat(brought(other).err()).contains("the list has no column headed Load");
        assertThat(job.resolve("plant")).doesNotExist();
        try (KeptShift kept = KeptShift.again(JobFolder.at(job), "2026-06-03-day", "paver", "18:00")) {
            Said held = brought(COLUMNS);
            assertThat(held.exit()).isEqualTo(3);
            assertThat(held.err()).contains("RK").contains("the desk can bring a list in itself");
        }
        assertThat(job.resolve("plant")).doesNotExist();
    }
}
