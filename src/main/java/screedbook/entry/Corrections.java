package screedbook.entry;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import screedbook.unit.UnitSystem;

/**
 * The strikes and amendments of a shift, applied. Which of them have force follows from what they name and not from
 * the order of lines, so that the clocks of two laptops cannot turn a correction round.
 */
final class Corrections {
    private static final Set<String> WORDS_OF_AMEND = Set.of("of", "set", "reason");

    /** The keys that may be amended in a line of a kind. */
    private static final Map<Kind, Set<String>> KEYS = new ConcurrentHashMap<>();

    private final Map<Ref, Line> lines = new LinkedHashMap<>();
    private final Map<Ref, List<Line>> strikes = new HashMap<>();
    private final Map<Ref, List<Line>> amends = new HashMap<>();
    private final Map<Ref, Boolean> struck = new HashMap<>();
    private final Map<Ref, Amend> amended = new HashMap<>();

    Corrections(List<Written> written) {
        for (Written each : written) {
            if (each instanceof Line line) {
                lines.putIfAbsent(line.ref(), line);
            }
        }
        for (Line line : lines.values()) {
            if (line.entry() instanceof Strike strike && there(line, strike.of())) {
                strikes.computeIfAbsent(strike.of(), r -> new ArrayList<>()).add(line);
            } else if (line.entry() instanceof Amend amend && there(line, amend.of())) {
                amends.computeIfAbsent(amend.of(), r -> new ArrayList<>()).add(line);
            }
        }
        settle();
    }

    /** The newest first: a correction mostly names an older line, so that no long chain of them is followed at once. */
    private void settle() {
        if (strikes.isEmpty() && amends.isEmpty()) {
            return;
        }
        List<Line> newestFirst = new ArrayList<>(lines.values());
        Collections.reverse(newestFirst);
        newestFirst.forEach(line -> struck(line.ref()));
        for (Line line : newestFirst) {
            if (line.entry() instanceof Amend) {
                amended(line);
            }
        }
    }

    private boolean there(Line line, Ref of) {
        return lines.containsKey(of) && !line.ref().equals(of);
    }

    /** Every line as it stands, in reading order. */
    List<Standing<?>> all() {
        List<Standing<?>> all = new ArrayList<>(lines.size());
        lines.values().forEach(line -> all.add(stand(line)));
        return List.copyOf(all);
    }

    /** Corrections and answers in force that name an entry which is not there. */
    List<Line> adrift() {
        List<Line> adrift = new ArrayList<>();
        for (Line line : lines.values()) {
            boolean lost = line.entry() instanceof Strike s && !there(line, s.of())
                    || line.entry() instanceof Amend a && !there(line, a.of())
                    || line.entry() instanceof Answer w && !lines.containsKey(w.of());
            if (lost && !struck(line.ref())) {
                adrift.add(line);
            }
        }
        return List.copyOf(adrift);
    }

    /** The first strike in force; a strike that is itself struck has none. */
    private Line struckBy(Ref ref) {
        for (Line strike : strikes.getOrDefault(ref, List.of())) {
            if (!struck(strike.ref())) {
                return strike;
            }
        }
        return null;
    }

    /** Lines that strike each other in a ring: while one is looked at it counts as not struck, so the search ends. */
    private boolean struck(Ref ref) {
        if (!strikes.containsKey(ref)) {
            return false;
        }
        Boolean known = struck.putIfAbsent(ref, false);
        if (known == null) {
            known = struckBy(ref) != null;
            struck.put(ref, known);
        }
        return known;
    }

    private List<Line> amendedBy(Ref ref) {
        List<Line> by = amends.get(ref);
        return by == null
                ? List.of()
                : by.stream().filter(line -> !struck(line.ref())).toList();
    }

    /** What the amendments in force set together; a later one wins, and each as its own amendments left it. */
    private Map<String, Object> set(List<Line> by) {
        Map<String, Object> set = new LinkedHashMap<>();
        for (Line line : by) {
            Amend amend = amended(line);
            if (amend.set() != null) {
                set.putAll(amend.set());
            }
        }
        return set;
    }

