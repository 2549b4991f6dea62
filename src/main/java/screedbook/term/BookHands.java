package screedbook.term;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.ListFile;
import screedbook.diary.Opened;
import screedbook.diary.Saved;
import screedbook.entry.Aside;
import screedbook.entry.Closing;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantList;
import screedbook.entry.Receipt;
import screedbook.entry.Refused;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.job.Job;
import screedbook.shelf.Shelf;

/** The shift at the desk and its book on the disk: opened, written into, closed, gone on with in another folder. */
final class BookHands {
    private final Path folder;
    private final String bookName;
    private final String program;
    private final Clock clock;
    private final List<Path> elsewhere = new ArrayList<>();
    private final Map<Kind, Draft> drafts = new LinkedHashMap<>();
    private Shelf shelf;
    private Book book;
    private TakenShift shift;
    private String who = "";
    private boolean late;
    private boolean behindTheClose;

    /**
     * @param folder the job's folder
     * @param bookName the name of this laptop's book
     * @param program name and version, for opening lines
     */
    BookHands(Path folder, String bookName, String program, Clock clock) {
        this.folder = folder;
        this.bookName = bookName;
        this.program = program;
        this.clock = clock;
        this.shelf = Shelf.at(folder);
    }

    /** The job's folder, with those in which a diary went on. */
    Shelf shelf() {
        return shelf;
    }

    Msg lookAt(ShiftId id) {
        return lookAt(id, "");
    }

    private Msg lookAt(ShiftId id, String said) {
        letGo();
        take(id);
        return onlySeen(said);
    }

    /** The shift that was taken, for reading alone. */
    private Msg onlySeen(String said) {
        return new Msg.Opened(shift.page(), List.of(), false, said);
    }

    Msg open(Effect.Open open) {
        letGo();
        who = open.who();
        take(open.shift());
        Optional<Integer> newer = shift.newerThan(FirstLines.FORMAT);
        if (newer.isPresent()) {
            return onlySeen("written by a newer program (format " + newer.get() + "); it can be looked at here");
        }
        if (shift.closed() || shift.own().isEmpty() && shift.day().closed()) {
            behindTheClose = true;
            return opened(List.of());
        }
        Optional<Job> job = shelf.folder().job().job();
        OffsetDateTime now = now(job);
        Opened opened = shelf.folder().open(open.shift(), bookName, jobId(job), who, now);
        if (opened instanceof Opened.Held held) {
            return lookAt(open.shift(), "to look at only: " + held.by().text());
        }
        if (opened instanceof Opened.No no) {
            return lookAt(open.shift(), no.refused().said() + "; it can be looked at only");
        }
        return begun((Opened.Ready) opened, open.shift(), job, now);
    }

    /** The book is open for writing; where not even its first line could be written the shift can only be looked at. */
    private Msg begun(Opened.Ready ready, ShiftId id, Optional<Job> job, OffsetDateTime now) {
        book = ready.book();
        take(id);
        List<String> said = new ArrayList<>(ready.said());
        begin(job, now, said);
        return shift.own().isEmpty() ? lookAt(id, Shown.text(String.join("; ", said))) : opened(said);
    }

    /** What a book's lines name as their job; the folder's name where the job cannot be read. */
    private String jobId(Optional<Job> job) {
        return job.map(Job::id).orElse(folder.getFileName().toString());
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
        job.ifPresent(agreed -> said.addAll(new FolderHands(shelf).sheetTroubles(agreed.sheet())));
        if (!first.isEmpty()) {
            Saved saved = book.append(first, now).join();
            saved.receipts().forEach(r -> shift.add(r.line()));
            saved.refused().ifPresent(r -> said.add("NOT on disk: " + r.said()));
        }
    }

    Msg write(List<Unwritten> entries) {
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
    Msg bring(Effect.BringList bring) {
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
        Opened again = shelf.folder().open(shift.id(), bookName, jobId(shift.job()), who, now(shift.job()));
        book = again instanceof Opened.Ready ready ? ready.book() : null;
        if (book != null && shift.own().isEmpty()) {
            begin(shelf.folder().job().job(), now(shift.job()), new ArrayList<>());
        }
    }

    private String savedPage() {
        try {
            return "page " + SavedPages.save(shelf, shift.id());
        } catch (IOException e) {
            return "the page could not be saved: " + e.getMessage();
        }
    }

    Msg print() {
        if (shift == null) {
            return new Msg.Said("no shift is open");
        }
        try {
            Path file = SavedPages.soFar(shelf, shift.id(), now(shift.job()));
            Path in = shelf.folder().path();
            Path named = file.startsWith(in) ? in.relativize(file) : file;
            return new Msg.Said("page saved as " + Shown.text(named.toString()) + ", figures beside it as csv");
        } catch (IOException e) {
            return new Msg.Refused("the page could not be saved: " + e.getMessage());
        }
    }

    Msg continueIn(String typed) {
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

    void keep(Draft draft) {
        drafts.put(
                draft.becomes(), shift == null ? draft : draft.after(shift.own().size()));
    }

    void drop(Kind kind) {
        drafts.remove(kind);
    }

    void keepDrafts(Consumer<Msg> post) {
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
    void letGo() {
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

    /** What time it is where a job is; where the machine is when there is none. */
    OffsetDateTime now(Optional<Job> job) {
        ZoneId zone = job.map(Job::zone).orElse(clock.getZone());
        return clock.instant().atZone(zone).toOffsetDateTime();
    }
}
