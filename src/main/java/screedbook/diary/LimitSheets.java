package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The limit sheets in a job's folder: those for people to edit, and those that shifts were judged by. */
public final class LimitSheets {
    private final Path folder;

    private LimitSheets(Path folder) {
        this.folder = folder;
    }

    public static LimitSheets in(JobFolder job) {
        return new LimitSheets(job.path().resolve("spec"));
    }

    /** A limit sheet for people to edit, by its name without ".csv"; empty when there is none in {@code spec/}. */
    public Optional<byte[]> sheet(String name) {
        return FileName.isSafe(name) ? JobFolder.bytes(folder.resolve(name + ".csv")) : Optional.empty();
    }

    /** The names of the limit sheets for people to edit, without those that are frozen. */
    public List<String> names() {
        return JobFolder.names(folder).stream()
                .filter(name -> name.endsWith(".csv"))
                .map(name -> name.substring(0, name.length() - 4))
                .filter(name -> FileName.isSafe(name) && !name.matches(".*-[0-9a-f]{8}"))
                .toList();
    }

    /**
     * Puts a sheet into {@code spec/} for people to edit.
     *
     * @return its file; empty when one of the name is there already, which stays as it is
     */
    public Optional<Path> copy(String name, byte[] bytes) throws IOException {
        if (!FileName.isSafe(name)) {
            throw new IOException("a sheet cannot be named " + name);
        }
        Path file = folder.resolve(name + ".csv");
        if (Files.exists(file)) {
            return Optional.empty();
        }
        Folder.replace(file, bytes, FileChannel::open);
        return Optional.of(file);
    }

    /** A sheet as it was when a shift was judged by it; empty when it is not there or not the same any more. */
    public Optional<byte[]> frozen(String name, String sha256) {
        return FileName.isSafe(name) && sha256.length() == 64
                ? JobFolder.bytes(file(name, sha256))
                        .filter(bytes -> Chain.hash(bytes).equals(sha256))
                : Optional.empty();
    }

    /**
     * Keeps a sheet as it is now, for the shifts that are judged by it.
     *
     * @return its SHA-256
     */
    public String freeze(String name, byte[] bytes) throws IOException {
        if (!FileName.isSafe(name)) {
            throw new IOException("a sheet cannot be named " + name);
        }
        String sha256 = Chain.hash(bytes);
        if (frozen(name, sha256).isEmpty()) {
            Folder.replace(file(name, sha256), bytes, FileChannel::open);
        }
        return sha256;
    }

    private Path file(String name, String sha256) {
        return folder.resolve(name + "-" + sha256.substring(0, 8) + ".csv");
    }
}
