package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Aside;
import screedbook.entry.ListColumns;
import screedbook.entry.ListColumns.Weights;
import screedbook.entry.PlantList;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A plant's list in a job's folder: kept as it came, named by a line, and missed when it is not the same any more. */
class PlantListsTest {
    private static final ListColumns COLUMNS =
            new ListColumns("Ticket", "Truck", "Net", null, null, null, Weights.LB, null);
    private static final String TEXT = "Ticket,Truck,Net\n1,T104,43920\n2,T118,44000\n,,87920\n";

    @TempDir
    Path job;

    private JobFolder folder;
    private PlantList entry;
    private Path copy;

    @BeforeEach
    void bringAListIn() throws IOException {
        folder = JobFolder.at(job);
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            entry = PlantLists.in(folder).keep(Shifts.THIRD, "Quarry Road", list(TEXT), COLUMNS, Unit.SHORT_TON);
            Shifts.saved(book, new Unwritten(Shifts.NOON, "RK", Source.LIVE, entry, Aside.NONE));
        }
        copy = job.resolve("plant").resolve(entry.listFile());
    }

    private static ListFile list(String text) {
        return ListFile.of("loads.csv", text.getBytes(UTF_8));
    }

    private PlantRows read() {
        return folder.shift(Shifts.THIRD).day().lists().get(new Ref("paver", 3));
    }

    @Test
    void theCopyIsByteForByteWhatCameAndTheLineSaysHowItIsRead() throws IOException {
        assertThat(copy).hasContent(TEXT);
        assertThat(entry)
                .isEqualTo(new PlantList(
                        "Quarry Road",
                        "2026-06-03-day.quarry-road." + list(TEXT).sha256().substring(0, 8) + ".csv",
                        list(TEXT).sha256(),
                        3,
                        2,
                        Amount.of("43.96", Unit.SHORT_TON),
                        COLUMNS));
        assertThat(Files.readString(job.resolve("diary/2026-06-03-day.paver.jsonl")))
                .contains(
                        "\"number_column\":\"Ticket\",\"truck_column\":\"Truck\",\"net_column\":\"Net\",\"weights\":\"lb\"");
    }

    @Test
    void aDayThatIsReadBringsItsListsWithIt() {
        assertThat(read().gone()).isEmpty();
        assertThat(read().rows()).extracting(PlantRows.Row::number).containsExactly("1", "2");
        assertThat(read().troubles())
                .containsExactly(entry.listFile() + ":4: no ticket number; it is compared with nothing");
        assertThat(Verify.of(folder).sound()).isTrue();
        assertThat(Verify.of(folder).beside())
                .contains(new Verdict.Beside(
                        "plant/" + entry.listFile(), "a plant's own list; paver/3 names it by its hash"));
    }

    @Test
    void aCopyIsNeverOverwritten() throws IOException {
        Files.writeString(copy, "somebody wrote into it");
        PlantList again = PlantLists.in(folder).keep(Shifts.THIRD, "Quarry Road", list(TEXT), COLUMNS, Unit.SHORT_TON);
        assertThat(copy).hasContent("somebody wrote into it");
        assertThat(again.listFile())
                .isEqualTo("2026-06-03-day.quarry-road." + list(TEXT).sha256().substring(0, 16) + ".csv");
        assertThat(job.resolve("plant").resolve(again.listFile())).hasContent(TEXT);
        PlantList third = PlantLists.in(folder).keep(Shifts.THIRD, "Quarry Road", list(TEXT), COLUMNS, Unit.SHORT_TON);
        assertThat(third.listFile()).isEqualTo(again.listFile());
        assertThat(Files.list(job.resolve("plant"))).hasSize(2);
    }

    @Test
    void aCopyThatIsGoneOrNotTheSameIsSaidAndNotCompared() throws IOException {
        Files.writeString(copy, TEXT.replace("43920", "49320"));
        assertThat(read().gone()).isEqualTo("it is not what was brought in: its hash is another");
        assertThat(read().rows()).isEmpty();
        assertThat(Verify.of(folder).damages())
                .extracting(d -> d.file() + ":" + d.row() + ": " + d.said())
                .containsExactly("2026-06-03-day.paver.jsonl:3: plant/" + entry.listFile()
                        + ": it is not what was brought in: its hash is another");
        Files.delete(copy);
        assertThat(read().gone()).isEqualTo("it is not there");
        assertThat(Verify.of(folder).sound()).isFalse();
    }

    /** A closed shift is proved by its chain and seal; what its lines name beside it is looked at all the same. */
    @Test
    void theCopyOfAClosedShiftIsNamedAndMissedWhenItIsNotTheSame() throws IOException {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.closing());
        }
        assertThat(Verify.of(folder).beside())
                .contains(new Verdict.Beside(
                        "plant/" + entry.listFile(), "a plant's own list; paver/3 names it by its hash"));
        Files.writeString(copy, TEXT.replace("43920", "49320"));
        assertThat(Verify.of(folder).sound()).isFalse();
    }

    @Test
    void aLineThatNamesAFileElsewhereIsNotFollowed() throws IOException {
        Files.writeString(job.resolve("job.csv"), TEXT);
        PlantList astray = new PlantList("Quarry Road", "../job.csv", list(TEXT).sha256(), 3, 2, entry.tons(), COLUMNS);
        assertThat(PlantLists.in(folder).gone(astray)).contains("the line names no file");
        PlantList none = new PlantList("Quarry Road", null, null, null, null, null, COLUMNS);
        assertThat(PlantLists.in(folder).gone(none)).contains("the line names no file");
    }

    @Test
    void aFileThatNoLineNamesIsListed() throws IOException {
        Files.writeString(job.resolve("plant/other.csv"), "x");
        assertThat(Verify.of(folder).beside()).contains(new Verdict.Beside("plant/other.csv", "no line names it"));
        assertThat(Verify.of(folder).sound()).isTrue();
    }
}
