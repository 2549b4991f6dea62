package screedbook.diary;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What somebody always wants on this laptop, read from a small file that may be absent: {@code job}, {@code book},
 * {@code who}, {@code look}. What is typed on the command line goes before it.
 *
 * @param values by name
 * @param troubles a sentence for each line that means nothing; such a line is left out
 */
public record Preferences(Map<String, String> values, List<String> troubles) {
    /** The names that may stand before the equals sign. */
    public static final List<String> NAMES = List.of("job", "book", "who", "look");

    public static final Preferences NONE = new Preferences(Map.of(), List.of());

    /** Where the file lies: XDG base directories (XDG Base Directory Specification 0.8), or APPDATA on Windows. */
    public static Optional<Path> place(Map<String, String> environment) {
        for (String folder : List.of("XDG_CONFIG_HOME", "APPDATA")) {
            String given = environment.getOrDefault(folder, "");
            if (!given.isEmpty() && Path.of(given).isAbsolute()) {
                return Optional.of(Path.of(given, "screedbook", "screedbook.conf"));
            }
        }
        String home = environment.getOrDefault("HOME", "");
        return home.isEmpty()
                ? Optional.empty()
                : Optional.of(Path.of(home, ".config", "screedbook", "screedbook.conf"));
    }

    /** Reads the file; nothing when there is none. */
    public static Preferences read(Map<String, String> environment) {
        return place(environment)
                .filter(Files::isRegularFile)
                .map(Preferences::of)
                .orElse(NONE);
    }

    private static Preferences of(Path file) {
        try {
            return lines(file, Files.readAllLines(file));
        } catch (CharacterCodingException notUtf8) {
            return new Preferences(Map.of(), List.of(file + " is not UTF-8 and was not read"));
        } catch (IOException unread) {
            return new Preferences(Map.of(), List.of(file + " cannot be read: " + unread.getMessage()));
        }
    }

    private static Preferences lines(Path file, List<String> lines) {
        Map<String, String> values = new LinkedHashMap<>();
        List<String> troubles = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            int equals = line.indexOf('=');
            String name = equals < 0 ? line : line.substring(0, equals).strip();
            String value = equals < 0 ? "" : line.substring(equals + 1).strip();
            if (value.isEmpty() || !NAMES.contains(name)) {
                troubles.add(file + ":" + (i + 1) + ": \"" + line + "\" is left out; right would be one of "
                        + String.join(", ", NAMES) + ", then = and a value");
            } else {
                values.put(name, value);
            }
        }
        return new Preferences(Map.copyOf(values), List.copyOf(troubles));
    }

    public Optional<String> value(String name) {
        return Optional.ofNullable(values.get(name));
    }
}
