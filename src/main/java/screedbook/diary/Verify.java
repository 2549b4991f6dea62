package screedbook.diary;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
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
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import screedbook.entry.Damage;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.Plan;
import screedbook.entry.PlantList;
import screedbook.entry.Ref;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Written;

/** A look at a whole record that changes nothing: every chain, every seal, and what the lines refer to. */
public final class Verify {
    private static final Pattern FROZEN = Pattern.compile("(.+)-([0-9a-f]{8})\\.csv");

    private final JobFolder folder;
    private final List<FileRead> files = new ArrayList<>();
    private final List<Damage> damages = new ArrayList<>();
    private final List<Verdict.Sealed> seals = new ArrayList<>();
    private final Map<String, Set<String>> hashes = new HashMap<>();
    private final Map<Path, String> lasts = new HashMap<>();
    private final Map<String, String> sound = new HashMap<>();
    private final Set<Path> walked = new HashSet<>();
    private final Set<String> revisions = new HashSet<>();
    private final Map<String, Ref> lists = new HashMap<>();

    private Verify(JobFolder folder) {
        this.folder = folder.listed();
    }

    /** Looks at the record of a job. */
    public static Verdict of(JobFolder folder) {
        return of(folder, shift -> {});
    }

    /**
     * Looks at the record of a job.
     *
     * @param read is told of every shift that was looked at
     */
    public static Verdict of(JobFolder folder, Consumer<ShiftId> read) {
        return new Verify(folder).verdict(read);
    }

    private Verdict verdict(Consumer<ShiftId> looked) {
        Signatures signatures = new Signatures(folder);
        Map<ShiftId, List<Seal>> sealed = new LinkedHashMap<>();
        revisions();
        sheets();
        try (Ahead ahead = new Ahead()) {
            ahead.each(folder.shifts(), folder::proof, (shift, read) -> {
                read.books().forEach(book -> files.addAll(book.files()));
                read.books().forEach(this::sound);
                read.books().forEach(book -> signatures.closings(shift, book));
                sealed.put(
                        shift,
                        read.books().stream()
                                .map(BookRead::seal)
                                .flatMap(Optional::stream)
                                .toList());
                damages.addAll(read.damages());
                read.books().forEach(this::references);
                looked.accept(shift);
            });
        }
        shiftBefore();
        Stream.concat(
                        folder.diaries().stream(),
                        folder.files().values().stream().map(Path::getParent))
                .distinct()
                .forEach(signatures::look);
        damages.addAll(signatures.damages());
        sealed.forEach((shift, seals) -> seals.forEach(seal ->
                this.seals.add(new Verdict.Sealed(shift, seal, signatures.of(seal.sha256()), signatures.expected()))));
        Archived archived = Archived.of(folder.path(), sound);
        damages.addAll(archived.damages());
        List<Verdict.Beside> beside = new ArrayList<>(beside());
        beside.addAll(archived.beside());
        return new Verdict(List.copyOf(files), List.copyOf(seals), List.copyOf(damages), List.copyOf(beside));
    }

    /** A closed file in which nothing is amiss ends with the line that was sealed. */
    private void sound(BookRead book) {
        boolean one = book.files().size() == 1 && book.files().get(0).damages().isEmpty();
        book.seal()
                .filter(seal -> one)
                .ifPresent(seal -> sound.put(book.files().get(0).file(), seal.sha256()));
    }

    private void revisions() {
        for (Path file : new Revisions(folder.path()).files()) {
            String name = file.getFileName().toString();
            try {
                Chain.Walk walk = Chain.walk(Recovery.read(file), null);
                List<Damage> found = new ArrayList<>();
                for (RawLine line : walk.lines()) {
                    revisions.add(Chain.hash(line.bytes()));
                    if (line.link() != RawLine.Link.LINKED) {
                        found.add(new Damage(name, line.number(), "it does not name the line before as it is now"));
                    }
                }
                if (walk.damaged() && found.isEmpty() || walk.tail().length > 0) {
                    found.add(new Damage(name, 0, "it is not as it was written"));
                }
                damages.addAll(found);
                files.add(new FileRead(name, walk.lines().size(), false, found, "", List.of()));
            } catch (IOException e) {
                damages.add(new Damage(name, 0, "it cannot be read: " + Folder.reason(e)));
            }
        }
    }

    /** A frozen sheet carries the first digits of its hash in its name. */
    private void sheets() {
        for (String name : names(folder.path().resolve("spec"))) {
            Matcher frozen = FROZEN.matcher(name);
            if (frozen.matches()) {
                try {
                    byte[] bytes = Folder.read(folder.path().resolve("spec").resolve(name));
                    if (!Chain.hash(bytes).startsWith(frozen.group(2))) {
                        damages.add(new Damage("spec/" + name, 0, "it is not the sheet that was kept under this name"));
                    }
                } catch (IOException e) {
                    damages.add(new Damage("spec/" + name, 0, "it cannot be read: " + Folder.reason(e)));
                }
            }
        }
    }

    /** The job revision and the sheet that a line names have to be there. */
    private void references(BookRead book) {
        for (Written written : book.lines()) {
            if (written instanceof Line line && line.entry() instanceof Opening opening) {
                plan(line, opening.jobSha256(), opening.sheet(), opening.sheetSha256());
            } else if (written instanceof Line line && line.entry() instanceof Plan plan) {
                plan(line, plan.jobSha256(), plan.sheet(), plan.sheetSha256());
            } else if (written instanceof Line line && line.entry() instanceof PlantList list) {
                lists.put(list.listFile(), line.ref());
                PlantLists.in(folder)
                        .gone(list)
                        .ifPresent(why -> damages.add(
                                new Damage(file(line), line.row(), "plant/" + list.listFile() + ": " + why)));
            }
        }
    }

