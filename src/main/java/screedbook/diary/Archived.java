package screedbook.diary;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import screedbook.entry.Damage;

/**
 * An archived job's files held against its manifest. Chains and seals tell of lines; that a whole shift is gone, or that
 * a page or a plant's list is another, only the manifest tells.
 */
final class Archived {
    private static final Set<String> AROUND = Set.of(Manifest.NAME, Manifest.SUMS, "README.txt");

    private final Path folder;
    private final Path compact;
    private final Map<String, String> sound;
    private final Map<String, Long> parts = new HashMap<>();
    private final List<Damage> damages = new ArrayList<>();
    private final List<Verdict.Beside> beside = new ArrayList<>();

    private Archived(Path folder, Map<String, String> sound) {
        this.folder = folder;
        Path whole = folder.toAbsolutePath().normalize();
        this.compact = whole.resolveSibling("compact").resolve(whole.getFileName());
        this.sound = sound;
    }

    /**
     * What differs from the manifest; nothing where there is none.
     *
     * @param sound the seals of diaries that were read through and found as they were written, by the file's name
     */
    static Archived of(Path folder, Map<String, String> sound) {
        Archived archived = new Archived(folder, sound);
        if (Files.exists(folder.resolve(Manifest.NAME))) {
            archived.look();
        }
        return archived;
    }

    List<Damage> damages() {
        return List.copyOf(damages);
    }

    /** Files that the manifest does not name and that hold no lines. */
    List<Verdict.Beside> beside() {
        return List.copyOf(beside);
    }

    private void look() {
        try {
            Set<String> named = new HashSet<>();
            for (CSVRecord row : Manifest.read(folder)) {
                named.add(row.get("file"));
                file(row);
                compact(row);
            }
            noMoreThanNamed();
            for (String each : there(folder)) {
                if (!named.contains(each) && !AROUND.contains(each)) {
                    unnamed(each);
                }
            }
        } catch (IOException | RuntimeException e) {
            damages.add(new Damage(Manifest.NAME, 0, "it cannot be read: " + reason(e)));
        }
    }

    private static String reason(Exception e) {
        return e instanceof IOException io ? Folder.reason(io) : String.valueOf(e.getMessage());
    }

    private void file(CSVRecord row) throws IOException {
        String name = row.get("file");
        Path file = folder.resolve(name);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            damages.add(new Damage(name, 0, "the manifest names it and it is not there"));
        } else if (Files.size(file) != Long.parseLong(row.get("bytes")) || !isSound(row) && !holds(file, 0, row)) {
            damages.add(new Damage(name, 0, "its bytes are not those of the manifest"));
        }
    }

    /** A diary that was found sound under the same seal needs no second reading. */
    private boolean isSound(CSVRecord row) {
        String name = row.get("file");
        String seal = row.get("seal");
        return !seal.isEmpty() && seal.equals(sound.get(name.substring(name.lastIndexOf('/') + 1)));
    }

    /** The compact copy may lie elsewhere; where it lies beside the archive it has to hold the same. */
    private void compact(CSVRecord row) throws IOException {
        String name = row.get("compact_file");
        if (name.isEmpty() || !Files.isDirectory(compact)) {
            return;
        }
        long offset = Long.parseLong(row.get("compact_offset"));
        parts.merge(name, offset + Long.parseLong(row.get("bytes")), Math::max);
        Path part = compact.resolve(name);
        if (!Files.isRegularFile(part) || !holds(part, offset, row)) {
            compact(name, "it does not hold " + row.get("file") + " where the manifest says");
        }
    }

    /** Whoever reads the compact copy reads every line that is in it. */
    private void noMoreThanNamed() throws IOException {
        for (String part : Files.isDirectory(compact) ? there(compact) : List.<String>of()) {
            if (!parts.containsKey(part)) {
                compact(part, "the manifest does not name it");
            } else if (Files.size(compact.resolve(part)) > parts.get(part) + 1) {
                compact(part, "it holds more than the manifest says");
            }
        }
    }

    private void compact(String part, String said) {
        damages.add(new Damage("compact/" + compact.getFileName() + "/" + part, 0, said));
    }

    private static boolean holds(Path file, long from, CSVRecord row) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            if (in.skip(from) != from) {
                return false;
            }
            return Chain.hash(in.readNBytes(Integer.parseInt(row.get("bytes")))).equals(row.get("sha256"));
        }
    }

    private static List<String> there(Path below) throws IOException {
        try (Stream<Path> files = Files.walk(below)) {
            return files.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .map(file -> below.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    /** Lines that were not archived with the others are in every total; anything else only lies there. */
    private void unnamed(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1);
        if (FileName.diary(name).isPresent()) {
            damages.add(new Damage(file, 0, "the manifest does not name it"));
        } else {
            beside.add(new Verdict.Beside(file, "the manifest does not name it"));
        }
    }
}
