package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.job.Wanted;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** One check of the job's own list: its turns through the shift, and what came of them. */
final class Wants {
    private final Wanted row;
    private final WantedEntry answer;
    private final String name;
    private final Day day;
    private final Job job;
    private final List<Load> laid;
    private final Samples samples;
    private final ToDate before;
    private final OffsetDateTime now;

    private Wants(
            Wanted row,
            String name,
            Day day,
            Job job,
            List<Load> loads,
            Samples samples,
            ToDate before,
            OffsetDateTime now) {
        this.row = row;
        this.answer = new WantedEntry(row);
        this.name = name;
        this.day = day;
        this.job = job;
        this.laid = loads.stream().filter(Load::laid).toList();
        this.samples = samples;
        this.before = before;
        this.now = now;
    }

    /** What comes of every check of the list; one that is wanted of each mix stands once for each. */
    static List<Due> of(Day day, Job job, List<Load> loads, Samples samples, ToDate before, OffsetDateTime now) {
        List<Due> dues = new ArrayList<>();
        Map<String, Integer> names = new LinkedHashMap<>();
        for (Wanted row : job.checks().others()) {
            String name = row.kind().word() + (row.with() == null ? "" : "." + row.with());
            int nth = names.merge(name, 1, Integer::sum);
            Wants wants = new Wants(row, nth == 1 ? name : name + "." + nth, day, job, loads, samples, before, now);
            wants.mixes().forEach(mix -> dues.add(wants.due(mix, wants.mixes().size() > 1)));
        }
        return dues;
    }

    private boolean byMix() {
        return row.mix() == YesNo.YES || row.of() == Wanted.Count.SUBLOTS || row.of() == Wanted.Count.LOTS;
    }

    /** The mixes that have turns of their own; an empty word stands for all of them. */
    private Set<String> mixes() {
        Set<String> mixes = new LinkedHashSet<>();
        if (byMix()) {
            laid.forEach(l -> mixes.add(l.mix()));
        }
        return mixes.isEmpty() ? Set.of("") : mixes;
    }

    private Due due(String mix, boolean several) {
        List<Turns> turns = turns(mix);
        List<Turns.Step> steps = steps(mix);
        for (Turns each : turns) {
            steps.forEach(each::take);
            if (day.closed()) {
                each.close();
            }
        }
        Turns.Next next = turns.stream()
                .map(t -> t.next(now))
                .min(Comparator.comparing((Turns.Next n) -> !n.now())
                        .thenComparing(Turns.Next::left, Comparator.nullsLast(Comparator.naturalOrder())))
                .orElseThrow();
        String what = answer.what() + (several ? " " + mix : "");
        List<Due.Missed> missed = new ArrayList<>();
        for (Turns each : turns) {
            each.over()
                    .forEach(o -> missed.add(new Due.Missed(
                            o.of(), "no " + what + " " + since(each) + " " + o.after(), rhythm(), source())));
        }
        int done = turns.stream().mapToInt(Turns::done).sum();
        int asked = turns.stream().mapToInt(Turns::asked).sum();
        boolean open = !day.closed();
        return new Due(
                name + (mix.isEmpty() ? "" : "." + mix),
                what,
                open ? next.when() : "shift closed",
                open && next.now(),
                done,
                asked,
                working(steps),
                next.left(),
                List.copyOf(missed));
    }

    private static String since(Turns turns) {
        return turns instanceof ChangeTurns ? "after" : "in";
    }

    private List<Turns> turns(String mix) {
        List<Turns> turns = new ArrayList<>();
        if (row.of() == Wanted.Count.MINUTES) {
            turns.add(new TimedTurns(row.each(), row.first() != null && row.first() > 0));
        } else if (row.of() == Wanted.Count.SHIFTS) {
            turns.add(new ShiftTurns(row.howMany()));
        } else if (bySublots()) {
            boolean lots = row.of() == Wanted.Count.LOTS;
            SublotTurns filled = new SublotTurns(
                    row.howMany(), SublotTurns.Filled.of(samples.filling(), day.shift(), mix, lots), this::counted);
            earlier(mix).forEach(filled::before);
            turns.add(filled);
        } else if (row.of() != null) {
            turns.add(counted(mix));
        }
        if (row.change() != null) {
            turns.add(new ChangeTurns(row.howMany()));
        }
        return turns;
    }

    /** The sublots or lots that were checked in the shifts before, one for each check; one of them may go on here. */
    private List<String> earlier(String mix) {
        return before.told().stream()
                .filter(s -> !s.struck() && s.line().kind() == row.kind() && answer.answers(s))
                .map(s -> samples.belonging().of(s))
                .flatMap(Optional::stream)
                .filter(w -> mix.isEmpty() || mix.equals(w.mix()))
                .map(this::named)
                .toList();
    }

    private String named(Filling.Where where) {
        return row.of() == Wanted.Count.LOTS ? "lot " + where.lot() : where.text();
    }

    /** Whether each sublot or lot is a turn by itself; several of them together are counted in tons. */
    private boolean bySublots() {
        return (row.of() == Wanted.Count.SUBLOTS || row.of() == Wanted.Count.LOTS)
                && (row.each().compareTo(BigDecimal.ONE) == 0 || size() == null);
    }

    /** Where an answer belongs, as the lots tell; a kind that names no lot goes with the load before it. */
    private String sublot(Standing<?> answer) {
        if (!bySublots()) {
            return "";
        }
        Optional<Filling.Where> where = samples.belonging().of(answer).or(() -> {
            Optional<Load> last = laid.stream()
                    .filter(l -> !l.ticket()
                            .order()
                            .toInstant()
                            .isAfter(answer.order().toInstant()))
                    .reduce((a, b) -> b);
            return last.flatMap(
                    l -> samples.filling().of(day.shift(), l.ticket().ref()));
        });
        return where.map(this::named).orElse("");
    }

