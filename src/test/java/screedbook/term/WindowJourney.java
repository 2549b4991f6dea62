package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The desk in a window, keyed as a person keys it. Needs Xvfb, openbox, xdotool and a Java that can show windows. */
class WindowJourney {
    private static final Path JAVA = Path.of(System.getProperty("java.home"));
    private static final long DEADLINE = TimeUnit.SECONDS.toNanos(60);
    private static final String DISPLAY = ":" + (100 + ProcessHandle.current().pid() % 900);

    private final List<Process> running = new ArrayList<>();

    @TempDir
    Path home;

    @BeforeEach
    void openAScreen() throws Exception {
        boolean there = Stream.of("Xvfb", "openbox", "xdotool").allMatch(WindowJourney::onPath)
                && Files.exists(JAVA.resolve("lib/libawt_xawt.so"));
        if (!there) {
            System.out.println("NOT TESTED: the desk in a window; .ci/install tests puts there what it needs");
        }
        assumeTrue(there);
        start("Xvfb", DISPLAY, "-screen", "0", "1366x768x24");
        await("a screen", () -> said("xdotool", "getdisplaygeometry").contains("1366 768"));
        start("openbox");
    }

    @AfterEach
    void closeTheScreen() throws Exception {
        for (int i = running.size() - 1; i >= 0; i--) {
            running.get(i).destroy();
            running.get(i).waitFor(10, TimeUnit.SECONDS);
        }
    }

    @Test
    void aLoadKeyedInTheWindowIsOnTheDiskAndTheCloseButtonEndsTheProgram() throws Exception {
        String java = JAVA.resolve("bin/java").toString();
        String jar = System.getProperty("screedbook.jar");
        assertThat(said(java, "-jar", jar, "new", "job")).contains("job.json");
        Process desk = start(java, "-jar", jar, "job", "--who", "AB", "--window");
        await(
                "the window",
                () -> !said("xdotool", "search", "--name", "Screedbook ").isBlank());
        said("xdotool", "mousemove", "400", "300", "click", "1");

        type("d");
        Path diary = await("the shift", this::diary);
        type(
                "4", "8", "2", "1", "2", "Return", "1", "1", "8", "Return", "1", "Return", "2", "1", "period", "3", "7",
                "ctrl+s");

        await("the line", () -> Files.readString(diary).contains("\"net_ston\":21.37"));
        assertThat(Files.readString(diary)).contains("\"number\":\"48212\"");
        said("xdotool", "key", "alt+F4");
        assertThat(desk.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(desk.exitValue()).isZero();
    }

    private Path diary() throws IOException {
        Path folder = home.resolve("job/diary");
        if (!Files.isDirectory(folder)) {
            return null;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".main.jsonl"))
                    .findFirst()
                    .orElse(null);
        }
    }

    private void type(String... keys) throws Exception {
        List<String> words = new ArrayList<>(List.of("xdotool", "key", "--delay", "60"));
        words.addAll(List.of(keys));
        said(words.toArray(new String[0]));
    }

    private Process start(String... command) throws IOException {
        Process process = builder(command)
                .redirectOutput(new File("/dev/null"))
                .redirectErrorStream(true)
                .start();
        running.add(process);
        return process;
    }

    private String said(String... command) throws IOException, InterruptedException {
        Process process = builder(command).redirectErrorStream(true).start();
        String answer = new String(process.getInputStream().readAllBytes());
        process.waitFor();
        return answer;
    }

    private ProcessBuilder builder(String... command) {
        ProcessBuilder builder = new ProcessBuilder(command).directory(home.toFile());
        builder.environment().put("DISPLAY", DISPLAY);
        builder.redirectInput(new File("/dev/null"));
        return builder;
    }

    private static boolean onPath(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    /** What the question gives once it gives something, true if it is yes or no. */
    private static <T> T await(String what, Callable<T> question) throws Exception {
        long from = System.nanoTime();
        T answer = question.call();
        while (answer == null || Boolean.FALSE.equals(answer)) {
            assertThat(System.nanoTime() - from)
                    .as("nanoseconds waited for " + what)
                    .isLessThan(DEADLINE);
            Thread.onSpinWait();
            answer = question.call();
        }
        return answer;
    }
}
