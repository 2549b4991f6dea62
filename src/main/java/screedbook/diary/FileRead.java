package screedbook.diary;

import java.util.List;
import screedbook.entry.Damage;

/**
 * What one file of a book was found to be.
 *
 * @param file its name
 * @param lines how many lines it has
 * @param closed whether its last line closes the shift
 * @param damages what is not as it was written, by line; empty when nothing is
 * @param stands which lines still hold together, in words
 * @param notes what is worth knowing and is no damage
 */
public record FileRead(
        String file, int lines, boolean closed, List<Damage> damages, String stands, List<String> notes) {}
