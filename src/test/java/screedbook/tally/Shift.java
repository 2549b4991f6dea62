package screedbook.tally;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Amend;
import screedbook.entry.Aside;
import screedbook.entry.Built;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unreadable;
import screedbook.entry.Written;
import screedbook.unit.Unit;

/** A shift being keyed in a test: one book, every line keyed a minute after it happened, or after the line before. Invented throughout. */
public final class Shift {
    private static final ZoneOffset ZONE = ZoneOffset.ofHours(-6);

    private final ShiftId id;
    private final String book;
    private final List<Written> lines = new ArrayList<>();
    private OffsetDateTime keyed;
    private Aside aside = Aside.NONE;
    private Source source = Source.LIVE;
    private String who = "RK";

    public Shift(String id, String book) {
        this.id = ShiftId.of(id);
        this.book = book;
        this.keyed = at("07:00");
    }

    public static Shift day() {
        return new Shift("2026-06-03-day", "paver");
    }

    /** A clock time of the shift's date. */
    public OffsetDateTime at(String clock) {
        return OffsetDateTime.of(id.date(), LocalTime.parse(clock), ZONE);
    }

    public Shift fromNotes() {
        source = Source.NOTES;
        return this;
    }

    /** From here on another person writes. */
    public Shift by(String who) {
        this.who = who;
        return this;
    }

    public Shift remark(String remark) {
        aside = new Aside(null, null, remark);
        return this;
    }

    /** A line of a kind; pairs of a key as in a line and its text. A clock time of null was not noted. */
    public Shift key(Kind kind, String clock, String... pairs) {
        Map<String, Object> plain = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            plain.put(pairs[i], plain(kind.type(), pairs[i], pairs[i + 1]));
        }
        Built<? extends Record> built = Fields.build(kind.type(), plain);
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new IllegalArgumentException(built.slips() + " " + built.unknown());
        }
        return add((Entry) built.value(), clock);
    }

    public Shift add(Entry entry, String clock) {
        OffsetDateTime time = clock == null ? null : at(clock);
        keyed = time != null && time.isAfter(keyed) ? time.plusMinutes(1) : keyed.plusMinutes(1);
        int n = lines.size() + 1;
        lines.add(new Line(book, n, n, "test-job", id, time, keyed, who, source, entry, aside, List.of(), "{}"));
        aside = Aside.NONE;
        source = Source.LIVE;
        return this;
    }

    public Shift ticket(String clock, String number, String net, String... pairs) {
        String[] all = new String[pairs.length + 4];
        all[0] = "number";
        all[1] = number;
        all[2] = metric(pairs) ? "net_t" : "net_ston";
        all[3] = net;
        System.arraycopy(pairs, 0, all, 4, pairs.length);
        return key(Kind.TICKET, clock, all);
    }

    private static boolean metric(String[] pairs) {
        return List.of(pairs).stream().anyMatch(p -> p.endsWith("_degC"));
    }

    public Shift amend(int n, String key, String value, String reason) {
        Line line = (Line) lines.get(n - 1);
        Map<String, Object> set = new LinkedHashMap<>();
        set.put(key, value == null ? null : plain(line.kind().type(), key, value));
        return add(new Amend(new Ref(book, n), set, reason), null);
    }

    public Shift strike(int n, String reason) {
        return key(Kind.STRIKE, null, "of", book + "/" + n, "reason", reason);
    }

    public Shift unreadable(String reason) {
        lines.add(new Unreadable(book, lines.size() + 1, reason, "{\"n\":"));
        return this;
    }

    public List<Written> lines() {
        return List.copyOf(lines);
    }

    public Day read() {
        return Day.of(id, List.of(lines()));
    }

    private static Object plain(Class<? extends Record> type, String key, String text) {
        for (Field field : Fields.of(type)) {
            boolean measured = field.measure().isPresent()
                    && key.startsWith(field.name() + "_")
                    && Unit.ofSuffix(key.substring(field.name().length() + 1)).isPresent();
            boolean number =
                    field.name().equals(key) && (field.type() == Integer.class || field.type() == BigDecimal.class);
            if (measured || number) {
                return new BigDecimal(text);
            }
            if (field.name().equals(key) && field.type() == List.class) {
                return List.of(text.split(";"));
            }
            if (field.name().equals(key) && field.type() == OffsetDateTime.class) {
                return OffsetDateTime.of(LocalDate.of(2026, 6, 3), LocalTime.parse(text), ZONE)
                        .toString()
                        .replace(":00-", ":00:00-");
            }
        }
        return text;
    }
}
