package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** A real terminal of 80 columns and 24 rows, held by a tmux server of its own. */
final class Pane implements AutoCloseable {
    private static final long DEADLINE = TimeUnit.SECONDS.toNanos(30);

    private final Path folder;

    /** Runs a shell command in the terminal; what it runs stays inside the folder. */
    Pane(Path folder, String command) throws IOException, InterruptedException {
        this.folder = folder;
        tmux("-f", "/dev/null", "new-session", "-d", "-x", "80", "-y", "24", command);
    }

    /** Types text as it stands. */
    void type(String text) throws IOException, InterruptedException {
        tmux("send-keys", "-l", "--", text);
    }

    /** Strikes keys by their tmux names. */
    void strike(String... names) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of("send-keys"));
        words.addAll(List.of(names));
        tmux(words.toArray(new String[0]));
    }

    void resize(int columns, int rows) throws IOException, InterruptedException {
        tmux("resize-window", "-x", "" + columns, "-y", "" + rows);
    }

    String text() throws IOException, InterruptedException {
        return tmux("capture-pane", "-p");
    }

    /** Waits for a screen that holds this text, and gives it. */
    String waitFor(String text) throws IOException, InterruptedException {
        return waitFor(text, screen -> screen.contains(text));
    }

    /** Waits for a screen like this, and gives it; after half a minute the screen as it then stood is the error. */
    String waitFor(String what, Predicate<String> like) throws IOException, InterruptedException {
        long from = System.nanoTime();
        String screen = text();
        while (!like.test(screen)) {
            if (System.nanoTime() - from > DEADLINE) {
                throw new AssertionError("waited for: " + what + "\nthe screen is:\n" + screen);
            }
            screen = text();
        }
        return screen;
    }

    /** Whether the program's own screen is shown instead of the shell's. */
    boolean otherScreen() throws IOException, InterruptedException {
        return tmux("display-message", "-p", "#{alternate_on}").trim().equals("1");
    }

    /** The text of the row that the cursor stands in. */
    String cursorRow() throws IOException, InterruptedException {
        int row = Integer.parseInt(tmux("display-message", "-p", "#{cursor_y}").trim());
        List<String> rows = text().lines().toList();
        return row < rows.size() ? rows.get(row) : "";
    }

    /** The number of the process that the window was opened with. */
    long process() throws IOException, InterruptedException {
        return Long.parseLong(tmux("display-message", "-p", "#{pane_pid}").trim());
    }

    boolean cursorShown() throws IOException, InterruptedException {
        return tmux("display-message", "-p", "#{cursor_flag}").trim().equals("1");
    }

    /** The settings of the terminal, as {@code stty -g} and {@code stty -a} tell them from outside. */
    String settings(String flag) throws IOException, InterruptedException {
        String device = tmux("display-message", "-p", "#{pane_tty}").trim();
        return run(List.of("stty", "-F", device, flag));
    }

    /** Closes the window, as a person closes a terminal with the mouse. */
    @Override
    public void close() throws IOException, InterruptedException {
        tmux("kill-server");
    }

    private String tmux(String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of("tmux", "-u", "-S", folder.resolve("tmux").toString()));
        command.addAll(List.of(words));
        return run(command);
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String answer = new String(process.getInputStream().readAllBytes(), UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(String.join(" ", command) + ": " + answer);
        }
        return answer;
    }
}
