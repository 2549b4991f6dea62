package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Shown;

/** Plain text being written to a width: paragraphs that wrap, headings, tables whose figures stand under each other. */
final class Leaf {
    /** Columns of the page on paper. */
    static final int PAPER = 80;

    private final int width;
    private final List<String> lines = new ArrayList<>();

    Leaf(int width) {
        this.width = Math.max(20, width);
    }

    List<String> lines() {
        return List.copyOf(lines);
    }

    void blank() {
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            lines.add("");
        }
    }

    void rule(char sign) {
        lines.add(String.valueOf(sign).repeat(width));
    }

    void heading(String text) {
        blank();
        say(0, text);
    }

    /** Lines under a heading; where there are none, the heading and what is said then in one line. */
    void under(String heading, Leaf lines, String none) {
        if (lines.lines.isEmpty()) {
            say(0, heading + ": " + none);
        } else {
            heading(heading);
            this.lines.addAll(lines.lines);
        }
    }

    /** A line drawn elsewhere, never wrapped. */
    void drawn(String line) {
        lines.add(line.stripTrailing());
    }

    /** A paragraph; its first line begins at an indent, the others two columns further in. */
    void say(int indent, String text) {
        String pad = " ".repeat(indent);
        StringBuilder line = new StringBuilder(pad);
        boolean fresh = true;
        for (String word : Shown.text(text).strip().split(" +")) {
            for (String piece : pieces(word, width - indent - 2)) {
                if (!fresh && columns(line) + 1 + columns(piece) > width) {
                    lines.add(line.toString());
                    line = new StringBuilder(pad).append("  ");
                    fresh = true;
                }
                line.append(fresh ? "" : " ").append(piece);
                fresh = false;
            }
        }
        lines.add(line.toString().stripTrailing());
    }

    /** A name in a column of its own, and a text that wraps beside it. */
    void named(String name, int wide, String text) {
        Leaf beside = new Leaf(width - wide);
        beside.say(0, text);
        String first = Shown.text(name);
        for (String line : beside.lines()) {
            lines.add((first + " ".repeat(Math.max(0, wide - columns(first))) + line).stripTrailing());
            first = "";
        }
    }

    /** Two texts at the ends of one line, or one under the other where there is no room. */
    void ends(String left, String right) {
        String a = Shown.text(left);
        String b = Shown.text(right);
        int gap = width - columns(a) - columns(b);
        if (gap < 2) {
            say(0, a);
            say(0, b);
        } else {
            lines.add(a + " ".repeat(gap) + b);
        }
    }

    /** A word cut where it is longer than a line. */
    private static List<String> pieces(String word, int most) {
        List<String> pieces = new ArrayList<>();
        int[] points = word.codePoints().toArray();
        for (int at = 0; at < points.length; at += most) {
            pieces.add(new String(points, at, Math.min(most, points.length - at)));
        }
        return pieces.isEmpty() ? List.of("") : pieces;
    }

    /** {@code 1 line}, {@code 2 lines}. */
    static String many(int count, String one) {
        return many(count, one, one + "s");
    }

    static String many(int count, String one, String more) {
        return count + " " + (count == 1 ? one : more);
    }

    static int columns(CharSequence text) {
        return (int) text.codePoints().count();
    }

    /**
     * A table: names at the left, figures right-aligned under their heads. A name too long for its column stands on
     * lines of its own; figures too many for the width are told one after the other.
     */
    void table(List<String> heads, List<List<String>> rows) {
        int[] wide = widths(heads, rows);
        int figures = 0;
        for (int i = 1; i < wide.length; i++) {
            figures += wide[i] + 2;
        }
        int names = Math.min(wide[0], width - 1 - figures);
        if (names < Math.min(wide[0], 8)) {
            told(heads, rows);
            return;
        }
        row(heads, wide, names);
        rows.forEach(row -> row(row, wide, names));
    }

    private static int[] widths(List<String> heads, List<List<String>> rows) {
        int[] wide = new int[heads.size()];
        for (int i = 0; i < wide.length; i++) {
            wide[i] = columns(Shown.text(heads.get(i)));
            for (List<String> row : rows) {
                wide[i] = Math.max(wide[i], columns(Shown.text(row.get(i))));
            }
        }
        return wide;
    }

    private void row(List<String> cells, int[] wide, int names) {
        String name = Shown.text(cells.get(0));
        StringBuilder line = new StringBuilder(" ");
        if (columns(name) > names) {
            say(1, name);
            name = "";
        }
        line.append(name).append(" ".repeat(names - columns(name)));
        for (int i = 1; i < wide.length; i++) {
            String cell = Shown.text(cells.get(i));
            line.append(" ".repeat(wide[i] + 2 - columns(cell))).append(cell);
        }
        lines.add(line.toString().stripTrailing());
    }

    private void told(List<String> heads, List<List<String>> rows) {
        for (List<String> row : rows) {
            StringBuilder text = new StringBuilder(row.get(0)).append(":");
            for (int i = 1; i < heads.size(); i++) {
                text.append(i > 1 ? ", " : " ").append(heads.get(i)).append(' ').append(row.get(i));
            }
            say(1, text.toString());
        }
    }
}
