package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Damage;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Note;
import screedbook.entry.Receipt;
import screedbook.entry.SetAside;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Ticket;
import screedbook.entry.Unreadable;
import screedbook.entry.Written;
import screedbook.job.Agreed;

class JobFolderTest {
    @TempDir
    Path temporary;

    private Path job;

    @BeforeEach
    void makeTheFolder() throws IOException {
        job = temporary.resolve("harrow-bend");
        JobFolder.make(job);
    }

    @Test
    void aNewFolderHasAnExampleThatCanBeUsedAndIsNotMadeTwice() throws IOException {
        assertThat(JobFolder.at(job).job().troubles()).isEmpty();
        assertThat(job.resolve("spec")).isDirectory();
        Files.writeString(job.resolve("README.txt"), "mine");
        assertThat(JobFolder.make(job)).isEmpty();
        assertThat(job.resolve("README.txt")).hasContent("mine");
        assertThat(JobFolder.at(temporary.resolve("nowhere"))
                        .job()
                        .troubles()
                        .get(0)
                        .text())
                .contains("job.json: it cannot be read", "screedbook new DIR");
    }

    @Test
    void aShiftIsReadAsItWasWritten() {
        Saved closed = Shifts.whole(job, Shifts.THIRD, "paver", 3);
        JobFolder folder = JobFolder.at(job);
        assertThat(folder.shifts()).containsExactly(Shifts.THIRD);
        ShiftRead read = folder.shift(Shifts.THIRD);
        assertThat(read.damages()).isEmpty();
        assertThat(read.day().all()).extracting(each -> each.line().n()).containsExactly(1, 2, 3, 4, 5);
        assertThat(read.day().standing(Ticket.class)).hasSize(3);
        assertThat(read.day().closed()).isTrue();
        assertThat(read.books().get(0).seal()).isEqualTo(closed.seal());
        FileRead file = read.books().get(0).files().get(0);
        assertThat(file.file()).isEqualTo("2026-06-03-day.paver.jsonl");
        assertThat(file.closed()).isTrue();
        assertThat(file.stands()).isEqualTo("lines 1 to 5 hold together");
    }

