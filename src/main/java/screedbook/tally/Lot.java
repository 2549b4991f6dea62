package screedbook.tally;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import screedbook.entry.Station;
import screedbook.unit.Amount;

/**
 * A lot of a mix as it filled, over all shifts up to this one.
 *
 * @param size as the job cuts it
 * @param full whether its last ton was placed
 * @param over whether no ton comes to it any more: it is full, or was closed out
 */
public record Lot(String mix, int number, Amount size, List<Sublot> sublots, boolean full, boolean over) {
    /**
     * A sublot as it filled.
     *
     * @param over whether no ton comes to it any more
     */
    public record Sublot(int number, Amount size, List<Piece> pieces, boolean over) {
        public Amount tons() {
            return sum(pieces);
        }

        /** {@code 3 tickets 48210 to 48233, pull B lift 2 13+00 to 21+50}. */
        public String loads() {
            return Lot.loads(pieces);
        }
    }

    /**
     * A load, or what of it lies in the sublot.
     *
     * @param tons of the load that lie here
     */
    public record Piece(Laid load, Amount tons) {
        String put() {
            boolean whole = tons.compareTo(load.placed()) == 0;
            return load.shift() + " " + load.ticket() + " " + load.name() + " " + tons.text()
                    + (whole ? "" : " of " + load.placed().text());
        }
    }

    public Amount tons() {
        return sum(pieces());
    }

    /** Every load of the lot, or what of it lies here. */
    public List<Piece> pieces() {
        return sublots.stream().flatMap(s -> s.pieces().stream()).toList();
    }

    /** {@code lot 2 of 12.5-70A}. */
    public String name() {
        return name(mix, number);
    }

    static String name(String mix, int number) {
        return "lot " + number + " of " + mix;
    }

    private static Amount sum(List<Piece> pieces) {
        return pieces.stream().map(Piece::tons).reduce(Amount::plus).orElseThrow();
    }

    /** Which loads, and where they lie. */
    static String loads(List<Piece> pieces) {
        List<String> names = new ArrayList<>(
                new LinkedHashSet<>(pieces.stream().map(p -> p.load().name()).toList()));
        String first = names.get(0);
        String last = names.get(names.size() - 1).replaceFirst("^ticket ", "");
        String which = names.size() == 1 ? first : names.size() + " loads, " + first + " to " + last;
        String where = where(pieces);
        return which + (where.isEmpty() ? "" : ", " + where);
    }

    /** {@code pull B lift 2 13+00 to 21+50}: from the first known end to the last one, as they were laid. */
    private static String where(List<Piece> pieces) {
        Map<String, List<Station>> ends = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            for (Share share : piece.load().shares()) {
                List<Station> known = ends.computeIfAbsent(Groups.pull(share), p -> new ArrayList<>());
                add(known, share.from());
                add(known, share.to());
            }
        }
        Set<String> said = new LinkedHashSet<>();
        ends.forEach((pull, known) -> {
            if (!known.isEmpty()) {
                said.add(pullName(pull) + known.get(0) + " to " + known.get(known.size() - 1));
            }
        });
        return said.stream().collect(Collectors.joining(", "));
    }

    private static void add(List<Station> known, Station station) {
        if (station != null) {
            known.add(station);
        }
    }

    private static String pullName(String pull) {
        return pull.startsWith("pull not noted") ? "" : "pull " + pull + " ";
    }
}
