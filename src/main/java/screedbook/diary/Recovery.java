package screedbook.diary;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.diary.Access.Opened;
import screedbook.diary.Access.Taken;
import screedbook.diary.Access.Torn;
import screedbook.diary.Appended.Refused;

/**
 * The opening of a diary for writing: a torn tail is set aside and cut off, and whatever is damaged in another way, or
 * cannot be cut, is left untouched and followed by a new segment.
 */
final class Recovery {
    /** A shift's diary is some megabytes; more is not read into memory. */
    private static final long LARGEST = 256L * 1024 * 1024;

    private static final Set<OpenOption> APPEND =
            Set.of(StandardOpenOption.WRITE, StandardOpenOption.APPEND, LinkOption.NOFOLLOW_LINKS);
    private static final Set<OpenOption> NEW = Set.of(
            StandardOpenOption.WRITE,
            StandardOpenOption.APPEND,
            StandardOpenOption.CREATE_NEW,
            LinkOption.NOFOLLOW_LINKS);

    private final Path folder;
    private final FileName name;
    private final String holder;
    private final Channels channels;
    private final List<Hold> holds = new ArrayList<>();
    private String head;
    private Refused left;
    private Map<FileName, Path> segments = Map.of();

    Recovery(Path folder, FileName name, String holder, String before, Channels channels) {
        this.folder = folder;
        this.name = name;
        this.holder = holder;
        this.head = before;
        this.channels = channels;
    }

    /** Opens the last segment of the diary, or its first, or the one after a segment that has to be left. */
    Access open(Map<FileName, Path> known) {
        segments = known;
        return guarded(() -> {
            Optional<FileName> last = lastSegment();
            return last.isEmpty() ? begin(name) : reopen(last.get());
        });
    }

    /** Begins the segment after this one, under the locks of the segments before and the one of this folder. */
    Access goOn(List<Hold> before) {
        return guarded(
                () -> {
                    holds.addAll(before);
                    return beginAfter(lastSegment()
                            .filter(last -> last.segment() > name.segment())
                            .orElse(name));
                },
                before);
    }

    private interface Step {
        Access take() throws IOException;
    }

    private Access guarded(Step step) {
        return guarded(step, List.of());
    }

    /** Takes this folder's lock, unless one of those held is it, and gives it up again when nothing was opened. */
    private Access guarded(Step step, List<Hold> before) {
        Hold taken = null;
        Access opening = null;
        try {
            Folder.make(folder, channels);
            if (!Hold.any(before, folder, name)) {
                Optional<Hold> hold = Hold.take(folder, name, holder);
                if (hold.isEmpty()) {
                    return new Taken(Hold.words(folder, name));
                }
                taken = hold.get();
                holds.add(taken);
            }
            opening = step.take();
            return opening;
        } catch (IOException e) {
            return new Refused(
                    Cause.NO_FOLDER, folder.getFileName() + ": nothing can be written there: " + Folder.reason(e));
        } finally {
            if (taken != null && !(opening instanceof Opened)) {
                taken.close();
            }
        }
    }

    private Optional<FileName> lastSegment() {
        Optional<FileName> last = Optional.empty();
        for (Optional<FileName> at = Optional.of(name.at('a'));
                at.isPresent();
                at = at.get().next()) {
            if (Files.exists(folder.resolve(at.get().text()), LinkOption.NOFOLLOW_LINKS)) {
                last = at;
            }
        }
        return last;
    }

