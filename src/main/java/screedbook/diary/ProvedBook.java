package screedbook.diary;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Seal;
import screedbook.entry.Written;

/**
 * A book of which every line is proved by its chain and its seal to stand as this program wrote it, in one pass: what is
 * asked for is read, everything else passed over. Whatever is not quite so, is not read here at all.
 */
final class ProvedBook {
    /** Kinds that bear on loads, what was received and placed of them, their heat, and the day's job. */
    private static final Set<String> LOADS =
            Set.of(Kind.TICKET.word(), Kind.OPENING.word(), Kind.PLAN.word(), Kind.STRIKE.word(), Kind.AMEND.word());

    /** Kinds that refer to something outside the diary, and what seals it. */
    private static final Set<String> REFERENCES =
            Set.of(Kind.OPENING.word(), Kind.PLAN.word(), Kind.PLANT_LIST.word(), Kind.CLOSING.word());

    private static final byte[] NUMBER = "{\"n\":".getBytes(UTF_8);
    private static final byte[] KIND = ",\"kind\":\"".getBytes(UTF_8);
    private static final byte[] PREV = ",\"prev\":\"".getBytes(UTF_8);
    private static final int TAIL = PREV.length + 64 + 2;
    private static final byte[] HEX = "0123456789abcdef".getBytes(UTF_8);

    private final FileName.Diary name;
    private final Map<FileName.Diary, Path> files;
    private final Set<String> kinds;
    private final MessageDigest digest = Chain.sha256();
    private final byte[] hash = new byte[32];
    private final byte[] head = new byte[64];
    private final List<FileRead> read = new ArrayList<>();
    private final List<Written> lines = new ArrayList<>();
    private final List<TicketRow> tickets = new ArrayList<>();
    private TicketScan scan;
    private byte[] place;
    private String job;
    private int n;
    private Seal seal;

    private ProvedBook(FileName.Diary name, Map<FileName.Diary, Path> files, Set<String> kinds) {
        this.kinds = kinds;
        this.name = name;
        this.files = files;
    }

    /**
     * A book as far as it has to be looked at to tell whether it is as it was written: the lines that refer to
     * something else; empty when any of its files has to be read in full.
     *
     * @param files every file of the book's shift, in the order in which they were written
     */
    static Optional<BookRead> references(Map<FileName.Diary, Path> files) {
        return proved(files, REFERENCES).map(book -> book.read(book.lines));
    }

    /** The same book as far as its loads go: tickets as rows where they can be, all others as lines. */
    static Optional<ProvedBook> loads(Map<FileName.Diary, Path> files) {
        return proved(files, LOADS);
    }

    private static Optional<ProvedBook> proved(Map<FileName.Diary, Path> files, Set<String> kinds) {
        FileName.Diary first = files.keySet().iterator().next();
        boolean plain = files.keySet().stream().allMatch(f -> f.name().segment() == 'a') && first.revision() == 1;
        ProvedBook book = new ProvedBook(first, files, kinds);
        return plain && book.proved() ? Optional.of(book) : Optional.empty();
    }

    private boolean proved() {
        for (Map.Entry<FileName.Diary, Path> each : files.entrySet()) {
            try {
                int before = n;
                byte[] file = Recovery.read(each.getValue());
                scan = new TicketScan(file);
                if (!file(each.getKey(), file, each.getValue(), read.isEmpty())) {
                    return false;
                }
                read.add(new FileRead(each.getKey().name().text(), n - before, true, List.of(), "", List.of()));
            } catch (IOException e) {
                return false;
            }
        }
        return true;
    }

    String name() {
        return name.book();
    }

    /** How many lines it has, of whatever kind. */
    int count() {
        return n;
    }

    /** The lines that were read, but for the rows; every one is one of ours. */
    List<Written> lines() {
        return lines;
    }

    List<TicketRow> tickets() {
        return tickets;
    }

    /** The line of a row. */
    Line line(TicketRow row) {
        return row.line(job, name.shift(), name.book());
    }

    /** The book with those of its lines that are wanted. */
    BookRead read(List<Written> wanted) {
        return new BookRead(name.book(), List.copyOf(read), Optional.of(seal), List.copyOf(wanted));
    }

