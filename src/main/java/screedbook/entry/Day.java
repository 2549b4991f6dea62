package screedbook.entry;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A shift as its entries stand after corrections: all books read together by machine time, never reordered within a
 * book.
 *
 * @param written every line in reading order, with those that are foreign or unreadable
 * @param all every line of ours as it stands, in reading order, struck ones too
 * @param adrift corrections and answers that name an entry which is not there
 */
public record Day(ShiftId shift, List<Written> written, List<Standing<?>> all, List<Line> adrift) {
    private static final Comparator<Standing<?>> HAPPENED = Comparator.<Standing<?>, OffsetDateTime>comparing(
                    Standing::order, OffsetDateTime.timeLineOrder())
            .thenComparing(s -> s.line().book())
            .thenComparing(s -> s.line().n());

    /** The day made of its books' lines; each list is one book in its own order. */
    public static Day of(ShiftId shift, List<List<Written>> books) {
        List<Written> written = merged(books);
        return new Corrections(written).day(shift);
    }

    private static List<Written> merged(List<List<Written>> books) {
        List<Written> out = new ArrayList<>();
        int[] at = new int[books.size()];
        while (true) {
            int next = -1;
            for (int b = 0; b < at.length; b++) {
                if (at[b] < books.get(b).size() && (next < 0 || earlier(books, at, b, next))) {
                    next = b;
                }
            }
            if (next < 0) {
                return List.copyOf(out);
            }
            out.add(books.get(next).get(at[next]++));
        }
    }

    private static boolean earlier(List<List<Written>> books, int[] at, int b, int than) {
        Written mine = books.get(b).get(at[b]);
        Written other = books.get(than).get(at[than]);
        if (!(mine instanceof Line m)) {
            return true;
        }
        return other instanceof Line o
                && m.keyed().toInstant().isBefore(o.keyed().toInstant());
    }

    /** The entries of a kind that count, by the time they happened, then book and number. */
    public <E extends Entry> List<Standing<E>> standing(Class<E> type) {
        return every(type).stream().filter(s -> !s.struck()).sorted(HAPPENED).toList();
    }

    /** The entries of a kind in reading order, struck ones too. */
    @SuppressWarnings("unchecked")
    public <E extends Entry> List<Standing<E>> every(Class<E> type) {
        List<Standing<E>> found = new ArrayList<>();
        for (Standing<?> each : all) {
            if (type.isInstance(each.entry())) {
                found.add((Standing<E>) each);
            }
        }
        return found;
    }

    /** The entry of a number, if it is there. */
    public Optional<Standing<?>> find(Ref ref) {
        return all.stream().filter(s -> s.ref().equals(ref)).findFirst();
    }

    /** The newest entry of a kind that counts, in reading order. */
    public <E extends Entry> Optional<Standing<E>> last(Class<E> type) {
        List<Standing<E>> found = every(type).stream().filter(s -> !s.struck()).toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
    }

    /** The first opening, if there is one. */
    public Optional<Standing<Opening>> opening() {
        return every(Opening.class).stream().findFirst();
    }

    /** Whether every book of the shift that was opened has been closed. */
    public boolean closed() {
        Set<String> open = new HashSet<>();
        for (Standing<?> each : all) {
            if (each.entry() instanceof Opening) {
                open.add(each.line().book());
            } else if (each.entry() instanceof Closing) {
                open.remove(each.line().book());
            }
        }
        return open.isEmpty() && all.stream().anyMatch(s -> s.entry() instanceof Closing);
    }

    /** Lines that stand behind the closing of their book. */
    public List<Standing<?>> late() {
        Set<String> closed = new HashSet<>();
        List<Standing<?>> late = new ArrayList<>();
        for (Standing<?> each : all) {
            if (closed.contains(each.line().book())) {
                late.add(each);
            }
            if (each.entry() instanceof Closing) {
                closed.add(each.line().book());
            }
        }
        return late;
    }

    /** Lines that could not be counted: unreadable or of a kind that this program does not know. */
    public List<Written> uncounted() {
        return written.stream().filter(w -> !(w instanceof Line)).toList();
    }

