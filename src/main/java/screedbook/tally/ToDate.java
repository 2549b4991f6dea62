package screedbook.tally;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.calc.StraightLine;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Written;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * What the shifts before this one come to.
 *
 * @param pay tons for pay as kept here, by pay item
 * @param loads that came, by pay item
 * @param tackSamples tack samples taken
 * @param shifts that are in these figures
 * @param uncounted entries of those shifts that are in no total
 * @param placed tons placed of each mix, one figure for each shift in which it was placed
 * @param draws what those shifts tell of random places
 * @param paved where those shifts laid what, oldest first
 * @param haul heat lost on the way against minutes, by plant; see {@link HaulLoss}
 * @param laid the loads that those shifts placed, for lots that go on over shifts
 * @param told densities, cores, samples, hand-overs, results, instrument checks and random places of those shifts
 */
public record ToDate(
        Map<String, Amount> pay,
        Map<String, Integer> loads,
        int tackSamples,
        List<ShiftId> shifts,
        int uncounted,
        Map<String, List<Amount>> placed,
        List<Draw> draws,
        List<PavedBefore> paved,
        Map<String, StraightLine> haul,
        List<Laid> laid,
        List<Standing<?>> told) {
    private static final Set<Kind> TOLD = EnumSet.of(
            Kind.GAUGE, Kind.CORE, Kind.SAMPLE, Kind.CUSTODY, Kind.RESULT, Kind.INSTRUMENT, Kind.DRAW, Kind.PROFILE);

    /** Before the first shift. */
    public static final ToDate NONE = new ToDate(Map.of(), Map.of(), 0, List.of(), 0);

    /** Figures of shifts of which nothing is told for lots and places. */
    public ToDate(
            Map<String, Amount> pay, Map<String, Integer> loads, int tackSamples, List<ShiftId> shifts, int uncounted) {
        this(
                pay,
                loads,
                tackSamples,
                shifts,
                uncounted,
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                List.of(),
                List.of());
    }

    /** These figures and another shift's, by the job that was in force in it. */
    public ToDate and(Day day, Job job) {
        return plus(of(day, job));
    }

    /** One shift's figures, by the job that was in force in it. */
    public static ToDate of(Day day, Job job) {
        Loads loads = Loads.of(day, Measure.LOAD.unit(job.system()));
        Map<String, Amount> pay = new TreeMap<>();
        Map<String, Integer> counts = new TreeMap<>();
        Map<String, List<Amount>> placed = new TreeMap<>();
        for (Tons each : Groups.of(loads, job)) {
            if (each.by() == Tons.By.PAY_ITEM) {
                pay.put(each.of(), each.pay());
                counts.put(each.of(), each.loads());
            } else if (each.by() == Tons.By.MIX) {
                placed.put(each.of(), List.of(each.placed()));
            }
        }
        return new ToDate(
                Map.copyOf(pay),
                Map.copyOf(counts),
                Dues.tackSamples(day),
                List.of(day.shift()),
                loads.left().size() + day.uncounted().size(),
                Map.copyOf(placed),
                draws(day),
                PavedBefore.of(day.shift(), Runs.of(loads.loads(), job)),
                Map.copyOf(HaulLoss.lines(loads.loads(), Measure.TEMPERATURE.unit(job.system()))),
                Laid.of(day.shift(), loads.loads()),
                told(day));
    }

    static List<Draw> draws(Day day) {
        return day.standing(Draw.class).stream().map(Standing::entry).toList();
    }

    /** What a later shift goes on with of the entries of a day: what was tested, and by what. */
    private static List<Standing<?>> told(Day day) {
        return day.all().stream()
                .filter(s -> !s.struck() && TOLD.contains(s.line().kind()))
                .<Standing<?>>map(s -> s)
                .toList();
    }

    /** These figures and those of other shifts. */
    public ToDate plus(ToDate other) {
        Map<String, Amount> pays = new TreeMap<>(pay);
        other.pay.forEach((item, tons) -> pays.merge(item, tons, Amount::plus));
        Map<String, Integer> counts = new TreeMap<>(loads);
        other.loads.forEach((item, count) -> counts.merge(item, count, Integer::sum));
        Map<String, List<Amount>> tons = new TreeMap<>(placed);
        other.placed.forEach((mix, more) -> tons.merge(mix, more, ToDate::joined));
        Map<String, StraightLine> hauls = new TreeMap<>(haul);
        other.haul.forEach((plant, line) -> hauls.merge(plant, line, StraightLine::plus));
        return new ToDate(
                Map.copyOf(pays),
                Map.copyOf(counts),
                tackSamples + other.tackSamples,
                Stream.concat(shifts.stream(), other.shifts.stream()).toList(),
                uncounted + other.uncounted,
                Map.copyOf(tons),
                joined(draws, other.draws),
                joined(paved, other.paved),
                Map.copyOf(hauls),
                joined(laid, other.laid),
                joined(told, other.told));
    }

    private static <T> List<T> joined(List<T> first, List<T> more) {
        return Stream.concat(first.stream(), more.stream()).toList();
    }

    /** A day as it stood at a moment: only lines keyed before it. Lines that cannot be read have no time and stay. */
    public static Day asOf(Day day, OffsetDateTime moment) {
        Map<String, List<Written>> books = new LinkedHashMap<>();
        for (Written each : day.written()) {
            if (!(each instanceof Line line) || line.keyed().toInstant().isBefore(moment.toInstant())) {
                books.computeIfAbsent(each.book(), b -> new ArrayList<>()).add(each);
            }
        }
        return Day.of(day.shift(), List.copyOf(books.values()));
    }
}
