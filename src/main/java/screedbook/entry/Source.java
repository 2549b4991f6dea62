package screedbook.entry;

/** How an entry came to the keyboard. */
public enum Source implements Word {
    /** Keyed when it happened. */
    LIVE,
    /** Keyed afterwards from notes or a stack of tickets. */
    NOTES
}
