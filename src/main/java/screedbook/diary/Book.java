package screedbook.diary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import screedbook.entry.Closing;
import screedbook.entry.HeldBy;
import screedbook.entry.Line;
import screedbook.entry.Receipt;
import screedbook.entry.Refused;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Unreadable;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;

/**
 * One shift's book open for writing by this program alone. Everything that touches the disk is done by the book's own
 * thread, which nobody interrupts; callers get futures and may wait for them or not.
 */
public final class Book implements AutoCloseable {
    private final LineText.Place place;
    private final Optional<String> sealBefore;
    private final Writer writer;
    private int n;
    private boolean closed;

    Book(LineText.Place place, LineFile file, int n, Optional<String> sealBefore) {
        this.place = place;
        this.n = n;
        this.sealBefore = sealBefore;
        this.writer = new Writer(file);
    }

    public ShiftId shift() {
        return place.shift();
    }

    /** The book's name: {@code paver}. */
    public String name() {
        return place.book();
    }

    /** The seal of this book's shift before, for the opening line; empty when there is none. */
    public Optional<String> sealBefore() {
        return sealBefore;
    }

    /**
     * Writes entries, each forced to the device before the next. The first that is refused ends it.
     *
     * @param keyed when the machine writes them; milliseconds are kept
     */
    public CompletableFuture<Saved> append(List<Unwritten> entries, OffsetDateTime keyed) {
        List<Unwritten> all = List.copyOf(entries);
        return writer.with(file -> write(file, all, keyed.truncatedTo(ChronoUnit.MILLIS)));
    }

    /**
     * Goes on in a new file in another folder, or in this one, from the last line that is on the disk. Entries that
     * were refused have to be asked for again.
     *
     * @return why it cannot be done; empty when it was
     */
    public CompletableFuture<Optional<Refused>> continueIn(Path folder) {
        return writer.continueIn(folder).thenApply(access -> {
            if (access instanceof Access.Taken taken) {
                return Optional.of(new Refused(heldBy(taken.words()).text(), false));
            }
            return access instanceof Appended.Refused refused
                    ? Optional.of(new Refused(refused.sentence(), false))
                    : Optional.empty();
        });
    }

    /** Writes what was asked for before, then closes the file and gives the lock up. */
    @Override
    public void close() {
        writer.close().join();
    }

    private Saved write(LineFile file, List<Unwritten> entries, OffsetDateTime keyed) {
        List<Receipt> receipts = new ArrayList<>();
        for (Unwritten entry : entries) {
            if (closed) {
                return new Saved(receipts, Optional.empty(), Optional.of(new Refused("the book is closed", false)), "");
            }
            byte[] line = LineText.bytes(place, n + 1, entry, keyed, file.head());
            Written read = LineText.read(place.book(), file.lines() + 1, line);
            if (!(read instanceof Line known) || !Chain.looksWhole(line)) {
                return new Saved(receipts, Optional.empty(), Optional.of(unfit(read, line.length)), "");
            }
            Appended appended = file.append(line);
            if (appended instanceof Appended.Refused refused) {
                Refused no = new Refused(refused.sentence(), refused.cause().passes());
                return new Saved(receipts, Optional.empty(), Optional.of(no), "");
            }
            n++;
            receipts.add(new Receipt(known, file.name().text()));
            if (entry.entry() instanceof Closing) {
                closed = true;
                return sealed(file, receipts);
            }
        }
        return new Saved(receipts, Optional.empty(), Optional.empty(), "");
    }

    /** A line that could not be read back is not written. */
    private static Refused unfit(Written read, int length) {
        String why = read instanceof Unreadable unreadable ? unreadable.reason() : length + " bytes are too many";
        return new Refused("the entry does not fit a line: " + why, true);
    }

    /** The closing line is on the disk; the seal file beside it is a copy of its hash. */
    private Saved sealed(LineFile file, List<Receipt> receipts) {
        Seal seal = new Seal(place.book(), file.head(), n);
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("book", seal.book());
        values.put("lines", seal.lines());
        values.put("seal", seal.sha256());
        try {
            file.keepBeside("seal", Json.write(values));
            file.readOnly();
            return new Saved(receipts, Optional.of(seal), Optional.empty(), "");
        } catch (IOException e) {
            String said = "the seal file could not be written: " + Folder.reason(e);
            return new Saved(receipts, Optional.of(seal), Optional.empty(), said);
        }
    }

    /** Who holds a book, as three lines of text. */
    static String words(String who, OffsetDateTime since) {
        return who + "\n" + screedbook.entry.Moment.text(since) + "\n" + machine() + ", process "
                + ProcessHandle.current().pid();
    }

    /** Whether the holder was a program of this machine that is gone: its lines are here, and nobody else has it open. */
    static boolean endedHere(String words) {
        String[] lines = words.split("\n", 3);
        String here = machine() + ", process ";
        if (lines.length < 3 || !lines[2].startsWith(here)) {
            return false;
        }
        String process = lines[2].substring(here.length()).strip();
        return process.matches("[0-9]{1,9}")
                && !ProcessHandle.of(Long.parseLong(process))
                        .map(ProcessHandle::isAlive)
                        .orElse(false);
    }

    static HeldBy heldBy(String words) {
        String[] lines = words.split("\n", 3);
        return new HeldBy(
                shown(lines, 0, "somebody"), shown(lines, 1, "an unknown time"), shown(lines, 2, "another machine"));
    }

    private static String shown(String[] lines, int at, String otherwise) {
        return at < lines.length && !lines[at].isBlank() ? Shown.text(lines[at].strip()) : otherwise;
    }

    /** The machine's own name for itself; no name service is asked. */
    private static String machine() {
        for (String name : List.of("COMPUTERNAME", "HOSTNAME")) {
            if (System.getenv(name) != null) {
                return System.getenv(name);
            }
        }
        try {
            return Files.readString(Path.of("/etc/hostname")).strip();
        } catch (IOException e) {
            return "this machine";
        }
    }
}
