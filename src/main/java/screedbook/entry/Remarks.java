package screedbook.entry;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import screedbook.unit.UnitSystem;

/**
 * Which part of a record is remark: free text, and who said, decided or was told something. A diary may be closed to the
 * contractor until the final estimate is paid; its figures are not.
 */
public final class Remarks {
    /** Kinds that are nothing but what was said and thought. */
    private static final Set<Kind> WHOLE = Set.of(Kind.NOTE, Kind.ANSWER, Kind.HAND_OVER, Kind.REVIEW, Kind.SAFETY);

    /** Texts that name or number a thing, a place or a paper. Every other text counts as a remark. */
    private static final Set<String> NAMES = Set.of(
            ("plant silo number truck mix instrument pull paver place reissue_of product distributor paper sample"
                            + " seal_number first_ticket last_ticket core roller image pattern beside_pull certificate"
                            + " ticket instead_of container companions condition location in_unit laboratory report"
                            + " tickets hauler list_file list_sha256 firm id correlated_mix secured program file_id zone"
                            + " laptop_zone job_sha256 sheet sheet_sha256 roster instruments seal_before counts tons"
                            + " findings number_column truck_column net_column loaded_column date_column"
                            + " mix_column named method seed_sha256 seed tried file sha256 controlling_item")
                    .split(" "));

    private final Map<Ref, Kind> kinds = new HashMap<>();
    private final Set<Ref> gone = new HashSet<>();

    private Remarks(Day day) {
        for (Written each : day.written()) {
            if (each instanceof Line line) {
                kinds.putIfAbsent(line.ref(), line.kind());
                if (WHOLE.contains(line.kind())) {
                    gone.add(line.ref());
                }
            }
        }
        goneWithThem(day);
    }

    /** Corrections of what is gone, and corrections of those. */
    private void goneWithThem(Day day) {
        int before;
        do {
            before = gone.size();
            for (Written each : day.written()) {
                if (each instanceof Line line && gone.contains(of(line.entry()))) {
                    gone.add(line.ref());
                }
            }
        } while (gone.size() > before);
    }

    private static Ref of(Entry entry) {
        return entry instanceof Strike strike ? strike.of() : entry instanceof Amend amend ? amend.of() : null;
    }

    /** The kinds of which nothing is left. */
    public static Set<Kind> kinds() {
        return WHOLE;
    }

    /** The same shift with its remarks left out; entries keep their numbers, and lines that cannot be read their place. */
    public static Day leftOut(Day day) {
        Remarks remarks = new Remarks(day);
        Map<String, List<Written>> books = new LinkedHashMap<>();
        for (Written each : day.written()) {
            Written left = remarks.left(each);
            if (left != null) {
                books.computeIfAbsent(each.book(), book -> new ArrayList<>()).add(left);
            }
        }
        return Day.of(day.shift(), List.copyOf(books.values()));
    }

    /** An answer that says no more than that, when and by whom it was given. */
    public static Standing<Answer> leftOut(Standing<Answer> answer) {
        Answer bare = new Answer(answer.entry().of(), answer.entry().rule(), null, null, null);
        Line line = answer.line();
        return new Standing<>(
                line(line, line.time(), bare), bare, Aside.NONE, answer.time(), null, List.of(), List.of());
    }

    private Written left(Written each) {
        if (each instanceof Unreadable) {
            return new Unreadable(each.book(), each.row(), "it cannot be read", "");
        }
        if (each instanceof Foreign foreign) {
            return new Foreign(foreign.book(), foreign.row(), foreign.n(), foreign.kind(), "");
        }
        Line line = (Line) each;
        return gone.contains(line.ref()) ? null : line(line, line.time(), bare(line.entry()));
    }

    private static Line line(Line line, OffsetDateTime time, Entry entry) {
        return new Line(
                line.book(),
                line.row(),
                line.n(),
                line.job(),
                line.shift(),
                time,
                line.keyed(),
                line.who(),
                line.source(),
                entry,
                Aside.NONE,
                List.of(),
                "");
    }

    private Entry bare(Entry entry) {
        if (entry instanceof Amend amend) {
            return new Amend(amend.of(), amend.set() == null ? null : set(amend), null);
        }
        Map<String, Object> plain = new LinkedHashMap<>(Fields.plain((Record) entry));
        for (Field field : entry.kind().fields()) {
            if (remark(field)) {
                plain.remove(field.name());
            }
        }
        return (Entry) Fields.build(entry.kind().type(), plain).value();
    }

    /** The amended values that are none. */
    private Map<String, Object> set(Amend amend) {
        Set<String> known = new HashSet<>(List.of("time"));
        Kind kind = kinds.get(amend.of());
        for (Field field : kind == null ? List.<Field>of() : kind.fields()) {
            if (!remark(field)) {
                known.add(field.key(UnitSystem.US));
                known.add(field.key(UnitSystem.METRIC));
            }
        }
        Map<String, Object> left = new LinkedHashMap<>(amend.set());
        left.keySet().retainAll(known);
        return left;
    }

    private static boolean remark(Field field) {
        boolean text = field.type() == String.class
                || field.element()
                        .map(type -> type == String.class || type.isRecord())
                        .orElse(false);
        return text && !NAMES.contains(Objects.requireNonNull(field.name()));
    }
}
