package screedbook.term;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** The bytes for the terminal, kept until a flush and then written in one piece; shut, it drops what comes. */
final class Outlet extends OutputStream {
    private final OutputStream out;
    private ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private boolean shut;

    Outlet(OutputStream out) {
        this.out = out;
    }

    @Override
    public synchronized void write(int value) {
        kept.write(value);
    }

    @Override
    public synchronized void write(byte[] bytes, int offset, int length) {
        kept.write(bytes, offset, length);
    }

    @Override
    public synchronized void flush() throws IOException {
        byte[] whole = kept.toByteArray();
        kept.reset();
        if (whole.length > 0 && !shut) {
            out.write(whole);
            out.flush();
        }
    }

    /** Drops whatever is written from now on: the terminal belongs to the shell again. */
    synchronized void shut() {
        shut = true;
    }
}
