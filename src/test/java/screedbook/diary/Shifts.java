package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;

/** Shifts with a few entries, for tests that need a record to look at. */
final class Shifts {
    static final ShiftId THIRD = ShiftId.of("2026-06-03-day");
    static final ShiftId FOURTH = ShiftId.of("2026-06-04-day");
    static final OffsetDateTime NOON = OffsetDateTime.parse("2026-06-03T12:00:00.500-06:00");

    private Shifts() {}

    static Book open(Path job, ShiftId shift, String book) {
        return ready(job, shift, book, FileChannel::open).book();
    }

    static Opened.Ready ready(Path job, ShiftId shift, String book, Channels channels) {
        Opened opened = JobFolder.at(job).open(shift, book, "harrow-bend", "RK", NOON, channels);
        assertThat(opened).isInstanceOf(Opened.Ready.class);
        return (Opened.Ready) opened;
    }

    static Unwritten opening() {
        return unwritten(Kind.OPENING, Map.of("format", new BigDecimal(1), "zone", "America/Denver"));
    }

    static Unwritten ticket(int number) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("plant", "Quarry Road");
        values.put("number", "" + number);
        values.put("net_ston", new BigDecimal("20." + number % 90));
        return unwritten(Kind.TICKET, values);
    }

    static Unwritten closing() {
        return unwritten(Kind.CLOSING, Map.of("agreed", "yes"));
    }

    static Unwritten note(String text) {
        return unwritten(Kind.NOTE, Map.of("text", text));
    }

    private static Unwritten unwritten(Kind kind, Map<String, Object> values) {
        Entry entry = (Entry) Fields.build(kind.type(), values).value();
        return new Unwritten(NOON, "RK", Source.LIVE, entry, Aside.NONE);
    }

    static Saved saved(Book book, Unwritten... entries) {
        Saved saved = book.append(List.of(entries), NOON).join();
        assertThat(saved.refused()).isEmpty();
        assertThat(saved.said()).isEmpty();
        return saved;
    }

    /** A shift with an opening, so many tickets and a close: two lines more than tickets. */
    static Saved whole(Path job, ShiftId shift, String book, int tickets) {
        try (Book open = open(job, shift, book)) {
            saved(open, opening());
            for (int number = 1; number <= tickets; number++) {
                saved(open, ticket(number));
            }
            return saved(open, closing());
        }
    }
}
