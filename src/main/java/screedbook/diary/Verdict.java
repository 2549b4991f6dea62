package screedbook.diary;

import java.util.List;
import screedbook.entry.Damage;

/**
 * What a look at a whole record found.
 *
 * @param files every file that holds lines, in reading order
 * @param damages of all files and of what they refer to
 * @param helpers files beside the record that are no part of it
 */
public record Verdict(List<FileRead> files, List<Damage> damages, List<String> helpers) {
    /** Whether everything is as it was written. */
    public boolean sound() {
        return damages.isEmpty();
    }
}
