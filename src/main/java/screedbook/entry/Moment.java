package screedbook.entry;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Times as text: RFC 3339 in a line, hours and minutes on screen and page. */
public final class Moment {
    private static final DateTimeFormatter HAPPENED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");
    private static final DateTimeFormatter KEYED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSxxx");
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private static final String FORM = "0000-00-00T00:00:00.000+00:00";

    private static volatile ZoneOffset last = ZoneOffset.UTC;

    private Moment() {}

    /** When something happened: always with seconds and offset. */
    public static String text(OffsetDateTime time) {
        return HAPPENED.format(time);
    }

    /** When a machine wrote it: always with milliseconds and offset. */
    public static String keyed(OffsetDateTime time) {
        return KEYED.format(time);
    }

    /**
     * A time of either form read back; one written otherwise is read as ISO 8601 has it, more slowly.
     *
     * @throws java.time.DateTimeException when the text is no time with an offset
     */
    public static OffsetDateTime of(String text) {
        if (!isOurs(text)) {
            return OffsetDateTime.parse(text);
        }
        int length = text.length();
        int zone = length - 6;
        int minutes = two(text, zone + 1) * 60 + two(text, zone + 4);
        return OffsetDateTime.of(
                two(text, 0) * 100 + two(text, 2),
                two(text, 5),
                two(text, 8),
                two(text, 11),
                two(text, 14),
                two(text, 17),
                length == 25 ? 0 : two(text, 20) * 10_000_000 + (text.charAt(22) - '0') * 1_000_000,
                offset((text.charAt(zone) == '-' ? -60 : 60) * minutes));
    }

    /** The offset of a line is mostly that of the line before. */
    private static ZoneOffset offset(int seconds) {
        ZoneOffset known = last;
        if (known.getTotalSeconds() != seconds) {
            known = ZoneOffset.ofTotalSeconds(seconds);
            last = known;
        }
        return known;
    }

    private static boolean isOurs(String text) {
        int length = text.length();
        if (length != 25 && length != 29) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            char form = length == 25 && i >= 19 ? FORM.charAt(i + 4) : FORM.charAt(i);
            char seen = text.charAt(i);
            boolean fits = form == '0' ? seen >= '0' && seen <= '9' : seen == form || form == '+' && seen == '-';
            if (!fits) {
                return false;
            }
        }
        return two(text, length - 2) < 60;
    }

    private static int two(String text, int at) {
        return (text.charAt(at) - '0') * 10 + text.charAt(at + 1) - '0';
    }

    /** {@code 21:32}; five blanks' worth of dashes when nobody noted it. */
    public static String clock(OffsetDateTime time) {
        return time == null ? "--:--" : CLOCK.format(time);
    }
}
