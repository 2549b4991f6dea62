package screedbook.diary;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Closing;
import screedbook.entry.Damage;
import screedbook.entry.Foreign;
import screedbook.entry.Line;
import screedbook.entry.Seal;
import screedbook.entry.Unreadable;
import screedbook.entry.Written;

/** The files of one book's shift being read together, in the order in which they were written. */
final class BookReading {
    private final String book;
    private final List<Part> parts = new ArrayList<>();
    private final Set<Integer> numbers = new HashSet<>();

    /** One file on its way. */
    private static final class Part {
        private final FileName.Diary name;
        private final Path path;
        private final Chain.Walk walk;
        private final List<Written> lines = new ArrayList<>();
        private final List<Damage> damages = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private Map<String, Object> seal = Map.of();

        Part(FileName.Diary name, Path path, Chain.Walk walk) {
            this.name = name;
            this.path = path;
            this.walk = walk;
        }

        String file() {
            return name.name().text();
        }

        void damaged(int row, String said) {
            damages.add(new Damage(file(), row, said));
        }

        Optional<String> firstPrev() {
            return walk.lines().isEmpty()
                    ? Optional.empty()
                    : Chain.prev(walk.lines().get(0).bytes());
        }

        int lastRow() {
            return walk.lines().size();
        }

        /** The line that closes the shift, when it is the last one. */
        Optional<Line> closing() {
            Written last = lastRow() == 0 ? null : lines.get(lastRow() - 1);
            return last instanceof Line line && line.entry() instanceof Closing ? Optional.of(line) : Optional.empty();
        }

        String sealed() {
            return seal.get("seal") instanceof String hash ? hash : null;
        }
    }

    private BookReading(String book) {
        this.book = book;
    }

    /**
     * Reads a book.
     *
     * @param files every file of the book's shift with its name, in the order in which they were written
     */
    static BookRead read(String book, Map<FileName.Diary, Path> files) {
        BookReading reading = new BookReading(book);
        List<FileRead> unread = new ArrayList<>();
        files.forEach((name, path) -> {
            try {
                reading.parts.add(new Part(name, path, Chain.walk(Recovery.read(path), null)));
            } catch (IOException e) {
                String said = "it cannot be read: " + Folder.reason(e);
                unread.add(new FileRead(
                        name.name().text(),
                        0,
                        false,
                        List.of(new Damage(name.name().text(), 0, said)),
                        "nothing of it could be looked at",
                        List.of()));
            }
        });
        return reading.read(unread);
    }

