package screedbook.diary;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Aside;
import screedbook.entry.Blank;
import screedbook.entry.Built;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Foreign;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Unreadable;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;

/** A line of a diary as text: header, the kind's own keys, what may stand on any entry, and the hash before. */
final class LineText {
    /** The keys that every line begins with; {@code time} is absent when nobody noted it. */
    record Header(
            @Blank("number") Integer n,
            @Blank("kind") String kind,
            @Blank("job") String job,
            @Blank("shift") String shift,
            @Blank("book") String book,

            @Blank(value = "time", help = "when it happened")
            OffsetDateTime time,

            @Blank(value = "keyed", help = "when the machine wrote it")
            OffsetDateTime keyed,

            @Blank("who") String who,
            @Blank("source") Source source) {}

    /** Which line is to be written: its number, and what is the same in every line of the book. */
    record Place(String job, ShiftId shift, String book) {}

    private LineText() {}

    /** The bytes of an entry's line, without LF. */
    static byte[] bytes(Place place, int n, Unwritten entry, OffsetDateTime keyed, String prev) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("n", n);
        line.put("kind", entry.entry().kind().word());
        line.put("job", place.job());
        line.put("shift", place.shift().toString());
        line.put("book", place.book());
        if (entry.time() != null) {
            line.put("time", Moment.text(entry.time()));
        }
        line.put("keyed", Moment.keyed(keyed));
        line.put("who", entry.who());
        line.put("source", entry.source().word());
        line.putAll(Fields.plain((Record) entry.entry()));
        line.putAll(Fields.plain(entry.aside()));
        line.put("prev", prev);
        return Json.write(line);
    }

    /** A line read; what cannot be read is kept with the reason. */
    static Written read(String book, int row, byte[] bytes) {
        String raw = new String(bytes, StandardCharsets.UTF_8);
        try {
            return read(book, row, raw, Json.line(bytes));
        } catch (Json.NotJson e) {
            return new Unreadable(book, row, e.getMessage() + ", at character " + e.column(), raw);
        }
    }

    private static Written read(String book, int row, String raw, Map<String, Object> values) {
        Built<Header> header = Fields.build(Header.class, values);
        Header head = header.value();
        if (head.kind() == null || head.n() == null || head.n() < 1) {
            return new Unreadable(book, row, "it does not say its number and kind", raw);
        }
        Optional<Kind> kind = Kind.ofWord(head.kind());
        return kind.isPresent()
                ? known(book, row, raw, values, header, kind.get())
                : new Foreign(book, row, head.n(), head.kind(), raw);
    }

    private static Written known(
            String book, int row, String raw, Map<String, Object> values, Built<Header> header, Kind kind) {
        Built<? extends Record> entry = Fields.build(kind.type(), values);
        Built<Aside> aside = Fields.build(Aside.class, values);
        List<String> said = new ArrayList<>(missing(header.value()));
        header.slips().forEach(slip -> said.add(slip.text()));
        entry.slips().forEach(slip -> said.add(slip.text()));
        aside.slips().forEach(slip -> said.add(slip.text()));
        Optional<ShiftId> shift = shift(header.value().shift());
        if (shift.isEmpty()) {
            said.add("its shift is " + Shown.text("" + header.value().shift()));
        }
        if (!said.isEmpty()) {
            return new Unreadable(book, row, String.join("; ", said), raw);
        }
        Header head = header.value();
        return new Line(
                head.book(),
                row,
                head.n(),
                head.job(),
                shift.get(),
                head.time(),
                head.keyed(),
                head.who(),
                head.source(),
                (Entry) entry.value(),
                aside.value(),
                unknown(header, entry, aside),
                raw);
    }

    private static List<String> missing(Header head) {
        List<String> missing = new ArrayList<>();
        Map<String, Object> due = new LinkedHashMap<>();
        due.put("job", head.job());
        due.put("shift", head.shift());
        due.put("book", head.book());
        due.put("keyed", head.keyed());
        due.put("who", head.who());
        due.put("source", head.source());
        due.forEach((key, value) -> {
            if (value == null) {
                missing.add(key + " is not there");
            }
        });
        return missing;
    }

    private static Optional<ShiftId> shift(String text) {
        try {
            return text == null ? Optional.empty() : Optional.of(ShiftId.of(text));
        } catch (IllegalArgumentException | DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Keys that neither header nor kind nor what stands on any entry claims. */
    private static List<String> unknown(Built<Header> header, Built<? extends Record> entry, Built<Aside> aside) {
        List<String> unknown = new ArrayList<>(header.unknown());
        unknown.retainAll(entry.unknown());
        unknown.retainAll(aside.unknown());
        unknown.remove("prev");
        for (String key : entry.unknown()) {
            if (key.indexOf('.') >= 0 || key.indexOf('[') >= 0) {
                unknown.add(key);
            }
        }
        return List.copyOf(unknown);
    }
}
