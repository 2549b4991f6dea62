package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import screedbook.LoopDisk;
import screedbook.Tried;
import screedbook.diary.JobFolder;
import screedbook.diary.ShiftRead;
import screedbook.diary.Verify;
import screedbook.entry.Draft;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.entry.Written;

/** The packed program keyed in a real terminal and ended at any moment, by a kill, by the power; then keyed on. Needs tmux. */
@ExtendWith(Tried.class)
@Timeout(1800)
class KillJourney {
    private static final Path LAUNCHER =
            Path.of(System.getProperty("screedbook.jar")).resolveSibling("screedbook");
    private static final Pattern ON_DISK = Pattern.compile("line (\\d+) on disk");
    private static final long DEADLINE = TimeUnit.SECONDS.toNanos(30);
    /** A load, an instruction, a surface: what is keyed when nothing else is half typed. */
    private static final List<String> ENTRIES =
            List.of("118\r22.08\r281\r", "nlane closed at 21:00\r", "104\r21.96\r279\r", "s44\r1500\rB\r2\r");

    @TempDir
    Path home;

    private final Random random = new Random(20260603);
    private Path job;
    private Pane pane;
    private int panes;

    /** What was seen in all rounds. */
    private static final class Seen {
        int acknowledged;
        int lost;
        int kept;
        int offered;
        List<String> lines = List.of();
    }

    @AfterEach
    void closeTheWindow() throws Exception {
        if (pane != null) {
            pane.close();
        }
    }

    @Test
    @Tag("faults-short")
    void whateverTheMomentOfTheKillNoLineIsMissingAndWhatWasHalfTypedIsOfferedBack() throws Exception {
        int rounds = Tried.all() ? 200 : 5;
        makeAJob(home.resolve("job"));
        Seen seen = new Seen();
        sitDown("");
        begin();
        for (int round = 0; round < rounds; round++) {
            boolean settled = round % 2 == 0;
            int acknowledged = settled ? keyAndLeaveHalfTyped() : keyAtRandom();
            kill();
            look(seen, Math.max(acknowledged, onDisk()));
            again(seen);
        }
        Tried.row(
                "kill -9 at any moment of keying",
                rounds + " rounds",
                seen.acknowledged,
                seen.lost,
                "%d half-typed entries kept, %d offered back".formatted(seen.kept, seen.offered));
        assertThat(seen.lost).isZero();
        assertThat(seen.kept).isGreaterThanOrEqualTo((rounds + 1) / 2);
        assertThat(seen.offered).isEqualTo(seen.kept);
        assertThat(Verify.of(JobFolder.at(job)).sound()).isTrue();
    }

    /** A whole note that is on the disk, and half of one that the program has had the time to keep. */
    private int keyAndLeaveHalfTyped() throws Exception {
        int before = onDisk();
        pane.type("nlane closed at 21:00\r");
        waitFor("the note is on the disk", () -> onDisk() > before);
        int acknowledged = onDisk();
        pane.type("n");
        pane.waitFor("the blank", screen -> screen.contains("text"));
        String typed = "seen " + random.nextInt(1_000_000);
        pane.type(typed);
        waitFor("it is kept", () -> drafts().toString().contains(typed));
        return acknowledged;
    }

    /** Keys as fast as the terminal takes them, up to any of them; what the screen says of the disk meanwhile is heard. */
    private int keyAtRandom() throws Exception {
        int acknowledged = 0;
        StringBuilder keys = new StringBuilder();
        for (int i = 0; i < 5; i++) {
            keys.append(ENTRIES.get(random.nextInt(ENTRIES.size())));
        }
        int until = 1 + random.nextInt(keys.length());
        for (int at = 0; at < until; ) {
            int next = Math.min(until, at + 1 + random.nextInt(12));
            pane.type(keys.substring(at, next));
            acknowledged = Math.max(acknowledged, onDisk());
            at = next;
        }
        long from = System.nanoTime();
        long pause = TimeUnit.MICROSECONDS.toNanos(random.nextInt(40_000));
        while (System.nanoTime() - from < pause) {
            Thread.onSpinWait();
        }
        return acknowledged;
    }

