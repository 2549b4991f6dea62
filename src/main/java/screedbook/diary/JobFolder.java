package screedbook.diary;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.entry.Aside;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Draft;
import screedbook.entry.Foreign;
import screedbook.entry.HeldBy;
import screedbook.entry.Line;
import screedbook.entry.Refused;
import screedbook.entry.SetAside;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;
import screedbook.job.Agreed;
import screedbook.unit.UnitSystem;

/** The folder of a job on the disk, as the record's form lays it out. */
public final class JobFolder {
    private static final String[] SHIPPED = {"README.txt", "job.json", "people.json"};
    private static final Comparator<FileName.Diary> ORDER = Comparator.comparing(FileName.Diary::shift)
            .thenComparing(FileName.Diary::book)
            .thenComparing(FileName.Diary::revision)
            .thenComparing(name -> name.name().segment());

    private final Path folder;
    private final List<Path> diaries;
    private final Map<ShiftId, Map<FileName.Diary, Path>> listed;

    private JobFolder(Path folder, List<Path> diaries, Map<ShiftId, Map<FileName.Diary, Path>> listed) {
        this.folder = folder;
        this.diaries = diaries;
        this.listed = listed;
    }

    /**
     * The job in a folder; nothing is read yet.
     *
     * @param also folders outside it where the record went on after a dead disk
     */
    public static JobFolder at(Path folder, Path... also) {
        List<Path> diaries = new ArrayList<>(List.of(folder.resolve("diary")));
        diaries.addAll(Arrays.asList(also));
        diaries.addAll(Months.in(folder));
        return new JobFolder(folder, List.copyOf(diaries), null);
    }

    /** The same job with its files listed now and not looked for again: for reading many shifts in one go. */
    public JobFolder listed() {
        Map<ShiftId, Map<FileName.Diary, Path>> now = new TreeMap<>();
        files().forEach((name, path) ->
                now.computeIfAbsent(name.shift(), shift -> new TreeMap<>(ORDER)).put(name, path));
        return new JobFolder(folder, diaries, now);
    }

    public Path path() {
        return folder;
    }

    /** The job file as it is now, with everything in it that cannot be used. */
    public JobRead job() {
        return found().read();
    }

    private JobText.Found found() {
        Path file = folder.resolve("job.json");
        try {
            return JobText.read("job.json", Folder.read(file));
        } catch (IOException e) {
            String right = e instanceof NoSuchFileException ? "a folder made with: screedbook new DIR" : "";
            Trouble trouble = new Trouble("job.json", 0, "", "it cannot be read: " + Folder.reason(e), right);
            return new JobText.Found(Map.of(), new JobRead(Optional.empty(), List.of(trouble)));
        }
    }

    /** Every accepted revision of the job that can be read, oldest first. */
    public List<Agreed> revisions() {
        return new Revisions(folder).all();
    }

    /** The system of units of the revision whose line has this hash. */
    public Optional<UnitSystem> system(String sha256) {
        return new Revisions(folder).system(sha256);
    }

    /** The revision whose line has this hash. */
    public Optional<Agreed> revision(String sha256) {
        return revisions().stream().filter(each -> each.sha256().equals(sha256)).findFirst();
    }

    /**
     * Takes the job file, as it is now, as agreed. When it says what the newest revision says, that one is given.
     *
     * @param who initials of the one who accepts it
     * @param why may be null
     * @throws IOException when the revision cannot be written, or the job file has trouble
     */
    public Agreed accept(String who, OffsetDateTime when, String why) throws IOException {
        JobText.Found found = found();
        if (found.read().job().isEmpty()) {
            throw new IOException(found.read().troubles().get(0).text());
        }
        return new Revisions(folder).accept(found.values(), found.read().job().get(), who, when, why);
    }

    /** Job and contacts as they are now, to be revised. */
    public JobSheet jobSheet() throws IOException {
        return new JobDesk(folder).read();
    }

    /**
     * Writes {@code job.json} and {@code people.json} anew and accepts the job. When the job says what the newest
     * revision says, that one is given. Nothing is written when the files are not what was read.
     *
     * @param sheet as it was read, with other values and contacts
     * @throws IOException when the disk refuses
     */
    public Rewritten rewrite(JobSheet sheet, String who, OffsetDateTime when, String why) throws IOException {
        return new JobDesk(folder).write(sheet, who, when, why);
    }

