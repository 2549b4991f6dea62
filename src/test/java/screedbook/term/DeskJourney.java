package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole evenings at the packed program in a real terminal, keyed as a person keys them. Needs tmux. */
class DeskJourney {
    private static final Path LAUNCHER =
            Path.of(System.getProperty("screedbook.jar")).resolveSibling("screedbook");
    private static final long DEADLINE = TimeUnit.SECONDS.toNanos(30);
    private static final Pattern ON_DISK = Pattern.compile("line (\\d+) on disk");

    private record Said(int exit, String out) {}

    @TempDir
    Path home;

    private Path job;
    private Pane pane;

    @BeforeEach
    void makeAJob() throws Exception {
        job = home.resolve("job");
        assertThat(said("new", job.toString()).exit()).isZero();
        // The example's plant counts other jobs' tickets too; here the next number stands there by itself.
        Path file = job.resolve("job.json");
        String text = Files.readString(file);
        assertThat(text).contains("\"series\": \"shared\"");
        Files.writeString(file, text.replace("\"series\": \"shared\"", "\"series\": \"own\""));
    }

    @AfterEach
    void closeTheWindow() throws Exception {
        if (pane != null) {
            pane.close();
        }
    }

    @Test
    void aShiftKeyedFromAnEmptyFolderIsClosedVerifiedAndPrintedAndAChangedByteIsNamed() throws Exception {
        sitDown("; echo ended with $?; exec cat");
        keyAShift();
        pane.strike("Escape");
        pane.waitFor("who writes");
        pane.type("q");
        pane.waitFor("ended with 0");

        Said verified = said("verify", job.toString());
        assertThat(verified.exit()).as(verified.out()).isZero();
        Said page = said("day", job.toString());
        assertThat(page.exit()).as(page.out()).isZero();
        // 22.31 + 21.96 + 22.08 = 66.35; the struck load of 20.00 is in no sum.
        assertThat(page.out())
                .contains("66.35")
                .contains("264")
                .contains("foreman told")
                .contains("other job's load")
                .doesNotContain("86.35");

        Path diary = onlyFile("diary", ".main.jsonl");
        byte[] bytes = Files.readAllBytes(diary);
        int at = new String(bytes, UTF_8).indexOf("22.31");
        long line = new String(bytes, 0, at, UTF_8).lines().count();
        bytes[at + 3] = '4';
        Files.write(diary, bytes);
        Said changed = said("verify", job.toString());
        assertThat(changed.exit()).as(changed.out()).isEqualTo(1);
        assertThat(changed.out()).contains(diary.getFileName() + ":" + line + ":");
    }

    private void keyAShift() throws Exception {
        begin();
        onDisk(1);
        pane.type("w");
        answer("air", "47", "humidity", "62", "wind", "6", "sky", "clear", "precipitation", "none", "road", "dry");
        onDisk(2);
        pane.type("s");
        answer("surface", "44", "station", "1500", "pull", "B", "lift", "2");
        onDisk(3);
        pane.type("k");
        answer("surface", "milled", "from", "1200", "to", "2400");
        answer("depth before", "40", "depth after", "36", "temperature", "150");
        onDisk(4);
        pane.type("t");
        answer("ticket", "48217", "truck", "118", "net", "22.31", "at the paver", "285");
        onDisk(5);
        pane.type("104\r21.96\r264");
        pane.waitFor("OUT  at least 270");
        pane.type("\r");
        onDisk(6);
        pane.type("118\r22.08\r281\r");
        onDisk(7);
        pane.type("104\r20.00\r280\r");
        onDisk(8);
        pane.strike("Down");
        pane.type("x");
        answer("reason", "2");
        onDisk(9);
        pane.waitFor("struck (AB)");
        pane.type("f");
        pane.waitFor("at the paver 264");
        pane.type("a");
        answer("answer", "foreman told");
        onDisk(10);
        pane.strike("Escape");
        pane.waitFor("3 loads 66.35 T");
        pane.type("nlane closed at 21:00\r");
        onDisk(11);
        pane.type("c");
        pane.waitFor("Before the last line of this book is written");
        pane.type("\r");
        answer("representative", "Lee Moss", "their loads", "3", "their tons", "66.35");
        answer("agreed", "yes", "day charged", "yes");
        onDisk(12);
    }

