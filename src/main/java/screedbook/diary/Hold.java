package screedbook.diary;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The right to write in one shift's book, as long as the lock on its {@code .lock} file is held.
 *
 * <p>Nothing else opens that file: closing any other descriptor of it would drop the lock of the whole process without
 * a word (fcntl(2)). So the same process is kept out by a set, and others read who holds it in {@code .held}.
 */
final class Hold implements AutoCloseable {
    private static final Set<Object> HERE = new HashSet<>();
    private static final int LONGEST_WORDS = 4096;

    private final Path heldFile;
    private final Object key;
    private final FileChannel channel;
    private final String before;

    private Hold(Path heldFile, Object key, FileChannel channel, String before) {
        this.heldFile = heldFile;
        this.key = key;
        this.channel = channel;
        this.before = before;
    }

    /**
     * Takes the lock.
     *
     * @param words who holds it, since when and where, for the others to read
     * @return empty when somebody else has it, be it in this process
     */
    static Optional<Hold> take(Path folder, FileName name, String words) throws IOException {
        synchronized (HERE) {
            Path lockFile = folder.resolve(name.beside("lock"));
            createIfAbsent(lockFile);
            Object key = key(lockFile);
            if (HERE.contains(key)) {
                return Optional.empty();
            }
            Optional<FileChannel> channel = lock(lockFile);
            if (channel.isEmpty()) {
                return Optional.empty();
            }
            HERE.add(key);
            Hold hold = new Hold(folder.resolve(name.beside("held")), key, channel.get(), words(folder, name));
            hold.say(words);
            return Optional.of(hold);
        }
    }

    /** What a holder before said who did not give the right up in order; empty when there was none. */
    String before() {
        return before;
    }

    /** What the holder of a shift's book says about himself; empty when he says nothing. */
    static String words(Path folder, FileName name) {
        return words(folder.resolve(name.beside("held")));
    }

    static String words(Path file) {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return new String(in.readNBytes(LONGEST_WORDS), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            return "";
        }
    }

    /**
     * Whether one of these is the right to write in that book in that folder, and the lock file there is still the one
     * that was locked; without it a second writer would find no lock.
     *
     * @throws IOException when the disk does not say
     */
    static boolean any(List<Hold> holds, Path folder, FileName name) throws IOException {
        try {
            Object there = key(folder.resolve(name.beside("lock")));
            return holds.stream().anyMatch(hold -> hold.key.equals(there));
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    /** Gives the lock up. A disk that is gone has nothing more to say about it. */
    @Override
    public void close() {
        synchronized (HERE) {
            if (channel.isOpen()) {
                heldFile.toFile().delete();
                HERE.remove(key);
                LineFile.closeQuietly(channel);
            }
        }
    }

    private static void createIfAbsent(Path lockFile) throws IOException {
        try {
            Files.createFile(lockFile, Folder.fileAttributes(lockFile.getParent()));
        } catch (FileAlreadyExistsException e) {
            if (!Files.isRegularFile(lockFile, LinkOption.NOFOLLOW_LINKS)) {
                throw e;
            }
        }
    }

    private static Optional<FileChannel> lock(Path lockFile) throws IOException {
        FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        FileLock lock = null;
        try {
            lock = channel.tryLock();
        } finally {
            if (lock == null) {
                channel.close();
            }
        }
        return lock == null ? Optional.empty() : Optional.of(channel);
    }

    /** Tells files apart by device and inode, where there are none by their real path. */
    private static Object key(Path file) throws IOException {
        Object key = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                .fileKey();
        return key == null ? file.toRealPath(LinkOption.NOFOLLOW_LINKS) : key;
    }

    /** The words are a courtesy: a disk too full for them still lets the diary be opened and looked at. */
    private void say(String words) {
        try {
            Files.deleteIfExists(heldFile);
            Files.createFile(heldFile, Folder.fileAttributes(heldFile.getParent()));
            Files.writeString(heldFile, words + "\n");
        } catch (IOException e) {
            heldFile.toFile().delete();
        }
    }
}
