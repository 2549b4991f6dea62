package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Closing;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.Written;

/** A shift as the list of shifts shows it; only the lines that open and close a book are read, and nothing is checked. */
public final class Glance {
    private static final byte[] OPENING = "\"opening\"".getBytes(UTF_8);
    private static final byte[] CLOSING = "\"closing\"".getBytes(UTF_8);

    private final Set<String> open = new HashSet<>();
    private Line opening;
    private boolean anyClosed;
    private int lines;

    private Glance() {}

    /** A file that cannot be read adds nothing; whoever opens the shift is told. */
    static Glance at(Map<FileName.Diary, Path> files) {
        Glance glance = new Glance();
        files.forEach((name, path) -> glance.add(name.book(), path));
        return glance;
    }

    /** The first line that opened a book of the shift. */
    public Optional<Line> opening() {
        return Optional.ofNullable(opening);
    }

    /** Whether every book that was opened has been closed. */
    public boolean closed() {
        return open.isEmpty() && anyClosed;
    }

    /** How many lines the files hold; what was not written to its end counts as one. */
    public int lines() {
        return lines;
    }

    private void add(String book, Path path) {
        byte[] file;
        try {
            file = Recovery.read(path);
        } catch (IOException unread) {
            return;
        }
        int start = 0;
        for (int row = 1; start < file.length; row++) {
            int end = start;
            while (end < file.length && file[end] != '\n') {
                end++;
            }
            byte[] line = Arrays.copyOfRange(file, start, end);
            if (holds(line, OPENING) || holds(line, CLOSING)) {
                take(LineText.read(book, row, line));
            }
            lines++;
            start = end + 1;
        }
    }

    private void take(Written written) {
        if (!(written instanceof Line line)) {
            return;
        }
        if (line.entry() instanceof Opening) {
            open.add(line.book());
            boolean first = opening == null || line.keyed().isBefore(opening.keyed());
            opening = first ? line : opening;
        } else if (line.entry() instanceof Closing) {
            open.remove(line.book());
            anyClosed = true;
        }
    }

    private static boolean holds(byte[] line, byte[] word) {
        int last = line.length - word.length;
        for (int at = 0; at <= last; at++) {
            if (line[at] == word[0] && Arrays.equals(line, at, at + word.length, word, 0, word.length)) {
                return true;
            }
        }
        return false;
    }
}
