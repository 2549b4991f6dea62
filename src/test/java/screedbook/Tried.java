package screedbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/** The table of what was tried with power, disks and kills: tests put rows in, and when all are over it is printed. */
public final class Tried implements BeforeAllCallback {
    private static final Path FILE = Path.of("target", "tried.md");
    private static final List<String> HEAD = List.of(
            "| tried | rounds, states or faults | lines acknowledged | lost | outcome |", "|---|---|---|---|---|");

    /** Whether everything is tried and has to be, as in the profile of the faults, and not the short form of each day. */
    public static boolean all() {
        return Boolean.getBoolean("screedbook.faults");
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        context.getRoot().getStore(Namespace.create(Tried.class)).getOrComputeIfAbsent(Last.class);
    }

    /** A row, when everything is tried; one of the same name from a run before is replaced. */
    public static synchronized void row(String tried, String howOften, int acknowledged, int lost, String outcome) {
        if (all()) {
            put(tried, "| %s | %s | %,d | %,d | %s |".formatted(tried, howOften, acknowledged, lost, outcome));
        }
    }

    private static void put(String tried, String row) {
        try {
            List<String> rows = new ArrayList<>(Files.exists(FILE) ? Files.readAllLines(FILE) : HEAD);
            rows.removeIf(line -> line.startsWith("| " + tried + " |"));
            rows.add(row);
            Files.createDirectories(FILE.getParent());
            Files.write(FILE, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Prints the table when the last test is over. */
    static final class Last implements AutoCloseable {
        @Override
        public void close() throws IOException {
            if (all() && Files.exists(FILE)) {
                System.out.println(Files.readString(FILE));
            }
        }
    }
}
