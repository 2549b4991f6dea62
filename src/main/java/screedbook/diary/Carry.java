package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import screedbook.diary.Carried.Outcome;

/**
 * A job's folder being carried to another place, such as a stick, and back. What is not there is copied, a diary that has
 * grown is taken over, and nothing else that is there is touched.
 */
public final class Carry {
    /** What belongs to a job beside its diaries, by its folder; {@code README.txt} is each program's own. */
    private static final Map<String, Pattern> PAPERS = Map.of(
            "", Pattern.compile("README\\.txt|job\\.json|people\\.json|job\\.json\\.before-[0-9]+"),
            "spec", Pattern.compile("[^.].*\\.csv"),
            "plan", Pattern.compile("[^.].*\\.txt"),
            "plant", Pattern.compile("[^.].*\\.csv"),
            "days", Pattern.compile("[^.]+(\\.r[0-9]+)?\\.(txt|csv)"));

    private static final Pattern BESIDE = Pattern.compile(".+\\.(seal|sig|seed|torn-[0-9]+(-[0-9]+)?)");

    private final JobFolder from;
    private final Path to;
    private final boolean look;
    private final OffsetDateTime now;
    private final List<Carried> done = new ArrayList<>();

    private Carry(JobFolder from, Path to, boolean look, OffsetDateTime now) {
        this.from = from;
        this.to = to;
        this.look = look;
        this.now = now;
    }

    /**
     * Carries a job.
     *
     * @param to the job's folder elsewhere; made when it is not there
     * @param look only say what would be done
     * @param now for those who find the folder held meanwhile
     */
    public static List<Carried> run(JobFolder from, Path to, boolean look, OffsetDateTime now) {
        return new Carry(from, to, look, now).all();
    }

    private List<Carried> all() {
        Map<String, Path> chained = new TreeMap<>();
        new Revisions(from.path())
                .files()
                .forEach(file -> chained.put(file.getFileName().toString(), file));
        from.files().forEach((name, path) -> chained.put("diary/" + name.name().text(), path));
        Map<String, Path> papers = new TreeMap<>();
        PAPERS.forEach((folder, names) -> papers(folder, names, papers));
        from.diaries().forEach(diary -> beside(diary, chained, papers));
        chained.forEach((name, path) -> guarded(name, path, () -> chained(name, path)));
        papers.forEach((name, path) -> guarded(name, path, () -> paper(name, path)));
        return List.copyOf(done);
    }

    private void papers(String folder, Pattern names, Map<String, Path> papers) {
        Path at = from.path().resolve(folder);
        for (String name : names(at)) {
            String whole = folder.isEmpty() ? name : folder + "/" + name;
            if (names.matcher(name).matches()) {
                papers.put(whole, at.resolve(name));
            } else if (!folder.isEmpty()) {
                done.add(new Carried(whole, Outcome.LEFT, ""));
            }
        }
    }

    private void beside(Path diary, Map<String, Path> chained, Map<String, Path> papers) {
        for (String name : names(diary)) {
            if (BESIDE.matcher(name).matches()) {
                papers.putIfAbsent("diary/" + name, diary.resolve(name));
            } else if (!chained.containsKey("diary/" + name)) {
                done.add(new Carried("diary/" + name, Outcome.LEFT, ""));
            }
        }
    }

    private static List<String> names(Path folder) {
        try {
            return Folder.names(folder);
        } catch (IOException e) {
            return List.of();
        }
    }

    private interface Step {
        Carried take() throws IOException;
    }

    private void guarded(String name, Path path, Step step) {
        try {
            done.add(
                    Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                            ? step.take()
                            : new Carried(name, Outcome.LEFT, "it is a link or a folder"));
        } catch (IOException e) {
            done.add(new Carried(name, Outcome.TROUBLE, Folder.reason(e)));
        }
    }

