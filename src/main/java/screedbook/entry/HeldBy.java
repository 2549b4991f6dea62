package screedbook.entry;

/** Who has a book open for writing, since when and where, as told by the holder. */
public record HeldBy(String who, String since, String where) {
    public String text() {
        return "held by " + who + " since " + since + " on " + where;
    }
}
