package screedbook.desk;

/** The screens as the table of keys and the help name them. */
public enum Place {
    START("the shifts of the job"),
    SHIFT("the shift"),
    FORM("an entry being keyed"),
    KINDS("more kinds of entry"),
    CREW("crew as last time"),
    ENTRY("one entry"),
    FINDINGS("findings"),
    TOTALS("totals of the day"),
    WORKING("working"),
    PICTURES("pictures"),
    ROAD("the road by pull and station"),
    CLOSING("before closing"),
    SEARCH("looking for words"),
    SEASON("the season"),
    FOLDER("another folder"),
    LIST_FILE("a plant's list"),
    COLUMNS("columns of a plant's list"),
    SHEET("the job sheet"),
    PLAN("findings of the plan"),
    DRAWN("the plan drawn"),
    NUMBERS("numbers of the plan"),
    ITEMS("a list of the job sheet"),
    ITEM("a part of the job sheet"),
    REASON("why the sheet is written"),
    CHANGES("what changed"),
    HELP("keys");

    private final String title;

    Place(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
