package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import screedbook.entry.Ref;

/**
 * What of a road is covered, and by which entries: stretches that may lie over one another. What has no length covers
 * nothing; stretches that only touch have nothing in common.
 */
public record Cover(List<Stretch> stretches) {
    public static final Cover NONE = new Cover(List.of());

    /** Stretches in any order; they stand by their lower ends. */
    public Cover {
        stretches = stretches.stream()
                .filter(s -> !s.empty())
                .sorted(Comparator.comparing(Stretch::low))
                .toList();
    }

    public static Cover of(List<Stretch> stretches) {
        return stretches.isEmpty() ? NONE : new Cover(stretches);
    }

    public boolean empty() {
        return stretches.isEmpty();
    }

    /** What either covers. */
    public Cover plus(Cover other) {
        List<Stretch> both = new ArrayList<>(stretches);
        both.addAll(other.stretches);
        return of(both);
    }

    /** What is covered here and not there, with the entries of here. */
    public Cover minus(Cover other) {
        List<Stretch> there = other.joined();
        List<Stretch> left = new ArrayList<>();
        int first = 0;
        for (Stretch each : stretches) {
            while (first < there.size() && there.get(first).high().compareTo(each.low()) <= 0) {
                first++;
            }
            BigDecimal at = each.low();
            for (int i = first; i < there.size() && there.get(i).low().compareTo(each.high()) < 0; i++) {
                left.add(each.within(at, there.get(i).low()));
                at = at.max(there.get(i).high());
            }
            left.add(each.within(at, each.high()));
        }
        return of(left);
    }

    /** What is covered both here and there, with the entries of here. */
    public Cover and(Cover other) {
        List<Stretch> there = other.joined();
        List<Stretch> both = new ArrayList<>();
        int first = 0;
        for (Stretch each : stretches) {
            while (first < there.size() && there.get(first).high().compareTo(each.low()) <= 0) {
                first++;
            }
            for (int i = first; i < there.size() && there.get(i).low().compareTo(each.high()) < 0; i++) {
                both.add(each.within(there.get(i).low(), there.get(i).high()));
            }
        }
        return of(both);
    }

    /** What is covered so many times or more, cut where an entry begins or ends. */
    public Cover times(int least) {
        TreeMap<BigDecimal, List<Stretch>> begins = new TreeMap<>();
        TreeMap<BigDecimal, List<Stretch>> ends = new TreeMap<>();
        TreeSet<BigDecimal> cuts = new TreeSet<>();
        for (Stretch each : stretches) {
            begins.computeIfAbsent(each.low(), b -> new ArrayList<>()).add(each);
            ends.computeIfAbsent(each.high(), b -> new ArrayList<>()).add(each);
            cuts.add(each.low());
            cuts.add(each.high());
        }
        List<Stretch> found = new ArrayList<>();
        Set<Stretched> over = new LinkedHashSet<>();
        BigDecimal from = null;
        for (BigDecimal at : cuts) {
            if (over.size() >= least) {
                found.add(new Stretch(from, at, entries(over)));
            }
            ends.getOrDefault(at, List.of()).forEach(s -> over.remove(new Stretched(s)));
            begins.getOrDefault(at, List.of()).forEach(s -> over.add(new Stretched(s)));
            from = at;
        }
        return of(found);
    }

    /** A stretch by itself: two that are equal are still two. */
    private record Stretched(Stretch stretch) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Stretched s && s.stretch == stretch;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(stretch);
        }
    }

    private static List<Ref> entries(Collection<Stretched> over) {
        Set<Ref> by = new LinkedHashSet<>();
        over.forEach(s -> by.addAll(s.stretch().by()));
        return List.copyOf(by);
    }

    /** What is covered at all, as few stretches as can be, each with every entry in it, in the order of the road. */
    public List<Stretch> joined() {
        List<Stretch> joined = new ArrayList<>();
        Set<Ref> by = new LinkedHashSet<>();
        BigDecimal low = null;
        BigDecimal high = null;
        for (Stretch each : stretches) {
            if (high == null || each.low().compareTo(high) > 0) {
                add(joined, low, high, by);
                low = each.low();
                high = each.high();
                by.clear();
            }
            high = high.max(each.high());
            by.addAll(each.by());
        }
        add(joined, low, high, by);
        return List.copyOf(joined);
    }

    private static void add(List<Stretch> to, BigDecimal low, BigDecimal high, Set<Ref> by) {
        if (high != null) {
            to.add(new Stretch(low, high, List.copyOf(by)));
        }
    }

    /** What is covered, each piece of road once, in feet or metres. */
    public BigDecimal length() {
        return joined().stream().map(Stretch::length).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The part between two distances. */
    public Cover within(BigDecimal from, BigDecimal to) {
        return of(stretches.stream()
                .filter(s -> s.low().compareTo(to) < 0 && s.high().compareTo(from) > 0)
                .map(s -> s.within(from, to))
                .toList());
    }
}
