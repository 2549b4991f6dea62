package screedbook.check;

/** What a limit says of one value while it is typed. There is no word for "good": inside is silent. */
public enum Verdict {
    /** Nothing typed yet. */
    NONE(""),
    INSIDE("inside"),
    OUTSIDE("OUT"),
    LOOK_AGAIN("look again"),
    NO_LIMIT("no limit set");

    private final String text;

    Verdict(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
