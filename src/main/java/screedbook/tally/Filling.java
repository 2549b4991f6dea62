package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * The lots of a job as they fill from its tickets, over all shifts up to this one. Where a lot ends at the exact ton, the
 * load in which it ends lies in both lots; where it ends with the nearest ticket, that load lies whole in the one that has
 * the greater part of it.
 */
public final class Filling {
    private final Job job;
    private final Unit unit;
    private final Road road;
    private final Map<String, Lotting> lottings = new TreeMap<>();
    private final Map<Where, List<Lot.Piece>> pieces = new LinkedHashMap<>();
    private final Map<Where, BigDecimal> sizes = new LinkedHashMap<>();
    private final Map<ShiftId, List<At>> shifts = new LinkedHashMap<>();
    private final Set<Where> full = new HashSet<>();
    private final Set<Where> owned = new HashSet<>();
    private final Map<Standing<?>, Optional<Where>> placed = Collections.synchronizedMap(new IdentityHashMap<>());
    private Map<String, Set<Integer>> closedOut = Map.of();

    /** What the same earlier shifts came to when they were last asked for: a line that is keyed changes nothing in them. */
    private static volatile Earlier known;

    private record Earlier(ToDate before, Job job, Filling filling) {
        boolean same(ToDate other, Job by) {
            return before == other && (job == by || job.equals(by));
        }
    }

    /** A sublot of a lot of a mix. */
    public record Where(String mix, int lot, int sublot) {
        public String text() {
            return "lot " + lot + " sublot " + sublot;
        }
    }

    private record At(Where where, Lot.Piece piece) {}

    private Filling(Job job) {
        this.job = job;
        this.unit = Measure.LOAD.unit(job.system());
        this.road = Road.of(job);
    }

    private Filling(Filling earlier) {
        this(earlier.job);
        earlier.lottings.forEach((mix, lotting) -> lottings.put(mix, lotting.copy()));
        pieces.putAll(earlier.pieces);
        sizes.putAll(earlier.sizes);
        shifts.putAll(earlier.shifts);
        full.addAll(earlier.full);
    }

    /** The lots of all shifts up to a day, as they stand after it; none where the job cuts none. */
    public static Filling of(Day day, Job job, ToDate before) {
        Filling filling = new Filling(earlier(job, before));
        if (Lotting.of(job).isEmpty()) {
            return filling;
        }
        Loads loads = Loads.of(day, filling.unit);
        Laid.of(day.shift(), loads.loads()).forEach(filling::add);
        filling.closedOut = closedOut(day.all(), day.shift());
        if (day.closed()) {
            filling.night(filling.closedOut);
        }
        return filling;
    }

    /** The lots as the shifts before one left them. */
    static Filling earlier(Job job, ToDate before) {
        Earlier last = known;
        if (last != null && last.same(before, job)) {
            return last.filling();
        }
        Filling filling = new Filling(job);
        if (Lotting.of(job).isPresent()) {
            shifts(before.laid()).forEach((shift, laid) -> {
                laid.forEach(filling::add);
                filling.night(closedOut(before.told(), shift));
            });
        }
        known = new Earlier(before, job, filling);
        return filling;
    }

    /** Where the next ton of a mix comes to lie by what earlier shifts placed; empty where the job cuts no lots. */
    static Optional<Lotting> next(Job job, ToDate before, String mix) {
        Lotting lotting = earlier(job, before).lottings.get(mix);
        return lotting == null ? Lotting.of(job) : Optional.of(lotting.copy());
    }

    /** The sublot of an entry of an earlier shift, which is looked for once. */
    Optional<Where> placed(Standing<?> each, Supplier<Optional<Where>> looked) {
        Optional<Where> found = placed.get(each);
        if (found == null) {
            found = looked.get();
            placed.put(each, found);
        }
        return found;
    }

    private static Map<ShiftId, List<Laid>> shifts(List<Laid> laid) {
        Map<ShiftId, List<Laid>> shifts = new LinkedHashMap<>();
        laid.forEach(each ->
                shifts.computeIfAbsent(each.shift(), s -> new ArrayList<>()).add(each));
        return shifts;
    }

    /** The lots that a shift's lines say are over, by mix. */
    private static Map<String, Set<Integer>> closedOut(List<Standing<?>> told, ShiftId shift) {
        Map<String, Set<Integer>> closed = new LinkedHashMap<>();
        for (Standing<?> each : told) {
            boolean here = !each.struck() && each.line().shift().equals(shift);
            if (here && each.entry() instanceof Draw d && d.step() == Draw.Step.CLOSED && d.lot() != null) {
                closed.computeIfAbsent(d.mix(), m -> new LinkedHashSet<>()).add(d.lot());
            }
        }
        return closed;
    }

    private void night(Map<String, Set<Integer>> closedOut) {
        lottings.forEach((mix, lotting) -> lotting.night(closedOut.getOrDefault(mix, Set.of())));
    }

    private void add(Laid load) {
        Lotting lotting =
                lottings.computeIfAbsent(load.mix(), m -> Lotting.of(job).orElseThrow());
        List<Lotting.Cut> cuts = lotting.add(load.placed().value());
        for (Lotting.Cut cut : cuts) {
            Where where = new Where(load.mix(), cut.lot(), cut.sublot());
            sizes.put(where, cut.size());
            if (cut.to().compareTo(cut.size()) == 0) {
                full.add(where);
            }
            if (job.lots().ends() != Lots.End.NEAREST_TICKET) {
                piece(where, load, cut.to().subtract(cut.from()));
            }
        }
        if (job.lots().ends() == Lots.End.NEAREST_TICKET && !cuts.isEmpty()) {
            Lotting.Cut most = cuts.stream()
                    .reduce((a, b) -> size(b).compareTo(size(a)) > 0 ? b : a)
                    .orElseThrow();
            piece(
                    new Where(load.mix(), most.lot(), most.sublot()),
                    load,
                    load.placed().value());
        }
    }