    private Optional<byte[]> there(String name) throws IOException {
        Path file = to.resolve(name);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException("what is there is a link or a folder");
        }
        return Optional.of(Recovery.read(file));
    }

    /** Of a diary that is being written only whole lines are carried; one that is damaged is carried as it is. */
    private Carried chained(String name, Path path) throws IOException {
        byte[] read = Recovery.read(path);
        Chain.Walk walk = Chain.walk(read, null);
        byte[] own = walk.damaged() ? read : Arrays.copyOf(read, (int) walk.tailAt());
        Optional<byte[]> there = there(name);
        if (there.isEmpty()) {
            put(name, path, own);
            String damaged = walk.damaged() ? ", not every one as it was written" : "";
            return new Carried(name, Outcome.NEW, lines(walk.lines().size()) + damaged);
        }
        int same = Arrays.mismatch(own, there.get());
        if (same < 0) {
            return new Carried(name, Outcome.SAME, "");
        }
        int before = count(there.get());
        if (same == there.get().length && endsLine(there.get()) && !walk.damaged()) {
            int more = walk.lines().size() - before;
            return longer(name, path, own, "lines " + (before + 1) + " to " + (before + more));
        }
        if (same == own.length && endsLine(own)) {
            return new Carried(name, Outcome.AHEAD, lines(before - walk.lines().size()) + " more there");
        }
        return new Carried(
                name,
                Outcome.DIFFERS,
                "from line " + (count(Arrays.copyOf(own, same)) + 1)
                        + " on; one book was written in two places, where each laptop keeps a book of its own");
    }

    /** Under the lock of the book there, so that nobody writes in it meanwhile. */
    private Carried longer(String name, Path path, byte[] own, String lines) throws IOException {
        Path file = to.resolve(name);
        String text = file.getFileName().toString();
        FileName stem = FileName.diary(text)
                .map(diary -> FileName.of(diary.shift(), diary.book(), diary.revision()))
                .orElse(FileName.JOB);
        if (look) {
            return new Carried(name, Outcome.LONGER, lines);
        }
        Optional<Hold> hold = Hold.take(file.getParent(), stem, Book.words("a copy being carried in", now));
        if (hold.isEmpty()) {
            return new Carried(
                    name,
                    Outcome.HELD,
                    Book.heldBy(Hold.words(file.getParent(), stem)).text());
        }
        try (Hold held = hold.get()) {
            if (!held.before().isEmpty() && !Book.endedHere(held.before())) {
                return new Carried(
                        name, Outcome.HELD, Book.heldBy(held.before()).leftOpen());
            }
            put(name, path, own);
            return new Carried(name, Outcome.LONGER, lines);
        }
    }

    private Carried paper(String name, Path path) throws IOException {
        byte[] own = Recovery.read(path);
        Optional<byte[]> there = there(name);
        if (there.isEmpty()) {
            put(name, path, own);
            return new Carried(name, Outcome.NEW, "");
        }
        int same = Arrays.mismatch(own, there.get());
        if (same < 0 || name.equals("README.txt")) {
            return new Carried(name, Outcome.SAME, "");
        }
        int line = count(Arrays.copyOf(own, same)) + 1;
        return new Carried(
                name,
                Outcome.DIFFERS,
                "at line " + line + "\nhere   " + line(own, line) + "\nthere  " + line(there.get(), line));
    }

    /** What is closed here is for reading alone there too. */
    private void put(String name, Path path, byte[] bytes) throws IOException {
        if (!look) {
            Folder.replace(to.resolve(name), bytes, FileChannel::open);
            if (Folder.isClosed(path)) {
                Folder.closed(to.resolve(name));
            }
        }
    }

    private static boolean endsLine(byte[] bytes) {
        return bytes.length == 0 || bytes[bytes.length - 1] == '\n';
    }

    private static int count(byte[] bytes) {
        int lines = 0;
        for (byte each : bytes) {
            lines += each == '\n' ? 1 : 0;
        }
        return lines;
    }

    private static String line(byte[] bytes, int line) {
        String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
        return line > lines.length ? "" : lines[line - 1].strip();
    }

    private static String lines(int count) {
        return count + (count == 1 ? " line" : " lines");
    }
}
