package screedbook.entry;

/** Who has a book open for writing, since when and where, as told by the holder. */
public record HeldBy(String who, String since, String where) {
    public String text() {
        return "held by " + who + " since " + since + " on " + where;
    }

    /** Of a book whose lock is free although nobody put it away: what that can mean. */
    public String leftOpen() {
        return "opened by " + who + " at " + since + " on " + where
                + " and not put away: that program was cut short, or has it open where no lock reaches from here";
    }
}