    @Test
    void aReceiptIsTheLineOnTheDisk() throws IOException {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening());
            Receipt receipt =
                    Shifts.saved(book, Shifts.ticket(48217)).receipts().get(0);
            List<String> lines = Files.readAllLines(job.resolve("diary").resolve(receipt.file()));
            assertThat(receipt.line().raw()).isEqualTo(lines.get(1));
            assertThat(receipt.line().ref()).hasToString("paver/2");
            assertThat(receipt.line().keyed()).isEqualTo(Shifts.NOON);
        }
    }

    @Test
    void theSealIsTheHashOfTheClosingLineAndLiesBesideTheDiary() throws Exception {
        Saved closed = Shifts.whole(job, Shifts.THIRD, "paver", 1);
        List<String> lines = Files.readAllLines(job.resolve("diary/2026-06-03-day.paver.jsonl"));
        assertThat(closed.seal().orElseThrow().sha256())
                .isEqualTo(Chain.hash(lines.get(2).getBytes(UTF_8)));
        assertThat(Json.line(Files.readAllBytes(job.resolve("diary/2026-06-03-day.paver.seal"))))
                .containsEntry("seal", closed.seal().get().sha256())
                .containsEntry("lines", new java.math.BigDecimal(3));
    }

    @Test
    void nothingIsWrittenBehindTheCloseAndLateLinesGetAFileOfTheirOwn() {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Saved saved = book.append(List.of(Shifts.opening(), Shifts.closing(), Shifts.note("late")), Shifts.NOON)
                    .join();
            assertThat(saved.receipts()).hasSize(2);
            assertThat(book.append(List.of(Shifts.note("later")), Shifts.NOON)
                            .join()
                            .refused())
                    .isPresent();
        }
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Receipt late = Shifts.saved(book, Shifts.note("late")).receipts().get(0);
            assertThat(late.file()).isEqualTo("2026-06-03-day.paver.r2.jsonl");
            assertThat(late.line().n()).isEqualTo(3);
        }
        ShiftRead read = JobFolder.at(job).shift(Shifts.THIRD);
        assertThat(read.damages()).isEmpty();
        assertThat(read.day().late()).hasSize(1);
        assertThat(Chain.prev(
                        read.books().get(0).lines().get(2) instanceof Line line
                                ? line.raw().getBytes(UTF_8)
                                : new byte[0]))
                .isEqualTo(read.books().get(0).seal().map(seal -> seal.sha256()));
    }

    @Test
    void numbersRunOnWhenABookIsOpenedAgain() {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
        }
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            assertThat(Shifts.saved(book, Shifts.ticket(2))
                            .receipts()
                            .get(0)
                            .line()
                            .n())
                    .isEqualTo(3);
        }
        assertThat(JobFolder.at(job).shift(Shifts.THIRD).damages()).isEmpty();
    }

    @Test
    void aShiftGoesOnFromTheBooksShiftBefore() {
        Saved third = Shifts.whole(job, Shifts.THIRD, "paver", 1);
        Shifts.whole(job, Shifts.THIRD, "roller", 1);
        try (Book book = Shifts.open(job, Shifts.FOURTH, "paver")) {
            assertThat(book.sealBefore()).isEqualTo(third.seal().map(seal -> seal.sha256()));
            Shifts.saved(book, Shifts.opening());
        }
        try (Book book = Shifts.open(job, Shifts.FOURTH, "plant")) {
            assertThat(book.sealBefore()).isEmpty();
        }
        assertThat(Verify.of(JobFolder.at(job)).damages()).isEmpty();
    }

    @Test
    void aShiftNamesTheSealOfTheOneBeforeAlsoWhenSomethingCameBehindIt() {
        Saved third = Shifts.whole(job, Shifts.THIRD, "paver", 1);
        try (Book late = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(late, Shifts.note("late"));
        }
        try (Book book = Shifts.open(job, Shifts.FOURTH, "paver")) {
            assertThat(book.sealBefore()).isEqualTo(third.seal().map(seal -> seal.sha256()));
            Shifts.saved(book, Shifts.opening());
        }
        assertThat(Verify.of(JobFolder.at(job)).damages()).isEmpty();
    }

    @Test
    void twoBooksOfAShiftAreReadTogether() {
        Shifts.whole(job, Shifts.THIRD, "paver", 2);
        Shifts.whole(job, Shifts.THIRD, "plant", 1);
        ShiftRead read = JobFolder.at(job).shift(Shifts.THIRD);
        assertThat(read.books()).extracting(BookRead::book).containsExactly("paver", "plant");
        assertThat(read.day().standing(Ticket.class)).hasSize(3);
    }

    @Test
    void aSecondWindowIsToldWhoHasTheBook() {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening());
            Opened opened = JobFolder.at(job).open(Shifts.THIRD, "paver", "harrow-bend", "BT", Shifts.NOON);
            assertThat(opened).isInstanceOf(Opened.Held.class);
            assertThat(((Opened.Held) opened).by().who()).isEqualTo("RK");
            assertThat(((Opened.Held) opened).by().since()).isEqualTo("2026-06-03T12:00:00-06:00");
            assertThat(((Opened.Held) opened).by().where())
                    .endsWith("process " + ProcessHandle.current().pid());
            assertThat(JobFolder.at(job).holder(Shifts.THIRD, "paver")).contains(((Opened.Held) opened).by());
        }
        Shifts.open(job, Shifts.THIRD, "paver").close();
        assertThat(JobFolder.at(job).holder(Shifts.THIRD, "paver")).isEmpty();
    }

    @Test
    void aTornTailIsSetAsideAndALineSaysSo() throws IOException {
        Shifts.whole(job, Shifts.THIRD, "paver", 3);
        Path file = job.resolve("diary/2026-06-03-day.paver.jsonl");
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length - 30));
        Files.delete(job.resolve("diary/2026-06-03-day.paver.seal"));
        ShiftRead torn = JobFolder.at(job).shift(Shifts.THIRD);
        assertThat(torn.day().uncounted()).hasSize(1);
        assertThat(torn.damages()).hasSize(1);

        Opened.Ready ready = Shifts.ready(job, Shifts.THIRD, "paver", FileChannel::open);
        ready.book().close();
        assertThat(ready.said()).hasSize(1).first().asString().contains("not written to its end", ".torn-");
        ShiftRead read = JobFolder.at(job).shift(Shifts.THIRD);
        assertThat(read.damages()).isEmpty();
        SetAside line = read.day().standing(SetAside.class).get(0).entry();
        byte[] kept = Files.readAllBytes(job.resolve("diary").resolve(line.file()));
        assertThat(Chain.hash(kept)).isEqualTo(line.sha256());
        assertThat(kept).hasSize(line.byteCount().intValue());
        assertThat(new String(bytes, UTF_8)).contains(new String(kept, UTF_8));
    }

    @Test
    void afterADeadDiskTheRecordGoesOnAndBothFilesAreOneBook() throws IOException {
        BadDisk disk = new BadDisk();
        try (Book book = Shifts.ready(job, Shifts.THIRD, "paver", disk).book()) {
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            disk.forceFails = true;
            Saved refused = book.append(List.of(Shifts.ticket(2)), Shifts.NOON).join();
            assertThat(refused.receipts()).isEmpty();
            assertThat(refused.refused().orElseThrow().again()).isFalse();
            disk.forceFails = false;
            assertThat(book.continueIn(temporary.resolve("stick")).join()).isEmpty();
            Receipt second = Shifts.saved(book, Shifts.ticket(2)).receipts().get(0);
            assertThat(second.file()).isEqualTo("2026-06-03-day.paver-b.jsonl");
            assertThat(second.line().n()).isEqualTo(3);
            Shifts.saved(book, Shifts.closing());
        }
        ShiftRead read = JobFolder.at(job, temporary.resolve("stick")).shift(Shifts.THIRD);
        assertThat(read.books().get(0).files()).hasSize(2);
        assertThat(read.day().standing(Ticket.class)).hasSize(2);
        assertThat(read.day().closed()).isTrue();
        List<Written> uncounted = read.day().uncounted();
        assertThat(uncounted).hasSize(1);
        assertThat(((Unreadable) uncounted.get(0)).reason())
                .isEqualTo("not counted: the record goes on from line 2 in 2026-06-03-day.paver-b.jsonl");
        assertThat(read.damages()).isEmpty();
    }

    @Test
    void aRecordThatWentOnElsewhereGoesOnThereAgainAndNotHere() throws IOException {
        Path stick = temporary.resolve("stick");
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            assertThat(book.continueIn(stick).join()).isEmpty();
            Shifts.saved(book, Shifts.ticket(2));
        }
        byte[] first = Files.readAllBytes(job.resolve("diary/2026-06-03-day.paver.jsonl"));
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Receipt third = Shifts.saved(book, Shifts.ticket(3)).receipts().get(0);
            assertThat(third.file()).isEqualTo("2026-06-03-day.paver-b.jsonl");
            assertThat(third.line().n()).isEqualTo(4);
        }
        assertThat(JobFolder.at(job).shift(Shifts.THIRD).day().standing(Ticket.class))
                .hasSize(3);

        Files.move(stick, temporary.resolve("pulled"));
        Opened opened = JobFolder.at(job).open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON);
        assertThat(opened).isInstanceOf(Opened.No.class);
        assertThat(((Opened.No) opened).refused().said())
                .contains("went on in 2026-06-03-day.paver-b.jsonl in " + stick);
        assertThat(Files.readAllBytes(job.resolve("diary/2026-06-03-day.paver.jsonl")))
                .isEqualTo(first);

        Files.copy(
                temporary.resolve("pulled/2026-06-03-day.paver-b.jsonl"),
                job.resolve("diary/2026-06-03-day.paver-b.jsonl"));
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            assertThat(Shifts.saved(book, Shifts.closing())
                            .receipts()
                            .get(0)
                            .line()
                            .n())
                    .isEqualTo(5);
        }
        assertThat(Verify.of(JobFolder.at(job)).damages()).isEmpty();
    }

    @Test
    void aFullDiskKeepsTheEntriesBeforeAndSaysThatTheSamePlaceMayBeTriedAgain() {
        BadDisk disk = new BadDisk();
        try (Book book = Shifts.ready(job, Shifts.THIRD, "paver", disk).book()) {
            Shifts.saved(book, Shifts.opening());
            disk.room = 400;
            Saved saved = book.append(List.of(Shifts.ticket(1), Shifts.ticket(2)), Shifts.NOON)
                    .join();
            assertThat(saved.receipts()).hasSize(1);
            assertThat(saved.refused().orElseThrow().again()).isTrue();
            assertThat(saved.refused().orElseThrow().said()).contains("No space left on device");
            disk.room = -1;
            assertThat(Shifts.saved(book, Shifts.ticket(2))
                            .receipts()
                            .get(0)
                            .line()
                            .n())
                    .isEqualTo(3);
        }
        assertThat(JobFolder.at(job).shift(Shifts.THIRD).damages()).isEmpty();
    }

    @Test
    void anEntryThatFitsNoLineIsRefusedAndNothingIsWritten() {
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening());
            Saved saved = book.append(List.of(Shifts.note("x".repeat(9000))), Shifts.NOON)
                    .join();
            assertThat(saved.refused().orElseThrow().said()).contains("does not fit a line");
            assertThat(saved.refused().orElseThrow().again()).isTrue();
            Shifts.saved(book, Shifts.note("short"));
        }
        assertThat(JobFolder.at(job).shift(Shifts.THIRD).day().standing(Note.class))
                .hasSize(1);
    }

    @Test
    void aLineThatCannotBeReadSpoilsNoOther() throws IOException {
        Shifts.whole(job, Shifts.THIRD, "paver", 5);
        Path file = job.resolve("diary/2026-06-03-day.paver.jsonl");
        Files.writeString(file, Files.readString(file).replace("\"number\":\"3\"", "\"number\":\u00A73\""));
        ShiftRead read = JobFolder.at(job).shift(Shifts.THIRD);
        assertThat(read.day().standing(Ticket.class)).hasSize(4);
        assertThat(read.day().uncounted()).hasSize(1);
        Unreadable line = (Unreadable) read.day().uncounted().get(0);
        assertThat(line.row()).isEqualTo(4);
        assertThat(line.raw()).contains("\u00A73");
        assertThat(read.day().closed()).isTrue();
    }

    @Test
    void aJobIsAcceptedOnceForEachChange() throws IOException {
        JobFolder folder = JobFolder.at(job);
        Agreed first = folder.accept("RK", Shifts.NOON, null);
        assertThat(first.revision()).isEqualTo(1);
        assertThat(folder.accept("RK", Shifts.NOON, null)).isEqualTo(first);
        Files.writeString(
                job.resolve("job.json"),
                Files.readString(job.resolve("job.json")).replace("\"tack_samples\": 1", "\"tack_samples\": 2"));
        Agreed second = folder.accept("BT", Shifts.NOON, "meeting of June 3");
        assertThat(second.revision()).isEqualTo(2);
        assertThat(folder.revisions()).containsExactly(first, second);
        assertThat(folder.revision(first.sha256())).contains(first);
        assertThat(folder.revision("0".repeat(64))).isEmpty();
        assertThat(Verify.of(folder).damages()).isEmpty();

        List<String> lines = Files.readAllLines(job.resolve("job.jsonl"));
        assertThat(lines).hasSize(2);
        assertThat(Chain.hash(lines.get(1).getBytes(UTF_8))).isEqualTo(second.sha256());
        assertThat(lines.get(1)).contains("\"who\":\"BT\",\"reason\":\"meeting of June 3\"");
        Files.writeString(
                job.resolve("job.jsonl"),
                Files.readString(job.resolve("job.jsonl")).replace("RK", "RX"));
        assertThat(folder.revision(first.sha256())).isEmpty();
        assertThat(Verify.of(folder).damages())
                .extracting(damage -> damage.file())
                .contains("job.jsonl");
    }

    @Test
    void aJobWithTroubleIsNotAccepted() throws IOException {
        Files.writeString(job.resolve("job.json"), "{}");
        assertThatThrownBy(() -> JobFolder.at(job).accept("RK", Shifts.NOON, null))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("job.json:1");
        assertThat(job.resolve("job.jsonl")).doesNotExist();
    }

    @Test
    void aSheetIsKeptAsItWas() throws IOException {
        JobFolder folder = JobFolder.at(job);
        byte[] sheet = "limit,of\n".getBytes(UTF_8);
        Files.write(job.resolve("spec/county.csv"), sheet);
        assertThat(LimitSheets.in(folder).sheet("county")).contains(sheet);
        assertThat(LimitSheets.in(folder).sheet("../job")).isEmpty();
        String sha256 = LimitSheets.in(folder).freeze("county", sheet);
        Files.write(job.resolve("spec/county.csv"), "changed".getBytes(UTF_8));
        assertThat(LimitSheets.in(folder).frozen("county", sha256)).contains(sheet);
        assertThat(job.resolve("spec/county-" + sha256.substring(0, 8) + ".csv"))
                .hasBinaryContent(sheet);
        assertThat(Verify.of(folder).damages()).isEmpty();
        Files.write(job.resolve("spec/county-" + sha256.substring(0, 8) + ".csv"), "changed".getBytes(UTF_8));
        assertThat(LimitSheets.in(folder).frozen("county", sha256)).isEmpty();
        assertThat(Verify.of(folder).damages()).hasSize(1);
    }

    @Test
    void aSavedPageIsNeverChanged() throws IOException {
        JobFolder folder = JobFolder.at(job);
        Path first = KeptPages.in(folder).page(Shifts.THIRD, "page", "a,b\n");
        assertThat(KeptPages.in(folder).page(Shifts.THIRD, "page", "a,b\n")).isEqualTo(first);
        Path second = KeptPages.in(folder).page(Shifts.THIRD, "page with late lines", "a,b,c\n");
        assertThat(second.getFileName()).hasToString("2026-06-03-day.r2.txt");
        assertThat(first).hasContent("page");
        assertThat(job.resolve("days/2026-06-03-day.csv")).hasContent("a,b\n");
        assertThat(job.resolve("days/2026-06-03-day.r2.csv")).hasContent("a,b,c\n");
    }

    @Test
    void halfTypedEntriesOutliveTheProgram() throws IOException {
        JobFolder folder = JobFolder.at(job);
        Draft ticket = new Draft(Kind.TICKET, Source.LIVE, null, Map.of("net", "22.", "truck", "T1\u202E"), "net");
        Draft note = new Draft(Kind.NOTE, Source.NOTES, null, Map.of(), null);
        assertThat(folder.drafts(Shifts.THIRD, "paver")).isEmpty();
        folder.saveDrafts(Shifts.THIRD, "paver", List.of(ticket, note));
        assertThat(JobFolder.at(job).drafts(Shifts.THIRD, "paver")).containsExactly(ticket, note);
        folder.saveDrafts(Shifts.THIRD, "paver", List.of());
        assertThat(job.resolve("diary/2026-06-03-day.paver.draft")).doesNotExist();
        Files.writeString(job.resolve("diary/2026-06-03-day.paver.draft"), "{\"drafts\":[{\"kind\":");
        assertThat(folder.drafts(Shifts.THIRD, "paver")).isEmpty();
    }

    @Test
    void aBookHasASafeName() {
        assertThat(JobFolder.bookName("Paver 2")).contains("paver-2");
        assertThat(JobFolder.bookName("Paver B")).isEmpty();
        Opened opened = JobFolder.at(job).open(Shifts.THIRD, "../x", "harrow-bend", "RK", Shifts.NOON);
        assertThat(opened).isInstanceOf(Opened.No.class);
    }

    @Test
    void aFolderThatIsNotThereHasNoShifts() {
        JobFolder folder = JobFolder.at(temporary.resolve("nowhere"));
        assertThat(folder.shifts()).isEmpty();
        assertThat(folder.shift(ShiftId.of("2026-06-03-day")).day().all()).isEmpty();
        assertThat(folder.revisions()).isEmpty();
        assertThat(Verify.of(folder).sound()).isTrue();
    }

    /** A pulled stick takes no note of where the record went on; back in its place it is opened and written once more. */
    @Test
    void aStickThatCameBackAndWasWrittenMeanwhileIsSaidWithItsLines() throws IOException {
        Path spare = job.resolve("spare");
        Path note = job.resolve("diary").resolve("2026-06-03-day.paver.goes-on");
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            assertThat(book.continueIn(spare).join()).isEmpty();
            Shifts.saved(book, Shifts.ticket(2));
        }
        Files.delete(note);
        try (Book book = Shifts.open(job, Shifts.THIRD, "paver")) {
            Shifts.saved(book, Shifts.ticket(3), Shifts.ticket(4));
        }

        ShiftRead read = JobFolder.at(job, spare).shift(Shifts.THIRD);

        assertThat(read.damages())
                .containsExactly(new Damage(
                        "2026-06-03-day.paver.jsonl",
                        3,
                        "2 lines were written here when the record went on in 2026-06-03-day.paver-b.jsonl already;"
                                + " not counted, to be keyed again there where they count"));
        assertThat(read.day().every(Ticket.class)).hasSize(2);
        assertThat(read.day().uncounted()).hasSize(2);
    }

    @Test
    void aJobFileThatIsNoneForItsSizeIsNotReadIntoMemory() throws IOException {
        try (RandomAccessFile file =
                new java.io.RandomAccessFile(job.resolve("job.json").toFile(), "rw")) {
            file.setLength(8L * 1024 * 1024 * 1024);
        }
        assertThat(JobFolder.at(job).job().troubles())
                .extracting(Trouble::said)
                .containsExactly("it cannot be read: it is larger than 1 MiB, which no such file is");
    }

    /** A page that is there and cannot be read is somebody's; the next one takes another name or none. */
    @Test
    void aPageThatCannotBeReadIsNotReplaced() throws IOException {
        JobFolder folder = JobFolder.at(job);
        Files.createDirectories(job.resolve("days/2026-06-03-day.txt/inside"));
        assertThatThrownBy(() -> KeptPages.in(folder).page(Shifts.THIRD, "page", "csv"))
                .isInstanceOf(IOException.class);
        assertThat(job.resolve("days/2026-06-03-day.csv")).doesNotExist();
    }
}