    private static BigDecimal size(Lotting.Cut cut) {
        return cut.to().subtract(cut.from());
    }

    private void piece(Where where, Laid load, BigDecimal tons) {
        Lot.Piece piece = new Lot.Piece(load, new Amount(tons, unit));
        if (owned.add(where)) {
            pieces.put(where, new ArrayList<>(pieces.getOrDefault(where, List.of())));
        }
        pieces.get(where).add(piece);
        shifts.computeIfAbsent(load.shift(), s -> new ArrayList<>()).add(new At(where, piece));
    }

    private Lot.Sublot sublot(Where where) {
        Where next = new Where(where.mix(), where.lot(), where.sublot() + 1);
        Lotting lotting = lottings.get(where.mix());
        boolean over = full.contains(where) || pieces.containsKey(next) || lotting.past(where.lot(), where.sublot());
        return new Lot.Sublot(where.sublot(), new Amount(sizes.get(where), unit), List.copyOf(pieces.get(where)), over);
    }

    private Amount lotSize() {
        Lots cut = job.lots();
        return (cut.lot() == null ? cut.sublot() : cut.lot()).to(unit);
    }

    /** Every lot that has a ton, by mix and number. */
    public List<Lot> lots() {
        return lots(pieces.keySet().stream());
    }

    /** The lots to which a shift added. */
    public List<Lot> lots(ShiftId shift) {
        return lots(shifts.getOrDefault(shift, List.of()).stream().map(At::where));
    }

    private List<Lot> lots(Stream<Where> wheres) {
        return wheres.map(w -> new Where(w.mix(), w.lot(), 0))
                .distinct()
                .sorted(Comparator.comparing(Where::mix).thenComparing(Where::lot))
                .flatMap(w -> lot(w.mix(), w.lot()).stream())
                .toList();
    }

    /** Whether no ton comes to a lot any more. */
    boolean over(String mix, int lot) {
        Lotting lotting = lottings.get(mix);
        if (lotting == null) {
            return false;
        }
        Lotting after = lotting.copy();
        after.night(Set.of());
        return lot < after.lot();
    }

    public Optional<Lot> lot(String mix, int number) {
        Lotting lotting = lottings.get(mix);
        if (lotting == null) {
            return Optional.empty();
        }
        List<Lot.Sublot> sublots = IntStream.rangeClosed(1, lotting.sublots())
                .mapToObj(n -> new Where(mix, number, n))
                .filter(pieces::containsKey)
                .map(this::sublot)
                .toList();
        boolean over =
                number < lotting.lot() || closedOut.getOrDefault(mix, Set.of()).contains(number);
        boolean filled = full.contains(new Where(mix, number, lotting.sublots()));
        return sublots.isEmpty()
                ? Optional.empty()
                : Optional.of(new Lot(mix, number, lotSize(), sublots, filled, over));
    }

    public Optional<Lot.Sublot> sublot(String mix, int lot, int sublot) {
        return lot(mix, lot)
                .flatMap(l ->
                        l.sublots().stream().filter(s -> s.number() == sublot).findFirst());
    }

    /** The sublot in which the newest ton of a mix lies; of any mix where none is given. */
    public Optional<Where> newest(String mix) {
        Where last = null;
        for (Map.Entry<Where, List<Lot.Piece>> each : pieces.entrySet()) {
            boolean of = mix == null || each.getKey().mix().equals(mix);
            last = of ? each.getKey() : last;
        }
        return Optional.ofNullable(last);
    }

    /** The sublot that has the greater part of a load. */
    public Optional<Where> of(ShiftId shift, Ref ticket) {
        return most(shift, p -> p.load().ticket().equals(ticket));
    }

    /** The sublot of the load of a ticket number in a shift. */
    Optional<Where> ofTicket(String number, ShiftId shift) {
        return most(shift, p -> number.equals(p.load().number()));
    }

    private Optional<Where> most(ShiftId shift, Predicate<Lot.Piece> which) {
        return shifts.getOrDefault(shift, List.of()).stream()
                .filter(at -> which.test(at.piece()))
                .reduce((a, b) -> b.piece().tons().compareTo(a.piece().tons()) > 0 ? b : a)
                .map(At::where);
    }

    /** The sublot of the newest load that covers a place of a pull, laid in a shift or before it. */
    Optional<Where> at(ShiftId shift, String mix, String pull, Integer lift, Station place) {
        BigDecimal at = road.along(place);
        List<ShiftId> back = new ArrayList<>(shifts.keySet());
        Collections.reverse(back);
        for (ShiftId each : back) {
            Optional<Where> found = each.compareTo(shift) > 0
                    ? Optional.empty()
                    : shifts.get(each).stream()
                            .filter(a -> mix == null || a.where().mix().equals(mix))
                            .filter(a -> a.piece().load().shares().stream()
                                    .anyMatch(s -> same(pull, s.pull()) && same(lift, s.lift()) && covers(s, at)))
                            .reduce((a, b) -> b)
                            .map(At::where);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static boolean same(Object asked, Object is) {
        return asked == null || is == null || asked.equals(is);
    }

    private boolean covers(Share share, BigDecimal at) {
        return share.from() != null && share.to() != null && road.between(at, share.from(), share.to());
    }
}
