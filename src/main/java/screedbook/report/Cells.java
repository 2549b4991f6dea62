package screedbook.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import screedbook.entry.Shown;

/**
 * A table as comma-separated values (RFC 4180): texts in quotation marks, numbers bare. A text that a spreadsheet would
 * run as a formula gets an apostrophe in front; {@link #plain} takes it off again.
 */
final class Cells {
    /** What a spreadsheet may run: signs, their wide forms, and apostrophes before them. */
    private static final Pattern RUNS = Pattern.compile("('*)[=+\\-@|%\\uFF1D\\uFF0B\\uFF0D\\uFF20].*", Pattern.DOTALL);

    private final StringBuilder out = new StringBuilder();
    private boolean begun;

    /** A text; null is an empty cell. */
    Cells text(String text) {
        next();
        if (text != null) {
            out.append('"')
                    .append(guarded(Shown.text(text)).replace("\"", "\"\""))
                    .append('"');
        }
        return this;
    }

    /** A number, written in full; null is an empty cell. */
    Cells number(BigDecimal number) {
        next();
        if (number != null) {
            out.append(number.toPlainString());
        }
        return this;
    }

    /** A date as ISO 8601 writes it, bare; null is an empty cell. */
    Cells date(LocalDate date) {
        next();
        if (date != null) {
            out.append(date);
        }
        return this;
    }

    Cells number(int number) {
        return number(BigDecimal.valueOf(number));
    }

    private void next() {
        if (begun) {
            out.append(',');
        }
        begun = true;
    }

    Cells end() {
        out.append("\r\n");
        begun = false;
        return this;
    }

    /** The lines so far, each with its line end. */
    String lines() {
        return out.toString();
    }

    static String guarded(String text) {
        return RUNS.matcher(text).matches() ? "'" + text : text;
    }

    /** The text of a cell that was written by {@link #text}. */
    static String plain(String cell) {
        Matcher matcher = RUNS.matcher(cell);
        return matcher.matches() && !matcher.group(1).isEmpty() ? cell.substring(1) : cell;
    }
}
