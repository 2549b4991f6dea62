package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
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
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Draft;
import screedbook.entry.HeldBy;
import screedbook.entry.ShiftId;
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

    static List<String> names(Path diary) {
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
        return new BookOpening(this, shift, book).open(job, who, now, channels);
    }

    /** The folder in which new diaries are begun. */
    Path diary() {
        return diaries.get(0);
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

    static Optional<byte[]> bytes(Path file) {
        try {
            return Files.isRegularFile(file) ? Optional.of(Folder.read(file)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
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
