package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class OtherProcessTest {
    private static final int KILLS = 15;

    @TempDir
    Path folder;

    @Test
    void whatAKilledProgramPromisedIsInTheDiary() throws Exception {
        Random random = new Random(7);
        int promised = 0;
        for (int round = 0; round < KILLS; round++) {
            int more = 1 + random.nextInt(40);
            try (Child child = new Child("write", folder.toString())) {
                for (int line = 0; line < more; line++) {
                    promised = Integer.parseInt(child.says());
                }
                child.kill();
                for (String line = child.says(); line != null; line = child.says()) {
                    promised = line.isEmpty() ? promised : Integer.parseInt(line);
                }
            }
            Access.Opened opened = Lines.opened(folder, FileChannel::open);
            try (LineFile file = opened.file()) {
                assertThat(opened.left()).isEmpty();
                assertThat(file.name().segment()).isEqualTo('a');
                assertThat(file.lines()).as("round %d", round).isBetween(promised, promised + 1);
                assertThat(Files.readAllBytes(file.path())).isEqualTo(Lines.file(file.lines()));
            }
        }
        assertThat(promised).isGreaterThan(KILLS);
    }

    /** Closing another descriptor of a locked file drops the lock of the whole process, fcntl(2); ours outlives it. */
    @Test
    void aSecondProgramIsToldWhoWritesEvenAfterTheFirstHasReadItsOwnDiary() throws Exception {
        try (Child child = new Child("keep", folder.toString())) {
            assertThat(child.says()).isEqualTo("holding");
            assertThat(second()).isEqualTo(new Access.Taken("BT in the trailer since 20:45"));
            child.tell("read");
            assertThat(child.says()).isEqualTo("read 0");
            assertThat(second()).isEqualTo(new Access.Taken("BT in the trailer since 20:45"));
            assertThat(second()).isEqualTo(new Access.Taken("BT in the trailer since 20:45"));
            child.tell("end");
            assertThat(child.ended()).isZero();
        }
        Lines.open(folder).close();
    }

    @Test
    void aProgramThatWasKilledHoldsNothing() throws Exception {
        try (Child child = new Child("keep", folder.toString())) {
            assertThat(child.says()).isEqualTo("holding");
            child.kill();
        }
        Access again = LineFile.open(folder, Lines.NIGHT, "RK since 21:00", Chain.NOTHING_BEFORE, FileChannel::open);
        Access.Opened opened = (Access.Opened) again;
        assertThat(opened.before()).isEqualTo("BT in the trailer since 20:45");
        try (LineFile file = opened.file()) {
            Lines.appended(file);
            assertThat(Hold.words(folder, Lines.NIGHT)).isEqualTo("RK since 21:00");
        }
        again = LineFile.open(folder, Lines.NIGHT, "RK since 21:10", Chain.NOTHING_BEFORE, FileChannel::open);
        assertThat(((Access.Opened) again).before()).as("put away in order").isEmpty();
        ((Access.Opened) again).file().close();
    }

    /** The lock of a killed program is free; whoever opens the book is told whose it was, and it may be elsewhere. */
    @Test
    void whoeverOpensABookThatWasNotPutAwayIsToldWhoHadIt() throws IOException {
        Shifts.whole(folder, Shifts.THIRD, "paver", 2);
        Path held = folder.resolve("diary/2026-06-04-day.paver.held");
        Files.writeString(held, "BT\n2026-06-04T05:50:00-06:00\ntrailer, process 41\n");
        Opened.Ready ready = Shifts.ready(folder, Shifts.FOURTH, "paver", FileChannel::open);
        ready.book().close();
        assertThat(ready.said())
                .containsExactly("opened by BT at 2026-06-04T05:50:00-06:00 on trailer, process 41 and not put away:"
                        + " that program was cut short, or has it open where no lock reaches from here");
        assertThat(held).doesNotExist();
    }

    @Test
    void aProgramOfThisMachineThatWasKilledIsNothingToTellOf() throws Exception {
        Shifts.whole(folder, Shifts.THIRD, "paver", 2);
        Process ended = new ProcessBuilder("true").start();
        ended.waitFor();
        String own = Book.words("BT", Shifts.NOON);
        assertThat(own).endsWith("process " + ProcessHandle.current().pid());
        Path held = folder.resolve("diary/2026-06-04-day.paver.held");
        Files.writeString(held, own.replaceFirst("[0-9]+$", "" + ended.pid()));
        Opened.Ready gone = Shifts.ready(folder, Shifts.FOURTH, "paver", FileChannel::open);
        gone.book().close();
        assertThat(gone.said()).isEmpty();
        Files.writeString(held, own);
        Opened.Ready alive = Shifts.ready(folder, Shifts.FOURTH, "paver", FileChannel::open);
        alive.book().close();
        assertThat(alive.said()).hasSize(1);
    }

    /** The kernel stops the write at every byte of a line in turn; the file ends with its last whole line each time. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aDiskThatEndsAtAnyByteOfALineLeavesWholeLinesOnly() throws Exception {
        int first = Lines.line(1, Chain.NOTHING_BEFORE).length + 1;
        int second = Lines.line(2, Chain.NOTHING_BEFORE).length + 1;
        try (Child child = new Child("narrow", folder.toString())) {
            assertThat(child.says()).isEqualTo("Forced");
            for (int room = 0; room < second; room++) {
                assertThat(child.says()).isEqualTo(room + " NOT_TAKEN " + first);
            }
            assertThat(child.says()).isEqualTo(second + " none " + (first + second));
            assertThat(child.ended()).isZero();
        }
        assertThat(Files.readAllBytes(folder.resolve(Lines.NIGHT.text()))).isEqualTo(Lines.file(2));
    }

    private Access second() throws IOException {
        return LineFile.open(folder, Lines.NIGHT, "second", Chain.NOTHING_BEFORE, FileChannel::open);
    }
}
