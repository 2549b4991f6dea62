package screedbook.command;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A stream that remembers the first time it could not be written to; a print writer on it would forget why. */
final class Outlet extends FilterOutputStream {
    private IOException trouble;

    Outlet(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) {
        if (trouble == null) {
            try {
                out.write(bytes, from, count);
            } catch (IOException e) {
                trouble = e;
            }
        }
    }

    @Override
    public void flush() {
        if (trouble == null) {
            try {
                out.flush();
            } catch (IOException e) {
                trouble = e;
            }
        }
    }

    /** Why not all of it was written; null when it was, or when the reader had enough and went away. */
    IOException trouble() {
        boolean left = trouble != null && "Broken pipe".equals(trouble.getMessage());
        return left ? null : trouble;
    }
}
