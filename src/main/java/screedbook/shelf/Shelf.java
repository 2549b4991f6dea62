package screedbook.shelf;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import screedbook.check.Acceptance;
import screedbook.check.AtThisPace;
import screedbook.check.Finding;
import screedbook.check.Findings;
import screedbook.check.Ground;
import screedbook.check.ProfileClasses;
import screedbook.diary.BookRead;
import screedbook.diary.JobFolder;
import screedbook.diary.ShiftRead;
import screedbook.entry.Closing;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Line;
import screedbook.entry.Remarks;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Written;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;
import screedbook.tally.Unplanned;

/** One job's folder with everything its shifts are judged by, read together. For one thread. */
public final class Shelf {
    private final JobFolder folder;
    private final Agreements agreements;
    private final Before before;

    private Shelf(JobFolder folder) {
        this.folder = folder;
        this.agreements = new Agreements(folder);
        this.before = new Before(folder, agreements);
    }

    /** The job in a folder; nothing is read yet. */
    public static Shelf at(Path folder) {
        return of(JobFolder.at(folder));
    }

    /** A job whose record may have gone on in other folders. */
    public static Shelf of(JobFolder folder) {
        return new Shelf(folder);
    }

    public JobFolder folder() {
        return folder;
    }

    /** The shifts that have a diary, oldest first. */
    public List<ShiftId> shifts() {
        return folder.shifts();
    }

    /**
     * What each line of a day is judged by: the job revision and the sheet that its book's opening or plan line names
     * by hash; empty where there is none of that hash.
     */
    public Ground ground(Day day) {
        return agreements.ground(day);
    }

    /** What the shifts before one come to, by the lines that were keyed before a moment. */
    public ToDate before(ShiftId shift, OffsetDateTime until) {
        return before.of(shift, until);
    }

    /** A shift as it stood at its close, or at its last line while it is open. */
    public ShiftFile shift(ShiftId id) {
        return file(folder.shift(id), null);
    }

    /**
     * A shift as it stands.
     *
     * @param now until when checks may be due and earlier shifts count, while it is open; the totals of a closed
     *     shift have its own moment and are always the same
     */
    public ShiftFile shift(ShiftId id, OffsetDateTime now) {
        return file(folder.shift(id), now);
    }

    /**
     * A shift with its remarks left out, for the contractor: the same figures, and of the findings what can be told
     * without them.
     */
    public ShiftFile withoutRemarks(ShiftId id, OffsetDateTime now) {
        ShiftFile whole = shift(id, now);
        ShiftRead read = whole.read();
        Day day = Remarks.leftOut(read.day());
        List<Damage> damages = read.damages().stream()
                .map(each -> new Damage(each.file(), each.row(), each.said().replaceFirst("(?s):.*", "")))
                .toList();
        ShiftFile bare = file(new ShiftRead(read.shift(), day, read.books(), damages), now);
        return new ShiftFile(
                bare.read(),
                bare.ground(),
                bare.before(),
                bare.totals(),
                inBoth(whole.findings(), bare.findings()),
                whole.seals());
    }

    /** What is only missing because remarks were left out was not missing. */
    private static List<Finding> inBoth(List<Finding> whole, List<Finding> bare) {
        List<Finding> both = new ArrayList<>();
        for (Finding each : bare) {
            whole.stream()
                    .filter(f -> f.rule().equals(each.rule()) && f.of().equals(each.of()))
                    .findFirst()
                    .ifPresent(f -> both.add(
                            each.with(f.answers().stream().map(Remarks::leftOut).toList())));
        }
        return List.copyOf(both);
    }

    /**
     * Every shift in turn, oldest first, each as {@link #shift(ShiftId)} gives it; a file is read once and only one
     * shift is held.
     *
     * @param from the first date that is asked for; earlier shifts are read for what they come to
     * @param until the last date
     * @param read is told of every shift that was read, before it is given
     */
    public void each(LocalDate from, LocalDate until, Consumer<ShiftId> read, Consumer<ShiftFile> to) {
        Shelf shelf = new Shelf(folder.listed());
        for (ShiftId id : shelf.shifts()) {
            if (id.date().isAfter(until)) {
                return;
            }
            shelf.next(id, !id.date().isBefore(from), read, to);
        }
    }

