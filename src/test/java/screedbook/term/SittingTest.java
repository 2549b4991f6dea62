package screedbook.term;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The small desk in a real terminal, ended in every way a night can end it. Needs tmux and stty. */
class SittingTest {
    @TempDir
    Path folder;

    private Pane pane;

    @AfterEach
    void closeTheWindow() throws Exception {
        if (pane != null) {
            pane.close();
        }
    }

    /** The settings before, the small desk, its exit code; then the terminal is held open without a shell that could mend it. */
    private long open() throws Exception {
        pane = new Pane(
                folder, "stty -g > " + folder.resolve("before") + "; " + java() + "; echo ended with $?; exec cat");
        return processNumber(pane.waitFor("typed"));
    }

    private static String java() throws URISyntaxException {
        Set<String> paths = new LinkedHashSet<>();
        for (Class<?> part : new Class<?>[] {SmallDesk.class, Sitting.class, Terminal.class}) {
            paths.add(Path.of(part.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString());
        }
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return "'" + java + "' -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp '" + String.join(":", paths) + "' "
                + SmallDesk.class.getName();
    }

    private static long processNumber(String screen) {
        Matcher matcher = Pattern.compile("small desk (\\d+)").matcher(screen);
        assertThat(matcher.find()).as(screen).isTrue();
        return Long.parseLong(matcher.group(1));
    }

    private static void signal(String name, long process) throws IOException, InterruptedException {
        assertThat(new ProcessBuilder("sh", "-c", "kill -" + name + " " + process)
                        .start()
                        .waitFor())
                .isZero();
    }

    private void assertGivenBack(String screen) throws Exception {
        assertThat(pane.otherScreen()).as("the program's screen is left").isFalse();
        assertThat(pane.cursorShown()).isTrue();
        assertThat(pane.settings("-g")).as("settings as before").isEqualTo(Files.readString(folder.resolve("before")));
        assertThat(screen).doesNotContain("typed");
    }

    @ParameterizedTest
    @CsvSource({"INT, 130", "TERM, 143", "HUP, 129"})
    void aSignalToStopGivesTheTerminalBack(String name, int code) throws Exception {
        long process = open();
        pane.type("482");
        pane.waitFor("typed 482");
        assertThat(pane.otherScreen()).isTrue();
        assertThat(pane.settings("-a")).contains("-icanon", "-isig", "-echo ", "-ixon");
        signal(name, process);
        assertGivenBack(pane.waitFor("ended with " + code));
    }

    @Test
    void theProgramsOwnEndGivesTheTerminalBack() throws Exception {
        open();
        pane.strike("Escape");
        String screen = pane.waitFor("ended with 0");
        assertThat(screen).contains("small desk closed");
        assertGivenBack(screen);
    }

    @Test
    void anErrorGivesTheTerminalBackAndIsThenPrinted() throws Exception {
        open();
        pane.type("!");
        String screen = pane.waitFor("ended with 1");
        assertThat(screen).contains("IllegalStateException: struck !");
        assertGivenBack(screen);
    }

    /** The shell in between outlives the window only to write down how the desk ended. */
    @Test
    void aClosedWindowEndsTheProgram() throws Exception {
        Path ended = folder.resolve("ended");
        pane = new Pane(folder, "trap : HUP; " + java() + "; echo $? > " + ended);
        pane.waitFor("typed");
        pane.close();
        pane = null;
        long from = System.nanoTime();
        while (!Files.exists(ended) || Files.size(ended) == 0) {
            assertThat(System.nanoTime() - from).isLessThan(SECONDS.toNanos(20));
            Thread.onSpinWait();
        }
        assertThat(Files.readString(ended).trim())
                .as("ended by itself, or by the closed window")
                .isIn("0", "1", "129");
    }

    @ParameterizedTest
    @CsvSource({"key", "signal"})
    void suspendedTheTerminalIsTheShellsAndContinuedItIsTheDesksAgain(String by) throws Exception {
        pane = new Pane(folder, "env PS1='ready> ' ENV= sh -i");
        pane.waitFor("ready>");
        pane.type(java() + "\n");
        long process = processNumber(pane.waitFor("typed"));
        pane.type("48218");
        pane.waitFor("typed 48218");
        if (by.equals("key")) {
            pane.strike("C-z");
        } else {
            signal("TSTP", process);
        }
        pane.waitFor("Stopped");
        assertThat(pane.otherScreen()).isFalse();
        pane.type("stty -a\n");
        assertThat(pane.waitFor("a sane terminal", screen -> screen.contains("icanon")))
                .containsPattern("(?<!-)\\bicanon")
                .containsPattern("(?<!-)\\bisig")
                .containsPattern("(?<!-)\\becho\\b");
        pane.resize(100, 30);
        pane.type("fg\n");
        pane.waitFor(
                "typed 48218 at the new size", screen -> screen.contains("typed 48218") && screen.contains("100x30"));
        pane.type("9");
        assertThat(pane.waitFor("typed 482189")).doesNotContain("ready>");
        assertThat(pane.settings("-a")).contains("-icanon", "-isig");
        pane.strike("Escape");
        pane.waitFor("small desk closed");
    }

    @Test
    void whereNoShellCouldContinueItCtrlZDoesNotStopTheDesk() throws Exception {
        pane = new Pane(folder, "exec " + java());
        pane.waitFor("typed");
        pane.strike("C-z");
        pane.type("7");
        assertThat(pane.waitFor("typed 7")).contains("small desk");
    }

    @Test
    void keysThatTerminalsKeepForThemselvesReachTheDesk() throws Exception {
        open();
        pane.strike("C-c", "C-s", "C-q", "C-\\", "Home", "PageDown");
        pane.type("é½°");
        assertThat(pane.waitFor("typed csq\\<HOME><PAGE_DOWN>é½°")).contains("80x24");
    }

    @Test
    void aResizedWindowIsDrawnAnew() throws Exception {
        open();
        pane.resize(40, 8);
        pane.waitFor("40x8");
        pane.resize(132, 43);
        pane.waitFor("132x43");
    }

    @Test
    void withoutATerminalTheSittingSaysSo() throws Exception {
        Path answer = folder.resolve("answer");
        Process process = new ProcessBuilder("sh", "-c", "setsid " + java())
                .redirectErrorStream(true)
                .redirectOutput(answer.toFile())
                .start();
        assertThat(process.waitFor()).isNotZero();
        assertThat(Files.readString(answer))
                .contains("no terminal to sit down at", "; right would be a terminal, or a screen for a window")
                .contains("/dev/tty");
    }
}
