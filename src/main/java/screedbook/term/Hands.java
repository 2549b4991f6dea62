package screedbook.term;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import screedbook.check.InShort;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.Book;
import screedbook.diary.Glance;
import screedbook.diary.JobFolder;
import screedbook.diary.JobRead;
import screedbook.diary.ListFile;
import screedbook.diary.Opened;
import screedbook.diary.Saved;
import screedbook.diary.Synced;
import screedbook.entry.Aside;
import screedbook.entry.Closing;
import screedbook.entry.Crew;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.ListColumns;
import screedbook.entry.Moment;
import screedbook.entry.PlantList;
import screedbook.entry.Receipt;
import screedbook.entry.Refused;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Unwritten;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.season.Hit;
import screedbook.season.Search;
import screedbook.season.Sought;
import screedbook.shelf.SheetNow;
import screedbook.shelf.Shelf;
import screedbook.spec.SpecSheet;

/**
 * What the desk wants done outside, done: one thread that nobody interrupts reads and writes the job's folder and tells
 * the desk what came of it.
 */
final class Hands {
    private static final int MATCHES = 500;

    private final Path folder;
    private final String bookName;
    private final String program;
    private final Clock clock;
    private final List<Path> elsewhere = new ArrayList<>();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> new Thread(work, "disk"));
    private final Map<Kind, Draft> drafts = new LinkedHashMap<>();
    private Shelf shelf;
    private Book book;
    private TakenShift shift;
    private String who = "";
    private boolean late;
    private final CompletableFuture<Optional<Msg>> looked = new CompletableFuture<>();
    private boolean lookTold;
    private Msg ahead;
    private boolean behindTheClose;

    /**
     * @param folder the job's folder
     * @param bookName the name of this laptop's book
     * @param program name and version, for opening lines
     */
    Hands(Path folder, String bookName, String program, Clock clock) {
        this.folder = folder;
        this.bookName = bookName;
        this.program = program;
        this.clock = clock;
        thread.execute(() -> shelf = Shelf.at(folder));
    }

    /** Begins to read the folder while the terminal is still being opened; the first screen then need not wait. */
    void readAhead() {
        thread.execute(() -> {
            try {
                looked.complete(look());
                ahead = list();
            } catch (RuntimeException | LinkageError trouble) {
                ahead = null;
            }
        });
    }

    private Optional<Msg> look() {
        return shelf.folder().firstLook().map(look -> new Msg.Looked(look.job(), rows(look.shifts())));
    }

    /** The folder as it was read ahead, once; else as it is now. */
    private Msg listed() {
        Msg read = ahead;
        ahead = null;
        return read == null ? list() : read;
    }

    /** Hands an effect to the thread of the disk; returns at once. */
    void carryOut(Effect effect, Consumer<Msg> post) {
        if (effect instanceof Effect.ListShifts && !lookTold) {
            lookTold = true;
            looked.thenAccept(look -> look.ifPresent(post));
        }
        thread.execute(() -> {
            try {
                act(effect, post);
            } catch (RuntimeException | LinkageError trouble) {
                post.accept(new Msg.Refused("the program met " + trouble + "; the lines on disk are as they were"));
                trouble.printStackTrace();
            }
        });
    }

    /** Waits until everything that was handed over is on the disk, then lets the files go. */
    void goodbye() {
        thread.execute(this::letGo);
        thread.shutdown();
        try {
            thread.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private void act(Effect effect, Consumer<Msg> post) {
        if (effect instanceof Effect.ListShifts) {
            post.accept(listed());
        } else if (effect instanceof Effect.Open open) {
            post.accept(open(open));
        } else if (effect instanceof Effect.LookAt look) {
            post.accept(lookAt(look.shift()));
        } else if (effect instanceof Effect.Write write) {
            post.accept(write(write.entries()));
        } else if (effect instanceof Effect.Keep keep) {
            keep(keep.draft());
            keepDrafts(post);
        } else if (effect instanceof Effect.Drop drop) {
            drafts.remove(drop.kind());
            keepDrafts(post);
        } else if (effect instanceof Effect.ContinueIn other) {
            post.accept(continueIn(other.folder()));
        } else if (effect instanceof Effect.Print) {
            post.accept(print());
        } else if (effect instanceof Effect.Find find) {
            post.accept(find(find.words()));
        } else if (effect instanceof Effect.ReadSeason) {
            post.accept(season());
        } else if (effect instanceof Effect.BringList list) {
            post.accept(bring(list));
        } else if (effect instanceof Effect.ReadCrewBefore crew) {
            post.accept(crewBefore(crew.shift()));
        } else if (effect instanceof Effect.ReadJobSheet) {
            post.accept(new SheetHands(shelf.folder(), clock).read());
        } else if (effect instanceof Effect.WriteJobSheet sheet) {
            post.accept(new SheetHands(shelf.folder(), clock)
                    .write(sheet, now(shelf.folder().job().job())));
            post.accept(list());
        } else if (effect instanceof Effect.KeepJobSheet || effect instanceof Effect.DropJobSheet) {
            new SheetHands(shelf.folder(), clock).keep(effect).ifPresent(post);
        } else if (effect instanceof Effect.PrintPlan) {
            post.accept(new SheetHands(shelf.folder(), clock)
                    .print(now(shelf.folder().job().job()).toLocalDate()));
        } else if (effect instanceof Effect.Leave) {
            letGo();
        }
    }

    private Msg list() {
        JobRead read = shelf.folder().job();
        Optional<Job> job = read.job();
        List<String> troubles =
                new ArrayList<>(read.troubles().stream().map(t -> t.text()).toList());
        job.ifPresent(agreed -> troubles.addAll(sheetTroubles(agreed.sheet())));
        Synced.warning(folder).ifPresent(troubles::add);
        if (job.isEmpty()) {
            List<Agreed> revisions = shelf.folder().revisions();
            job = revisions.isEmpty()
                    ? Optional.empty()
                    : Optional.of(revisions.get(revisions.size() - 1).job());
        }
        return new Msg.Folder(job, List.copyOf(troubles), rows(shelf.folder().glances()));
    }

    /** The shifts, newest first. */
    private static List<Msg.Row> rows(Map<ShiftId, Glance> glances) {
        List<Msg.Row> rows = new ArrayList<>();
        glances.forEach((id, glance) -> rows.add(0, row(id, glance)));
        return List.copyOf(rows);
    }

    /** What stands in the way in the limit sheet that the job names; with any, an open shift keeps the one it has. */
    private List<String> sheetTroubles(String name) {
        boolean shipped =
                shelf.folder().sheet(name).isEmpty() && SpecSheet.shippedNames().contains(name);
        return shipped ? List.of() : readSheet(name);
    }

    /** Only a sheet of the job's own can have troubles; the shipped ones are not read before a shift needs them. */
    private List<String> readSheet(String name) {
        return SheetNow.of(shelf.folder(), name)
                .map(SheetNow::troubles)
                .orElseGet(() -> List.of("job.json names the limit sheet " + name + ", which is neither in spec/ nor"
                        + " among the shipped ones"));
    }

    private static Msg.Row row(ShiftId id, Glance glance) {
        String by = glance.opening().map(Glance.Mark::who).orElse("");
        String since = glance.opening().map(o -> Moment.clock(o.keyed())).orElse("?");
        return new Msg.Row(id, glance.closed() ? "closed" : "open since " + since, glance.lines(), by);
    }

    private Msg lookAt(ShiftId id) {
        letGo();
        take(id);
        return new Msg.Opened(shift.page(), List.of(), false, "");
    }

    private Msg open(Effect.Open open) {
        letGo();
        who = open.who();
        take(open.shift());
        Optional<Integer> newer = shift.newerThan(FirstLines.FORMAT);
        if (newer.isPresent()) {
            return new Msg.Opened(
                    shift.page(),
                    List.of(),
                    false,
                    "written by a newer program (format " + newer.get() + "); it can be looked at here");
        }
        if (shift.closed() || shift.own().isEmpty() && shift.day().closed()) {
            behindTheClose = true;
            return opened(List.of());
        }
        JobFolder at = shelf.folder();
        Optional<Job> job = at.job().job();
        OffsetDateTime now = now(job);
        Opened opened = at.open(
                open.shift(),
                bookName,
                job.map(Job::id).orElse(folder.getFileName().toString()),
                who,
                now);
        if (opened instanceof Opened.Held held) {
            Msg.Opened seen = (Msg.Opened) lookAt(open.shift());
            return new Msg.Opened(
                    seen.page(),
                    List.of(),
                    false,
                    "to look at only: " + held.by().text());
        }
        if (opened instanceof Opened.No no) {
            Msg.Opened seen = (Msg.Opened) lookAt(open.shift());
            return new Msg.Opened(seen.page(), List.of(), false, no.refused().said() + "; it can be looked at only");
        }
        Opened.Ready ready = (Opened.Ready) opened;
        book = ready.book();
        take(open.shift());
        List<String> said = new ArrayList<>(ready.said());
        begin(job, now, said);
        if (shift.own().isEmpty()) {
            Msg.Opened seen = (Msg.Opened) lookAt(open.shift());
            return new Msg.Opened(seen.page(), List.of(), false, Shown.text(String.join("; ", said)));
        }
        return opened(said);
    }

    /**
     * The shift that was taken, with what was half typed in it. What became a line just before the program or the power
     * went is not offered once more.
     */
    private Msg opened(List<String> said) {
        shelf.folder().drafts(shift.id(), bookName).stream()
                .filter(draft -> !draft.written(shift.own()))
                .forEach(draft -> drafts.put(draft.becomes(), draft));
        return new Msg.Opened(shift.page(), List.copyOf(drafts.values()), true, Shown.text(String.join("; ", said)));
    }

    /** The lines that the program itself writes when a book is opened. */
    private void begin(Optional<Job> job, OffsetDateTime now, List<String> said) {
        FirstLines lines = new FirstLines(shelf, program, who);
        List<Unwritten> first = new ArrayList<>();
        lines.clock(shift.own(), now).ifPresent(first::add);
        try {
            if (shift.own().isEmpty()) {
                first.add(lines.opening(job, book.sealBefore(), now));
            } else if (!shift.closed()) {
                lines.plan(shift.own(), job, now).ifPresent(p -> {
                    first.add(p);
                    said.add("another job revision or limit sheet is in force from here on");
                });
            }
        } catch (IOException e) {
            said.add("the job's revision could not be kept: " + e.getMessage());
        }
        job.ifPresent(agreed -> said.addAll(sheetTroubles(agreed.sheet())));
        if (!first.isEmpty()) {
            Saved saved = book.append(first, now).join();
            saved.receipts().forEach(r -> shift.add(r.line()));
            saved.refused().ifPresent(r -> said.add("NOT on disk: " + r.said()));
        }
    }

    private Msg write(List<Unwritten> entries) {
        if (book == null && shift != null && behindTheClose) {
            openAgain();
        }
        if (book == null) {
            return new Msg.Refused("no book is open for writing");
        }
        OffsetDateTime now = now(shift.job());
        List<Unwritten> all = new ArrayList<>();
        new FirstLines(shelf, program, who).clock(shift.own(), now).ifPresent(all::add);
        entries.stream()
                .filter(e -> e.entry() instanceof Closing)
                .map(e -> RandomLines.closing(shelf.folder(), shift, (Closing) e.entry(), who, now))
                .forEach(all::addAll);
        all.addAll(entries);
        Saved saved = book.append(all, now).join();
        List<Line> lines = saved.receipts().stream().map(Receipt::line).toList();
        lines.forEach(shift::add);
        if (saved.refused().isPresent()) {
            Refused refused = saved.refused().get();
            return new Msg.Refused(refused.said() + (refused.again() ? "" : "; Ctrl-F names another folder"));
        }
        late |= !shift.day().late().isEmpty();
        String said = saved.said() + places(now);
        if (saved.seal().isPresent()) {
            shift.add(saved.seal().get());
            said = closed(saved.seal().get(), said);
        }
        return new Msg.Wrote(lines, shift.page(), said);
    }

    /** A plant's list is copied, noted, and how it is read kept in the job; where that is not known it is asked. */
    private Msg bring(Effect.BringList bring) {
        if (shift == null || book == null && !behindTheClose) {
            return new Msg.Refused("no book is open for writing");
        }
        try {
            PlantHands hands = new PlantHands(shelf.folder(), shift.job());
            ListFile list = hands.read(bring.path());
            ListColumns columns = bring.columns() == null ? hands.known(bring.plant()) : bring.columns();
            if (!hands.reads(list, columns)) {
                return hands.asked(bring, list);
            }
            OffsetDateTime now = now(shift.job());
            PlantList entry = hands.keep(shift.id(), bring.plant(), list, columns);
            Msg wrote = write(List.of(new Unwritten(now, who, Source.LIVE, entry, Aside.NONE)));
            return wrote instanceof Msg.Wrote done && bring.columns() != null
                    ? hands.settled(done, bring.plant(), columns, who, now)
                    : wrote;
        } catch (IOException | InvalidPathException e) {
            return new Msg.Refused("the list cannot be brought in: " + e.getMessage());
        }
    }

    /** What was written of random places now that there may be a load more; empty where there is nothing to tell. */
    private String places(OffsetDateTime now) {
        try {
            RandomLines lines = RandomLines.owed(shelf.folder(), shift, who, now);
            if (lines.lines().isEmpty()) {
                return "";
            }
            Saved saved = book.append(lines.lines(), now).join();
            saved.receipts().forEach(r -> shift.add(r.line()));
            return lines.said()
                    + saved.refused().map(r -> "  NOT on disk: " + r.said()).orElse("");
        } catch (IOException e) {
            return "  no random place is drawn: " + e.getMessage();
        }
    }

    /** The page of the day is kept. A line behind the close, if one comes, opens the file of the next revision. */
    private String closed(Seal seal, String said) {
        book.close();
        book = null;
        behindTheClose = true;
        shift.judge();
        return "seal " + seal.shortForm() + "  " + said + savedPage();
    }

    /** Behind a close a book is opened with the first line that is written: whoever only looks leaves nothing. */
    private void openAgain() {
        String job = shift.job().map(Job::id).orElse(folder.getFileName().toString());
        Opened again = shelf.folder().open(shift.id(), bookName, job, who, now(shift.job()));
        book = again instanceof Opened.Ready ready ? ready.book() : null;
        if (book != null && shift.own().isEmpty()) {
            begin(shelf.folder().job().job(), now(shift.job()), new ArrayList<>());
        }
    }

    private String savedPage() {
        try {
            return "page " + Pages.save(shelf, shift.id());
        } catch (IOException e) {
            return "the page could not be saved: " + e.getMessage();
        }
    }

    private Msg print() {
        if (shift == null) {
            return new Msg.Said("no shift is open");
        }
        try {
            Path file = Pages.soFar(shelf, shift.id(), now(shift.job()));
            return new Msg.Said("page saved as " + Shown.text(file.toString()));
        } catch (IOException e) {
            return new Msg.Refused("the page could not be saved: " + e.getMessage());
        }
    }

    private Msg continueIn(String typed) {
        if (book == null) {
            return new Msg.Refused("no book is open for writing");
        }
        try {
            Path other = Path.of(typed);
            Optional<Refused> refused = book.continueIn(other).join();
            if (refused.isPresent()) {
                return new Msg.Refused(refused.get().said());
            }
            elsewhere.add(other);
            shelf = Shelf.of(JobFolder.at(folder, elsewhere.toArray(Path[]::new)));
            return new Msg.Said("the record goes on in " + Shown.text(typed) + "; write the entry again with Ctrl-S");
        } catch (InvalidPathException e) {
            return new Msg.Refused("\"" + Shown.text(typed) + "\" names no folder");
        }
    }

    /** Every shift read in turn and judged. */
    private Msg season() {
        List<InShort> shifts = new ArrayList<>();
        shelf.each(
                LocalDate.MIN,
                LocalDate.MAX,
                shift -> {},
                file -> shifts.add(InShort.of(file.day(), file.totals(), file.findings())));
        return new Msg.SeasonRead(List.copyOf(shifts));
    }

    /** The newest shift comes first; within a shift the order of the lines. */
    private Msg find(String words) {
        Sought sought = Sought.of(words);
        List<Msg.Match> matches = new ArrayList<>();
        Shelf listed = Shelf.of(shelf.folder().listed());
        List<ShiftId> shifts = new ArrayList<>(listed.shifts());
        Collections.reverse(shifts);
        for (ShiftId id : shifts) {
            for (Hit hit : matches.size() < MATCHES ? Search.shift(listed, id, sought) : List.<Hit>of()) {
                if (matches.size() < MATCHES) {
                    matches.add(new Msg.Match(id, hit.ref(), hit.told()));
                }
            }
        }
        return new Msg.Found(words, List.copyOf(matches));
    }

    private Msg crewBefore(ShiftId now) {
        List<ShiftId> shifts = new ArrayList<>(shelf.shifts());
        Collections.reverse(shifts);
        for (ShiftId id : shifts) {
            List<Crew> crews = id.compareTo(now) < 0
                    ? shelf.folder().shift(id).day().standing(Crew.class).stream()
                            .map(Standing::entry)
                            .toList()
                    : List.of();
            if (!crews.isEmpty()) {
                return new Msg.CrewBefore(id, crews);
            }
        }
        return new Msg.CrewBefore(null, List.of());
    }

    private void keep(Draft draft) {
        drafts.put(
                draft.becomes(), shift == null ? draft : draft.after(shift.own().size()));
    }

    private void keepDrafts(Consumer<Msg> post) {
        if (shift == null) {
            return;
        }
        try {
            shelf.folder().saveDrafts(shift.id(), bookName, List.copyOf(drafts.values()));
        } catch (IOException e) {
            post.accept(new Msg.Said("what is half typed could not be kept: " + e.getMessage()));
        }
    }

    /** Late lines make the next revision of the page, once they are all there. */
    private void letGo() {
        if (book != null) {
            book.close();
            book = null;
        }
        if (late) {
            savedPage();
            late = false;
        }
        drafts.clear();
        behindTheClose = false;
        shift = null;
    }

    private void take(ShiftId id) {
        shift = new TakenShift(shelf, shelf.folder().shift(id), bookName, this::now);
    }

    private OffsetDateTime now(Optional<Job> job) {
        ZoneId zone = job.map(Job::zone).orElse(clock.getZone());
        return clock.instant().atZone(zone).toOffsetDateTime();
    }
}
