package screedbook.diary;

/** What came of an append. */
sealed interface Appended permits Appended.Forced, Appended.Refused {
    /**
     * The line was forced to the device.
     *
     * @param file the name of the file that holds it
     * @param line its number in that file, from 1
     * @param offset where it begins, in bytes
     * @param length its bytes without the LF
     * @param hash the SHA-256 of those bytes
     */
    record Forced(String file, int line, long offset, int length, String hash) implements Appended {}

    /** Nothing was written that counts; whoever asked still has the entry. */
    record Refused(Cause cause, String sentence) implements Appended, Access {}
}
