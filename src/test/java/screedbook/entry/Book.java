package screedbook.entry;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One book's lines being written in a test, a minute after each other unless the clock is set. Invented throughout. */
final class Book {
    static final ShiftId NIGHT = ShiftId.of("2026-06-03-night");

    private final String name;
    private final List<Written> lines = new ArrayList<>();
    private OffsetDateTime clock = OffsetDateTime.parse("2026-06-03T19:00:00-06:00");

    Book(String name) {
        this.name = name;
    }

    static Book paver() {
        return new Book("paver");
    }

    Book clock(String hour) {
        clock = OffsetDateTime.parse("2026-06-03T" + hour + ":00-06:00");
        return this;
    }

    Book line(Entry entry) {
        return line(entry, null, Aside.NONE);
    }

    /** A line that says at what hour of the night's first date its thing happened; null for not noted. */
    Book line(Entry entry, String happened, Aside aside) {
        OffsetDateTime time = happened == null ? null : OffsetDateTime.parse("2026-06-03T" + happened + ":00-06:00");
        int n = lines.size() + 1;
        lines.add(new Line(name, n, n, "test", NIGHT, time, clock, "RK", Source.LIVE, entry, aside, List.of(), "{}"));
        clock = clock.plusMinutes(1);
        return this;
    }

    Book note(String text) {
        return line(made(Note.class, "text", text));
    }

    Book ticket(String truck, String tons) {
        return line(made(Ticket.class, "truck", truck, "net_ston", new BigDecimal(tons)));
    }

    Book strike(String of) {
        return line(new Strike(Ref.of(of), "keyed twice"));
    }

    /** Pairs of a key and its value; a value of null is taken away. */
    Book amend(String of, Object... pairs) {
        return line(new Amend(Ref.of(of), map(pairs), "misread"));
    }

    Book other(Written written) {
        lines.add(written);
        return this;
    }

    List<Written> lines() {
        return List.copyOf(lines);
    }

    Day day() {
        return Day.of(NIGHT, List.of(lines()));
    }

    static <E extends Record> E made(Class<E> type, Object... pairs) {
        Built<E> built = Fields.build(type, map(pairs));
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new IllegalArgumentException(built.slips() + " " + built.unknown());
        }
        return built.value();
    }

    static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }
}
