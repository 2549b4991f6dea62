package screedbook.diary;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Folders of the record: made for owner and group only, and forced, so that a new name in them outlives a power cut. */
final class Folder {
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-r-----");
    private static final Set<PosixFilePermission> DIRECTORY = PosixFilePermissions.fromString("rwxr-x---");
    private static final Set<PosixFilePermission> CLOSED = PosixFilePermissions.fromString("r--r-----");
    /** What people edit, notes and half-typed entries are some kilobytes; more is not read into memory. */
    private static final long SMALL = 1024 * 1024;

    private static final boolean WINDOWS =
            System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");

    private Folder() {}

    /** Makes a folder with those above it that are missing, each forced into its parent. */
    static void make(Path folder, Channels channels) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Path parent = folder.toAbsolutePath().getParent();
        if (parent == null) {
            throw new FileSystemException(folder.toString(), null, "there is no such drive");
        }
        make(parent, channels);
        Files.createDirectory(folder, attributes(parent, DIRECTORY));
        force(parent, channels);
    }

    /** Forces the names in a folder to the device. Windows cannot open a folder for it and keeps them by itself. */
    static void force(Path folder, Channels channels) throws IOException {
        if (WINDOWS) {
            return;
        }
        try (FileChannel channel = channels.open(folder, Set.of(StandardOpenOption.READ))) {
            channel.force(true);
        }
    }

    /** What a new file in this folder is made with: owner writes, group reads, where the file system knows of them. */
    static FileAttribute<?>[] fileAttributes(Path folder) {
        return attributes(folder, FILE);
    }

    private static FileAttribute<?>[] attributes(Path folder, Set<PosixFilePermission> permissions) {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
                : new FileAttribute<?>[0];
    }

    /**
     * Puts a small file in its place as a whole: whoever reads sees the old one or the new one, after a power cut too.
     */
    static void replace(Path file, byte[] bytes, Channels channels) throws IOException {
        make(file.toAbsolutePath().getParent(), channels);
        Path made = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(made);
        try (FileChannel channel = channels.open(
                made,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                fileAttributes(file.getParent()))) {
            LineFile.writeAll(channel, ByteBuffer.wrap(bytes));
            channel.force(true);
        }
        Files.move(made, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        force(file.toAbsolutePath().getParent(), channels);
    }

    /** The same for what need not outlive a power cut: it is not forced. */
    static void place(Path file, byte[] bytes) throws IOException {
        make(file.toAbsolutePath().getParent(), FileChannel::open);
        Path made = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(made);
        Files.createFile(made, fileAttributes(file.getParent()));
        Files.write(made, bytes, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        Files.move(made, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Nobody writes in a closed file any more, where the file system knows of such things; a courtesy to the careful. */
    static void closed(Path file) {
        PosixFileAttributeView view =
                Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        try {
            if (view != null) {
                view.setPermissions(CLOSED);
            }
        } catch (IOException e) {
            return;
        }
    }

    /** Whether a file is for reading alone. */
    static boolean isClosed(Path file) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        return view != null && !view.readAttributes().permissions().contains(PosixFilePermission.OWNER_WRITE);
    }

    /** A small file, whole. */
    static byte[] read(Path file) throws IOException {
        if (Files.size(file) > SMALL) {
            throw new IOException("it is larger than 1 MiB, which no such file is");
        }
        return Files.readAllBytes(file);
    }

    /** The names in a folder, sorted; none when there is no such folder. */
    static List<String> names(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** What an I/O error says, in words: its own where it has some. */
    static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission";
        }
        if (e instanceof NoSuchFileException) {
            return "it is not there";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "something of that name is there already";
        }
        if (e instanceof FileSystemException && ((FileSystemException) e).getReason() != null) {
            return ((FileSystemException) e).getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
