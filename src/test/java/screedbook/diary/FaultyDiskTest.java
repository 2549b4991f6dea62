package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.LoopDisk;
import screedbook.Tried;
import screedbook.entry.Line;
import screedbook.entry.Unwritten;

/** A whole shift on a disk of which one call goes wrong, each in its turn; and real disks that make trouble. */
@ExtendWith(Tried.class)
@Tag("faults-short")
@Timeout(120)
class FaultyDiskTest {
    private static final int MOST_CALLS = 200;

    @TempDir
    Path folder;

    /** What came of a shift on such a disk. */
    private static final class Came {
        int refusals;
        int retried;
        final List<String> promised = new ArrayList<>();
    }

    @ParameterizedTest
    @CsvSource({"force", "force and the next", "write", "cut"})
    void oneCallThatGoesWrongIsSaidAtOnceAndNothingPromisedIsLost(String call) throws IOException {
        BiConsumer<BadDisk, Integer> wrong = switch (call) {
            case "force" -> (disk, k) -> disk.badForce = k;
            case "force and the next" ->
                (disk, k) -> {
                    disk.badForce = k;
                    disk.badForces = 2;
                };
            case "write" -> (disk, k) -> disk.badWrite = k;
            default ->
                (disk, k) -> {
                    disk.badTruncate = k;
                    disk.badWrite = 2 + k;
                };
        };
        int faults = 0;
        int promised = 0;
        for (int k = 1; k < MOST_CALLS; k++) {
            BadDisk disk = new BadDisk();
            wrong.accept(disk, k);
            Path job = folder.resolve(call + "-" + k);
            Came came = keepAShift(job, disk);
            int calls = call.equals("write") ? disk.writes : call.equals("cut") ? disk.truncates : disk.forces;
            if (calls < k) {
                break;
            }
            faults++;
            promised += came.promised.size();
            assertThat(came.refusals).as("%s %d is said", call, k).isPositive();
            assertThat(came.retried).as("%s %d on the same file", call, k).isZero();
            ShiftRead read = JobFolder.at(job).shift(Shifts.THIRD);
            assertThat(read.damages()).as("%s %d", call, k).isEmpty();
            assertThat(raw(read)).as("%s %d", call, k).containsExactlyElementsOf(came.promised);
            assertThat(came.promised).hasSize(entries().size());
        }
        assertThat(faults).isPositive();
        Tried.row(
                "an error of a " + call + ", at each call in turn",
                faults + (faults == 1 ? " fault" : " faults"),
                promised,
                0,
                "each said at once, the entry written by a later try; the same file forced again: 0");
    }

    private static List<Unwritten> entries() {
        return List.of(
                Shifts.opening(),
                Shifts.ticket(1),
                Shifts.ticket(2),
                Shifts.ticket(3),
                Shifts.note("x"),
                Shifts.closing());
    }

    /** Opens again what was refused, writes again what was refused, in another file where the disk says no for good. */
    private static Came keepAShift(Path job, BadDisk disk) {
        Came came = new Came();
        Book book = opened(job, disk, came);
        for (Unwritten entry : entries()) {
            Saved saved = book.append(List.of(entry), Shifts.NOON).join();
            while (saved.refused().isPresent()) {
                came.refusals++;
                if (!saved.refused().get().again()) {
                    goOn(book, job, disk, came);
                }
                saved = book.append(List.of(entry), Shifts.NOON).join();
            }
            came.refusals += saved.said().isEmpty() ? 0 : 1;
            saved.receipts().forEach(receipt -> came.promised.add(receipt.line().raw()));
        }
        book.close();
        return came;
    }