    @Test
    void aProgramKilledInTheMiddleOfATicketGivesItBackAndLacksNoLineThatItSaidWasOnDisk() throws Exception {
        sitDown("");
        begin();
        onDisk(1);
        pane.type("s44\r1500\rB\r2\r");
        onDisk(2);
        pane.type("t");
        answer("ticket", "48217", "truck", "118", "net", "22.31", "at the paver", "285");
        int acknowledged = onDisk(3);
        pane.type("104\r21.9");
        pane.waitFor("21.9 ", screen -> screen.contains("21.9"));
        waitFor("what is half typed is kept", () -> filesHold("21.9"));
        ProcessHandle process = ProcessHandle.of(pane.process()).orElseThrow();
        assertThat(process.destroyForcibly()).isTrue();
        process.onExit().get(30, TimeUnit.SECONDS);
        pane = null;

        assertThat(Files.readAllLines(onlyFile("diary", ".main.jsonl"))).hasSizeGreaterThanOrEqualTo(acknowledged);
        sitDown("");
        pane.waitFor("who writes");
        pane.type("1\r");
        pane.waitFor("half typed before: ticket");
        assertThat(pane.text()).contains("1 load 22.31 T");
        pane.type("t");
        pane.waitFor("the ticket as it was half typed", screen -> screen.contains("104") && screen.contains("21.9"));
        assertThat(pane.cursorRow()).startsWith(" net");
        pane.type("6");
        answer("net", "", "at the paver", "279");
        pane.waitFor("2 loads 44.27 T");
        assertThat(said("verify", job.toString()).exit()).isZero();
    }

    @Test
    void theDemoOpensOnAShiftOfTodayAndATicketIsKeyed() throws Exception {
        pane = new Pane(home, environment() + "'" + LAUNCHER + "' --demo; echo ended with $?; exec cat");
        String screen = pane.waitFor("12 loads");
        int before = screen.lines().filter(l -> l.contains("ticket")).toList().size();
        assertThat(before).as(screen).isPositive();
        pane.type("t");
        pane.waitFor("net");
        for (int i = 0; i < 12 && !ON_DISK.matcher(pane.text()).find(); i++) {
            String row = pane.cursorRow();
            String typed = row.startsWith(" net")
                    ? "21.50"
                    : row.startsWith(" truck")
                            ? "1"
                            : row.startsWith(" ticket") ? "7" : row.contains("°F") ? "290" : "";
            pane.type(typed + "\r");
            pane.waitFor(
                    "the next blank",
                    s -> ON_DISK.matcher(s).find() || !cursorRow().equals(row));
        }
        assertThat(pane.waitFor("13 loads")).contains("21.50 T");
        pane.strike("Escape");
        pane.waitFor("who writes");
        pane.type("q");
        pane.waitFor("ended with 0");
    }

    private String cursorRow() {
        try {
            return pane.cursorRow();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private void sitDown(String after) throws Exception {
        String exec = after.isEmpty() ? "exec " : "";
        pane = new Pane(home, environment() + exec + "'" + LAUNCHER + "' '" + job + "'" + after);
    }

    private String environment() {
        return "export JAVA_HOME='" + System.getProperty("java.home") + "' XDG_CACHE_HOME='" + home.resolve("cache")
                + "'; ";
    }

    private void begin() throws Exception {
        pane.waitFor("who writes");
        pane.type("1d");
    }

    /** Label and answer in turn: each is typed when the cursor stands behind its label, then Enter. */
    private void answer(String... words) throws Exception {
        for (int i = 0; i < words.length; i += 2) {
            String label = words[i];
            waitFor("the cursor at " + label, () -> cursorRow().startsWith(" " + label + " "));
            pane.type(words[i + 1] + "\r");
        }
    }

    private int onDisk(int line) throws Exception {
        if (line == 1) {
            pane.waitFor("a digit begins a ticket");
            return 1;
        }
        String screen = pane.waitFor("line " + line + " on disk");
        Matcher matcher = ON_DISK.matcher(screen);
        assertThat(matcher.find()).isTrue();
        return Integer.parseInt(matcher.group(1));
    }

    private interface Sight {
        boolean seen() throws Exception;
    }

    private void waitFor(String what, Sight sight) throws Exception {
        long from = System.nanoTime();
        while (!sight.seen()) {
            if (System.nanoTime() - from > DEADLINE) {
                throw new AssertionError("waited for: " + what + "\nthe screen is:\n" + pane.text());
            }
            Thread.onSpinWait();
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(job)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    /** A file that is put in its place just now is looked at the next time. */
    private boolean filesHold(String text) throws IOException {
        try {
            for (Path file : files()) {
                if (!file.toString().endsWith(".lock") && Files.readString(file).contains(text)) {
                    return true;
                }
            }
        } catch (NoSuchFileException | UncheckedIOException moved) {
            return false;
        }
        return false;
    }

    private Path onlyFile(String folder, String ending) throws IOException {
        List<Path> found = files().stream()
                .filter(f -> f.getParent().endsWith(folder) && f.toString().endsWith(ending))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private Said said(String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of(LAUNCHER.toString()));
        command.addAll(List.of(words));
        Path out = Files.createTempFile(home, "out", "");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).as(command.toString()).isTrue();
        return new Said(process.exitValue(), Files.readString(out, UTF_8));
    }
}
