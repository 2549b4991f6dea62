package screedbook.desk;

/**
 * A place in a list that is taller than the screen.
 *
 * @param at the row walked to, from 0; -1 when none is
 */
public record Walk(int at) {
    static final Walk NOWHERE = new Walk(-1);
    static final Walk FIRST = new Walk(0);

    /** So many rows on, held inside a list of the given size. */
    Walk by(int rows, int size) {
        if (size == 0) {
            return NOWHERE;
        }
        return new Walk(Math.max(0, Math.min(size - 1, at < 0 && rows > 0 ? rows - 1 : at + rows)));
    }

    Walk within(int size) {
        return at >= size ? new Walk(size - 1) : this;
    }

    /** The first row to draw so that the row walked to is in sight, in a window of so many rows. */
    int top(int rows, int size) {
        int most = Math.max(0, size - rows);
        return Math.max(0, Math.min(most, at - rows / 2));
    }
}