    private static Book opened(Path job, BadDisk disk, Came came) {
        Opened opened = JobFolder.at(job).open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, disk);
        while (!(opened instanceof Opened.Ready)) {
            came.refusals++;
            opened = JobFolder.at(job).open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, disk);
        }
        return ((Opened.Ready) opened).book();
    }

    private static void goOn(Book book, Path job, BadDisk disk, Came came) {
        int from = disk.asked.size();
        String dead = lastForced(disk);
        while (book.continueIn(job.resolve("diary")).join().isPresent()) {
            came.refusals++;
        }
        came.retried += (int) disk.asked.subList(from, disk.asked.size()).stream()
                .filter(line -> line.equals("force " + dead) || line.equals("write " + dead))
                .count();
    }

    private static String lastForced(BadDisk disk) {
        String last = "";
        for (String line : disk.asked) {
            last = line.startsWith("force ") && line.endsWith(".jsonl") ? line.substring(6) : last;
        }
        return last;
    }

    private static List<String> raw(ShiftRead read) {
        return read.books().stream()
                .flatMap(book -> book.lines().stream())
                .filter(Line.class::isInstance)
                .map(line -> ((Line) line).raw())
                .toList();
    }

    /** A disk that takes a part of a line and says that it took all of it is not believed. */
    @Test
    void aWriteThatLiesAboutHowMuchItTookIsNotPromised() throws IOException {
        int faults = 0;
        for (int keeps = 0; keeps < Lines.line(2, Chain.NOTHING_BEFORE).length + 1; keeps++) {
            BadDisk disk = new BadDisk();
            Path here = folder.resolve("lies-" + keeps);
            try (LineFile file = Lines.open(here, disk)) {
                Lines.appended(file);
                disk.keeps = keeps;
                assertThat(Lines.refused(file).sentence()).contains("the disk did not take the line");
                disk.keeps = -1;
                assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(1));
                Lines.appended(file);
                assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(2));
                faults++;
            }
        }
        Tried.row(
                "a write that keeps less than it says, at every byte",
                faults + " faults",
                2 * faults,
                0,
                "never promised, cut back, written by the next try");
    }

    @Test
    void aFullRealDiskIsSaidAtOnceAndTheFileEndsWithALine() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 4, folder)) {
            Path ballast = fill(disk.at());
            Access access = LineFile.open(disk.at(), Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, FileChannel::open);
            int lines = 0;
            String said;
            if (access instanceof Access.Opened opened) {
                Appended appended = Lines.append(opened.file());
                for (; appended instanceof Appended.Forced; appended = Lines.append(opened.file())) {
                    lines++;
                }
                said = ((Appended.Refused) appended).sentence();
                assertThat(Files.readAllBytes(opened.file().path())).isEqualTo(Lines.file(lines));
                Files.delete(ballast);
                Lines.appended(opened.file());
                assertThat(Files.readAllBytes(opened.file().path())).isEqualTo(Lines.file(lines + 1));
                opened.file().close();
            } else {
                said = ((Appended.Refused) access).sentence();
            }
            assertThat(said).contains("No space left on device");
            Tried.row(
                    "a full disk, ext4", "1 fault", lines + 1, 0, "said at once; with room made the same file goes on");
        }
    }

    @Test
    void aFileThatMayOnlyGrowIsWrittenAndItsTornEndIsLeftWhereItIs() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 16, folder)) {
            Path diary = disk.at().resolve(Lines.NIGHT.text());
            try (LineFile file = Lines.open(disk.at())) {
                Lines.appended(file);
            }
            assertThat(LoopDisk.run("chattr", "+a", diary.toString())).isZero();
            try (LineFile file = Lines.open(disk.at())) {
                Lines.appended(file);
            }
            byte[] torn = Arrays.copyOf(Lines.file(3), Lines.file(3).length - 5);
            Files.write(diary, Arrays.copyOfRange(torn, Lines.file(2).length, torn.length), StandardOpenOption.APPEND);
            Access.Opened opened = Lines.opened(disk.at(), FileChannel::open);
            try (LineFile next = opened.file()) {
                assertThat(opened.left().get().cause()).isEqualTo(Cause.NOT_CUT);
                assertThat(next.name().segment()).isEqualTo('b');
                assertThat(next.head())
                        .isEqualTo(Chain.hash(Lines.line(2, Chain.hash(Lines.line(1, Chain.NOTHING_BEFORE)))));
                next.append(Lines.line(3, next.head()));
            }
            assertThat(Files.readAllBytes(diary)).isEqualTo(torn);
            assertThat(LoopDisk.run("chattr", "-a", diary.toString())).isZero();
            Tried.row(
                    "a file that may only grow (append-only)",
                    "1 fault",
                    3,
                    0,
                    "its torn end left, a new file goes on");
        }
    }

    /** Not even root may make a file in a folder that is immutable; other users meet the same as a lack of permission. */
    @Test
    void aFolderThatTakesNoNewFileIsSaidAtOnceAndLeftAsItIs() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 16, folder)) {
            Path diary = Files.createDirectory(disk.at().resolve("diary"));
            assertThat(LoopDisk.run("chattr", "+i", diary.toString())).isZero();
            Opened opened = JobFolder.at(disk.at())
                    .open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, FileChannel::open);
            assertThat(opened).isInstanceOf(Opened.No.class);
            assertThat(((Opened.No) opened).refused().said()).contains("nothing can be written there");
            assertThat(diary).isEmptyDirectory();
            assertThat(LoopDisk.run("chattr", "-i", diary.toString())).isZero();
            try (Book book = Shifts.open(disk.at(), Shifts.THIRD, "paver")) {
                Shifts.saved(book, Shifts.opening());
            }
            Tried.row("a folder that takes no new file", "1 fault", 1, 0, "said at once, nothing left behind");
        }
    }

    /** The power of a whole disk goes under a program that goes on elsewhere, and comes back. */
    @Test
    void aDiskWhosePowerWentIsLeftAndTheRecordGoesOnElsewhere() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 16, folder)) {
            Path laptop = folder.resolve("laptop");
            Book book = Shifts.open(disk.at(), Shifts.THIRD, "paver");
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            disk.powerOff();
            Saved refused = book.append(List.of(Shifts.ticket(2)), Shifts.NOON).join();
            assertThat(refused.refused().get().said()).contains("Input/output error");
            assertThat(refused.refused().get().again()).isFalse();
            assertThat(book.continueIn(laptop).join()).isEmpty();
            Shifts.saved(book, Shifts.ticket(2), Shifts.ticket(3));
            book.close();
            disk.unmount();
            disk.mount();
            ShiftRead read = JobFolder.at(disk.at(), laptop).shift(Shifts.THIRD);
            assertThat(read.damages()).isEmpty();
            assertThat(raw(read)).hasSize(4);
            Tried.row(
                    "a disk that dies, the record goes on in another folder",
                    "1 fault",
                    4,
                    0,
                    "said at once; read as one shift");
        }
    }

    /** What the kernel does with a disk on which it finds an error: nothing may be written any more, all can be read. */
    @Test
    void aDiskThatCanOnlyBeReadFromNowOnIsLeftAndTheRecordGoesOnElsewhere() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 16, folder)) {
            Path laptop = folder.resolve("laptop");
            Book book = Shifts.open(disk.at(), Shifts.THIRD, "paver");
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            disk.damaged();
            Saved refused = book.append(List.of(Shifts.ticket(2)), Shifts.NOON).join();
            assertThat(refused.receipts()).isEmpty();
            assertThat(refused.refused().get().said()).contains("Read-only file system");
            assertThat(book.continueIn(laptop).join()).isEmpty();
            Shifts.saved(book, Shifts.ticket(2), Shifts.ticket(3));
            book.close();
            ShiftRead read = JobFolder.at(disk.at(), laptop).shift(Shifts.THIRD);
            assertThat(read.damages()).isEmpty();
            assertThat(raw(read)).hasSize(4);
            Tried.row(
                    "a disk that the kernel lets only be read from one moment on, ext4",
                    "1 fault",
                    4,
                    0,
                    "said at the next line; read as one shift");
        }
    }

    @Test
    void aStickThatWasPulledAndIsBackIsReadWithWhatWasWrittenMeanwhile() throws Exception {
        try (LoopDisk stick = LoopDisk.mounted("ext4", 16, folder)) {
            Path laptop = folder.resolve("laptop");
            Book book = Shifts.open(stick.at(), Shifts.THIRD, "paver");
            Shifts.saved(book, Shifts.opening(), Shifts.ticket(1));
            stick.pull();
            Saved refused = book.append(List.of(Shifts.ticket(2)), Shifts.NOON).join();
            assertThat(refused.refused().get().said()).contains("moved or deleted while it was open");
            assertThat(refused.receipts()).isEmpty();
            assertThat(book.continueIn(laptop).join()).isEmpty();
            Shifts.saved(book, Shifts.ticket(2), Shifts.ticket(3));
            book.close();

            stick.mount();
            ShiftRead read = JobFolder.at(stick.at(), laptop).shift(Shifts.THIRD);
            assertThat(read.damages()).isEmpty();
            assertThat(raw(read)).hasSize(4);
            Opened again = JobFolder.at(stick.at(), laptop)
                    .open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, FileChannel::open);
            try (Book open = ((Opened.Ready) again).book()) {
                Shifts.saved(open, Shifts.ticket(4));
            }
            assertThat(raw(JobFolder.at(stick.at(), laptop).shift(Shifts.THIRD)))
                    .hasSize(5);
            Tried.row(
                    "a stick pulled and put back",
                    "1 fault",
                    5,
                    0,
                    "said at the next line; both folders read as one shift");
        }
    }

    /** The stick is back and nobody says where the record went on: what is written then is told apart from it. */
    @Test
    void aStickThatIsBackAndWrittenWithoutTheOtherFolderIsToldAsTwoOfOneNumber() throws Exception {
        try (LoopDisk stick = LoopDisk.mounted("ext4", 16, folder)) {
            Path laptop = folder.resolve("laptop");
            Book book = Shifts.open(stick.at(), Shifts.THIRD, "paver");
            Shifts.saved(book, Shifts.opening());
            stick.pull();
            assertThat(book.append(List.of(Shifts.ticket(1)), Shifts.NOON)
                            .join()
                            .refused())
                    .isPresent();
            assertThat(book.continueIn(laptop).join()).isEqualTo(Optional.empty());
            Shifts.saved(book, Shifts.ticket(1));
            book.close();

            stick.mount();
            try (Book again = Shifts.open(stick.at(), Shifts.THIRD, "paver")) {
                again.append(List.of(Shifts.ticket(7)), Shifts.NOON.plusHours(1))
                        .join();
            }
            ShiftRead both = JobFolder.at(stick.at(), laptop).shift(Shifts.THIRD);
            List<String> said = new ArrayList<>();
            both.books()
                    .forEach(each -> each.files().forEach(file -> {
                        file.damages().forEach(damage -> said.add(damage.toString()));
                        said.addAll(file.notes());
                    }));
            assertThat(both.damages())
                    .extracting(damage -> damage.said())
                    .containsExactly("1 line was written here when the record went on in 2026-06-03-day.paver-b.jsonl"
                            + " already; not counted, to be keyed again there where they count");
            assertThat(String.join("\n", said)).contains("2026-06-03-day.paver-b.jsonl");
            assertThat(both.books().get(0).lines()).hasSize(3);
        }
    }

    private static Path fill(Path disk) {
        Path ballast = disk.resolve("ballast");
        byte[] block = new byte[1000];
        try (var out = Files.newOutputStream(ballast)) {
            while (true) {
                out.write(block);
            }
        } catch (IOException e) {
            assertThat(e).hasMessageContaining("No space left");
        }
        return ballast;
    }
}
