package screedbook.desk;

/** What a cell means; a {@link Look} turns it into colours, and words on the screen say the same without them. */
public enum Style {
    /** Ordinary text. */
    PLAIN,
    /** Text that may be overlooked: units, hints, what is not due. */
    FAINT,
    /** A figure to read first: totals, the time. */
    STRONG,
    /** The line at the top that names the screen. */
    HEAD,
    /** A blank that can be typed in. */
    FIELD,
    /** The blank that holds the cursor. */
    FIELD_ACTIVE,
    /** A value taken over from the entry before, not yet accepted. */
    CARRIED,
    /** The row that was walked to in a list. */
    CHOSEN,
    /** Something that lies outside its limit. */
    MARK,
    /** Something to look at again: the sheet does not decide it. */
    LOOK_AGAIN,
    /** Something that is due now. */
    DUE,
    /** An entry that was struck. */
    STRUCK,
    /** Trouble with the machine or with what was typed: the disk refused, not a number. */
    ALERT,
    /** Lines that part the screen. */
    RULE,
    /** Quantities drawn as characters. */
    PICTURE,
    /** The line of keys at the bottom. */
    KEYLINE
}