    /** Keeps what is typed of the job and not written, with the stamp of the files that it was typed of. */
    public void keepTyped(String stamp, Map<String, Object> typed) throws IOException {
        new JobDesk(folder).keep(stamp, typed);
    }

    /** What was typed of the job is given up. */
    public void dropTyped() throws IOException {
        new JobDesk(folder).drop();
    }

    /** The shifts that have a diary, oldest first. */
    public List<ShiftId> shifts() {
        return List.copyOf(listed == null ? paths().keySet() : listed.keySet());
    }

    /** The diary files of every shift, oldest shift first; those of a shift in the order in which they are read. */
    public Map<ShiftId, List<Path>> paths() {
        Map<ShiftId, List<Path>> shifts = new TreeMap<>();
        files().forEach((name, path) ->
                shifts.computeIfAbsent(name.shift(), shift -> new ArrayList<>()).add(path));
        return shifts;
    }

    /** The diary files of a shift, in the order in which they are read. */
    public List<Path> paths(ShiftId shift) {
        return List.copyOf(files(shift).values());
    }

    /** What the list of shifts shows, oldest shift first. */
    public Map<ShiftId, Glance> glances() {
        return glances(Glance::at);
    }

    private Map<ShiftId, Glance> glances(Function<Map<FileName.Diary, Path>, Glance> look) {
        Map<ShiftId, Map<FileName.Diary, Path>> shifts = new TreeMap<>();
        files().forEach((name, path) -> shifts.computeIfAbsent(name.shift(), shift -> new TreeMap<>(ORDER))
                .put(name, path));
        Map<ShiftId, Glance> glances = new TreeMap<>();
        shifts.forEach((shift, files) -> glances.put(shift, look.apply(files)));
        return glances;
    }

    /** What the first screen shows, looked at before anything is read; empty when there is more to tell than it shows. */
    public Optional<FirstLook> firstLook() {
        try {
            return FirstLook.head(Folder.read(folder.resolve("job.json")))
                    .map(head -> new FirstLook(head, glances(Glance::heads)));
        } catch (IOException unread) {
            return Optional.empty();
        }
    }

    /**
     * A shift as far as its loads go: where chain and seal prove every book, tickets that need no second look are taken
     * together and of the rest only what bears on loads is read; any other shift is read in full. The figures of the
     * loads are those of {@link #shift}.
     */
    public LoadsRead loads(ShiftId shift) {
        List<ProvedBook> proved = new ArrayList<>();
        for (Map<FileName.Diary, Path> files : books(shift).values()) {
            Optional<ProvedBook> book = ProvedBook.loads(files);
            if (book.isEmpty()) {
                return new LoadsRead(shift(shift), List.of());
            }
            proved.add(book.get());
        }
        LoadsReading reading = new LoadsReading(proved);
        return new LoadsRead(read(shift, reading.read()), reading.whole());
    }

    /** A shift as far as it has to be looked at to tell whether it is as it was written. */
    ShiftRead proof(ShiftId shift) {
        return shift(
                shift, (book, files) -> ProvedBook.references(files).orElseGet(() -> BookReading.read(book, files)));
    }

    /** A shift with all its books; what is damaged is told and stops nothing. */
    public ShiftRead shift(ShiftId shift) {
        return shift(shift, BookReading::read);
    }

    private ShiftRead shift(ShiftId shift, BiFunction<String, Map<FileName.Diary, Path>, BookRead> reading) {
        List<BookRead> read = new ArrayList<>();
        books(shift).forEach((book, files) -> read.add(reading.apply(book, files)));
        return read(shift, read);
    }

    private Map<String, Map<FileName.Diary, Path>> books(ShiftId shift) {
        Map<String, Map<FileName.Diary, Path>> books = new LinkedHashMap<>();
        files(shift)
                .forEach((name, path) -> books.computeIfAbsent(name.book(), book -> new LinkedHashMap<>())
                        .put(name, path));
        return books;
    }

