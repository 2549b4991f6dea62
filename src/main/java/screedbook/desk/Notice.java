package screedbook.desk;

/** The sentence at the foot of the screen. */
public record Notice(String text, boolean alert) {
    static final Notice NONE = new Notice("", false);

    static Notice of(String text) {
        return new Notice(text, false);
    }

    static Notice alert(String text) {
        return new Notice(text, true);
    }
}
