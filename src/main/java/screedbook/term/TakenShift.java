package screedbook.term;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import screedbook.check.Ground;
import screedbook.desk.Msg;
import screedbook.diary.BookRead;
import screedbook.diary.PlantLists;
import screedbook.diary.ShiftRead;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Written;
import screedbook.job.Job;
import screedbook.shelf.Shelf;
import screedbook.tally.ToDate;

/** A shift taken from the disk: its lines as they are there, growing as more are written, and what they are judged by. */
final class TakenShift {
    private final Shelf shelf;
    private final ShiftId id;
    private final String bookName;
    private final Function<Optional<Job>, OffsetDateTime> clock;
    private final Map<String, List<Written>> books = new LinkedHashMap<>();
    private final List<Seal> seals = new ArrayList<>();
    private final List<Damage> damages;
    private Map<Ref, PlantRows> lists;
    private Ground ground;
    private ToDate before;

    /**
     * @param bookName the name of this laptop's book
     * @param clock what time it is where a job is
     */
    TakenShift(Shelf shelf, ShiftRead read, String bookName, Function<Optional<Job>, OffsetDateTime> clock) {
        this.shelf = shelf;
        this.id = read.shift();
        this.bookName = bookName;
        this.clock = clock;
        this.damages = read.damages();
        this.lists = read.day().lists();
        for (BookRead each : read.books()) {
            books.put(each.book(), new ArrayList<>(each.lines()));
            each.seal().ifPresent(seals::add);
        }
        judge();
    }

    /** What the lines are judged by, and the earlier shifts, looked up again. */
    void judge() {
        Day day = day();
        ground = shelf.ground(day);
        before = shelf.before(id, Shelf.closed(day).orElseGet(() -> clock.apply(ground.job())));
    }

    ShiftId id() {
        return id;
    }

    /** The lines of this laptop's book. */
    List<Written> own() {
        return books.getOrDefault(bookName, List.of());
    }

    boolean closed() {
        return own().stream().anyMatch(w -> w instanceof Line l && l.kind() == Kind.CLOSING);
    }

    /** The newest format that any book of the shift was begun in, when it is newer than the one given. */
    Optional<Integer> newerThan(int format) {
        return day().every(Opening.class).stream()
                .map(o -> o.entry().format())
                .filter(f -> f != null && f > format)
                .max(Integer::compare);
    }

    /** A line that was written to this laptop's book. */
    void add(Line line) {
        books.computeIfAbsent(bookName, b -> new ArrayList<>()).add(line);
        if (line.kind() == Kind.PLAN || line.kind() == Kind.OPENING) {
            judge();
        }
        if (line.kind() == Kind.PLANT_LIST) {
            lists = PlantLists.in(shelf.folder()).of(day());
        }
    }

    void add(Seal seal) {
        seals.add(seal);
    }

    Optional<Job> job() {
        return ground.job();
    }

    /** What the shifts before this one come to. */
    ToDate before() {
        return before;
    }

    Day day() {
        return Day.of(id, books.values().stream().map(List::copyOf).toList()).with(lists);
    }

    Msg.Page page() {
        return new Msg.Page(id, bookName, day(), ground, before, List.copyOf(seals), damages);
    }
}
