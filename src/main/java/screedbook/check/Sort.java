package screedbook.check;

/** The four sorts of finding; none stops anybody from writing. */
public enum Sort {
    OUTSIDE("outside", "OUT"),
    MISSING("missing", "missing"),
    LOOK_AGAIN("look again", "look again"),
    DOES_NOT_ADD_UP("does not add up", "adds up?");

    private final String text;
    private final String mark;

    Sort(String text, String mark) {
        this.text = text;
        this.mark = mark;
    }

    /** In full: {@code does not add up}. */
    public String text() {
        return text;
    }

    /** The short sign beside an entry, at most 10 characters. */
    public String mark() {
        return mark;
    }

    /** So many of the sort: {@code 1 does not add up}, {@code 2 do not add up}. */
    public String counted(int many) {
        return many + " " + (many == 1 ? text : text.replaceFirst("^does ", "do "));
    }
}
