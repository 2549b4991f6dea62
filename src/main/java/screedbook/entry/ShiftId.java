package screedbook.entry;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a shift: the date it began and a fixed word, so that two laptops meet: {@code 2026-06-03-night}. A shift
 * is not a date; the night that starts on the 3rd is the 3rd's night until it is closed.
 */
public record ShiftId(LocalDate date, String word) implements Comparable<ShiftId> {
    private static final Pattern EXTRA = Pattern.compile("extra-[2-9]");
    private static final Pattern FORM = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})-(day|night|extra-[2-9])");

    public ShiftId {
        boolean known = word.equals("day")
                || word.equals("night")
                || EXTRA.matcher(word).matches();
        if (!known || date.getYear() < 0 || date.getYear() > 9999) {
            throw new IllegalArgumentException(
                    "\"" + date + "-" + word + "\" names no shift; right would be 2026-06-03-day, -night or -extra-2");
        }
    }

    /** @throws IllegalArgumentException when the text names no shift */
    public static ShiftId of(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" names no shift; right would be 2026-06-03-day, -night or -extra-2");
        }
        try {
            LocalDate date = LocalDate.of(
                    Integer.parseInt(matcher.group(1)),
                    Integer.parseInt(matcher.group(2)),
                    Integer.parseInt(matcher.group(3)));
            return new ShiftId(date, matcher.group(4));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"" + text + "\" names a date that does not exist", e);
        }
    }

    /** By date, then day, extra, night. */
    @Override
    public int compareTo(ShiftId other) {
        int byDate = date.compareTo(other.date);
        return byDate != 0 ? byDate : word.compareTo(other.word);
    }

    @Override
    public String toString() {
        return date + "-" + word;
    }
}
