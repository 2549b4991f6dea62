package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/** A line of characters on which figures have their place between a least and a greatest one. */
final class Ruler {
    private final int margin;
    private final int width;
    private final BigDecimal low;
    private final BigDecimal span;

    /**
     * A line of so many columns.
     *
     * @param margin columns at the left that are kept for a label
     */
    Ruler(int margin, int width, BigDecimal low, BigDecimal high) {
        this.margin = margin;
        this.width = Math.max(0, width);
        this.low = low;
        this.span = high.subtract(low).max(new BigDecimal("0.001"));
    }

    int column(BigDecimal at) {
        return column(at, RoundingMode.HALF_UP);
    }

    private int column(BigDecimal at, RoundingMode rounding) {
        BigDecimal room = BigDecimal.valueOf(Math.max(0, width - margin - 1));
        int column = at.subtract(low).multiply(room).divide(span, 0, rounding).intValue();
        return margin + Math.min(Math.max(column, 0), room.intValue());
    }

    char[] row(String label) {
        char[] row = new char[width];
        Arrays.fill(row, ' ');
        for (int i = 0; i < label.length() && i < Math.min(margin, width); i++) {
            row[i] = label.charAt(i);
        }
        return row;
    }

    void fill(char[] row, BigDecimal from, BigDecimal to, char sign) {
        for (int i = column(from); i <= column(to) && i < width; i++) {
            row[i] = sign;
        }
    }

    /** Only columns that lie between two places; the nearest one where none does. */
    void fillBetween(char[] row, BigDecimal from, BigDecimal to, char sign) {
        int first = column(from, RoundingMode.CEILING);
        int last = column(to, RoundingMode.FLOOR);
        if (first > last) {
            put(row, from, sign);
        }
        for (int i = first; i <= last && i < width; i++) {
            row[i] = sign;
        }
    }

    void put(char[] row, BigDecimal at, char sign) {
        int column = column(at);
        if (column < width) {
            row[column] = sign;
        }
    }

    /** A text about a place, where it stands free of what is there already; else it is left out. */
    boolean about(char[] row, BigDecimal at, String text) {
        int from = Math.max(0, Math.min(column(at) - text.length() / 2, width - text.length()));
        if (text.length() > width) {
            return false;
        }
        for (int i = Math.max(0, from - 1); i < Math.min(width, from + text.length() + 1); i++) {
            if (row[i] != ' ') {
                return false;
            }
        }
        text.getChars(0, text.length(), row, from);
        return true;
    }

    /** Figures over their places, the first ones first where there is no room for all. */
    String figures(List<BigDecimal> figures) {
        char[] row = row("");
        for (BigDecimal each : figures) {
            about(row, each, plain(each));
        }
        return new String(row);
    }

    static String plain(BigDecimal figure) {
        BigDecimal hundredths = figure.scale() > 2 ? figure.setScale(2, RoundingMode.HALF_UP) : figure;
        BigDecimal bare = hundredths.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }
}
