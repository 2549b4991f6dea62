package screedbook.picture;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import screedbook.entry.Moment;

/** A field of characters with a clock along its foot and room for figures at its left. */
final class Plot {
    /** Columns at the left for a figure of four digits and an upright. */
    static final int MARGIN = 5;

    private static final int[] STEPS = {5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440};
    private static final int LABEL = 5;

    private final char[][] cells;
    private final int width;
    private final OffsetDateTime begins;
    private final long seconds;

    /** A field of the given size; its last line is the clock's. */
    Plot(int width, int height, OffsetDateTime begins, OffsetDateTime ends) {
        this.width = Math.max(0, width);
        this.cells = new char[Math.max(0, height)][this.width];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        for (int row = 0; row < rows(); row++) {
            put(row, MARGIN - 1, '|');
        }
        this.begins = begins;
        this.seconds = Math.max(1, Duration.between(begins, ends).toSeconds());
    }

    /** Lines above the clock. */
    int rows() {
        return Math.max(0, cells.length - 1);
    }

    /** The column of a time. */
    int column(OffsetDateTime time) {
        long since = Duration.between(begins, time).toSeconds();
        return MARGIN + (int) (since * Math.max(0, width - MARGIN - 1) / seconds);
    }

    int width() {
        return width;
    }

    /** What stands in a cell; a blank outside the field. */
    char at(int row, int column) {
        return row >= 0 && row < cells.length && column >= 0 && column < width ? cells[row][column] : ' ';
    }

    void put(int row, int column, char sign) {
        if (row >= 0 && row < cells.length && column >= 0 && column < width) {
            cells[row][column] = sign;
        }
    }

    void text(int row, int column, String text) {
        for (int i = 0; i < text.length(); i++) {
            put(row, column + i, text.charAt(i));
        }
    }

    /** A figure in the margin of a line, right-aligned. */
    void label(int row, String figure) {
        if (figure.length() < MARGIN) {
            text(row, MARGIN - 1 - figure.length(), figure);
        }
    }

    void line(int row) {
        for (int column = MARGIN; column < width; column++) {
            put(row, column, '-');
        }
    }

    /** Round times along the foot, as many as there is room for. */
    void clock() {
        int step = step();
        OffsetDateTime at = begins.truncatedTo(ChronoUnit.DAYS);
        while (at.isBefore(begins)) {
            at = at.plusMinutes(step);
        }
        boolean none = true;
        while (column(at) + LABEL <= width) {
            text(cells.length - 1, column(at), Moment.clock(at));
            none = false;
            at = at.plusMinutes(step);
        }
        if (none) {
            text(cells.length - 1, MARGIN, Moment.clock(begins));
        }
    }

    private int step() {
        int room = Math.max(1, (width - MARGIN) / (LABEL + 3));
        for (int step : STEPS) {
            if (seconds / 60 / step < room) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1] * (int) Math.max(1, seconds / 60 / STEPS[STEPS.length - 1]);
    }

    List<String> lines() {
        return Arrays.stream(cells).map(String::new).toList();
    }
}
