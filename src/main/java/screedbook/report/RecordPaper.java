package screedbook.report;

import java.util.List;
import screedbook.entry.Damage;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;

/**
 * What a look at the record of one job found, file by file.
 *
 * @param folder of the job, as it was typed
 * @param files every file that holds lines, in reading order
 * @param seals of every book that is closed, in reading order
 * @param damages of all files and of what they refer to
 * @param beside files beside the record that are no part of it
 */
public record RecordPaper(
        String folder, List<Looked> files, List<Sealed> seals, List<Damage> damages, List<Beside> beside) {
    /**
     * What one file was found to be.
     *
     * @param name from the job's folder
     * @param diary whether it holds entries of a shift, and not revisions of the job
     * @param closed whether its last line closes the shift
     * @param stands which lines still hold together, in words
     * @param notes what is worth knowing and is no damage
     */
    public record Looked(
            String name,
            boolean diary,
            int lines,
            boolean closed,
            List<Damage> damages,
            String stands,
            List<String> notes) {}

    /**
     * The seal of a book's shift.
     *
     * @param expected whether the job names keys, so that a seal without a signature is worth a word
     */
    public record Sealed(ShiftId shift, Seal seal, List<Signed> signed, boolean expected) {}

    /**
     * A signature that is that of the seal.
     *
     * @param who initials that it gives
     * @param time when, as the signing machine told it
     * @param key short form of the public key
     * @param named whether the job names that key for those initials
     */
    public record Signed(String who, String time, String key, boolean named) {}

    /**
     * A file beside the record.
     *
     * @param said what it tells a reader; empty where its name says enough
     */
    public record Beside(String file, String said) {}

    /** Whether everything is as it was written. */
    public boolean sound() {
        return damages.isEmpty();
    }

    /** Lines of all files. */
    int lines() {
        return files.stream().mapToInt(Looked::lines).sum();
    }

    /** Whether a shift's file has lines that nothing protects yet. */
    boolean open() {
        return files.stream().anyMatch(file -> file.diary() && !file.closed());
    }
}
