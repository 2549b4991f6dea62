package screedbook.spec;

/** Whether a row holds for a case. */
enum Said {
    YES,
    NO,
    /** The sheet does not say, or the case does not tell. */
    UNSURE;

    /** Both hold: one that does not is enough against it. */
    Said and(Said other) {
        if (this == NO || other == NO) {
            return NO;
        }
        return this == YES ? other : this;
    }
}