    private void kill() throws Exception {
        ProcessHandle shell = ProcessHandle.of(pane.process()).orElseThrow();
        List<ProcessHandle> java = shell.descendants().toList();
        assertThat(java).isNotEmpty();
        for (ProcessHandle each : java) {
            each.destroyForcibly();
            each.onExit().get(30, TimeUnit.SECONDS);
        }
    }

    private int onDisk() throws Exception {
        Matcher matcher = ON_DISK.matcher(pane.text());
        return matcher.find() ? Integer.parseInt(matcher.group(1)) : 0;
    }

    /** Every line that was there before is there as it was, and every one that the screen spoke of. */
    private void look(Seen seen, int acknowledged) {
        ShiftRead read = JobFolder.at(job).shift(shift());
        List<String> lines = new ArrayList<>();
        read.books().forEach(book -> book.lines().forEach(line -> lines.add(((Line) line).raw())));
        assertThat(read.damages()).isEmpty();
        assertThat(lines.subList(0, Math.min(lines.size(), seen.lines.size()))).isEqualTo(seen.lines);
        seen.acknowledged += Math.max(0, acknowledged - seen.lines.size());
        seen.lost += Math.max(0, acknowledged - lines.size());
        seen.lines = List.copyOf(lines);
    }

    /** The program is started again: what was kept half typed is offered, and is then given up or written. */
    private void again(Seen seen) throws Exception {
        List<Draft> drafts =
                drafts().stream().filter(draft -> !draft.written(lines())).toList();
        sitDown("");
        pane.waitFor("who writes");
        pane.type("1\r");
        pane.waitFor("the shift", screen -> screen.contains("0-9 ticket"));
        if (!drafts.isEmpty()) {
            seen.kept++;
            seen.offered += pane.text().contains("half typed before: ") ? 1 : 0;
        } else {
            assertThat(pane.text()).doesNotContain("half typed before: ");
        }
        for (Draft draft : drafts) {
            String key = draft.kind().word().equals("ticket")
                    ? "t"
                    : draft.kind().word().substring(0, 1);
            pane.type(key);
            pane.waitFor("half typed before; Ctrl-D drops it");
            assertThat(drafts())
                    .as("what is offered is what was kept")
                    .anyMatch(kept ->
                            kept.becomes() == draft.becomes() && kept.typed().equals(draft.typed()));
            pane.strike("C-d");
            pane.waitFor("the shift", screen -> screen.contains("0-9 ticket"));
        }
    }

    private ShiftId shift() {
        return JobFolder.at(job).shifts().get(0);
    }

    private List<Written> lines() {
        return JobFolder.at(job).shift(shift()).books().get(0).lines();
    }

    private List<Draft> drafts() {
        return JobFolder.at(job).drafts(shift(), "main");
    }

