package screedbook.entry;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A shift as its entries stand after corrections: all books read together by machine time, then by the book's name,
 * never reordered within a book.
 *
 * @param written every line in reading order, with those that are foreign or unreadable
 * @param all every line of ours as it stands, in reading order, struck ones too
 * @param adrift corrections and answers that name an entry which is not there
 * @param lists the plants' own lists that its lines name, by the line that brought each
 */
public record Day(
        ShiftId shift, List<Written> written, List<Standing<?>> all, List<Line> adrift, Map<Ref, PlantRows> lists) {
    private static final Comparator<Standing<?>> HAPPENED = Comparator.<Standing<?>, OffsetDateTime>comparing(
                    Standing::order, OffsetDateTime.timeLineOrder())
            .thenComparing(s -> s.line().book())
            .thenComparing(s -> s.line().n());

    public Day(ShiftId shift, List<Written> written, List<Standing<?>> all, List<Line> adrift) {
        this(shift, written, all, adrift, Map.of());
    }

    /** The same day with the plants' lists that its lines name. */
    public Day with(Map<Ref, PlantRows> others) {
        return new Day(shift, written, all, adrift, Map.copyOf(others));
    }

    /** The day made of its books' lines; each list is one book in its own order. */
    public static Day of(ShiftId shift, List<List<Written>> books) {
        List<Written> written = merged(books);
        Corrections corrections = new Corrections(written);
        return new Day(shift, written, corrections.all(), corrections.adrift());
    }

    private static List<Written> merged(List<List<Written>> books) {
        List<Written> out = new ArrayList<>();
        int[] at = new int[books.size()];
        while (true) {
            int next = -1;
            for (int b = 0; b < at.length; b++) {
                if (at[b] < books.get(b).size() && (next < 0 || earlier(books, at, b, next))) {
                    next = b;
                }
            }
            if (next < 0) {
                return List.copyOf(out);
            }
            out.add(books.get(next).get(at[next]++));
        }
    }

    private static boolean earlier(List<List<Written>> books, int[] at, int b, int than) {
        Written mine = books.get(b).get(at[b]);
        Written other = books.get(than).get(at[than]);
        if (!(mine instanceof Line m)) {
            return true;
        }
        if (!(other instanceof Line o)) {
            return false;
        }
        int byClock = m.keyed().toInstant().compareTo(o.keyed().toInstant());
        return byClock < 0 || (byClock == 0 && m.book().compareTo(o.book()) < 0);
    }

    /** The entries of a kind that count, by the time they happened, then book and number. */
    public <E extends Entry> List<Standing<E>> standing(Class<E> type) {
        return every(type).stream().filter(s -> !s.struck()).sorted(HAPPENED).toList();
    }

    /** The entries of a kind in reading order, struck ones too. */
    @SuppressWarnings("unchecked")
    public <E extends Entry> List<Standing<E>> every(Class<E> type) {
        List<Standing<E>> found = new ArrayList<>();
        for (Standing<?> each : all) {
            if (type.isInstance(each.entry())) {
                found.add((Standing<E>) each);
            }
        }
        return found;
    }

    /** The entry of a number, if it is there. */
    public Optional<Standing<?>> find(Ref ref) {
        return all.stream().filter(s -> s.ref().equals(ref)).findFirst();
    }

    /** The newest entry of a kind that counts, in reading order. */
    public <E extends Entry> Optional<Standing<E>> last(Class<E> type) {
        List<Standing<E>> found = every(type).stream().filter(s -> !s.struck()).toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
    }

    /** The first opening, if there is one. */
    public Optional<Standing<Opening>> opening() {
        return every(Opening.class).stream().findFirst();
    }

    /** Whether every book of the shift that was opened has been closed. */
    public boolean closed() {
        return openBooks().isEmpty() && all.stream().anyMatch(s -> s.entry() instanceof Closing);
    }

    /** The books that were opened and are not closed, in the order of their opening lines. */
    public List<String> openBooks() {
        Set<String> open = new LinkedHashSet<>();
        for (Standing<?> each : all) {
            if (each.entry() instanceof Opening) {
                open.add(each.line().book());
            } else if (each.entry() instanceof Closing) {
                open.remove(each.line().book());
            }
        }
        return List.copyOf(open);
    }

    /** The books that are closed, in the order of their closing lines. */
    public List<String> closedBooks() {
        List<String> open = openBooks();
        return all.stream()
                .filter(s ->
                        s.entry() instanceof Closing && !open.contains(s.line().book()))
                .map(s -> s.line().book())
                .distinct()
                .toList();
    }

    /**
     * How a shift stands that is closed by some of its books only: {@code closed by book paver; book plant, 3 lines, is
     * not}. Empty when all of them are closed or none is.
     */
    public Optional<String> closedInPart() {
        List<String> closed = closedBooks();
        List<String> open = openBooks();
        if (closed.isEmpty() || open.isEmpty()) {
            return Optional.empty();
        }
        List<String> told = open.stream().map(this::withLines).toList();
        return Optional.of(
                "closed by book " + String.join(", ", closed) + "; book " + String.join(", ", told) + " is not");
    }

    private String withLines(String book) {
        long lines = written.stream().filter(w -> w.book().equals(book)).count();
        return book + ", " + lines + (lines == 1 ? " line," : " lines,");
    }

    /** Lines that stand behind the closing of their book. */
    public List<Standing<?>> late() {
        Set<String> closed = new HashSet<>();
        List<Standing<?>> late = new ArrayList<>();
        for (Standing<?> each : all) {
            if (closed.contains(each.line().book())) {
                late.add(each);
            }
            if (each.entry() instanceof Closing) {
                closed.add(each.line().book());
            }
        }
        return late;
    }

    /** Lines that could not be counted: unreadable or of a kind that this program does not know. */
    public List<Written> uncounted() {
        return written.stream().filter(w -> !(w instanceof Line)).toList();
    }
}
