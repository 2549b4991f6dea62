package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.ShiftId;

class LineFileTest {
    @TempDir
    Path folder;

    private final BadDisk disk = new BadDisk();

    @Test
    void aLineIsWrittenInOnePieceForcedAndOnlyThenPromised() {
        try (LineFile file = Lines.open(folder, disk)) {
            disk.asked.clear();
            Appended.Forced receipt = Lines.appended(file);
            assertThat(disk.asked)
                    .containsExactly(
                            "write " + file.name().text(),
                            "force " + file.name().text());
            byte[] line = Lines.line(1, Chain.NOTHING_BEFORE);
            assertThat(receipt).isEqualTo(new Appended.Forced(file.name().text(), 1, 0, line.length, Chain.hash(line)));
            assertThat(Lines.appended(file).offset()).isEqualTo(line.length + 1);
        }
    }

    @Test
    void aNewFileIsForcedAndThenItsNameInTheFolder() {
        Lines.open(folder, disk).close();
        String name = Lines.NIGHT.text();
        String parent = folder.getFileName().toString();
        assertThat(disk.asked)
                .containsExactly(
                        "open " + name,
                        "force " + name,
                        "open " + parent,
                        "force " + parent,
                        "close " + parent,
                        "close " + name);
    }

    @Test
    void whatIsAppendedIsReadBackByteForByte() throws IOException {
        try (LineFile file = Lines.open(folder)) {
            for (int n = 1; n <= 9; n++) {
                Lines.appended(file);
            }
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(9));
        }
        try (LineFile again = Lines.open(folder)) {
            assertThat(again.lines()).isEqualTo(9);
            Lines.appended(again);
            assertThat(Files.readAllBytes(again.path())).isEqualTo(Lines.file(10));
        }
    }

    @Test
    void aDiskThatTakesAFewBytesAtATimeGetsTheWholeLine() throws IOException {
        try (LineFile file = Lines.open(folder, disk)) {
            disk.bite = 1;
            Lines.appended(file);
            disk.bite = 7;
            Lines.appended(file);
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(2));
        }
    }

    @Test
    void aWriteThatEndsAtAnyByteIsCutBackAndCanBeTriedAgain() throws IOException {
        try (LineFile file = Lines.open(folder, disk)) {
            Lines.appended(file);
            byte[] before = Files.readAllBytes(file.path());
            int length = Lines.line(2, file.head()).length + 1;
            for (int room = 0; room < length; room++) {
                disk.room = room;
                Appended.Refused refused = Lines.refused(file);
                assertThat(refused.cause()).isEqualTo(Cause.NOT_TAKEN);
                assertThat(refused.sentence())
                        .contains("No space left on device", file.name().text());
                assertThat(Files.readAllBytes(file.path()))
                        .as("room for %d", room)
                        .isEqualTo(before);
            }
            disk.room = length;
            Lines.appended(file);
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(2));
        }
    }

    @Test
    void aPieceThatCannotBeCutOffEndsTheFileAndTheNextOpeningSetsItAside() throws IOException {
        try (LineFile file = Lines.open(folder, disk)) {
            Lines.appended(file);
            disk.room = 10;
            disk.truncateFails = true;
            assertThat(Lines.refused(file).cause()).isEqualTo(Cause.NOT_CUT);
            disk.room = -1;
            disk.truncateFails = false;
            disk.asked.clear();
            assertThat(Lines.refused(file).cause()).isEqualTo(Cause.NOT_CUT);
            assertThat(disk.asked).isEmpty();
        }
        Access.Opened again = Lines.opened(folder, disk);
        again.file().close();
        assertThat(again.torn().get().count()).isEqualTo(10);
        assertThat(Files.readAllBytes(again.file().path())).isEqualTo(Lines.file(1));
    }

    /** After a force that went wrong the next ones say all is well while bytes are lost (seen on ext4). */
    @Test
    void aForceThatWentWrongIsNeverTriedAgain() {
        for (int good = 0; good < 5; good++) {
            BadDisk bad = new BadDisk();
            try (LineFile file = Lines.open(folder.resolve("after-" + good), bad)) {
                for (int n = 0; n < good; n++) {
                    Lines.appended(file);
                }
                String head = file.head();
                bad.forceFails = true;
                assertThat(Lines.refused(file).cause()).isEqualTo(Cause.NOT_FORCED);
                bad.forceFails = false;
                bad.asked.clear();
                for (int again = 0; again < 3; again++) {
                    assertThat(Lines.refused(file).cause()).isEqualTo(Cause.NOT_FORCED);
                }
                assertThat(bad.asked).isEmpty();
                assertThat(file.head()).isEqualTo(head);
                assertThat(file.lines()).isEqualTo(good);
            }
        }
    }

    @Test
    void afterADeadDiskTheRecordGoesOnInAnotherFolderFromTheLastLineThatCounts() throws IOException {
        Path stick = folder.resolve("stick");
        LineFile file = Lines.open(folder.resolve("diary"), disk);
        Lines.appended(file);
        Lines.appended(file);
        byte[] third = Lines.line(3, file.head());
        disk.forceFails = true;
        assertThat(file.append(third)).isInstanceOf(Appended.Refused.class);
        disk.asked.clear();

        assertThat(file.continueIn(stick)).isInstanceOf(Appended.Refused.class);
        disk.forceFails = false;
        Access opening = file.continueIn(stick);
        assertThat(opening).isInstanceOf(Access.Opened.class);
        try (LineFile next = ((Access.Opened) opening).file()) {
            assertThat(next.append(third)).isInstanceOf(Appended.Forced.class);
            assertThat(next.path().getParent()).isEqualTo(stick);
            assertThat(Lines.links(Chain.walk(Files.readAllBytes(next.path()), Chain.hash(Lines.line(2, hash(1))))))
                    .containsOnly(RawLine.Link.LINKED);
            assertThat(disk.count("force " + Lines.NIGHT.text())).isZero();
            assertThat(disk.count("write " + Lines.NIGHT.text())).isZero();
            assertThat(LineFile.open(stick, Lines.NIGHT, "second", Chain.NOTHING_BEFORE, FileChannel::open))
                    .isInstanceOf(Access.Taken.class);
            assertThat(LineFile.open(
                            folder.resolve("diary"), Lines.NIGHT, "second", Chain.NOTHING_BEFORE, FileChannel::open))
                    .isInstanceOf(Access.Taken.class);
        }
    }

    @Test
    void segmentsFollowEachOtherInOneFolder() {
        LineFile file = Lines.open(folder, disk);
        for (char segment = 'b'; segment <= 'z'; segment++) {
            Access opening = file.continueIn(folder);
            assertThat(opening).isInstanceOf(Access.Opened.class);
            file = ((Access.Opened) opening).file();
            assertThat(file.name().segment()).isEqualTo(segment);
            Lines.appended(file);
        }
        assertThat(file.continueIn(folder)).isInstanceOf(Appended.Refused.class);
        file.close();
        Lines.open(folder, disk).close();
    }

    @Test
    void anAppendToAMovedFileIsNotPromised() throws IOException {
        try (LineFile file = Lines.open(folder)) {
            Lines.appended(file);
            Path moved = folder.resolve("elsewhere.jsonl");
            Files.move(file.path(), moved);
            Appended.Refused refused = Lines.refused(file);
            assertThat(refused.cause()).isEqualTo(Cause.MOVED);
            assertThat(refused.sentence()).contains("moved or deleted");
            assertThat(Files.readAllBytes(moved)).isEqualTo(Lines.file(1));
            Files.move(moved, file.path());
            assertThat(Lines.refused(file).cause()).isEqualTo(Cause.MOVED);
        }
    }

    @Test
    void anAppendToADeletedFileIsNotPromisedAndTheRecordGoesOn() throws IOException {
        LineFile file = Lines.open(folder);
        Lines.appended(file);
        String head = file.head();
        Files.delete(file.path());
        assertThat(Lines.refused(file).cause()).isEqualTo(Cause.MOVED);
        try (LineFile next = ((Access.Opened) file.continueIn(folder)).file()) {
            assertThat(next.name().segment()).isEqualTo('b');
            assertThat(next.head()).isEqualTo(head);
            Lines.appended(next);
        }
    }

    @Test
    void aFilePutInItsPlaceIsNotWrittenTo() throws IOException {
        try (LineFile file = Lines.open(folder)) {
            Lines.appended(file);
            Path copy = Files.copy(file.path(), folder.resolve("copy"));
            Files.move(copy, file.path(), StandardCopyOption.REPLACE_EXISTING);
            assertThat(Lines.refused(file).cause()).isEqualTo(Cause.REPLACED);
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(1));
        }
    }

    @Test
    void aFileThatSomethingElseMadeLongerOrShorterIsNotWrittenTo() throws IOException {
        try (LineFile file = Lines.open(folder)) {
            Lines.appended(file);
            Files.write(file.path(), "{}\n".getBytes(), StandardOpenOption.APPEND);
            assertThat(Lines.refused(file).cause()).isEqualTo(Cause.CHANGED);
        }
        try (LineFile file = Lines.open(folder.resolve("other"))) {
            Lines.appended(file);
            Files.write(file.path(), new byte[0]);
            assertThat(Lines.refused(file).cause()).isEqualTo(Cause.CHANGED);
        }
    }

    @Test
    void aLockThatWasTakenAwayEndsTheWriting() throws IOException {
        LineFile file = Lines.open(folder);
        Lines.appended(file);
        Files.delete(folder.resolve(Lines.NIGHT.beside("lock")));
        assertThat(Lines.refused(file).cause()).isEqualTo(Cause.UNLOCKED);
        try (LineFile next = ((Access.Opened) file.continueIn(folder)).file()) {
            Lines.appended(next);
        }
    }

    @Test
    void aLineThatIsNotTheNextOneIsAMistakeOfTheProgram() throws IOException {
        try (LineFile file = Lines.open(folder)) {
            Lines.appended(file);
            for (byte[] wrong : List.of(
                    Lines.line(2, Chain.NOTHING_BEFORE),
                    (new String(Lines.line(2, file.head())) + "\n").getBytes(),
                    "{}".getBytes(),
                    new byte[0],
                    new byte[Chain.LONGEST + 1])) {
                assertThatThrownBy(() -> file.append(wrong)).isInstanceOf(IllegalArgumentException.class);
            }
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(1));
        }
    }

    @Test
    void aSecondWindowOfTheSameProgramIsToldWhoWrites() {
        try (LineFile file = Lines.open(folder)) {
            for (int again = 0; again < 3; again++) {
                assertThat(LineFile.open(folder, Lines.NIGHT, "second", Chain.NOTHING_BEFORE, FileChannel::open))
                        .isEqualTo(new Access.Taken("RK since 21:00"));
            }
            Lines.appended(file);
            FileName other = FileName.of(ShiftId.of("2026-06-03-night"), "roller", 1);
            Access beside = LineFile.open(folder, other, "second", Chain.NOTHING_BEFORE, FileChannel::open);
            assertThat(beside).isInstanceOf(Access.Opened.class);
            ((Access.Opened) beside).file().close();
        }
        Lines.open(folder).close();
        assertThat(folder.resolve(Lines.NIGHT.beside("held"))).doesNotExist();
    }

    @Test
    void aDiaryThatIsALinkIsNotOpened() throws IOException {
        Path target = Files.write(folder.resolve("target"), Lines.file(2));
        Files.createSymbolicLink(folder.resolve(Lines.NIGHT.text()), target);
        Access opening = LineFile.open(folder, Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, FileChannel::open);
        assertThat(opening).isInstanceOf(Appended.Refused.class);
        assertThat(((Appended.Refused) opening).cause()).isEqualTo(Cause.NOT_A_FILE);
        assertThat(Files.readAllBytes(target)).isEqualTo(Lines.file(2));
        Files.delete(folder.resolve(Lines.NIGHT.text()));
        Lines.open(folder).close();
    }

    @Test
    void filesAreForOwnerAndGroupAlone() throws IOException {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (!posix) {
            System.out.println("NOT TESTED: that files are for owner and group alone: there are no POSIX permissions");
        }
        assumeTrue(posix, "needs POSIX permissions");
        Path deep = folder.resolve("job").resolve("diary");
        try (LineFile file = Lines.open(deep)) {
            Lines.appended(file);
            assertThat(mode(file.path())).isEqualTo("rw-r-----");
            assertThat(mode(deep)).isEqualTo("rwxr-x---");
            assertThat(mode(deep.getParent())).isEqualTo("rwxr-x---");
            assertThat(mode(deep.resolve(Lines.NIGHT.beside("held")))).isEqualTo("rw-r-----");
        }
    }

    @Test
    void aDiskThatIsGoneOpensNothingAndKeepsNoLock() {
        disk.openFails = true;
        Access opening = LineFile.open(folder, Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, disk);
        assertThat(opening).isInstanceOf(Appended.Refused.class);
        assertThat(((Appended.Refused) opening).sentence()).contains("the disk is gone");
        disk.openFails = false;
        disk.folderForceFails = true;
        assertThat(LineFile.open(folder, Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, disk))
                .isInstanceOf(Appended.Refused.class);
        disk.folderForceFails = false;
        Lines.open(folder, disk).close();
    }

    private static String hash(int lines) {
        return Chain.walk(Lines.file(lines), null).head();
    }

    private static String mode(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }
}
