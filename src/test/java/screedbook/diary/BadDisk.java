package screedbook.diary;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A disk that makes the trouble a test asks for, and keeps a list of what was asked of it. */
final class BadDisk implements Channels {
    /** After so many more bytes no byte is taken; -1 means all are. */
    long room = -1;

    /** The most bytes taken by one write. */
    int bite = Integer.MAX_VALUE;

    /** Whether a file's force, a folder's force, a cut or an opening goes wrong. */
    boolean forceFails;

    boolean folderForceFails;
    boolean truncateFails;
    boolean openFails;

    /** Whether a force says that all is well and does nothing. */
    boolean forceLies;

    /** The number of the force, write or cut that goes wrong, from 1 on, and it alone; 0 for none. */
    int badForce;

    /** How many forces on end go wrong from that one on. */
    int badForces = 1;

    int badWrite;
    int badTruncate;

    /** A write takes no more bytes than this and says that it took all; -1 when writes tell the truth. */
    int keeps = -1;

    /** Hears what was done to a file, in order. */
    Witness witness = did -> {};

    int forces;
    int writes;
    int truncates;

    /** What is waited for before a write, so that a test can act meanwhile. */
    Runnable beforeWrite = () -> {};

    /** "open", "write", "force", "truncate" with the file's name, in the order in which they were asked. */
    final List<String> asked = new ArrayList<>();

    @Override
    public FileChannel open(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        String name = path.getFileName().toString();
        asked.add("open " + name);
        if (openFails) {
            throw new IOException("the disk is gone");
        }
        return new Channel(FileChannel.open(path, options, attributes), name, Files.isDirectory(path));
    }

    /**
     * What was done to a file.
     *
     * @param what "write", "force" or "truncate"
     * @param bytes the bytes written
     * @param size the length it was cut to
     */
    record Did(String file, String what, byte[] bytes, long size) {}

    /** Who hears what was done to a file. */
    interface Witness {
        void heard(Did did);
    }

    long count(String what) {
        return asked.stream().filter(line -> line.startsWith(what)).count();
    }

    private final class Channel extends FileChannel {
        private final FileChannel real;
        private final String name;
        private final boolean folder;

        Channel(FileChannel real, String name, boolean folder) {
            this.real = real;
            this.name = name;
            this.folder = folder;
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            asked.add("write " + name);
            beforeWrite.run();
            if (++writes == badWrite) {
                throw new IOException("Input/output error");
            }
            if (keeps >= 0) {
                return lie(bytes);
            }
            long most = Math.min(bite, room < 0 ? Long.MAX_VALUE : room);
            if (most == 0 && bytes.hasRemaining()) {
                throw new IOException("No space left on device");
            }
            ByteBuffer part = bytes.duplicate();
            part.limit(part.position() + (int) Math.min(most, part.remaining()));
            int from = bytes.position();
            int written = real.write(part);
            byte[] took = new byte[written];
            bytes.get(took);
            witness.heard(new Did(name, "write", took, 0));
            room -= room < 0 ? 0 : written;
            return bytes.position() - from;
        }

        private int lie(ByteBuffer bytes) throws IOException {
            int said = bytes.remaining();
            ByteBuffer part = bytes.duplicate();
            part.limit(part.position() + Math.min(keeps, said));
            real.write(part);
            bytes.position(bytes.limit());
            return said;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            asked.add("force " + name);
            forces++;
            boolean bad = badForce > 0 && forces >= badForce && forces < badForce + badForces;
            if (bad || (folder ? folderForceFails : forceFails)) {
                throw new IOException("Input/output error");
            }
            if (!forceLies) {
                real.force(metaData);
                witness.heard(new Did(name, "force", new byte[0], 0));
            }
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            asked.add("truncate " + name);
            if (++truncates == badTruncate || truncateFails) {
                throw new IOException("Operation not permitted");
            }
            real.truncate(size);
            witness.heard(new Did(name, "truncate", new byte[0], size));
            return this;
        }

        @Override
        public long size() throws IOException {
            return real.size();
        }

        @Override
        protected void implCloseChannel() throws IOException {
            asked.add("close " + name);
            real.close();
        }

        @Override
        public int read(ByteBuffer bytes) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long read(ByteBuffer[] bytes, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long write(ByteBuffer[] bytes, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long position() {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileChannel position(long newPosition) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferTo(long position, long count, WritableByteChannel target) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferFrom(ReadableByteChannel source, long position, long count) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int read(ByteBuffer bytes, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int write(ByteBuffer bytes, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long position, long size) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock lock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }
    }
}