    private boolean file(FileName.Diary its, byte[] file, Path path, boolean first) throws IOException {
        int row = 0;
        int start = 0;
        boolean closes = false;
        String text = new String(file, ISO_8859_1);
        while (start < file.length) {
            int end = text.indexOf('\n', start);
            if (end < 0 || end - start > Chain.LONGEST) {
                return false;
            }
            row++;
            String kind = line(file, start, end, row, first && row == 1);
            if (kind == null) {
                return false;
            }
            closes = kind.equals(Kind.CLOSING.word());
            hash(file, start, end);
            start = end + 1;
        }
        String last = new String(head, UTF_8);
        seal = new Seal(name.book(), last, n);
        return closes && last.equals(sealed(its, path));
    }

    /** The kind of a line that hangs on the one before and is where it says; null when it has to be looked at. */
    private String line(byte[] file, int from, int end, int row, boolean first) {
        int tail = end - 2 - 64;
        boolean framed = tail - PREV.length > from
                && file[end - 1] == '}'
                && file[end - 2] == '"'
                && is(file, tail - PREV.length, PREV)
                && is(file, from, NUMBER);
        if (!framed || !first && !Arrays.equals(file, tail, tail + 64, head, 0, 64)) {
            return null;
        }
        int at = from + NUMBER.length;
        int number = 0;
        while (file[at] >= '0' && file[at] <= '9' && number < 100_000_000) {
            number = number * 10 + file[at++] - '0';
        }
        if (number != n + 1 || !is(file, at, KIND)) {
            return null;
        }
        n = number;
        int word = at + KIND.length;
        int wordEnd = word;
        while (wordEnd < tail && file[wordEnd] != '"') {
            wordEnd++;
        }
        String kind = Names.of(file, word, wordEnd);
        return !kind.isEmpty() && body(file, from, wordEnd + 1, end, row, kind) ? kind : null;
    }

    private boolean body(byte[] file, int from, int at, int end, int row, String kind) {
        if (place == null) {
            return opens(file, from, end, row, kind);
        }
        if (!is(file, at, place)) {
            return false;
        }
        if (!kinds.contains(kind)) {
            return Kind.ofWord(kind).isPresent();
        }
        if (kind.equals(Kind.TICKET.word())) {
            TicketRow ticket = new TicketRow(file, row, n);
            if (scan.read(ticket, at + place.length, end - TAIL)) {
                return tickets.add(ticket);
            }
        }
        return full(file, from, end, row);
    }

    /** The first line tells which job, shift and book all others have to name. */
    private boolean opens(byte[] file, int from, int end, int row, String kind) {
        if (!(LineText.read(name.book(), row, Arrays.copyOfRange(file, from, end)) instanceof Line line)
                || !line.book().equals(name.book())
                || !line.shift().equals(name.shift())) {
            return false;
        }
        job = line.job();
        String text = ",\"job\":\"" + job + "\",\"shift\":\"" + name.shift() + "\",\"book\":\"" + name.book() + "\"";
        place = text.getBytes(UTF_8);
        return !kinds.contains(kind) || lines.add(line);
    }

    private boolean full(byte[] file, int from, int end, int row) {
        Written written = LineText.read(name.book(), row, Arrays.copyOfRange(file, from, end));
        return written instanceof Line && lines.add(written);
    }

    private static boolean is(byte[] file, int at, byte[] text) {
        return at + text.length <= file.length && Arrays.equals(file, at, at + text.length, text, 0, text.length);
    }

    private void hash(byte[] file, int from, int end) {
        try {
            digest.update(file, from, end - from);
            digest.digest(hash, 0, hash.length);
        } catch (DigestException e) {
            throw new IllegalStateException(e);
        }
        for (int i = 0; i < hash.length; i++) {
            head[2 * i] = HEX[hash[i] >> 4 & 15];
            head[2 * i + 1] = HEX[hash[i] & 15];
        }
    }

    /** The hash in the seal file beside the diary; empty without one. */
    private static String sealed(FileName.Diary name, Path path) throws IOException {
        Path file = path.resolveSibling(name.name().beside("seal"));
        if (!Files.exists(file)) {
            return "";
        }
        try {
            byte[] text = new String(Files.readAllBytes(file), UTF_8).strip().getBytes(UTF_8);
            return Json.line(text).get("seal") instanceof String hash ? hash : "";
        } catch (Json.NotJson e) {
            return "";
        }
    }
}
