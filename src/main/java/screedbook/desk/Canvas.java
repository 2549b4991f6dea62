package screedbook.desk;

import java.util.Arrays;
import java.util.Objects;

/** A drawn screen as a value: rows of cells, each one column wide with a style, and where the cursor stands. */
public final class Canvas {
    private static final char STAND_IN = '?';

    private final int width;
    private final int height;
    private final char[] cells;
    private final Style[] styles;
    private final int cursorX;
    private final int cursorY;

    private Canvas(Pen pen) {
        width = pen.width;
        height = pen.height;
        cells = pen.cells.clone();
        styles = pen.styles.clone();
        cursorX = pen.cursorX;
        cursorY = pen.cursorY;
    }

    /** A pen over an empty sheet of so many columns and rows; less than none counts as none. */
    public static Pen pen(int width, int height) {
        return new Pen(Math.max(0, width), Math.max(0, height));
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The row as text, exactly {@link #width()} characters long. {@code y} counts from 0 at the top. */
    public String row(int y) {
        Objects.checkIndex(y, height);
        return new String(cells, y * width, width);
    }

    /** The character of one cell; both count from 0 at the upper left. */
    public char at(int x, int y) {
        return cells[index(x, y)];
    }

    /** The style of one cell; both count from 0 at the upper left. */
    public Style style(int x, int y) {
        return styles[index(x, y)];
    }

    /** The column of the cursor, or -1 where none is shown. */
    public int cursorX() {
        return cursorX;
    }

    /** The row of the cursor, or -1 where none is shown. */
    public int cursorY() {
        return cursorY;
    }

    /** The screen as text: every row without the blanks at its end, joined by line feeds. */
    public String text() {
        StringBuilder out = new StringBuilder();
        for (int y = 0; y < height; y++) {
            out.append(y == 0 ? "" : "\n").append(row(y).stripTrailing());
        }
        return out.toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Canvas that
                && width == that.width
                && height == that.height
                && cursorX == that.cursorX
                && cursorY == that.cursorY
                && Arrays.equals(cells, that.cells)
                && Arrays.equals(styles, that.styles);
    }

    @Override
    public int hashCode() {
        return Objects.hash(width, height, cursorX, cursorY, Arrays.hashCode(cells), Arrays.hashCode(styles));
    }

    @Override
    public String toString() {
        return text();
    }

    private int index(int x, int y) {
        return Objects.checkIndex(y, height) * width + Objects.checkIndex(x, width);
    }

    /**
     * Draws on one sheet; whatever would lie outside is left off, whatever the coordinates, and a character that is not exactly one
     * column wide becomes a question mark, so that every column stays where it belongs.
     */
    public static final class Pen {
        private final int width;
        private final int height;
        private final char[] cells;
        private final Style[] styles;
        private int cursorX = -1;
        private int cursorY = -1;

        private Pen(int width, int height) {
            this.width = width;
            this.height = height;
            cells = new char[Math.multiplyExact(width, height)];
            styles = new Style[cells.length];
            Arrays.fill(cells, ' ');
            Arrays.fill(styles, Style.PLAIN);
        }

        public int width() {
            return width;
        }

        public int height() {
            return height;
        }

        /** Writes the text to the right from this cell on; one code point takes one cell. */
        public Pen put(int x, int y, String text, Style style) {
            long column = x;
            for (int i = 0; i < text.length() && column < width; column++) {
                int point = text.codePointAt(i);
                cell(column, y, OneColumn.test(point) ? (char) point : STAND_IN, style);
                i += Character.charCount(point);
            }
            return this;
        }

        /** Fills a block of cells with one character; less than no columns or rows counts as none. */
        public Pen fill(int x, int y, int columns, int rows, char character, Style style) {
            char shown = OneColumn.test(character) ? character : STAND_IN;
            for (long row = Math.max(0, y); row < Math.min(height, (long) y + rows); row++) {
                for (long column = Math.max(0, x); column < Math.min(width, (long) x + columns); column++) {
                    cell(column, row, shown, style);
                }
            }
            return this;
        }

        /** Shows the cursor in this cell; outside the sheet no cursor is shown. */
        public Pen cursor(int x, int y) {
            return cursorAt(x, y);
        }

        /** The drawing so far, as a value that later strokes of this pen do not change. */
        public Canvas done() {
            return new Canvas(this);
        }

        private Pen cursorAt(long x, long y) {
            boolean inside = inside(x, y);
            cursorX = inside ? (int) x : -1;
            cursorY = inside ? (int) y : -1;
            return this;
        }

        private void cell(long x, long y, char character, Style style) {
            Objects.requireNonNull(style, "style");
            if (inside(x, y)) {
                int at = (int) (y * width + x);
                cells[at] = character;
                styles[at] = style;
            }
        }

        private boolean inside(long x, long y) {
            return x >= 0 && x < width && y >= 0 && y < height;
        }
    }
}