    private void plan(Line line, String job, String sheet, String sheetHash) {
        if (job != null && !revisions.contains(job)) {
            damages.add(
                    new Damage(file(line), line.row(), "plan not found: no line of job.jsonl has the hash it names"));
        }
        if (sheet != null
                && sheetHash != null
                && LimitSheets.in(folder).frozen(sheet, sheetHash).isEmpty()) {
            damages.add(new Damage(
                    file(line), line.row(), "plan not found: no sheet " + sheet + " in spec/ has the hash it names"));
        }
    }

    /** The file that holds a line; a book may have several, each with a line of that row. */
    private String file(Line line) {
        String found = line.shift() + "." + line.book();
        for (Map.Entry<FileName.Diary, Path> each : folder.files().entrySet()) {
            FileName.Diary name = each.getKey();
            boolean its = name.shift().equals(line.shift()) && name.book().equals(line.book());
            found = its && holds(each.getValue(), line) ? name.name().text() : found;
        }
        return found;
    }

    private static boolean holds(Path file, Line line) {
        try {
            List<RawLine> lines = Chain.walk(Recovery.read(file), null).lines();
            byte[] raw = line.raw().getBytes(StandardCharsets.UTF_8);
            return line.row() <= lines.size()
                    && Arrays.equals(lines.get(line.row() - 1).bytes(), raw);
        } catch (IOException e) {
            return false;
        }
    }

    /** The first line of a shift names a line of the book's files before, or nothing. */
    private void shiftBefore() {
        Map<String, List<Path>> earlier = new HashMap<>();
        folder.files().forEach((name, path) -> {
            List<Path> before = earlier.computeIfAbsent(name.book(), book -> new ArrayList<>());
            try {
                Optional<String> prev = ends(name.name().text(), path);
                boolean first = name.revision() == 1 && name.name().segment() == 'a';
                if (first && prev.isPresent() && !holds(name.book(), before, prev.get())) {
                    damages.add(
                            new Damage(name.name().text(), 1, "it goes on from a line that no file of its book holds"));
                }
                before.add(path);
            } catch (IOException e) {
                return;
            }
        });
    }

    /** What the first line of a file goes on from, if anything; the hash of its last line is remembered. */
    private Optional<String> ends(String name, Path path) throws IOException {
        String sealed = sound.get(name);
        if (sealed != null) {
            lasts.put(path, sealed);
            return before(firstLine(path));
        }
        byte[] file = Recovery.read(path);
        int first = 0;
        while (first < file.length && file[first] != '\n') {
            first++;
        }
        int end = file.length > 0 && file[file.length - 1] == '\n' ? file.length - 1 : file.length;
        int last = end - 1;
        while (last >= 0 && file[last] != '\n') {
            last--;
        }
        lasts.put(path, Chain.hash(Arrays.copyOfRange(file, last + 1, Math.max(last + 1, end))));
        return before(Arrays.copyOf(file, first));
    }

    private static Optional<String> before(byte[] line) {
        return Chain.prev(line).filter(prev -> !prev.equals(Chain.NOTHING_BEFORE));
    }

    /** The first line of a file that was read through already. */
    private static byte[] firstLine(Path path) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(path), 1024)) {
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            for (int b = in.read(); b >= 0 && b != '\n'; b = in.read()) {
                line.write(b);
            }
            return line.toByteArray();
        }
    }

    /** Mostly it is the last line of the file before; else every line of every file before is looked at. */
    private boolean holds(String book, List<Path> before, String hash) throws IOException {
        for (int i = before.size() - 1; i >= 0; i--) {
            if (hash.equals(lasts.get(before.get(i)))) {
                return true;
            }
        }
        Set<String> all = hashes.computeIfAbsent(book, of -> new HashSet<>());
        for (Path path : before) {
            if (walked.add(path)) {
                Chain.walk(Recovery.read(path), null).lines().forEach(line -> all.add(Chain.hash(line.bytes())));
            }
        }
        return all.contains(hash);
    }

    private List<Verdict.Beside> beside() {
        Path diary = folder.path().resolve("diary");
        List<Verdict.Beside> beside = new ArrayList<>();
        for (String name : names(diary)) {
            if (FileName.diary(name).isEmpty()) {
                beside.add(new Verdict.Beside("diary/" + name, told(diary.resolve(name))));
            }
        }
        for (String name : PlantLists.in(folder).names()) {
            String told = lists.containsKey(name)
                    ? "a plant's own list; " + lists.get(name) + " names it by its hash"
                    : "no line names it";
            beside.add(new Verdict.Beside("plant/" + name, told));
        }
        return List.copyOf(beside);
    }

    /** Who has a book open, or had when the program was cut short or the folder copied; the lock is not tried. */
    private static String told(Path file) {
        String words = file.toString().endsWith(".held") ? Hold.words(file) : "";
        return words.isEmpty() ? "" : Book.heldBy(words).text() + ", or left so by a program that was cut short";
    }

    private static List<String> names(Path folder) {
        try {
            return Folder.names(folder);
        } catch (IOException e) {
            return List.of();
        }
    }
}
