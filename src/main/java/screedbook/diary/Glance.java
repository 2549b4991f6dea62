package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Closing;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.Written;

/** A shift as the list of shifts shows it; only the lines that open and close a book are read, and nothing is checked. */
public final class Glance {
    private static final byte[] NUMBER = "{\"n\":".getBytes(UTF_8);
    private static final byte[] KIND = ",\"kind\":".getBytes(UTF_8);
    private static final byte[] OPENING = "\"opening\"".getBytes(UTF_8);
    private static final byte[] CLOSING = "\"closing\"".getBytes(UTF_8);

    private final Set<String> open = new LinkedHashSet<>();
    private final boolean headsOnly;
    private Mark opening;
    private boolean anyClosed;
    private int lines;

    private Glance(boolean headsOnly) {
        this.headsOnly = headsOnly;
    }

    /** A line that opens or closes a book: whose, when the machine wrote it, the initials of who wrote it. */
    public record Mark(boolean opens, String book, OffsetDateTime keyed, String who) {}

    /** A file that cannot be read adds nothing; whoever opens the shift is told. */
    static Glance at(Map<FileName.Diary, Path> files) {
        return at(files, false);
    }

    /** The same, but of the lines only their heads are read: one whose rest cannot be read is taken all the same. */
    static Glance heads(Map<FileName.Diary, Path> files) {
        return at(files, true);
    }

    private static Glance at(Map<FileName.Diary, Path> files, boolean headsOnly) {
        Glance glance = new Glance(headsOnly);
        files.forEach((name, path) -> glance.add(name.book(), path));
        return glance;
    }

    /** The first line that opened a book of the shift. */
    public Optional<Mark> opening() {
        return Optional.ofNullable(opening);
    }

    /** Whether every book that was opened has been closed. */
    public boolean closed() {
        return open.isEmpty() && anyClosed;
    }

    /** The books that were opened and are not closed, where another one of the shift is. */
    public List<String> openInPart() {
        return anyClosed ? List.copyOf(open) : List.of();
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
            if (mayMark(file, start, end)) {
                byte[] line = Arrays.copyOfRange(file, start, end);
                (headsOnly ? head(line) : whole(LineText.read(book, row, line))).ifPresent(this::take);
            }
            lines++;
            start = end + 1;
        }
    }

    private static Optional<Mark> whole(Written written) {
        return written instanceof Line line && (line.entry() instanceof Opening || line.entry() instanceof Closing)
                ? Optional.of(new Mark(line.entry() instanceof Opening, line.book(), line.keyed(), line.who()))
                : Optional.empty();
    }

    private static Optional<Mark> head(byte[] line) {
        try {
            Map<String, Object> values = Json.line(line);
            boolean opens = "opening".equals(values.get("kind"));
            boolean marks = opens || "closing".equals(values.get("kind"));
            return marks
                            && values.get("book") instanceof String book
                            && values.get("keyed") instanceof String keyed
                            && values.get("who") instanceof String who
                    ? Optional.of(new Mark(opens, book, OffsetDateTime.parse(keyed), who))
                    : Optional.empty();
        } catch (Json.NotJson | DateTimeException e) {
            return Optional.empty();
        }
    }

    private void take(Mark mark) {
        if (mark.opens()) {
            open.add(mark.book());
            boolean first = opening == null || mark.keyed().isBefore(opening.keyed());
            opening = first ? mark : opening;
        } else {
            open.remove(mark.book());
            anyClosed = true;
        }
    }

    /** A line as the program writes it tells its kind behind its number; any other is looked through. */
    private static boolean mayMark(byte[] file, int start, int end) {
        if (!at(file, start, end, NUMBER)) {
            return holds(file, start, end, OPENING) || holds(file, start, end, CLOSING);
        }
        int kind = start + NUMBER.length;
        while (kind < end && file[kind] >= '0' && file[kind] <= '9') {
            kind++;
        }
        int word = kind + KIND.length;
        return at(file, kind, end, KIND)
                ? at(file, word, end, OPENING) || at(file, word, end, CLOSING)
                : holds(file, start, end, OPENING) || holds(file, start, end, CLOSING);
    }

    private static boolean holds(byte[] file, int start, int end, byte[] word) {
        for (int at = start; at < end; at++) {
            if (file[at] == word[0] && at(file, at, end, word)) {
                return true;
            }
        }
        return false;
    }

    private static boolean at(byte[] file, int at, int end, byte[] word) {
        return at + word.length <= end && Arrays.equals(file, at, at + word.length, word, 0, word.length);
    }
}
