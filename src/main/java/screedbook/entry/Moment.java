package screedbook.entry;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;

/** Times as text: RFC 3339 in a line, hours and minutes on screen and page. */
public final class Moment {
    private static final DateTimeFormatter HAPPENED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");
    private static final DateTimeFormatter KEYED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSxxx");
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private Moment() {}

    /** When something happened: always with seconds and offset. */
    public static String text(OffsetDateTime time) {
        return HAPPENED.format(time);
    }

    /** When a machine wrote it: always with milliseconds and offset. */
    public static String keyed(OffsetDateTime time) {
        return KEYED.format(time);
    }

    /** {@code 21:32}; five blanks' worth of dashes when nobody noted it. */
    public static String clock(OffsetDateTime time) {
        return time == null ? "--:--" : CLOCK.format(time);
    }
}
