package screedbook.term;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.locks.LockSupport;

/**
 * The bytes of the keyboard, read with a little patience: while an escape sequence or a paste is unfinished, {@link #available()}
 * waits a moment for the rest, so that a sequence that arrives in two parts is one key, and a lone Escape is still Escape.
 */
final class Patience extends InputStream {
    /** How long the rest of an escape sequence may take, in nanoseconds; a lone Escape is told this much later. */
    private static final long SEQUENCE = 25_000_000L;
    /** How long the rest of a paste may take, in nanoseconds; after that the paste counts as over. */
    private static final long PASTE = 1_000_000_000L;

    private static final int PASTE_OPENS = 200;
    private static final int PASTE_ENDS = 201;
    private static final long GLANCE = 500_000L;

    private enum State {
        GROUND,
        ESCAPE,
        CSI,
        CSI_OPENED,
        SS3
    }

    private final InputStream in;
    private State state = State.GROUND;
    private int number;
    private boolean pasting;

    Patience(InputStream in) {
        this.in = in;
    }

    @Override
    public int read() throws IOException {
        int value = in.read();
        if (value >= 0) {
            follow(value);
        }
        return value;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int count = in.read(buffer, offset, length);
        for (int i = 0; i < count; i++) {
            follow(buffer[offset + i] & 0xFF);
        }
        return count;
    }

    @Override
    public int available() throws IOException {
        long patience = pasting ? PASTE : state == State.GROUND ? 0 : SEQUENCE;
        long from = System.nanoTime();
        int ready = in.available();
        while (ready == 0 && System.nanoTime() - from < patience) {
            LockSupport.parkNanos(GLANCE);
            ready = in.available();
        }
        pasting &= ready > 0;
        return ready;
    }

    private void follow(int value) {
        state = switch (state) {
            case GROUND -> value == 0x1B ? State.ESCAPE : State.GROUND;
            case ESCAPE -> afterEscape(value);
            // The Linux console writes F1 as ESC [ [ A: a second bracket right after the first ends nothing.
            case CSI_OPENED -> value == '[' ? State.CSI : inside(value);
            case CSI -> inside(value);
            case SS3 -> value >= '0' && value <= ';' ? State.SS3 : State.GROUND;
        };
    }

    private static State afterEscape(int value) {
        return switch (value) {
            case '[' -> State.CSI_OPENED;
            case 'O' -> State.SS3;
            case 0x1B -> State.ESCAPE;
            default -> State.GROUND;
        };
    }

    private State inside(int value) {
        if (value == '~' && (number == PASTE_OPENS || number == PASTE_ENDS)) {
            pasting = number == PASTE_OPENS;
        }
        boolean digit = value >= '0' && value <= '9';
        number = digit ? (number * 10 + value - '0') % 10_000 : 0;
        boolean last = value < 0x20 || value > 0x3F;
        return last ? State.GROUND : State.CSI;
    }
}
