package screedbook.diary;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import screedbook.entry.ShiftId;

/**
 * What a shift's line in the season rests on, as a hash: every byte of its files, of those of the shifts before it, of
 * what was agreed and of the limit sheets. The closing line is among them, and with it the seal; a seal alone would not
 * tell that a line in the middle was changed since.
 */
public final class Basis {
    /**
     * Helpers of a shift that is being kept; they are no part of what is read. A lock is not even opened: closing it would
     * take the lock from the book that holds it in this very program (fcntl(2), POSIX.1).
     */
    private static final Set<String> HELPERS = Set.of("lock", "held", "draft", "new");

    private static final int BLOCK = 64 * 1024;

    private final Map<String, Path> files = new TreeMap<>();
    private byte[] before;

    private Basis() {}

    /** Before the first shift of a job; its files are listed now. */
    public static Basis of(JobFolder folder) {
        Basis basis = new Basis();
        try {
            for (Path diary : folder.diaries()) {
                basis.list(diary);
            }
            basis.list(folder.path().resolve("plant"));
            MessageDigest agreed = Chain.sha256();
            for (Path file : new Revisions(folder.path()).files()) {
                add(agreed, file);
            }
            for (String name : Folder.names(folder.path().resolve("spec"))) {
                add(agreed, folder.path().resolve("spec").resolve(name));
            }
            basis.before = agreed.digest();
        } catch (IOException e) {
            basis.before = null;
        }
        return basis;
    }

    private void list(Path folder) throws IOException {
        for (String name : Folder.names(folder)) {
            if (!HELPERS.contains(name.substring(name.lastIndexOf('.') + 1))) {
                files.put(name + " " + folder, folder.resolve(name));
            }
        }
    }

    /** The hash of the next shift, oldest first; empty from the first one on of which something cannot be read. */
    public Optional<String> next(ShiftId shift) {
        if (before == null) {
            return Optional.empty();
        }
        MessageDigest hash = Chain.sha256();
        hash.update(before);
        try {
            for (Map.Entry<String, Path> each : files.entrySet()) {
                if (each.getKey().startsWith(shift + ".")) {
                    add(hash, each.getValue());
                }
            }
            before = hash.digest();
        } catch (IOException e) {
            before = null;
        }
        return Optional.ofNullable(before).map(HexFormat.of()::formatHex);
    }

    /** The name, how many bytes, and the bytes. */
    private static void add(MessageDigest hash, Path file) throws IOException {
        String head = file.getFileName() + "\n" + Files.size(file) + "\n";
        hash.update(head.getBytes(StandardCharsets.UTF_8));
        byte[] block = new byte[BLOCK];
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(block); n >= 0; n = in.read(block)) {
                hash.update(block, 0, n);
            }
        }
    }

    /** The hash of a file; empty when it is none that can be read. */
    static Optional<String> of(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        MessageDigest hash = Chain.sha256();
        try {
            add(hash, file);
            return Optional.of(HexFormat.of().formatHex(hash.digest()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
