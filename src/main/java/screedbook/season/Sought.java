package screedbook.season;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import screedbook.entry.Station;

/**
 * What is looked for; everything that is named has to hold. What is not asked is null, texts are empty.
 *
 * @param first a station; {@code last} is the same where no stretch was named
 * @param person initials, or a word of a name
 * @param finding the word of a rule or of a sort, or how it begins
 * @param words each has to stand in the entry, whatever its case and its accents
 */
public record Sought(
        String ticket,
        String truck,
        Station first,
        Station last,
        String person,
        String finding,
        List<String> words,
        LocalDate from,
        LocalDate until) {
    public static final Sought ANYTHING =
            new Sought(null, null, null, null, null, null, List.of(), LocalDate.MIN, LocalDate.MAX);

    /** The words before a value, as they are typed at the desk. */
    public static final List<String> NAMED =
            List.of("ticket", "truck", "station", "person", "finding", "from", "to", "text");

    public Sought withTicket(String number) {
        return new Sought(number, truck, first, last, person, finding, words, from, until);
    }

    public Sought withTruck(String number) {
        return new Sought(ticket, number, first, last, person, finding, words, from, until);
    }

    /**
     * A station, or two with {@code to} or {@code ..} between them.
     *
     * @throws IllegalArgumentException when there is no station in it
     */
    public Sought withStations(String typed) {
        String[] ends = typed.strip().split("\\s*\\.\\.\\s*|\\s+to\\s+|\\s+", 2);
        Station from = Station.of(ends[0]);
        return between(from, ends.length == 1 ? from : Station.of(ends[1]));
    }

    private Sought between(Station from, Station to) {
        return new Sought(ticket, truck, from, to, person, finding, words, this.from, until);
    }

    public Sought withPerson(String who) {
        return new Sought(ticket, truck, first, last, who, finding, words, from, until);
    }

    public Sought withFinding(String rule) {
        return new Sought(ticket, truck, first, last, person, rule, words, from, until);
    }

    public Sought withText(String text) {
        List<String> all = new ArrayList<>(words);
        for (String word : text.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
            if (!word.isEmpty()) {
                all.add(word);
            }
        }
        return new Sought(ticket, truck, first, last, person, finding, List.copyOf(all), from, until);
    }

    public Sought withDates(LocalDate first, LocalDate last) {
        return new Sought(ticket, truck, this.first, this.last, person, finding, words, first, last);
    }

    /** A text as texts are compared: whatever its case and its accents. */
    static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT);
    }

    /**
     * Reads what somebody typed in one line: {@code truck T104 station 12+00 to 14+00 rain}. What has no name before it,
     * or cannot be a value of that name, is a word to be looked for as it stands.
     */
    public static Sought of(String typed) {
        Sought sought = ANYTHING;
        String[] words = typed.strip().split("\\s+");
        for (int i = 0; i < words.length; i++) {
            String name = words[i].toLowerCase(Locale.ROOT);
            String value = i + 1 < words.length ? words[i + 1] : null;
            boolean stretch = name.equals("station") && i + 3 < words.length && words[i + 2].equals("to");
            try {
                Sought next =
                        value == null ? null : sought.named(name, stretch ? value + " to " + words[i + 3] : value);
                i += next == null ? 0 : stretch ? 3 : 1;
                sought = next == null ? sought.withText(words[i]) : next;
            } catch (IllegalArgumentException | DateTimeException e) {
                sought = sought.withText(words[i]);
            }
        }
        return sought;
    }

    private Sought named(String name, String value) {
        return switch (name) {
            case "ticket" -> withTicket(value);
            case "truck" -> withTruck(value);
            case "station" -> withStations(value);
            case "person" -> withPerson(value);
            case "finding" -> withFinding(value);
            case "from" -> withDates(LocalDate.parse(value), until);
            case "to" -> withDates(from, LocalDate.parse(value));
            case "text" -> withText(value);
            default -> null;
        };
    }
}
