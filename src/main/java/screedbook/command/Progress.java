package screedbook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;

/** How far long work has come and what is left, on one line of a terminal that is wiped at the end. */
final class Progress {
    private static final Duration QUIET = Duration.ofMillis(1500);
    private static final Duration EVERY = Duration.ofMillis(250);
    private static final int COLUMNS = 60;

    private final PrintWriter to;
    private final InstantSource clock;
    private final int all;
    private final Instant began;
    private Instant said;
    private int done;

    /**
     * @param to null where nobody looks on
     * @param all how many shifts there are
     */
    Progress(PrintWriter to, int all, InstantSource clock) {
        this.to = to;
        this.all = all;
        this.clock = clock;
        this.began = clock.instant();
        this.said = null;
    }

    /** Whether the error output is a terminal, as far as the system tells. */
    static boolean seen() {
        try {
            String device = Files.readSymbolicLink(Path.of("/proc/self/fd/2")).toString();
            return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty") || device.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    /** One more shift was read. Nothing is said of work that is done at once. */
    void one() {
        done++;
        Instant now = clock.instant();
        Duration taken = Duration.between(began, now);
        if (to == null || taken.compareTo(QUIET) < 0 || said != null && now.isBefore(said.plus(EVERY))) {
            return;
        }
        said = now;
        long left = taken.toMillis() * (all - done) / Math.max(1, done) / 1000;
        String text = String.format(
                Locale.ROOT,
                "%d of %d shifts, %d %%, about %d s left",
                done,
                all,
                100L * done / Math.max(1, all),
                left);
        to.print("\r" + text + " ".repeat(Math.max(0, COLUMNS - text.length())));
        to.flush();
    }

    /** Prints on a line that was wiped first: page and progress may be on the same terminal. */
    void aside(Runnable print, PrintWriter out) {
        end();
        print.run();
        if (to != null) {
            out.flush();
        }
    }

    /** Wipes the line. */
    void end() {
        if (to != null && said != null) {
            to.print("\r" + " ".repeat(COLUMNS) + "\r");
            to.flush();
            said = null;
        }
    }
}
