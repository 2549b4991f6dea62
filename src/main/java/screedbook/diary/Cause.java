package screedbook.diary;

/** Why nothing more can be written, or not just now. */
enum Cause {
    /** The disk did not take the bytes (full, gone, at its limit); the file was cut back and may be tried again. */
    NOT_TAKEN,
    /** The disk did not take the bytes, and the piece of a line could not be cut off either. */
    NOT_CUT,
    /** The disk took the bytes and then could not say that they are safe. */
    NOT_FORCED,
    /** No file stands at the place of the diary any more. */
    MOVED,
    /** Another file stands at the place of the diary. */
    REPLACED,
    /** Somebody else made the diary longer or shorter. */
    CHANGED,
    /** The lock was taken away from the folder. */
    UNLOCKED,
    /** The folder or the file cannot be written. */
    NO_FOLDER,
    /** The diary is a link or something else that is not a plain file. */
    NOT_A_FILE,
    /** Lines in the file are not as they were written; it is left as it was found. */
    DAMAGED,
    /** The diary was put away. */
    PUT_AWAY;

    /** Whether the same file may be tried again. */
    boolean passes() {
        return this == NOT_TAKEN;
    }
}
