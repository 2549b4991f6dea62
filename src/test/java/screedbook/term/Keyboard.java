package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;

/** A keyboard for tests: bytes that are there, that come after a few looks, or that come only to somebody who waits for them. */
final class Keyboard extends InputStream {
    private record Part(byte[] bytes, int looksBefore) {}

    private static final int ONLY_TO_THE_WAITING = Integer.MAX_VALUE;

    private final Deque<Part> parts = new ArrayDeque<>();
    private byte[] here = {};
    private int at;
    private int looks;

    /** Comes as soon as somebody waits, not before. */
    Keyboard then(String text) {
        parts.add(new Part(text.getBytes(UTF_8), ONLY_TO_THE_WAITING));
        return this;
    }

    /** Comes when somebody has looked a few times whether there is more. */
    Keyboard soon(String text) {
        parts.add(new Part(text.getBytes(UTF_8), 3));
        return this;
    }

    @Override
    public synchronized int available() {
        Part next = parts.peek();
        if (at == here.length && next != null && ++looks > next.looksBefore()) {
            advance();
        }
        return here.length - at;
    }

    @Override
    public synchronized int read() {
        if (at == here.length && !advance()) {
            return -1;
        }
        return here[at++] & 0xFF;
    }

    @Override
    public synchronized int read(byte[] buffer, int offset, int length) {
        if (at == here.length && !advance()) {
            return -1;
        }
        int count = Math.min(length, here.length - at);
        System.arraycopy(here, at, buffer, offset, count);
        at += count;
        return count;
    }

    private boolean advance() {
        Part next = parts.poll();
        looks = 0;
        if (next == null) {
            return false;
        }
        here = next.bytes();
        at = 0;
        return true;
    }
}
