package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was worked out of a job's shifts before, by the hash of all that it was worked out from: one file under the
 * system's cache folder, to be thrown away at any time. What is not as this very program wrote it counts as not there.
 */
public final class Recall {
    private static final String HEAD = "screedbook season 1 ";

    private final Path file;
    private final String program;

    private Recall(Path file, String program) {
        this.file = file;
        this.program = program;
    }

    /**
     * Where caches lie: {@code XDG_CACHE_HOME}, else {@code .cache} at home (XDG Base Directory Specification 0.8), or
     * {@code LOCALAPPDATA} on Windows. Empty where the system tells of none.
     */
    public static Optional<Path> place(Map<String, String> environment) {
        for (String folder : new String[] {"XDG_CACHE_HOME", "LOCALAPPDATA"}) {
            String given = environment.getOrDefault(folder, "");
            if (!given.isEmpty() && Path.of(given).isAbsolute()) {
                return Optional.of(Path.of(given, "screedbook"));
            }
        }
        String home = environment.getOrDefault("HOME", "");
        return home.isEmpty() ? Optional.empty() : Optional.of(Path.of(home, ".cache", "screedbook"));
    }

    /** The hash of the packed file that a class is in; empty where it is in none, for then nobody can tell its build. */
    public static Optional<String> build(Class<?> of) {
        try {
            return Basis.of(Path.of(
                    of.getProtectionDomain().getCodeSource().getLocation().toURI()));
        } catch (URISyntaxException | RuntimeException unknown) {
            return Optional.empty();
        }
    }

    /**
     * Of one job.
     *
     * @param place the folder for caches
     * @param build what another build of the program does not have
     */
    public static Recall of(Path place, Path job, String build) {
        String name = Chain.hash(job.toAbsolutePath().normalize().toString().getBytes(UTF_8));
        return new Recall(place.resolve("season-" + name.substring(0, 16) + ".txt"), build);
    }

    /** Texts by the hash that each rests on; none when the file is not there or not as it was written. */
    public Map<String, String> read() {
        Map<String, String> texts = new LinkedHashMap<>();
        try {
            String all = new String(Folder.read(file), UTF_8);
            int end = all.indexOf('\n');
            String rest = all.substring(end + 1);
            if (end < 0 || !all.substring(0, end).equals(head(rest))) {
                return Map.of();
            }
            rest.lines()
                    .forEach(line ->
                            texts.put(line.substring(0, line.indexOf(' ')), line.substring(1 + line.indexOf(' '))));
            return texts;
        } catch (IOException e) {
            return Map.of();
        }
    }

    /** Keeps these texts and no others. */
    public void write(Map<String, String> texts) {
        StringBuilder rest = new StringBuilder();
        texts.forEach((hash, text) -> rest.append(hash).append(' ').append(text).append('\n'));
        try {
            Folder.place(file, (head(rest.toString()) + "\n" + rest).getBytes(UTF_8));
        } catch (IOException e) {
            return; // The next reading takes longer; nothing else.
        }
    }

    private String head(String rest) {
        return HEAD + program + " " + Chain.hash(rest.getBytes(UTF_8));
    }
}