    private CountedTurns counted(String mix) {
        Amount size = size();
        BigDecimal each = size == null ? row.each() : size.value().multiply(row.each());
        int first = row.first() == null ? 0 : row.first();
        BigDecimal gone = size == null ? BigDecimal.ZERO : gone(mix, each);
        return new CountedTurns(first, each, gone, row.howMany(), row.kind() == Kind.TICKET, this::counted);
    }

    /** The weight of a sublot or a lot; null for what is not counted in these. */
    private Amount size() {
        Lots lots = job.lots();
        if (lots == null || row.of() != Wanted.Count.SUBLOTS && row.of() != Wanted.Count.LOTS) {
            return null;
        }
        boolean whole = row.of() == Wanted.Count.LOTS;
        Amount size = whole || lots.sublot() == null ? lots.lot() : lots.sublot();
        return size == null ? lots.sublot() : size;
    }

    /** What the shifts before left in a sublot that goes on. */
    private BigDecimal gone(String mix, BigDecimal each) {
        boolean carries = job.lots().overnight() != Lots.Overnight.CLOSE;
        BigDecimal sum = before.placed().getOrDefault(mix, List.of()).stream()
                .filter(a -> a.unit() == heavy())
                .map(Amount::value)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return carries && each.signum() > 0 ? sum.remainder(each) : BigDecimal.ZERO;
    }

    private Unit heavy() {
        return Measure.LOAD.unit(job.system());
    }

    private String counted(BigDecimal count) {
        if (row.of() == Wanted.Count.LOADS) {
            return plain(count) + (count.compareTo(BigDecimal.ONE) == 0 ? " load" : " loads");
        }
        if (row.of() == Wanted.Count.SHOTS) {
            return plain(count) + (count.compareTo(BigDecimal.ONE) == 0 ? " shot" : " shots");
        }
        if (row.of() == Wanted.Count.JOINTS) {
            return plain(count) + (count.compareTo(BigDecimal.ONE) == 0 ? " joint across" : " joints across");
        }
        return new Amount(count, heavy()).shown(0).text();
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    /** Loads or shots, changes, and the entries that answer, as they happened; in one minute an answer comes last. */
    private List<Turns.Step> steps(String mix) {
        List<Turns.Step> steps = new WantedSteps(row, day, laid).steps(mix);
        if (row.kind() != Kind.TICKET) {
            day.all().stream()
                    .filter(s -> !s.struck() && s.line().kind() == row.kind() && answer.answers(s))
                    .filter(s -> mix.isEmpty() || mix.equals(mix(s)))
                    .forEach(s -> steps.add(Turns.Step.answer(s.order(), s.ref(), sublot(s))));
        }
        steps.sort(Comparator.comparing(s -> s.at().toInstant()));
        return steps;
    }

    /** The mix of an entry: its own, else that of the load before it. */
    private String mix(Standing<? extends Entry> standing) {
        if (standing.entry() instanceof Ticket t) {
            return t.paper().mix() == null ? "mix not noted" : t.paper().mix();
        }
        Optional<String> lot =
                bySublots() ? samples.belonging().of(standing).map(Filling.Where::mix) : Optional.empty();
        if (lot.isPresent()) {
            return lot.get();
        }
        Object own = Fields.plain((Record) standing.entry()).get("mix");
        if (own != null) {
            return own.toString();
        }
        String last = laid.isEmpty() ? "" : laid.get(0).mix();
        for (Load load : laid) {
            if (load.ticket().order().toInstant().isAfter(standing.order().toInstant())) {
                break;
            }
            last = load.mix();
        }
        return last;
    }

    /** {@code first 5 loads, then once in 5 loads of each mix; at a change of weather}. */
    private String rhythm() {
        List<String> parts = new ArrayList<>();
        if (row.of() != null) {
            String many = row.howMany() == 1 ? "once" : row.howMany() + " times";
            String of = row.of() == Wanted.Count.TONS
                    ? new Amount(row.each(), heavy()).text()
                    : plain(row.each()) + " " + row.of().word();
            String one = row.each().compareTo(BigDecimal.ONE) == 0
                    ? "each " + row.of().word().substring(0, row.of().word().length() - 1)
                    : of;
            int first = row.first() == null ? 0 : row.first();
            String start = first < 1 ? "" : first == 1 ? "with the first, then " : "the first " + first + ", then ";
            parts.add(start + many + " in " + one + (row.mix() == YesNo.YES ? " of each mix" : ""));
        }
        if (row.change() != null) {
            parts.add("at a change of " + row.change().word());
        }
        return String.join("; ", parts);
    }

    private String source() {
        return row.source() == null ? "the job's checks, no source noted" : row.source();
    }

    private Working working(List<Turns.Step> steps) {
        List<String> put = new ArrayList<>();
        List<Ref> entries = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        for (Turns.Step step : steps) {
            if (step.answers()) {
                put.add(step.of() + " done"
                        + (row.of() == null || row.of() == Wanted.Count.MINUTES || row.of() == Wanted.Count.SHIFTS
                                ? ""
                                : ", after " + counted(sum)));
                entries.add(step.of());
            } else {
                sum = sum.add(step.much());
                if (step.answered()) {
                    put.add(step.of() + " done");
                    entries.add(step.of());
                }
                if (!step.changed().isEmpty()) {
                    put.add(step.of() + " changed: " + step.changed());
                }
            }
        }
        if (row.of() != null && row.of() != Wanted.Count.MINUTES && row.of() != Wanted.Count.SHIFTS) {
            put.add("up to now " + counted(sum));
        }
        return new Working(rhythm(), List.copyOf(put), List.copyOf(entries), source());
    }
}
