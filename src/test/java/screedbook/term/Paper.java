package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/** A terminal's other end for tests: keeps every write as it came. */
final class Paper extends OutputStream {
    private final List<String> writes = new ArrayList<>();

    @Override
    public synchronized void write(int value) {
        write(new byte[] {(byte) value}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int offset, int length) {
        writes.add(new String(bytes, offset, length, UTF_8));
    }

    /** What was written since this was last asked, one text for each write. */
    synchronized List<String> taken() {
        List<String> all = List.copyOf(writes);
        writes.clear();
        return all;
    }
}
