package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.entry.Damage;
import screedbook.entry.ShiftId;
import screedbook.job.Agreed;

/**
 * A copy of a job's closed shifts for keeping, in folders that query engines read year and month off. It is made beside
 * its place and put there whole; nothing that is there is ever written over, and what is copied stays where it is.
 */
public final class Archive {
    private static final String UNFINISHED = ".job=";

    private final JobFolder job;
    private final String name;
    private final Path to;
    private final String keep;
    private final List<Manifest.Row> rows = new ArrayList<>();
    private final List<Damage> damages = new ArrayList<>();
    private Path made;
    private Compact compact;

    /**
     * What came of a copy.
     *
     * @param folder of the job in the archive
     * @param open shifts that are not closed and were left out
     * @param damages of the shifts that were copied, as they are
     */
    public record Copied(
            Path folder, List<ShiftId> shifts, List<ShiftId> open, int files, long bytes, List<Damage> damages) {}

    private Archive(JobFolder job, Path to, String keep) {
        this.job = job.listed();
        this.name = name(job);
        this.to = to;
        this.keep = keep;
    }

    /**
     * Copies the closed shifts of a job.
     *
     * @param to the archive's folder
     * @param keep how long to keep it, in words
     * @param compact whether the diaries are also laid one behind the other for cluster readers
     * @throws IOException when the job is there already, or the disk refuses; then nothing of it is in its place
     */
    public static Copied copy(JobFolder job, Path to, String keep, boolean compact) throws IOException {
        return new Archive(job, to, keep).copied(compact);
    }

    /** Whether a folder is a copy that was not made to its end. */
    static boolean isUnfinished(Path folder) {
        return String.valueOf(folder.getFileName()).startsWith(UNFINISHED);
    }

    private static String name(JobFolder job) {
        String folder = String.valueOf(job.path().toAbsolutePath().normalize().getFileName());
        List<Agreed> agreed = job.revisions();
        String id =
                agreed.isEmpty() ? folder : agreed.get(agreed.size() - 1).job().id();
        return FileName.isSafe(id) ? id : FileName.slug(id).orElse("job");
    }

    private Copied copied(boolean withCompact) throws IOException {
        Path place = to.resolve("job=" + name);
        Path large = to.resolve("compact").resolve("job=" + name);
        made = to.resolve(UNFINISHED + name + ".new");
        for (Path there : List.of(place, large)) {
            if (Files.exists(there)) {
                throw new FileSystemException(there.toString(), null, "is there already and stays as it is");
            }
        }
        if (Files.exists(made)) {
            throw new FileSystemException(
                    made.toString(), null, "is what is left of a copy that was cut short; remove it first");
        }
        Map<ShiftId, Glance> glances = job.glances();
        List<ShiftId> closed =
                glances.keySet().stream().filter(id -> glances.get(id).closed()).toList();
        List<ShiftId> open = glances.keySet().stream()
                .filter(id -> !glances.get(id).closed())
                .toList();
        if (closed.isEmpty()) {
            throw new FileSystemException(job.path().toString(), null, "holds no closed shift");
        }
        try {
            make(closed, withCompact, place, large);
        } catch (IOException trouble) {
            remove(made);
            throw trouble;
        }
        long bytes = rows.stream().mapToLong(Manifest.Row::bytes).sum();
        return new Copied(place, closed, open, rows.size(), bytes, List.copyOf(damages));
    }

    private void make(List<ShiftId> closed, boolean withCompact, Path place, Path large) throws IOException {
        Folder.make(made, FileChannel::open);
        compact = withCompact ? new Compact(made.resolve(".compact")) : null;
        for (ShiftId shift : closed) {
            shift(shift);
        }
        agreed();
        write(made.resolve("README.txt"), resource("/job/README.txt"));
        Manifest.write(made, rows, keep);
        readOnly();
        around();
        if (compact != null) {
            Folder.make(large.getParent(), FileChannel::open);
            Files.move(made.resolve(".compact"), large, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.move(made, place, StandardCopyOption.ATOMIC_MOVE);
        Folder.force(to, FileChannel::open);
    }

    /** What was made of a copy that came to no end; where even that is refused it stays and is named the next time. */
    private static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        } catch (IOException e) {
            return;
        }
    }

    /** What is kept is for reading alone, as a closed diary is, its compact copy too. */
    private void readOnly() throws IOException {
        try (Stream<Path> files = Files.walk(made)) {
            files.filter(Files::isRegularFile).forEach(Folder::closed);
        }
    }

