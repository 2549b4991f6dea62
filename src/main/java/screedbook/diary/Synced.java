package screedbook.diary;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a folder lies where a client copies everything to a cloud and back. Two writers become two copies there, and a
 * file may be put away until it is asked for. The signs stand in a table, from memory of how such clients lay out their
 * folders; a client that is not in it is not seen.
 */
public final class Synced {
    private record Sign(String client, String sort, String text) {
        boolean of(Path folder) {
            String name =
                    folder.getFileName() == null ? "" : folder.getFileName().toString();
            return switch (sort) {
                case "named" -> name.equalsIgnoreCase(text);
                case "begins" -> name.toLowerCase(Locale.ROOT).startsWith(text.toLowerCase(Locale.ROOT));
                default -> Files.exists(folder.resolve(text), LinkOption.NOFOLLOW_LINKS);
            };
        }
    }

    private Synced() {}

    /** What to tell somebody who writes in this folder; empty when no sign is seen in it or above it. */
    public static Optional<String> warning(Path folder) {
        return client(folder)
                .map(client -> folder + " is kept in step by " + client
                        + ", where two writers become two copies: keep the job outside, and carry it in and out");
    }

    private static Optional<String> client(Path folder) {
        List<Sign> signs = signs();
        for (Path at = real(folder); at != null; at = at.getParent()) {
            for (Sign sign : signs) {
                if (sign.of(at)) {
                    return Optional.of(sign.client());
                }
            }
        }
        return Optional.empty();
    }

    /** Where a folder is that is not there yet: as it would be. */
    private static Path real(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder.toAbsolutePath().normalize();
        }
    }

    private static List<Sign> signs() {
        try (var in = Synced.class.getResourceAsStream("/sync/clients.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", 3))
                    .map(cells -> new Sign(cells[0], cells[1], cells[2]))
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException("the table is packed with the program", e);
        }
    }
}
