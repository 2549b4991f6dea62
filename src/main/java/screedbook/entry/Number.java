package screedbook.entry;

/** What is known of a ticket number that did not come. */
public record Number(
        @Blank(value = "plant", pick = Blank.Pick.PLANT, carry = true, width = 14)
        String plant,

        @Blank(value = "ticket", due = Blank.Due.ALWAYS, width = 12)
        String number,

        @Blank(value = "it is", due = Blank.Due.ALWAYS, width = 14)
        What what,

        @Blank(value = "said by", width = 16) String saidBy)
        implements Entry {
    /** What became of a number. */
    public enum What implements Word {
        VOID_AT_PLANT,
        OTHER_JOB,
        LOST,
        STILL_COMING,
        NEVER_ISSUED,
        NOT_KNOWN
    }
}