    private void shift(ShiftId shift) throws IOException {
        ShiftRead read = job.shift(shift);
        damages.addAll(read.damages());
        Map<String, FileRead> files = new TreeMap<>();
        read.books().forEach(book -> book.files().forEach(file -> files.put(file.file(), file)));
        String month = String.format(
                Locale.ROOT,
                "year=%d/month=%02d",
                shift.date().getYear(),
                shift.date().getMonthValue());
        Set<Path> companions = new LinkedHashSet<>();
        for (Map.Entry<FileName.Diary, Path> each : job.files(shift).entrySet()) {
            diary(each.getKey(), each.getValue(), files.get(each.getKey().name().text()), month);
            companions.addAll(beside(each.getKey().name(), each.getValue()));
        }
        for (Path companion : companions) {
            rows.add(row(companion, month + "/" + companion.getFileName()));
        }
        beside(shift, "days");
        beside(shift, "plant");
    }

    /** A shift's pages, and the plants' lists that were laid beside it. */
    private void beside(ShiftId shift, String folder) throws IOException {
        Path from = job.path().resolve(folder);
        for (String file : Folder.names(from)) {
            if (file.startsWith(shift + ".")) {
                rows.add(row(from.resolve(file), folder + "/" + file));
            }
        }
    }

    private void diary(FileName.Diary name, Path file, FileRead read, String month) throws IOException {
        String at = month + "/" + file.getFileName();
        byte[] bytes = Files.readAllBytes(file);
        List<RawLine> lines = Chain.walk(bytes, null).lines();
        boolean sealed = read != null && read.closed() && !lines.isEmpty();
        String seal = sealed ? Chain.hash(lines.get(lines.size() - 1).bytes()) : "";
        Compact.Place large = compact == null ? Compact.Place.NONE : compact.add(month, bytes);
        rows.add(new Manifest.Row(
                at,
                write(made.resolve(at), bytes),
                bytes.length,
                name.shift().toString(),
                name.book(),
                lines.size(),
                seal,
                large));
    }

    /** The seal of a diary, who signed it, and the bytes that were set aside from it. */
    private static List<Path> beside(FileName name, Path file) throws IOException {
        List<Path> beside = new ArrayList<>();
        for (String other : Folder.names(file.getParent())) {
            boolean signed = other.startsWith(name.beside("")) && other.matches(".+\\.[0-9a-f]{8}\\.sig");
            if (other.equals(name.beside("seal")) || signed || other.startsWith(name.text() + ".torn-")) {
                beside.add(file.resolveSibling(other));
            }
        }
        return beside;
    }

    private void agreed() throws IOException {
        for (Path file : new Revisions(job.path()).files()) {
            rows.add(row(file, file.getFileName().toString()));
        }
        Path plan = job.path().resolve("plan");
        for (String page : Folder.names(plan)) {
            if (Files.isRegularFile(plan.resolve(page))) {
                rows.add(row(plan.resolve(page), "plan/" + page));
            }
        }
        Path spec = job.path().resolve("spec");
        for (String sheet : Folder.names(spec)) {
            if (sheet.matches(".+-[0-9a-f]{8}\\.csv")) {
                rows.add(row(spec.resolve(sheet), "spec/" + sheet));
            }
        }
    }

    private Manifest.Row row(Path file, String at) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        return new Manifest.Row(at, write(made.resolve(at), bytes), bytes.length, "", "", 0, "", Compact.Place.NONE);
    }

    /** The file forced and read back. */
    private static String write(Path file, byte[] bytes) throws IOException {
        String hash = Chain.hash(bytes);
        Folder.replace(file, bytes, FileChannel::open);
        if (!Chain.hash(Files.readAllBytes(file)).equals(hash)) {
            throw new FileSystemException(file.toString(), null, "reads otherwise than it was written");
        }
        return hash;
    }

    /** What explains the archive as a whole; there once, whatever is copied later. */
    private void around() throws IOException {
        if (!Files.exists(to.resolve("README.txt"))) {
            write(to.resolve("README.txt"), resource("/archive/README.txt"));
        }
        for (String schema : Schemas.names()) {
            Path file = to.resolve("schema").resolve(schema + ".json");
            if (!Files.exists(file)) {
                write(file, Schemas.shipped(schema).orElseThrow());
            }
        }
    }

    private static byte[] resource(String at) throws IOException {
        try (var in = Archive.class.getResourceAsStream(at)) {
            return in.readAllBytes();
        }
    }

    /** A text as it stands in a file. */
    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
