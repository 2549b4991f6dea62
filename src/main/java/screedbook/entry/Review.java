package screedbook.entry;

/** What a second person says of a closed shift. */
public record Review(
        @Blank(value = "seal", width = 64, help = "of the closing that was read")
        String seal,

        @Blank(value = "says", due = Blank.Due.ALWAYS, width = 10)
        Says says,

        @Blank(value = "remarks", width = 50) String text,
        @Blank(value = "arithmetic checked", width = 4) YesNo checked)
        implements Entry {
    /** The reviewer's word. */
    public enum Says implements Word {
        SEEN,
        RETURNED
    }
}
