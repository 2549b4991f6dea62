package screedbook.diary;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Diaries laid one behind the other in few large files, a month after the other: readers on a cluster open a file
 * slower than they read it. Still JSON Lines; a chain begins anew with each diary.
 */
final class Compact {
    /** A part is closed when it has grown over this. */
    private static final long LARGE = 256L * 1024 * 1024;

    private final Path folder;
    private final Map<String, Integer> parts = new HashMap<>();

    /** Where a diary lies in a part. */
    record Place(String file, long offset) {
        static final Place NONE = new Place("", -1);
    }

    Compact(Path folder) {
        this.folder = folder;
    }

    /** Lays a diary behind those of its month; one whose end was torn gets a line end, so that none runs into it. */
    Place add(String month, byte[] diary) throws IOException {
        Path file = part(month);
        Folder.make(file.getParent(), FileChannel::open);
        try (FileChannel out = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            long offset = out.size();
            out.position(offset);
            LineFile.writeAll(out, ByteBuffer.wrap(diary));
            if (diary.length > 0 && diary[diary.length - 1] != '\n') {
                LineFile.writeAll(out, ByteBuffer.wrap(new byte[] {'\n'}));
            }
            out.force(true);
            return new Place(month + "/" + file.getFileName(), offset);
        }
    }

    private Path part(String month) throws IOException {
        int number = parts.getOrDefault(month, 1);
        Path file = file(month, number);
        if (Files.exists(file) && Files.size(file) > LARGE) {
            number++;
            file = file(month, number);
        }
        parts.put(month, number);
        return file;
    }

    private Path file(String month, int number) {
        return folder.resolve(month).resolve(String.format(Locale.ROOT, "part-%04d.jsonl", number));
    }
}