    private Access reopen(FileName last) throws IOException {
        Path file = folder.resolve(last.text());
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return new Refused(Cause.NOT_A_FILE, last.text() + ": it is a link or a folder, not a plain file");
        }
        Chain.Walk walk = Chain.walk(read(file), null);
        head = headBefore(last, walk);
        if (walk.damaged()) {
            return leave(last, Cause.DAMAGED, "not every line is as it was written");
        }
        FileChannel channel;
        try {
            channel = channels.open(file, APPEND);
        } catch (IOException e) {
            return leave(last, Cause.NO_FOLDER, "it cannot be written: " + Folder.reason(e));
        }
        return recover(last, channel, walk);
    }

    /** The file's name is forced too: whoever made it may have been cut short before that. */
    private Access recover(FileName last, FileChannel channel, Chain.Walk walk) throws IOException {
        Optional<Torn> aside;
        try {
            aside = walk.torn() ? Optional.of(setAside(last, walk)) : Optional.empty();
            if (walk.torn()) {
                channel.truncate(walk.tailAt());
            }
        } catch (IOException e) {
            LineFile.closeQuietly(channel);
            return leave(last, Cause.NOT_CUT, "its torn end could not be set aside: " + Folder.reason(e));
        }
        try {
            channel.force(true);
            Folder.force(folder, channels);
        } catch (IOException e) {
            LineFile.closeQuietly(channel);
            return leave(last, Cause.NOT_FORCED, "the disk could not keep it: " + Folder.reason(e));
        }
        return opened(last, channel, walk, aside);
    }

    private Access leave(FileName last, Cause cause, String sentence) throws IOException {
        left = new Refused(cause, last.text() + ": " + sentence);
        return beginAfter(last);
    }

    private Access beginAfter(FileName last) throws IOException {
        Optional<FileName> next = last.next();
        return next.isPresent()
                ? begin(next.get())
                : new Refused(Cause.NO_FOLDER, last.text() + ": no further file can follow it");
    }

    /** Makes a file; it is forced, and its name in the folder too, before a line is promised in it. */
    private Access begin(FileName at) throws IOException {
        FileChannel channel = channels.open(folder.resolve(at.text()), NEW, Folder.fileAttributes(folder));
        try {
            channel.force(true);
            Folder.force(folder, channels);
            return opened(at, channel, Chain.walk(new byte[0], head), Optional.empty());
        } catch (IOException e) {
            LineFile.closeQuietly(channel);
            throw e;
        }
    }

    private Opened opened(FileName at, FileChannel channel, Chain.Walk walk, Optional<Torn> aside) throws IOException {
        Chain.Walk told =
                new Chain.Walk(walk.lines(), walk.tail(), walk.tailAt(), walk.bom(), walk.carriageReturns(), head);
        LineFile.Place place = new LineFile.Place(folder, List.copyOf(holds), holder, channels);
        String before = holds.stream()
                .map(Hold::before)
                .filter(words -> !words.isEmpty())
                .findFirst()
                .orElse("");
        return new Opened(new LineFile(place, at, channel, told), aside, Optional.ofNullable(left), before);
    }

    /** The last line of the segment, or of the nearest one before it that has any. */
    private String headBefore(FileName last, Chain.Walk walk) throws IOException {
        if (walk.head() != null) {
            return walk.head();
        }
        String found = head;
        for (char segment = 'a'; segment < last.segment(); segment++) {
            FileName at = last.at(segment);
            Path file = segments.getOrDefault(at, folder.resolve(at.text()));
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                found = Chain.walk(read(file), found).head();
            }
        }
        return found;
    }

    static byte[] read(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new IOException("it is too large for the diary of a shift");
        }
        return Files.readAllBytes(file);
    }

    /** Keeps the torn bytes in a file of their own, forced and with their name forced, before they may be cut off. */
    private Torn setAside(FileName last, Chain.Walk walk) throws IOException {
        String stem = last.text() + ".torn-" + walk.tailAt();
        String sidecar = stem;
        for (int again = 2; taken(folder.resolve(sidecar), walk.tail()); again++) {
            sidecar = stem + "-" + again;
        }
        keep(folder.resolve(sidecar), walk.tail());
        Folder.force(folder, channels);
        return new Torn(last.text(), sidecar, walk.tailAt(), walk.tail().length, Chain.hash(walk.tail()));
    }

    /** Whether another torn end has this name; the same bytes may be there from an opening that was cut short. */
    private static boolean taken(Path sidecar, byte[] tail) throws IOException {
        try {
            return !Arrays.equals(Files.readAllBytes(sidecar), tail);
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    private void keep(Path sidecar, byte[] tail) throws IOException {
        boolean there = Files.exists(sidecar, LinkOption.NOFOLLOW_LINKS);
        try (FileChannel channel =
                there ? channels.open(sidecar, APPEND) : channels.open(sidecar, NEW, Folder.fileAttributes(folder))) {
            LineFile.writeAll(channel, ByteBuffer.wrap(there ? new byte[0] : tail));
            channel.force(true);
        }
    }
}
