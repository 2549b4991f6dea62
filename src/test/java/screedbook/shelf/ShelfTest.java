package screedbook.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.Ground;
import screedbook.check.InForce;
import screedbook.diary.JobFolder;
import screedbook.diary.LimitSheets;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A job's folder read together with what its shifts are judged by. Figures are sums of the tickets keyed here. */
class ShelfTest {
    private static final String ITEM = "Asphalt 12.5 mm";
    private static final ShiftId SECOND = ShiftId.of("2026-06-04-day");

    @TempDir
    Path folder;

    private JobFolder job;
    private Shelf shelf;

    @BeforeEach
    void makeTheJob() throws IOException {
        job = KeptShift.job(folder);
        shelf = Shelf.at(folder);
    }

    @Test
    void aShiftIsJudgedByTheJobAndTheSheetThatItsOpeningNames() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver").closed();

        Ground ground = shelf.shift(ShiftId.of("2026-06-03-day")).ground();

        assertThat(ground.job().map(Job::name)).contains("Example overlay");
        assertThat(ground.sheet()).isPresent();
        assertThat(ground.inForce()).hasSize(1);
        assertThat(ground.inForce().get(0).agreed().map(Agreed::revision)).contains(1);
    }

    @Test
    void aShiftKeepsItsJobWhenTheJobIsAgreedAnew() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver").closed();
        edit("job.json", "Example overlay", "Example overlay, stage 2");
        KeptShift.opened(job, "2026-06-04-day", "paver").closed();

        assertThat(name("2026-06-03-day")).isEqualTo("Example overlay");
        assertThat(name("2026-06-04-day")).isEqualTo("Example overlay, stage 2");
    }

    @Test
    void aPlanLineChangesWhatComesBehindItAndNothingBefore() throws IOException {
        KeptShift kept = KeptShift.opened(job, "2026-06-03-day", "paver").ticket("07:00", "101", "20.00");
        edit("job.json", "Example overlay", "Example overlay, stage 2");
        Agreed second = job.accept("RK", OffsetDateTime.parse("2026-06-03T09:00:00-06:00"), "new drawing");
        kept.key(Kind.PLAN, null, Map.of("job_revision", BigDecimal.valueOf(2), "job_sha256", second.sha256()))
                .ticket("10:00", "102", "20.00")
                .closed();

        ShiftFile file = shelf.shift(ShiftId.of("2026-06-03-day"));

        assertThat(tickets(file).map(line -> file.ground().of(line).orElseThrow()))
                .extracting(inForce -> inForce.agreed().orElseThrow().revision())
                .containsExactly(1, 2);
        assertThat(tickets(file).map(line -> file.ground().of(line).flatMap(InForce::sheet)))
                .as("the sheet, which the plan line does not name")
                .allMatch(sheet -> sheet.isPresent());
    }

    @Test
    void aSheetThatWasChangedUnderItsNameIsNotTaken() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver").closed();
        Path frozen = frozenSheet();
        Files.writeString(frozen, "#\n", java.nio.file.StandardOpenOption.APPEND);

        assertThat(SpecSheet.shippedBytes(sheetName()))
                .as("the shipped one is still that of the shift")
                .isPresent();
        assertThat(shelf.shift(ShiftId.of("2026-06-03-day")).ground().sheet().map(SpecSheet::sha256))
                .contains(SpecSheet.shipped(sheetName()).orElseThrow().sha256());
    }

    @Test
    void aSheetOfTheJobThatIsGoneIsReplacedByNoOther() throws IOException {
        byte[] own = ("# our own\n" + new String(shipped(), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
        String sha256 = LimitSheets.in(job).freeze(sheetName(), own);
        KeptShift kept = KeptShift.opened(job, "2026-06-03-day", "paver")
                .key(Kind.PLAN, null, Map.of("sheet", sheetName(), "sheet_sha256", sha256));
        kept.closed();
        assertThat(ground("2026-06-03-day").sheet().map(SpecSheet::sha256)).contains(sha256);

        Files.delete(folder.resolve("spec").resolve(sheetName() + "-" + sha256.substring(0, 8) + ".csv"));

        assertThat(Shelf.at(folder).shift(ShiftId.of("2026-06-03-day")).ground().sheet())
                .isEmpty();
    }

    @Test
    void withoutItsJobAShiftIsAddedUpAndAskedForNothing() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver")
                .ticket("07:00", "101", "20.10")
                .ticket("07:10", "102", "21.05")
                .closed();
        Files.delete(folder.resolve("job.jsonl"));

        ShiftFile file = shelf.shift(ShiftId.of("2026-06-03-day"));

        assertThat(file.ground().job()).isEmpty();
        assertThat(file.totals().shift().received().value()).isEqualByComparingTo("41.15");
        assertThat(file.totals().dues()).isEmpty();
        assertThat(file.totals().sections()).noneMatch(section -> section.id().equals("checks"));
    }

    @Test
    void toDateIsTheSumOfTheShiftsBefore() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver")
                .ticket("07:00", "101", "20.10")
                .ticket("07:10", "102", "21.05")
                .closed();
        KeptShift.opened(job, "2026-06-03-night", "paver")
                .ticket("21:00", "103", "19.85")
                .closed();
        KeptShift.opened(job, "2026-06-04-day", "paver")
                .ticket("07:00", "104", "22.00")
                .closed();
        KeptShift.opened(job, "2026-06-05-day", "paver")
                .ticket("07:00", "105", "23.00")
                .closed();

        ToDate before = shelf.shift(SECOND).before();

        assertThat(before.shifts()).hasToString("[2026-06-03-day, 2026-06-03-night]");
        assertThat(before.pay()).containsExactly(Map.entry(ITEM, Amount.of("61.00", Unit.SHORT_TON)));
        assertThat(before.loads()).containsExactly(Map.entry(ITEM, 3));
    }

    @Test
    void aClosedShiftAlwaysHasTheSameToDate() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver")
                .ticket("07:00", "101", "20.10")
                .closed();
        KeptShift.opened(job, "2026-06-04-day", "paver")
                .ticket("07:00", "104", "22.00")
                .closed();
        ToDate atTheClose = shelf.shift(SECOND).before();

        KeptShift.again(job, "2026-06-03-day", "paver", "18:00")
                .on("2026-06-05")
                .ticket("07:20", "103", "21.50")
                .close();
        KeptShift.opened(job, "2026-06-05-day", "paver").closed();

        assertThat(shelf.shift(SECOND).before()).isEqualTo(atTheClose);
        assertThat(Shelf.at(folder).shift(SECOND).before()).isEqualTo(atTheClose);
        assertThat(shelf.shift(SECOND, OffsetDateTime.parse("2027-01-01T00:00:00Z"))
                        .totals())
                .as("whatever the clock says now")
                .isEqualTo(shelf.shift(SECOND).totals());
        assertThat(shelf.shift(ShiftId.of("2026-06-05-day")).before().pay())
                .as("a later shift has the late line")
                .containsExactly(Map.entry(ITEM, Amount.of("63.60", Unit.SHORT_TON)));
    }

    @Test
    void aLineThatIsAddedToAnEarlierShiftIsSeen() throws IOException {
        KeptShift first = KeptShift.opened(job, "2026-06-03-day", "paver").ticket("07:00", "101", "20.10");
        KeptShift.opened(job, "2026-06-04-day", "paver").close();
        OffsetDateTime now = OffsetDateTime.parse("2026-06-04T12:00:00-06:00");
        assertThat(shelf.before(SECOND, now).loads()).containsExactly(Map.entry(ITEM, 1));

        first.ticket("07:10", "102", "20.20").close();

        assertThat(shelf.before(SECOND, now).loads()).containsExactly(Map.entry(ITEM, 2));
    }

    @Test
    void theLoadsOfAnEarlierShiftWithoutItsJobAreSaidToBeUncounted() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver")
                .ticket("07:00", "101", "20.10")
                .ticket("07:10", "102", "20.20")
                .closed();
        Files.delete(folder.resolve("job.jsonl"));

        ToDate before = shelf.before(SECOND, OffsetDateTime.parse("2026-06-04T12:00:00-06:00"));

        assertThat(before.pay()).isEmpty();
        assertThat(before.shifts()).isEmpty();
        assertThat(before.uncounted()).isEqualTo(2);
    }

    @Test
    void eachBookThatWasClosedHasItsSeal() throws IOException {
        Seal paver = KeptShift.opened(job, "2026-06-03-day", "paver").closed();
        KeptShift.opened(job, "2026-06-03-day", "tack").close();

        ShiftFile file = shelf.shift(ShiftId.of("2026-06-03-day"));

        assertThat(file.seals()).containsExactly(paver);
        assertThat(file.day().closed()).isFalse();
        assertThat(Shelf.closed(file.day())).isEmpty();
    }

    @Test
    void theCloseIsThatOfTheLastBookAndLateLinesDoNotMoveIt() throws IOException {
        KeptShift.opened(job, "2026-06-03-day", "paver").closed();
        KeptShift.opened(job, "2026-06-03-day", "tack")
                .ticket("07:00", "101", "20.10")
                .closed();
        KeptShift.again(job, "2026-06-03-day", "paver", "18:00")
                .ticket("07:20", "103", "21.50")
                .closed();

        assertThat(Shelf.closed(shelf.shift(ShiftId.of("2026-06-03-day")).day()))
                .contains(OffsetDateTime.parse("2026-06-03T06:03:00-06:00"));
    }

    @Test
    void aShiftThatNobodyKeptIsEmpty() {
        ShiftFile file = shelf.shift(SECOND);

        assertThat(file.day().written()).isEmpty();
        assertThat(file.before()).isEqualTo(ToDate.NONE);
        assertThat(file.seals()).isEmpty();
        assertThat(shelf.shifts()).isEmpty();
    }

    private Ground ground(String shift) {
        return shelf.shift(ShiftId.of(shift)).ground();
    }

    private String name(String shift) {
        return ground(shift).job().map(Job::name).orElseThrow();
    }

    private static Stream<Line> tickets(ShiftFile file) {
        return file.day().all().stream().map(each -> each.line()).filter(line -> line.kind() == Kind.TICKET);
    }

    private String sheetName() {
        return job.job().job().orElseThrow().sheet();
    }

    private byte[] shipped() {
        return SpecSheet.shippedBytes(sheetName()).orElseThrow();
    }

    private Path frozenSheet() throws IOException {
        try (Stream<Path> sheets = Files.list(folder.resolve("spec"))) {
            List<Path> all = sheets.toList();
            assertThat(all).hasSize(1);
            return all.get(0);
        }
    }

    private void edit(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }
}
