package screedbook.desk;

/** The screens as the table of keys and the help name them. */
public enum Place {
    START("the shifts of the job"),
    SHIFT("the shift"),
    FORM("an entry being keyed"),
    KINDS("more kinds of entry"),
    ENTRY("one entry"),
    FINDINGS("findings"),
    TOTALS("totals of the day"),
    WORKING("working"),
    PICTURES("pictures"),
    CLOSING("before closing"),
    SEARCH("looking for words"),
    FOLDER("another folder"),
    HELP("keys");

    private final String title;

    Place(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