    /**
     * The same for shifts of whatever dates.
     *
     * @param asked which shifts are asked for; of the others is read what they come to
     * @param on whether there is another one to be read; asked before each
     */
    public void each(Predicate<ShiftId> asked, BooleanSupplier on, Consumer<ShiftFile> to) {
        Shelf shelf = new Shelf(folder.listed());
        for (ShiftId id : shelf.shifts()) {
            if (!on.getAsBoolean()) {
                return;
            }
            shelf.next(id, asked.test(id), shift -> {}, to);
        }
    }

    private void next(ShiftId id, boolean asked, Consumer<ShiftId> read, Consumer<ShiftFile> to) {
        ShiftRead next = folder.shift(id);
        read.accept(id);
        if (asked) {
            to.accept(file(next, null, before.running(id, moment(next.day(), null))));
        }
        before.add(id, next.day());
    }

    private ShiftFile file(ShiftRead read, OffsetDateTime now) {
        return file(read, now, before(read.shift(), moment(read.day(), now)));
    }

    private ShiftFile file(ShiftRead read, OffsetDateTime now, ToDate earlier) {
        Day day = read.day();
        OffsetDateTime moment = moment(day, now);
        Ground ground = ground(day);
        Totals totals = ahead(totals(day, ground, earlier, moment), day, ground, now);
        List<Seal> seals = read.books().stream()
                .map(BookRead::seal)
                .flatMap(Optional::stream)
                .toList();
        Optional<Totals> judged = ground.job().map(job -> totals);
        return new ShiftFile(read, ground, earlier, totals, Findings.of(day, judged, ground, now), seals);
    }

    /** The totals of a day by the job in force; without one, what can be added up without a plan. */
    public Totals totals(Day day, Ground ground, ToDate earlier, OffsetDateTime now) {
        return ground.job()
                .map(job -> ProfileClasses.added(Acceptance.added(Totals.of(day, job, earlier, now), ground), day))
                .orElseGet(() -> Unplanned.totals(day, earlier, now));
    }

    /** While a shift goes on, with when surface and air meet their limits if they go on as they went. */
    private static Totals ahead(Totals totals, Day day, Ground ground, OffsetDateTime now) {
        if (now == null || day.closed() || ground.job().isEmpty()) {
            return totals;
        }
        return AtThisPace.of(day, ground.job().get(), ground.sheet(), totals, now).sections().stream()
                .reduce(totals, Totals::with, (one, other) -> other);
    }

    private static OffsetDateTime moment(Day day, OffsetDateTime now) {
        Optional<OffsetDateTime> closed = closed(day);
        if (closed.isPresent()) {
            return closed.get();
        }
        return now != null ? now : last(day);
    }

    /**
     * When the last of a shift's books was closed for the first time; empty while one is open. What comes behind the
     * close does not move it.
     */
    public static Optional<OffsetDateTime> closed(Day day) {
        if (!day.closed()) {
            return Optional.empty();
        }
        Map<String, OffsetDateTime> books = new HashMap<>();
        for (Standing<?> each : day.all()) {
            if (each.entry() instanceof Closing) {
                books.putIfAbsent(each.line().book(), each.line().keyed());
            }
        }
        return books.values().stream().max(Comparator.comparing(OffsetDateTime::toInstant));
    }

    /** When the last line was keyed; of a shift without one, a time when it must be over. */
    private static OffsetDateTime last(Day day) {
        OffsetDateTime last = null;
        for (Written each : day.written()) {
            last = each instanceof Line line ? line.keyed() : last;
        }
        return last == null ? day.shift().date().plusDays(2).atStartOfDay().atOffset(ZoneOffset.UTC) : last;
    }
}
