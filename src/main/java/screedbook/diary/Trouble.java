package screedbook.diary;

import screedbook.entry.Shown;

/**
 * A place in a file for people that cannot be used as it is.
 *
 * @param file the file's name
 * @param line from 1; 0 when it speaks of the whole file
 * @param excerpt the line's text
 * @param said what was seen
 * @param right what would be right; empty when that cannot be said
 */
public record Trouble(String file, int line, String excerpt, String said, String right) {
    private static final int WIDTH = 72;

    /** Place, what was seen, the line, and the remedy: up to three lines of text, safe to look at. */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        text.append(": ").append(Shown.text(said));
        if (!excerpt.isBlank()) {
            String shown = Shown.text(excerpt.strip().replace("\t", " "));
            text.append("\n    ").append(shown.length() > WIDTH ? shown.substring(0, WIDTH) + " ..." : shown);
        }
        if (!right.isEmpty()) {
            text.append("\n    right would be: ").append(Shown.text(right));
        }
        return text.toString();
    }
}