    /** The power goes in the middle of a ticket: it is said at the next Enter, the entry stays, and the shift goes on. */
    @Test
    @Tag("faults")
    void thePowerGoesInTheMiddleOfATicketAndTheShiftGoesOn() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 64, home)) {
            makeAJob(disk.at().resolve("job"));
            sitDown("");
            begin();
            pane.type("104\r21.9");
            pane.waitFor("21.9 ", screen -> screen.contains("21.9"));
            disk.powerOff();
            pane.type("6\r279\r");
            String refused = pane.waitFor("NOT on disk");
            assertThat(refused).contains("21.96").contains("279").doesNotContain("line 4 on disk");
            kill();
            pane.close();
            pane = null;
            disk.unmount();
            disk.mount();

            sitDown("");
            pane.waitFor("who writes");
            pane.type("1\r");
            pane.waitFor("1 load 22.31 T");
            assertThat(drafts().stream().filter(draft -> !draft.written(lines())))
                    .as("what is half typed outlives a kill, and need not outlive the power")
                    .allMatch(draft -> draft.typed().toString().contains("104"));
            pane.type("t");
            pane.waitFor("truck");
            pane.strike("C-d");
            pane.waitFor("the shift", screen -> screen.contains("0-9 ticket"));
            pane.type("104\r21.96\r279\r");
            pane.waitFor("2 loads 44.27 T");
            assertThat(Verify.of(JobFolder.at(job)).sound()).isTrue();
            pane.close();
            pane = null;
            Tried.row(
                    "power cut in mid-ticket at the desk, ext4",
                    "1 round",
                    4,
                    0,
                    "said at the next Enter, the entry on the screen; keyed on after the start");
        }
    }

    /** Every force takes 300 ms more: what is typed meanwhile is on the screen before the line is on the disk. */
    @Test
    @Tag("faults")
    void aSlowDiskHoldsUpNoKey() throws Exception {
        makeAJob(home.resolve("job"));
        sitDown("strace -f --seccomp-bpf -qq -o /dev/null -e trace=fdatasync -e inject=fdatasync:delay_enter=300000 ");
        begin();
        int seen = 0;
        int entries = 10;
        for (int entry = 4; entry < 4 + entries; entry++) {
            pane.type("nthe lane is closed\r" + "nseen ahead " + entry);
            String line = "line " + entry + " on disk";
            String ahead = "ahead " + entry;
            String first = pane.waitFor(ahead, screen -> screen.contains(ahead));
            seen += first.contains(line) ? 0 : 1;
            pane.waitFor("the blank", screen -> screen.contains("text") && screen.contains(ahead));
            pane.waitFor("written", screen -> !screen.contains("typed ahead"));
            pane.strike("C-d");
            pane.waitFor("the shift", screen -> screen.contains("0-9 ticket"));
        }
        Tried.row(
                "a disk that takes 300 ms a force",
                entries + " entries",
                entries,
                0,
                "what was typed meanwhile was on the screen before the line was on the disk: " + seen + " of "
                        + entries);
        assertThat(seen).isGreaterThanOrEqualTo(entries / 2);
        assertThat(JobFolder.at(job).shift(shift()).day().all()).hasSizeGreaterThanOrEqualTo(entries + 3);
    }

    private void makeAJob(Path folder) throws IOException {
        job = folder;
        JobFolder.make(job);
        Path file = job.resolve("job.json");
        String text = Files.readString(file);
        assertThat(text).contains("\"series\": \"shared\"");
        Files.writeString(file, text.replace("\"series\": \"shared\"", "\"series\": \"own\""));
    }

    /** Begins the day with a surface, which says pull and lift, and a load. */
    private void begin() throws Exception {
        pane.waitFor("who writes");
        pane.type("1d");
        pane.waitFor("a digit begins a ticket");
        pane.type("s44\r1500\rB\r2\r");
        pane.waitFor("line 2 on disk");
        pane.type("t48217\r118\r22.31\r285\r");
        pane.waitFor("line 3 on disk");
    }

    /** The window stays when the program ends, so that its last screen can be read. */
    private void sitDown(String under) throws Exception {
        if (pane != null) {
            pane.close();
        }
        Path window = Files.createDirectory(home.resolve("window-" + ++panes));
        pane = new Pane(
                window,
                "export JAVA_HOME='" + System.getProperty("java.home") + "' XDG_CACHE_HOME='" + home.resolve("cache")
                        + "'; " + under + "'" + LAUNCHER + "' '" + job + "' 2>/dev/null; exec cat");
    }

    private interface Sight {
        boolean seen() throws Exception;
    }

    private void waitFor(String what, Sight sight) throws Exception {
        long from = System.nanoTime();
        while (!sight.seen()) {
            assertThat(System.nanoTime() - from)
                    .as("waited for: %s; the screen is:%n%s", what, Optional.of(pane.text()))
                    .isLessThan(DEADLINE);
        }
    }
}
