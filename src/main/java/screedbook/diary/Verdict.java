package screedbook.diary;

import java.util.List;
import screedbook.entry.Damage;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;

/**
 * What a look at a whole record found.
 *
 * @param files every file that holds lines, in reading order
 * @param seals of every book that is closed, in reading order
 * @param damages of all files and of what they refer to
 * @param helpers files beside the record that are no part of it
 */
public record Verdict(List<FileRead> files, List<Sealed> seals, List<Damage> damages, List<Helper> helpers) {
    /** The seal of a book's shift. */
    public record Sealed(ShiftId shift, Seal seal) {}

    /**
     * A file beside the record.
     *
     * @param file from the job's folder
     * @param said what it tells a reader; empty where its name says enough
     */
    public record Helper(String file, String said) {}

    /** Whether everything is as it was written. */
    public boolean sound() {
        return damages.isEmpty();
    }
}
