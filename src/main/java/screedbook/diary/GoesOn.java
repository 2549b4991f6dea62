package screedbook.diary;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A note beside a diary that it went on in another folder, so that the next opening goes on there and not here. A disk
 * that is gone takes no such note.
 *
 * @param file the segment that it went on in
 * @param folder where that was
 */
record GoesOn(String file, Path folder) {
    private static final String BESIDE = "goes-on";

    /** Leaves the note, where the folder can still be written. */
    static void note(Path left, FileName name, FileName next, Path folder, Channels channels) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("file", next.text());
        values.put("folder", folder.toAbsolutePath().toString());
        try {
            Folder.replace(left.resolve(name.beside(BESIDE)), Json.write(values), channels);
        } catch (IOException e) {
            return;
        }
    }

    /** What is noted for a diary in a folder. */
    static Optional<GoesOn> of(Path folder, FileName name) {
        return read(folder.resolve(name.beside(BESIDE)));
    }

    private static Optional<GoesOn> read(Path note) {
        try {
            if (!Files.isRegularFile(note)) {
                return Optional.empty();
            }
            Map<String, Object> values = Json.line(Folder.read(note));
            return values.get("file") instanceof String file && values.get("folder") instanceof String folder
                    ? Optional.of(new GoesOn(file, FileSystems.getDefault().getPath(folder)))
                    : Optional.empty();
        } catch (IOException | Json.NotJson | InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The folders with those that any note in them names, as far as they are there. */
    static List<Path> followed(List<Path> folders) {
        List<Path> all = new ArrayList<>(folders);
        for (int i = 0; i < all.size(); i++) {
            for (Path folder : noted(all.get(i))) {
                if (!all.contains(folder) && Files.isDirectory(folder)) {
                    all.add(folder);
                }
            }
        }
        return all;
    }

    private static List<Path> noted(Path folder) {
        try {
            return Folder.names(folder).stream()
                    .filter(name -> name.endsWith("." + BESIDE))
                    .flatMap(name -> read(folder.resolve(name)).stream())
                    .map(GoesOn::folder)
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
