package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Real small disks in memory, which only root can mount. */
@Timeout(60)
class FullDiskTest {
    @TempDir
    Path folder;

    private Path disk;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectory(folder.resolve("disk"));
        boolean mounted = run("mount", "-t", "tmpfs", "-o", "size=64k", "none", disk.toString()) == 0;
        if (!mounted) {
            System.out.println("NOT TESTED: a full disk, a read-only disk, a pulled stick: needs root to mount tmpfs");
        }
        assumeTrue(mounted, "needs root to mount tmpfs");
    }

    @AfterEach
    void unmount() throws Exception {
        if (Files.getFileStore(disk).type().equals("tmpfs")) {
            run("umount", "-l", disk.toString());
        }
    }

    @Test
    void aFullDiskIsSaidAtOnceAndRoomMadeIsUsed() throws IOException {
        try (LineFile file = Lines.open(disk)) {
            int lines = 0;
            Path ballast = fill(20_000);
            Appended appended = Lines.append(file);
            for (; appended instanceof Appended.Forced; appended = Lines.append(file)) {
                lines++;
            }
            Appended.Refused refused = (Appended.Refused) appended;
            assertThat(refused.cause()).isEqualTo(Cause.NOT_TAKEN);
            assertThat(refused.sentence()).contains("No space left on device");
            assertThat(lines).isGreaterThan(50);
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(lines));
            Files.delete(ballast);
            Lines.appended(file);
            assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(lines + 1));
        }
    }

    @Test
    void fromAFullDiskTheRecordGoesOnInAnotherFolder() throws IOException {
        LineFile file = Lines.open(disk);
        Appended appended = Lines.append(file);
        while (appended instanceof Appended.Forced) {
            appended = Lines.append(file);
        }
        String head = file.head();
        try (LineFile next = ((Access.Opened) file.continueIn(folder.resolve("stick"))).file()) {
            assertThat(next.head()).isEqualTo(head);
            Lines.appended(next);
        }
    }

    @Test
    void aTornTailOnAFullDiskIsLeftWhereItIs() throws IOException {
        byte[] torn = Arrays.copyOf(Lines.file(4), Lines.file(4).length - 3);
        Files.write(disk.resolve(Lines.NIGHT.text()), torn);
        fill(Long.MAX_VALUE);
        Access opening = LineFile.open(disk, Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, FileChannel::open);
        assertThat(Files.readAllBytes(disk.resolve(Lines.NIGHT.text()))).isEqualTo(torn);
        if (opening instanceof Access.Opened) {
            Access.Opened opened = (Access.Opened) opening;
            assertThat(opened.left().get().cause()).isEqualTo(Cause.NOT_CUT);
            assertThat(Lines.refused(opened.file()).cause()).isEqualTo(Cause.NOT_TAKEN);
            opened.file().close();
        } else {
            assertThat(((Appended.Refused) opening).sentence()).contains("No space left on device");
        }
    }

    @Test
    void aDiskThatMayOnlyBeReadIsSaidAtOnceAndNothingIsTouched() throws Exception {
        byte[] torn = Arrays.copyOf(Lines.file(4), Lines.file(4).length - 3);
        Files.write(disk.resolve(Lines.NIGHT.text()), torn);
        assertThat(run("mount", "-o", "remount,ro", disk.toString())).isZero();
        Access opening = LineFile.open(disk, Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, FileChannel::open);
        assertThat(opening).isInstanceOf(Appended.Refused.class);
        assertThat(((Appended.Refused) opening).cause()).isEqualTo(Cause.NO_FOLDER);
        assertThat(((Appended.Refused) opening).sentence()).contains("Read-only file system");
        assertThat(Files.readAllBytes(disk.resolve(Lines.NIGHT.text()))).isEqualTo(torn);
        assertThat(LineFile.open(disk.resolve("new"), Lines.NIGHT, "RK", Chain.NOTHING_BEFORE, FileChannel::open))
                .isInstanceOf(Appended.Refused.class);
    }

    @Test
    void aStickThatWasPulledIsSaidAtTheNextLine() throws Exception {
        LineFile file = Lines.open(disk);
        Lines.appended(file);
        String head = file.head();
        assertThat(run("umount", "-l", disk.toString())).isZero();
        assertThat(Lines.refused(file).cause()).isEqualTo(Cause.MOVED);
        try (LineFile next = ((Access.Opened) file.continueIn(folder.resolve("laptop"))).file()) {
            assertThat(next.head()).isEqualTo(head);
            Lines.appended(next);
        }
    }

    private Path fill(long most) throws IOException {
        Path ballast = disk.resolve("ballast");
        byte[] block = new byte[1000];
        try (var out = Files.newOutputStream(ballast, StandardOpenOption.CREATE)) {
            for (long bytes = 0; bytes < most; bytes += block.length) {
                out.write(block);
            }
        } catch (IOException e) {
            assertThat(e).hasMessageContaining("No space left");
        }
        return ballast;
    }

    private static int run(String... command) throws Exception {
        try {
            return new ProcessBuilder(command).inheritIO().start().waitFor();
        } catch (IOException e) {
            System.out.println(e.getMessage());
            return -1;
        }
    }
}