    private ShiftRead read(ShiftId shift, List<BookRead> read) {
        List<Damage> damages = new ArrayList<>();
        read.forEach(book -> book.files().forEach(file -> damages.addAll(file.damages())));
        Day day = Day.of(shift, read.stream().map(BookRead::lines).toList());
        return new ShiftRead(shift, day.with(PlantLists.in(this).of(day)), List.copyOf(read), List.copyOf(damages));
    }

    /** Every diary file with its path, by shift, book, revision and segment; the first folder that has a name counts. */
    Map<FileName.Diary, Path> files() {
        Map<FileName.Diary, Path> found = new TreeMap<>(ORDER);
        if (listed != null) {
            listed.values().forEach(found::putAll);
            return found;
        }
        for (Path diary : diaries()) {
            for (String text : names(diary)) {
                FileName.diary(text).ifPresent(name -> found.putIfAbsent(name, diary.resolve(text)));
            }
        }
        return found;
    }

    /** The files of one shift, in reading order. */
    Map<FileName.Diary, Path> files(ShiftId shift) {
        if (listed != null) {
            return listed.getOrDefault(shift, Map.of());
        }
        Map<FileName.Diary, Path> found = new LinkedHashMap<>();
        files().forEach((name, path) -> {
            if (name.shift().equals(shift)) {
                found.put(name, path);
            }
        });
        return found;
    }

    /** The folders in which diaries lie: the job's own, and those that a note in one of them names. */
    List<Path> diaries() {
        return GoesOn.followed(diaries);
    }

    private static List<String> names(Path diary) {
        try {
            return Folder.names(diary);
        } catch (IOException e) {
            return List.of();
        }
    }

    /**
     * Opens a shift's book for writing. After its close it goes on in the file of the next revision; after a dead disk
     * in the folder of its newest segment.
     *
     * @param book its name; see {@link #bookName(String)}
     * @param job the id of the job, as it stands in every line
     * @param who initials of the writer
     * @param now when it is opened
     */
    public Opened open(ShiftId shift, String book, String job, String who, OffsetDateTime now) {
        return open(shift, book, job, who, now, FileChannel::open);
    }

    Opened open(ShiftId shift, String book, String job, String who, OffsetDateTime now, Channels channels) {
        if (!FileName.isBook(book)) {
            return new Opened.No(new Refused("a book cannot be named " + book, true));
        }
        BookRead read = book(shift, book);
        FileName name = FileName.of(shift, book, revision(read));
        Optional<String> before = lastHash(shift, book, name);
        Path diary = newest(name);
        Optional<GoesOn> elsewhere = GoesOn.of(diary, name).filter(note -> !has(note.file()));
        if (elsewhere.isPresent()) {
            return new Opened.No(new Refused(
                    name.text() + " went on in " + elsewhere.get().file() + " in "
                            + elsewhere.get().folder() + ", and that file is not there now",
                    false));
        }
        Access access = LineFile.open(
                diary, name, Book.words(who, now), before.orElse(Chain.NOTHING_BEFORE), channels, segments(name));
        if (access instanceof Access.Taken taken) {
            return new Opened.Held(Book.heldBy(taken.words()));
        }
        if (access instanceof Appended.Refused refused) {
            return new Opened.No(new Refused(refused.sentence(), false));
        }
        Access.Opened opened = (Access.Opened) access;
        LineText.Place place = new LineText.Place(job, shift, book);
        return ready(new Book(place, opened.file(), lastNumber(read), sealBefore(shift, book)), opened, who, now);
    }

    private static Opened ready(Book book, Access.Opened opened, String who, OffsetDateTime now) {
        List<String> said = new ArrayList<>();
        if (!opened.before().isEmpty() && !Book.endedHere(opened.before())) {
            said.add(Book.heldBy(opened.before()).leftOpen());
        }
        opened.left()
                .ifPresent(left -> said.add(left.sentence() + "; it is left as it is and the record goes on in "
                        + opened.file().name().text()));
        opened.torn().ifPresent(torn -> {
            said.add(torn.file() + ": " + torn.count() + " bytes of a line that was not written to its end are kept in "
                    + torn.sidecar());
            Saved saved = book.append(List.of(line(torn, who)), now).join();
            saved.refused().ifPresent(refused -> said.add(refused.said()));
        });
        return new Opened.Ready(book, List.copyOf(said));
    }

