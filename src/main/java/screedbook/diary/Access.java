package screedbook.diary;

import java.util.Optional;

/** What came of opening a diary for writing. */
sealed interface Access permits Access.Opened, Access.Taken, Appended.Refused {
    /**
     * The diary is open.
     *
     * @param torn a torn tail that was found and set aside, for a line that says so
     * @param left why an earlier segment was left as it was and a new one begun
     * @param before who had it open before and did not put it away, in his own words; empty when nobody
     */
    record Opened(LineFile file, Optional<Torn> torn, Optional<Appended.Refused> left, String before)
            implements Access {}

    /** Another program or window writes in it: who, since when and where, in its own words. */
    record Taken(String words) implements Access {}

    /**
     * Bytes of a line that was not written to its end, kept in a file of their own.
     *
     * @param file the diary they were cut from
     * @param sidecar the file that holds them now
     * @param offset where they began in the diary
     * @param count how many bytes
     * @param hash their SHA-256
     */
    record Torn(String file, String sidecar, long offset, int count, String hash) {}
}
