package screedbook.spec;

import screedbook.entry.Shown;

/**
 * A place in a sheet that cannot be taken as it is; a sheet with any is not used.
 *
 * @param line of the file, from 1
 * @param seen what stands there
 * @param right what would be right
 */
public record SheetTrouble(String file, int line, String seen, String right) {
    /** {@code practice.csv:14: low is "4O"; right would be a decimal such as 40}. */
    public String text() {
        return file + ":" + line + ": " + Shown.text(seen) + "; right would be " + right;
    }
}