    private BookRead read(List<FileRead> unread) {
        parts.forEach(this::lines);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            part.seal = seal(part);
            ends(part);
            links(part);
            follows(parts.subList(0, i), part);
        }
        lastParts().forEach(this::sealed);
        parts.forEach(this::twice);
        List<FileRead> files = new ArrayList<>(unread);
        List<Written> lines = new ArrayList<>();
        for (Part part : parts) {
            files.add(new FileRead(
                    part.file(),
                    part.lastRow(),
                    part.closing().isPresent(),
                    List.copyOf(part.damages),
                    stands(part),
                    List.copyOf(part.notes)));
            lines.addAll(part.lines);
        }
        return new BookRead(book, List.copyOf(files), seal(), List.copyOf(lines));
    }

    private void lines(Part part) {
        for (RawLine line : part.walk.lines()) {
            if (line.link() == RawLine.Link.BLANK) {
                part.lines.add(new Unreadable(book, line.number(), "it is empty", ""));
            } else {
                part.lines.add(LineText.read(book, line.number(), line.bytes()));
            }
            named(part, line.number());
        }
        if (part.walk.tail().length > 0) {
            String raw = new String(part.walk.tail(), StandardCharsets.UTF_8);
            String said = part.walk.tail().length + " bytes behind the last whole line were not written to their end";
            part.lines.add(new Unreadable(book, part.lastRow() + 1, said, raw));
            part.damaged(part.lastRow() + 1, said);
        }
    }

    /** A line says itself where it belongs; a file under another's name is found by that. */
    private void named(Part part, int row) {
        if (part.lines.get(row - 1) instanceof Line line) {
            if (!line.book().equals(part.name.book()) || !line.shift().equals(part.name.shift())) {
                part.damaged(row, "it says that it belongs to " + line.shift() + " of book " + line.book());
            }
        } else if (part.lines.get(row - 1) instanceof Unreadable unreadable) {
            part.damaged(row, "it cannot be read: " + unreadable.reason());
        }
    }

    private void ends(Part part) {
        String still = part.walk.linked() ? "; what the lines say is as it was written" : "";
        if (part.walk.bom()) {
            part.damaged(0, "a byte order mark was put before the first line" + still);
        }
        if (part.walk.carriageReturns() > 0) {
            part.damaged(0, part.walk.carriageReturns() + " line ends were turned into CR LF" + still);
        }
    }

    private void links(Part part) {
        for (RawLine line : part.walk.lines()) {
            switch (line.link()) {
                case TOO_LONG -> part.damaged(line.number(), "it is longer than 64 KiB");
                case UNLINKED -> part.damaged(line.number(), "it does not name the line before it");
                case BROKEN -> broken(part, line.number());
                default -> {}
            }
        }
    }

    /**
     * Names the line that is not as it was. Where a line does not hang on the one before, the one before was changed
     * if the next line still hangs on this one; else this one was. A jump in the numbers tells of lines that are gone,
     * were put in or stand elsewhere.
     */
    private void broken(Part part, int row) {
        Integer own = n(part, row);
        Integer before = n(part, row - 1);
        Integer twoBefore = n(part, row - 2);
        boolean onlyBefore = own != null && twoBefore != null && own == twoBefore + 2;
        if (own != null && before != null && own != before + 1 && !onlyBefore) {
            part.damaged(
                    row,
                    "number " + own + " follows number " + before
                            + ": lines are gone, were put in or stand elsewhere here");
        } else if (holds(part, row)) {
            part.damaged(row - 1, "it is not as it was when line " + row + " was written");
        } else {
            part.damaged(
                    row,
                    "it is not as it was written; the next line does not name it and it does not name the"
                            + " line before");
        }
    }

    /** Whether what comes behind a line says that it is as it was written. */
    private static boolean holds(Part part, int row) {
        List<RawLine> lines = part.walk.lines();
        for (RawLine next : lines.subList(row, lines.size())) {
            if (next.link() != RawLine.Link.BLANK) {
                return next.link() == RawLine.Link.LINKED;
            }
        }
        String hash = Chain.hash(lines.get(row - 1).bytes());
        return part.sealed() == null || part.sealed().equals(hash);
    }

    private static Integer n(Part part, int row) {
        if (row < 1) {
            return null;
        }
        Written line = part.lines.get(row - 1);
        if (line instanceof Line known) {
            return known.n();
        }
        return line instanceof Foreign foreign ? (Integer) foreign.n() : null;
    }

    /**
     * A file goes on from a line of the file before that has any; lines behind that one were never promised. Where it
     * goes on from what that file goes on from, none of its lines were.
     */
    private static void follows(List<Part> earlier, Part part) {
        Optional<String> prev = part.firstPrev();
        Optional<Part> last =
                earlier.stream().filter(each -> !each.walk.lines().isEmpty()).reduce((first, later) -> later);
        if (prev.isEmpty() || last.isEmpty()) {
            return;
        }
        Part before = last.get();
        int from = 0;
        for (RawLine line : before.walk.lines()) {
            from = Chain.hash(line.bytes()).equals(prev.get()) ? line.number() : from;
        }
        if (from == 0 && !prev.equals(before.firstPrev())) {
            part.damaged(1, "it goes on from a line that " + before.file() + " does not hold");
        } else if (from < before.lastRow()) {
            superseded(before, from, part);
        }
    }

    /**
     * Whether the lines behind the one from which the record goes on were promised: one that the disk kept when it said
     * that it could not was not, and there is never more than that; so the file was opened and written once more.
     */
    private static boolean promised(Part part, int from, Part next) {
        return part.lastRow() - from > 1
                || part.lines.get(from) instanceof Line line
                        && next.lines.get(0) instanceof Line first
                        && line.keyed().isAfter(first.keyed());
    }

    private static void superseded(Part part, int from, Part next) {
        String goesOn = "not counted: the record goes on "
                + (from == 0 ? "from before the first line" : "from line " + from) + " in " + next.file();
        if (promised(part, from, next)) {
            int count = part.lastRow() - from;
            part.damaged(
                    from + 1,
                    count + (count == 1 ? " line was" : " lines were") + " written here when the record went on in "
                            + next.file() + " already; not counted, to be keyed again there where they count");
        }
        for (int row = from + 1; row <= part.lastRow(); row++) {
            String raw = new String(part.walk.lines().get(row - 1).bytes(), StandardCharsets.UTF_8);
            part.lines.set(row - 1, new Unreadable(part.name.book(), row, goesOn, raw));
        }
        part.notes.add("lines from " + (from + 1) + " on are " + goesOn);
    }

    /** Two lines of one number cannot both be meant; the second is kept and not counted. */
    private void twice(Part part) {
        for (int row = 1; row <= part.lastRow(); row++) {
            Integer n = n(part, row);
            if (n != null && !numbers.add(n)) {
                String raw = new String(part.walk.lines().get(row - 1).bytes(), StandardCharsets.UTF_8);
                part.lines.set(
                        row - 1, new Unreadable(book, row, "not counted: number " + n + " is there already", raw));
                part.damaged(row, "number " + n + " is there already");
            }
        }
    }

    /** The last file of each revision: it holds the closing line, when there is one. */
    private List<Part> lastParts() {
        Map<Integer, Part> last = new LinkedHashMap<>();
        parts.forEach(part -> last.put(part.name.revision(), part));
        return List.copyOf(last.values());
    }

    private static Map<String, Object> seal(Part part) {
        Path file = part.path.resolveSibling(part.name.name().beside("seal"));
        try {
            return Files.exists(file) ? new HashMap<>(Json.line(strip(Folder.read(file)))) : Map.of();
        } catch (IOException | Json.NotJson e) {
            part.damaged(0, "its seal file " + file.getFileName() + " cannot be read");
            return Map.of();
        }
    }

    private static byte[] strip(byte[] bytes) {
        int length = bytes.length;
        while (length > 0 && bytes[length - 1] <= ' ') {
            length--;
        }
        return Arrays.copyOf(bytes, length);
    }

    private void sealed(Part part) {
        Optional<Line> closing = part.closing();
        if (part.sealed() == null) {
            if (closing.isPresent()) {
                part.notes.add("no seal file lies beside it; hold the seal on the page against it");
            }
            return;
        }
        String hash = part.lastRow() == 0
                ? ""
                : Chain.hash(part.walk.lines().get(part.lastRow() - 1).bytes());
        if (part.sealed().equals(hash)) {
            return;
        }
        Integer there = part.lastRow() == 0 ? Integer.valueOf(0) : n(part, part.lastRow());
        if (part.seal.get("lines") instanceof BigDecimal lines && there != null && there < lines.intValue()) {
            part.damaged(
                    part.lastRow() + 1,
                    "the seal speaks of " + lines + " lines and " + there + " are there: the end is gone");
        } else if (part.damages.stream().noneMatch(damage -> damage.row() == part.lastRow())) {
            part.damaged(part.lastRow(), "it is not the closing line that was sealed");
        }
    }

    /** The seal of the newest close. */
    private Optional<Seal> seal() {
        Optional<Seal> seal = Optional.empty();
        for (Part part : lastParts()) {
            if (part.closing().isPresent()) {
                String hash =
                        Chain.hash(part.walk.lines().get(part.lastRow() - 1).bytes());
                seal = Optional.of(new Seal(book, hash, part.closing().get().n()));
            }
        }
        return seal;
    }

    /** Which lines still hold together: runs in which each names the one before and none is named as changed. */
    private static String stands(Part part) {
        Set<Integer> wrong = new HashSet<>();
        part.damages.forEach(damage -> wrong.add(damage.row()));
        List<String> runs = new ArrayList<>();
        int from = 1;
        for (int row = 1; row <= part.lastRow() + 1; row++) {
            boolean ends = row > part.lastRow()
                    || wrong.contains(row)
                    || row > from && part.walk.lines().get(row - 1).link() == RawLine.Link.BROKEN;
            if (ends && row > from) {
                runs.add(row - 1 == from ? "line " + from : "lines " + from + " to " + (row - 1));
            }
            from = ends ? wrong.contains(row) ? row + 1 : row : from;
        }
        return runs.isEmpty() ? "no line holds" : String.join(", ", runs) + " hold together";
    }
}