    private static Unwritten line(Access.Torn torn, String who) {
        SetAside entry = new SetAside(
                torn.sidecar(), BigDecimal.valueOf(torn.offset()), BigDecimal.valueOf(torn.count()), torn.hash());
        return new Unwritten(null, who, Source.LIVE, entry, Aside.NONE);
    }

    private boolean has(String file) {
        return files().keySet().stream().anyMatch(name -> name.name().text().equals(file));
    }

    /** The folder of the newest segment of a diary; the job's own when there is none yet. */
    private Path newest(FileName name) {
        Path newest = diaries.get(0);
        for (Map.Entry<FileName.Diary, Path> each : files().entrySet()) {
            if (each.getKey().name().stem().equals(name.stem())) {
                newest = each.getValue().getParent();
            }
        }
        return newest;
    }

    /** Every segment of a diary, in whatever folder it lies. */
    private Map<FileName, Path> segments(FileName name) {
        Map<FileName, Path> segments = new HashMap<>();
        files().forEach((diary, path) -> {
            if (diary.name().stem().equals(name.stem())) {
                segments.put(diary.name(), path);
            }
        });
        return segments;
    }

    private BookRead book(ShiftId shift, String book) {
        Map<FileName.Diary, Path> files = new LinkedHashMap<>();
        files().forEach((name, path) -> {
            if (name.shift().equals(shift) && name.book().equals(book)) {
                files.put(name, path);
            }
        });
        return BookReading.read(book, files);
    }

    /** The newest revision that is not closed: late lines go to a file of their own. */
    private static int revision(BookRead read) {
        if (read.files().isEmpty()) {
            return 1;
        }
        FileRead last = read.files().get(read.files().size() - 1);
        int revision = FileName.diary(last.file()).orElseThrow().revision();
        return last.closed() ? revision + 1 : revision;
    }

    private static int lastNumber(BookRead read) {
        int last = 0;
        for (Written line : read.lines()) {
            if (line instanceof Line known) {
                last = Math.max(last, known.n());
            } else if (line instanceof Foreign foreign) {
                last = Math.max(last, foreign.n());
            }
        }
        return last;
    }

    /** The last hash of the book's newest file before the one named. */
    private Optional<String> lastHash(ShiftId shift, String book, FileName name) {
        Optional<String> last = Optional.empty();
        for (Map.Entry<FileName.Diary, Path> each : files().entrySet()) {
            FileName.Diary other = each.getKey();
            int order = other.shift().compareTo(shift);
            boolean earlier = order < 0 || order == 0 && !other.name().stem().equals(name.stem());
            if (other.book().equals(book) && earlier) {
                Optional<String> found = hash(each.getValue());
                last = found.isPresent() ? found : last;
            }
        }
        return last;
    }

    /** The seal of the book's newest shift before this one; its last hash is another when something came behind it. */
    private Optional<String> sealBefore(ShiftId shift, String book) {
        return files().keySet().stream()
                .filter(name -> name.book().equals(book) && name.shift().compareTo(shift) < 0)
                .map(FileName.Diary::shift)
                .reduce((first, later) -> later)
                .flatMap(before -> book(before, book).seal())
                .map(seal -> seal.sha256());
    }

