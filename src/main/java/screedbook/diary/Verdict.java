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
 * @param beside files beside the record that are no part of it
 */
public record Verdict(List<FileRead> files, List<Sealed> seals, List<Damage> damages, List<Beside> beside) {
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
     * @param file from the job's folder
     * @param said what it tells a reader; empty where its name says enough
     */
    public record Beside(String file, String said) {}

    /** Whether everything is as it was written. */
    public boolean sound() {
        return damages.isEmpty();
    }
}
