package screedbook.entry;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An entry named by its book and number: {@code paver/17}. */
public record Ref(String book, int n) {
    private static final Pattern FORM = Pattern.compile("(.+)/([1-9]\\d{0,8})");

    /** @throws IllegalArgumentException when the text is not a book, a stroke and a number from 1 */
    public static Ref of(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" names no entry; right would be paver/17");
        }
        return new Ref(matcher.group(1), Integer.parseInt(matcher.group(2)));
    }

    @Override
    public String toString() {
        return book + "/" + n;
    }
}