    private static Optional<String> hash(Path file) {
        try {
            return Optional.ofNullable(Chain.walk(Recovery.read(file), null).head());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The book's name nearest to what was typed; empty when no file can be named so. */
    public static Optional<String> bookName(String typed) {
        return FileName.slug(typed).filter(FileName::isBook);
    }

    /** How people are reached, by their initials, as {@code people.json} says; empty where it cannot be read. */
    public Map<String, String> reached() {
        Map<String, String> reached = new TreeMap<>();
        bytes(folder.resolve("people.json")).ifPresent(file -> {
            try {
                Json.file(file, new HashMap<>()).forEach((who, said) -> {
                    if (said instanceof Map<?, ?> ways) {
                        reached.put(
                                who,
                                Stream.of("phone", "mail", "address")
                                        .map(ways::get)
                                        .filter(Objects::nonNull)
                                        .map(String::valueOf)
                                        .filter(way -> !way.isBlank())
                                        .collect(Collectors.joining(", ")));
                    }
                });
            } catch (Json.NotJson e) {
                reached.clear();
            }
        });
        return reached;
    }

    /** Who holds a shift's book for writing, as far as the holder says; empty when nobody says so. */
    public Optional<HeldBy> holder(ShiftId shift, String book) {
        String words = Hold.words(diaries.get(0), FileName.of(shift, book, 1));
        return words.isEmpty() ? Optional.empty() : Optional.of(Book.heldBy(words));
    }

    /** A limit sheet for people to edit, by its name without ".csv"; empty when there is none in {@code spec/}. */
    public Optional<byte[]> sheet(String name) {
        return FileName.isSafe(name) ? bytes(folder.resolve("spec").resolve(name + ".csv")) : Optional.empty();
    }

    /** The names of the limit sheets for people to edit, without those that are frozen. */
    public List<String> sheetNames() {
        return names(folder.resolve("spec")).stream()
                .filter(name -> name.endsWith(".csv"))
                .map(name -> name.substring(0, name.length() - 4))
                .filter(name -> FileName.isSafe(name) && !name.matches(".*-[0-9a-f]{8}"))
                .toList();
    }

    /**
     * Puts a sheet into {@code spec/} for people to edit.
     *
     * @return its file; empty when one of the name is there already, which stays as it is
     */
    public Optional<Path> copySheet(String name, byte[] bytes) throws IOException {
        if (!FileName.isSafe(name)) {
            throw new IOException("a sheet cannot be named " + name);
        }
        Path file = folder.resolve("spec").resolve(name + ".csv");
        if (Files.exists(file)) {
            return Optional.empty();
        }
        Folder.replace(file, bytes, FileChannel::open);
        return Optional.of(file);
    }

    /** A sheet as it was when a shift was judged by it; empty when it is not there or not the same any more. */
    public Optional<byte[]> frozenSheet(String name, String sha256) {
        return FileName.isSafe(name) && sha256.length() == 64
                ? bytes(frozen(name, sha256)).filter(bytes -> Chain.hash(bytes).equals(sha256))
                : Optional.empty();
    }

    /**
     * Keeps a sheet as it is now, for the shifts that are judged by it.
     *
     * @return its SHA-256
     */
    public String freezeSheet(String name, byte[] bytes) throws IOException {
        if (!FileName.isSafe(name)) {
            throw new IOException("a sheet cannot be named " + name);
        }
        String sha256 = Chain.hash(bytes);
        if (frozenSheet(name, sha256).isEmpty()) {
            Folder.replace(frozen(name, sha256), bytes, FileChannel::open);
        }
        return sha256;
    }

    private Path frozen(String name, String sha256) {
        return folder.resolve("spec").resolve(name + "-" + sha256.substring(0, 8) + ".csv");
    }

    private static Optional<byte[]> bytes(Path file) {
        try {
            return Files.isRegularFile(file) ? Optional.of(Folder.read(file)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Keeps a page with its CSV under {@code days/}. A page that was saved is never changed: another one for the same
     * shift becomes its next revision.
     *
     * @return the page's file, also when the same page was there already
     */
    public Path savePage(ShiftId shift, String text, String csv) throws IOException {
        Path days = folder.resolve("days");
        byte[] page = text.getBytes(StandardCharsets.UTF_8);
        for (int revision = 1; ; revision++) {
            String stem = shift + (revision == 1 ? "" : ".r" + revision);
            Path file = days.resolve(stem + ".txt");
            Optional<byte[]> there = kept(file);
            if (there.isEmpty()) {
                Folder.replace(days.resolve(stem + ".csv"), csv.getBytes(StandardCharsets.UTF_8), FileChannel::open);
                Folder.replace(file, page, FileChannel::open);
            }
            if (there.isEmpty() || Arrays.equals(there.get(), page)) {
                return file;
            }
        }
    }

    /**
     * Keeps a page with its CSV as far as an open shift has come; it takes the place of an earlier one of its kind.
     *
     * @return the page's file
     */
    public Path savePageSoFar(ShiftId shift, String text, String csv) throws IOException {
        Path file = folder.resolve("days").resolve(shift + ".so-far.txt");
        Folder.place(file, text.getBytes(StandardCharsets.UTF_8));
        Folder.place(file.resolveSibling(shift + ".so-far.csv"), csv.getBytes(StandardCharsets.UTF_8));
        return file;
    }

    /**
     * Writes tables into any folder, which is made when it is not there; whoever reads sees the old table or the whole
     * new one.
     *
     * @param tables texts by the names of their files
     */
    public static void saveTables(Path folder, Map<String, String> tables) throws IOException {
        Folder.make(folder, FileChannel::open);
        for (Map.Entry<String, String> table : tables.entrySet()) {
            Folder.place(folder.resolve(table.getKey()), table.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What was kept under a name; what is there and cannot be read is not taken for nothing. */
    private static Optional<byte[]> kept(Path file) throws IOException {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? Optional.of(Recovery.read(file)) : Optional.empty();
    }

    /**
     * Keeps the seed of a lot's random numbers beside the diaries until the record may tell it. The file is named by the
     * seed's SHA-256, so that it can be found from the line that tells that.
     */
    public void keepSeed(String seed) throws IOException {
        Folder.replace(
                seedFile(Chain.hash(seed.getBytes(StandardCharsets.UTF_8))),
                seed.getBytes(StandardCharsets.UTF_8),
                FileChannel::open);
    }

    /** The seed of a SHA-256, where this folder keeps it and it is the same still. */
    public Optional<String> seed(String sha256) {
        return sha256.matches("[0-9a-f]{64}")
                ? bytes(seedFile(sha256))
                        .filter(bytes -> Chain.hash(bytes).equals(sha256))
                        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                : Optional.empty();
    }

    private Path seedFile(String sha256) {
        return diaries.get(0).resolve(sha256.substring(0, 16) + ".seed");
    }

    /**
     * Keeps a pre-paving sheet under {@code plan/}. One that was saved is never changed: another one of the same day
     * becomes its next revision.
     *
     * @return its file, also when the same one was there already
     */
    public Path savePlan(LocalDate day, String text) throws IOException {
        byte[] page = text.getBytes(StandardCharsets.UTF_8);
        for (int revision = 1; ; revision++) {
            Path file = folder.resolve("plan").resolve(day + (revision == 1 ? "" : ".r" + revision) + ".txt");
            Optional<byte[]> there = kept(file);
            if (there.isEmpty()) {
                Folder.replace(file, page, FileChannel::open);
            }
            if (there.isEmpty() || Arrays.equals(there.get(), page)) {
                return file;
            }
        }
    }

    /** Half-typed entries of a shift's book. */
    public List<Draft> drafts(ShiftId shift, String book) {
        return Drafts.read(draftFile(shift, book));
    }

    /** Keeps half-typed entries; an empty list drops them. They outlive the program, not a power cut. */
    public void saveDrafts(ShiftId shift, String book, List<Draft> drafts) throws IOException {
        Folder.make(diaries.get(0), FileChannel::open);
        Drafts.write(draftFile(shift, book), drafts);
    }

    private Path draftFile(ShiftId shift, String book) {
        return diaries.get(0).resolve(FileName.of(shift, book, 1).beside("draft"));
    }

    /**
     * Makes the folder of a new job with an example to edit; files that are there already are left as they are.
     *
     * @return the files that were made
     */
    public static List<String> make(Path folder) throws IOException {
        List<String> made = new ArrayList<>();
        for (String name : SHIPPED) {
            Path file = folder.resolve(name);
            if (!Files.exists(file)) {
                Folder.replace(file, resource(name), FileChannel::open);
                made.add(name);
            }
        }
        Folder.make(folder.resolve("spec"), FileChannel::open);
        return List.copyOf(made);
    }

    private static byte[] resource(String name) throws IOException {
        try (var in = JobFolder.class.getResourceAsStream("/job/" + name)) {
            return in.readAllBytes();
        }
    }
}
