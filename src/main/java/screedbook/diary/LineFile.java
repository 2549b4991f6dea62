package screedbook.diary;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.diary.Appended.Forced;
import screedbook.diary.Appended.Refused;

/**
 * A diary file open for appending by its one writer: a line counts when it is forced to the device, and not before.
 *
 * <p>One thread at a time, and one that is never interrupted (an interrupt closes a channel for good): see
 * {@link Writer}. Since every line is forced before the next is taken, the lines since the last good force are the one
 * that was refused, and whoever asked for it still has it.
 */
final class LineFile implements AutoCloseable {
    private static final int MOST_IDLE_WRITES = 100;

    private final Place place;
    private final FileName name;
    private final Path path;
    private final FileChannel channel;
    private final Object key;
    private long length;
    private int lines;
    private String head;
    private Refused dead;

    /** Where a diary is written: its folder, the locks that are held for it, and how files are opened. */
    record Place(Path folder, List<Hold> holds, String holder, Channels channels) {}

    /** A file that was just opened or made; {@code walk} tells what is in it. */
    LineFile(Place place, FileName name, FileChannel channel, Chain.Walk walk) throws IOException {
        this.place = place;
        this.name = name;
        this.path = place.folder().resolve(name.text());
        this.channel = channel;
        this.key = attributes().fileKey();
        this.length = walk.tailAt();
        this.lines = walk.lines().size();
        this.head = walk.head();
    }

    /**
     * Opens a shift's book for writing; what is damaged or cannot be written is left as it is and a new segment begun.
     *
     * @param folder where diaries lie; made when it is not there
     * @param name the diary's first file
     * @param holder who writes, since when and where, for others to read
     * @param before the hash that the first line of a new diary names as the line before
     */
    static Access open(Path folder, FileName name, String holder, String before, Channels channels) {
        return open(folder, name, holder, before, channels, Map.of());
    }

    /**
     * The same, of a diary whose segments lie in several folders.
     *
     * @param segments those that are known, by their names
     */
    static Access open(
            Path folder, FileName name, String holder, String before, Channels channels, Map<FileName, Path> segments) {
        return new Recovery(folder, name, holder, before, channels).open(segments);
    }

    FileName name() {
        return name;
    }

    Path path() {
        return path;
    }

    /** How many lines the file holds that count. */
    int lines() {
        return lines;
    }

    /** The hash that the next line has to name as its last member. */
    String head() {
        return head;
    }

    /**
     * Appends a line and forces it to the device.
     *
     * @param line its bytes without LF, ending with the {@code prev} that {@link #head()} gave
     * @throws IllegalArgumentException when the line is too long, is not one line, or names another head
     */
    Appended append(byte[] line) {
        if (!Chain.looksWhole(line) || !Chain.prev(line).equals(Optional.of(head))) {
            throw new IllegalArgumentException("not the next line of " + name.text() + ", " + line.length + " bytes");
        }
        if (dead == null) {
            dead = moved();
        }
        return dead == null ? write(line) : dead;
    }

    /**
     * Goes on in the next segment, in this folder or another, from the last line that counts. This file is not touched
     * again, but a note beside it tells of another folder. When it cannot be done this file can be asked once more, with another folder.
     */
    Access continueIn(Path folder) {
        dead = dead == null ? refusal(Cause.PUT_AWAY, "the record goes on in another file") : dead;
        closeQuietly(channel);
        Access access = new Recovery(folder, name, place.holder(), head, place.channels()).goOn(place.holds());
        if (access instanceof Access.Opened opened && !folder.equals(place.folder())) {
            GoesOn.note(place.folder(), name, opened.file().name(), folder, place.channels());
        }
        return access;
    }

    /** Puts a file beside this one, as a whole and forced. */
    void keepBeside(String kind, byte[] bytes) throws IOException {
        Folder.replace(place.folder().resolve(name.beside(kind)), bytes, place.channels());
    }

    /** Nobody writes in this file, in those that it followed, nor in what was kept beside it any more. */
    void readOnly() {
        for (Optional<FileName> at = Optional.of(name.at('a'));
                at.isPresent() && at.get().segment() <= name.segment();
                at = at.get().next()) {
            Folder.closed(place.folder().resolve(at.get().text()));
        }
        Folder.closed(place.folder().resolve(name.beside("seal")));
    }

    /** Closes the file and gives up the locks. */
    @Override
    public void close() {
        dead = dead == null ? refusal(Cause.PUT_AWAY, "the diary was put away") : dead;
        closeQuietly(channel);
        place.holds().forEach(Hold::close);
    }

    private Appended write(byte[] line) {
        ByteBuffer whole =
                ByteBuffer.allocate(line.length + 1).put(line).put((byte) '\n').flip();
        try {
            writeAll(channel, whole);
            kept(length + line.length + 1);
        } catch (IOException e) {
            return cutBack(e);
        }
        try {
            channel.force(false);
        } catch (IOException e) {
            dead = refusal(Cause.NOT_FORCED, "the disk could not keep the line: " + Folder.reason(e));
            return dead;
        }
        return count(line);
    }

    /** A disk that says it took more than it did is not believed. */
    private void kept(long whole) throws IOException {
        if (channel.size() != whole) {
            throw new IOException("it is " + channel.size() + " bytes long and not " + whole);
        }
    }

    private Forced count(byte[] line) {
        Forced receipt = new Forced(name.text(), lines + 1, length, line.length, Chain.hash(line));
        lines++;
        length += line.length + 1;
        head = receipt.hash();
        return receipt;
    }

    /** Cuts a piece of a line off again, so that the file ends with the last line that counts. */
    private Refused cutBack(IOException cause) {
        String why = "the disk did not take the line: " + Folder.reason(cause);
        try {
            channel.truncate(length);
            channel.force(true);
            return refusal(Cause.NOT_TAKEN, why);
        } catch (IOException e) {
            dead = refusal(Cause.NOT_CUT, why + "; a piece of it could not be cut off: " + Folder.reason(e));
            return dead;
        }
    }

    /** A moved or deleted file swallows appends without an error, so path and channel are held against each other. */
    private Refused moved() {
        try {
            BasicFileAttributes found = attributes();
            if (!found.isRegularFile() || !Objects.equals(key, found.fileKey())) {
                return refusal(Cause.REPLACED, "another file was put in its place while it was open");
            }
            if (found.size() != length || channel.size() != length) {
                return refusal(
                        Cause.CHANGED, "something else changed it from " + length + " to " + found.size() + " bytes");
            }
            return Hold.any(place.holds(), place.folder(), name)
                    ? null
                    : refusal(Cause.UNLOCKED, "its lock was taken away while it was open");
        } catch (NoSuchFileException e) {
            return refusal(Cause.MOVED, "it was moved or deleted while it was open");
        } catch (IOException e) {
            return refusal(Cause.MOVED, "it cannot be reached any more: " + Folder.reason(e));
        }
    }

    private BasicFileAttributes attributes() throws IOException {
        return Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }

    private Refused refusal(Cause cause, String sentence) {
        return new Refused(cause, name.text() + ": " + sentence);
    }

    /** Writes until nothing is left, however little the disk takes at a time. */
    static void writeAll(FileChannel channel, ByteBuffer bytes) throws IOException {
        int idle = 0;
        while (bytes.hasRemaining()) {
            idle = channel.write(bytes) == 0 ? idle + 1 : 0;
            if (idle == MOST_IDLE_WRITES) {
                throw new IOException("it takes no more bytes");
            }
        }
    }

    /** Everything that counts was forced before; what a close has to say changes nothing. */
    static void closeQuietly(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            return;
        }
    }
}