    /** Strikes and amendments, applied. */
    private static final class Corrections {
        private final List<Written> written;
        private final Map<Ref, Line> lines = new LinkedHashMap<>();
        private final Map<Ref, Line> struck = new HashMap<>();
        private final Map<Ref, List<Line>> amended = new HashMap<>();
        private final Map<Ref, Map<String, Object>> sets = new HashMap<>();
        private final List<Line> adrift = new ArrayList<>();

        Corrections(List<Written> written) {
            this.written = written;
            for (Written each : written) {
                if (each instanceof Line line) {
                    lines.put(line.ref(), line);
                }
            }
        }

        Day day(ShiftId shift) {
            List<Line> newestFirst = new ArrayList<>(lines.values());
            java.util.Collections.reverse(newestFirst);
            newestFirst.forEach(this::strike);
            newestFirst.forEach(this::amend);
            List<Standing<?>> all = new ArrayList<>();
            for (Line line : lines.values()) {
                all.add(stand(line));
                if (line.entry() instanceof Answer a && !lines.containsKey(a.of())) {
                    adrift.add(line);
                }
            }
            return new Day(shift, written, List.copyOf(all), List.copyOf(adrift));
        }

        /** A strike that is itself struck has no force; the newest are looked at first. */
        private void strike(Line line) {
            if (line.entry() instanceof Strike strike && !struck.containsKey(line.ref())) {
                if (lines.containsKey(strike.of()) && !strike.of().equals(line.ref())) {
                    struck.put(strike.of(), line);
                } else {
                    adrift.add(line);
                }
            }
        }

        private void amend(Line line) {
            if (!(line.entry() instanceof Amend amend) || struck.containsKey(line.ref())) {
                return;
            }
            if (!lines.containsKey(amend.of()) || amend.of().equals(line.ref())) {
                adrift.add(line);
                return;
            }
            Map<String, Object> set = new LinkedHashMap<>(amend.set() == null ? Map.of() : amend.set());
            set.putAll(sets.getOrDefault(line.ref(), Map.of()));
            Map<String, Object> into = sets.computeIfAbsent(amend.of(), r -> new LinkedHashMap<>());
            set.forEach((key, value) -> {
                if (!into.containsKey(key)) {
                    into.put(key, value);
                }
            });
            amended.computeIfAbsent(amend.of(), r -> new ArrayList<>()).add(0, line);
        }

        private Standing<?> stand(Line line) {
            Map<String, Object> set = line.entry() instanceof Amend ? null : sets.get(line.ref());
            List<Line> by = amended.getOrDefault(line.ref(), List.of());
            Line strike = struck.get(line.ref());
            if (set == null) {
                return new Standing<>(line, line.entry(), line.aside(), line.time(), strike, by, List.of());
            }
            return overlaid(line, set, strike, by);
        }

        private Standing<?> overlaid(Line line, Map<String, Object> set, Line strike, List<Line> by) {
            Built<? extends Record> entry =
                    Fields.build(line.kind().type(), over(Fields.plain((Record) line.entry()), set));
            Built<Aside> aside = Fields.build(Aside.class, over(Fields.plain(line.aside()), set));
            List<Built.Slip> slips = new ArrayList<>(entry.slips());
            slips.addAll(aside.slips());
            Entry now = slips.isEmpty() ? (Entry) entry.value() : line.entry();
            return new Standing<>(line, now, aside.value(), time(line, set, slips), strike, by, List.copyOf(slips));
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

        private static OffsetDateTime time(Line line, Map<String, Object> set, List<Built.Slip> slips) {
            if (!set.containsKey("time")) {
                return line.time();
            }
            Object time = set.get("time");
            try {
                return time == null ? null : OffsetDateTime.parse(time.toString());
            } catch (java.time.DateTimeException e) {
                slips.add(new Built.Slip("time", Shown.text(time.toString()), "2026-06-03T21:32:00-06:00"));
                return line.time();
            }
        }
    }
}