    /**
     * An amendment as its own amendments left it: they may name its set or its reason, or simply the blanks of the entry
     * that it speaks of. In a ring the one that is being looked at stands as it was written.
     */
    private Amend amended(Line line) {
        Amend amend = (Amend) line.entry();
        Amend known = amended.putIfAbsent(line.ref(), amend);
        if (known != null) {
            return known;
        }
        Map<String, Object> by = set(amendedBy(line.ref()));
        Map<String, Object> set = new LinkedHashMap<>(amend.set() == null ? Map.of() : amend.set());
        if (by.get("set") instanceof Map<?, ?> other) {
            set.clear();
            other.forEach((key, value) -> set.put(key.toString(), value));
        }
        by.forEach((key, value) -> {
            if (!WORDS_OF_AMEND.contains(key)) {
                set.put(key, value);
            }
        });
        String reason = by.get("reason") instanceof String text ? text : amend.reason();
        Amend now = new Amend(amend.of(), set, reason);
        amended.put(line.ref(), now);
        return now;
    }

    private Standing<?> stand(Line line) {
        Line strike = struckBy(line.ref());
        List<Line> by = amendedBy(line.ref());
        if (by.isEmpty()) {
            return new Standing<>(line, line.entry(), line.aside(), line.time(), strike, by, List.of());
        }
        if (line.entry() instanceof Amend) {
            Amend now = amended(line);
            return new Standing<>(line, now, line.aside(), line.time(), strike, by, List.of());
        }
        return overlaid(line, set(by), strike, by);
    }

    private static Standing<?> overlaid(Line line, Map<String, Object> set, Line strike, List<Line> by) {
        List<Built.Slip> slips = new ArrayList<>(unknown(line, set));
        OffsetDateTime time = time(line, set, slips);
        Built<? extends Record> entry = over(line.kind().type(), (Record) line.entry(), set, slips);
        Built<Aside> aside = over(Aside.class, line.aside(), set, slips);
        return new Standing<>(line, (Entry) entry.value(), aside.value(), time, strike, by, List.copyOf(slips));
    }

    /** The record with the values that can be read; where one cannot, the value before stands. */
    private static <R extends Record> Built<R> over(
            Class<R> type, Record old, Map<String, Object> set, List<Built.Slip> slips) {
        Map<String, Object> before = Fields.plain(old);
        Built<R> now = Fields.build(type, over(before, set));
        if (now.slips().isEmpty()) {
            return now;
        }
        slips.addAll(now.slips());
        Map<String, Object> readable = new LinkedHashMap<>(set);
        now.slips().forEach(slip -> readable.remove(slip.path().split("[.\\[]", 2)[0]));
        Built<R> again = Fields.build(type, over(before, readable));
        return again.slips().isEmpty() ? again : Fields.build(type, before);
    }

    private static Map<String, Object> over(Map<String, Object> old, Map<String, Object> set) {
        Map<String, Object> out = new LinkedHashMap<>(old);
        set.forEach((key, value) -> {
            if (value == null) {
                out.remove(key);
            } else {
                out.put(key, value);
            }
        });
        return out;
    }

    /** Keys that this kind of entry does not have, and the entry that a strike names: another one is another strike. */
    private static List<Built.Slip> unknown(Line line, Map<String, Object> set) {
        Set<String> keys = KEYS.computeIfAbsent(line.kind(), Corrections::keys);
        List<Built.Slip> slips = new ArrayList<>();
        for (String key : List.copyOf(set.keySet())) {
            if (!keys.contains(key)) {
                slips.add(new Built.Slip(
                        Shown.text(key),
                        Shown.text(String.valueOf(set.remove(key))),
                        "a key that may be amended in a line of " + Told.kind(line.kind())));
            }
        }
        return slips;
    }

    private static Set<String> keys(Kind kind) {
        Set<String> keys = new HashSet<>(Set.of("time"));
        for (UnitSystem system : UnitSystem.values()) {
            kind.fields().forEach(field -> keys.add(field.key(system)));
            Fields.of(Aside.class).forEach(field -> keys.add(field.key(system)));
        }
        if (kind == Kind.STRIKE) {
            keys.remove("of");
        }
        return Set.copyOf(keys);
    }

    private static OffsetDateTime time(Line line, Map<String, Object> set, List<Built.Slip> slips) {
        if (!set.containsKey("time")) {
            return line.time();
        }
        Object time = set.get("time");
        try {
            return time == null ? null : OffsetDateTime.parse(time.toString());
        } catch (DateTimeException e) {
            slips.add(new Built.Slip(
                    "time", "\"" + Shown.text(time.toString()) + "\"", "a time such as 2026-06-03T21:32:00-06:00"));
            return line.time();
        }
    }
}
