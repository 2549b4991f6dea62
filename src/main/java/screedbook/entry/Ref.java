package screedbook.entry;

/** An entry named by its book and number: {@code paver/17}. */
public record Ref(String book, int n) {
    /** @throws IllegalArgumentException when the text is not a book, a stroke and a number */
    public static Ref of(String text) {
        int stroke = text.lastIndexOf('/');
        if (stroke < 1) {
            throw new IllegalArgumentException("\"" + text + "\" names no entry; right would be paver/17");
        }
        return new Ref(text.substring(0, stroke), Integer.parseInt(text.substring(stroke + 1)));
    }

    @Override
    public String toString() {
        return book + "/" + n;
    }
}
