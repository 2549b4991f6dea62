package screedbook.diary;

/** One line of a diary as its bytes stand in the file, without its end, and how it hangs on the line before. */
record RawLine(int number, long offset, byte[] bytes, Link link) {
    /** How a line hangs on the one before. */
    enum Link {
        /** Names the hash of the line before: that line is as it was when this one was written. */
        LINKED,
        /** Names another hash: the line before was changed, or lines are missing, put in or swapped here. */
        BROKEN,
        /** Names no hash at its end. */
        UNLINKED,
        /** Holds nothing; the next line is held against the one before this. */
        BLANK,
        /** Longer than a line may be. */
        TOO_LONG
    }
}
