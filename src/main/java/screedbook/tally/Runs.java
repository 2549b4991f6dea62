package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.calc.SpreadRate;
import screedbook.entry.Area;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The pulls of a day laid end to end: a load without a "to" is closed by the next load's station. */
final class Runs {
    private final Job job;
    private final Road road;
    private final Unit heavy;
    private final Unit along;

    private final Map<Station, BigDecimal> distances = new HashMap<>();

    private Runs(Job job) {
        this.job = job;
        this.road = Road.of(job);
        this.heavy = Measure.LOAD.unit(job.system());
        this.along = Measure.WIDTH.unit(job.system());
    }

    /** Without regard to parts that have an area of their own. */
    static List<Run> of(List<Load> loads, Job job) {
        return of(loads, List.of(), job);
    }

    static List<Run> of(List<Load> loads, List<Standing<Area>> parts, Job job) {
        Runs runs = new Runs(job);
        Map<String, Laying> layings = new LinkedHashMap<>();
        for (Load load : loads) {
            for (Share share : load.shares()) {
                layings.computeIfAbsent(Groups.pull(share), n -> runs.new Laying(share.pull(), share.lift()))
                        .add(load, share);
            }
        }
        List<Run> made = new ArrayList<>();
        layings.forEach((name, laying) -> {
            boolean only = layings.values().stream()
                            .filter(l -> Objects.equals(l.pull, laying.pull))
                            .count()
                    == 1;
            made.add(laying.run(
                    name,
                    parts.stream()
                            .filter(p -> PullArea.of(p.entry(), laying.pull, laying.lift, only))
                            .map(p -> OddArea.of(p, job))
                            .toList()));
        });
        return List.copyOf(made);
    }

    /** One pull being laid, load after load. */
    private final class Laying {
        private final String pull;
        private final Integer lift;
        private final List<Run.Piece> pieces = new ArrayList<>();
        private final List<Stretch> stretches = new ArrayList<>();
        private final List<Ref> openEntries = new ArrayList<>();
        private final List<Ref> entries = new ArrayList<>();
        private final List<String> put = new ArrayList<>();
        private BigDecimal laid = BigDecimal.ZERO;
        private BigDecimal open = BigDecimal.ZERO;
        private BigDecimal elsewhere = BigDecimal.ZERO;
        private Station at;
        private Station begin;
        private Station end;
        private String mix;

        Laying(String pull, Integer lift) {
            this.pull = pull;
            this.lift = lift;
        }

        void add(Load load, Share share) {
            entries.add(share.of());
            mix = mix == null ? load.ticket().entry().paper().mix() : mix;
            if (share.from() != null) {
                reach(share.from(), open.signum() != 0 && onward(share.from()));
            }
            if (share.elsewhere() != null && share.from() == null && share.to() == null) {
                elsewhere = elsewhere.add(share.weight().value());
                return;
            }
            open = open.add(share.weight().value());
            openEntries.add(share.of());
            if (share.to() != null) {
                reach(share.to(), true);
            }
        }

        /** The paver is at a station: what is open was laid up to it, when it is known from where. */
        private void reach(Station station, boolean paved) {
            if (at != null && paved) {
                pieces.add(piece(at, station));
                stretches.add(Stretch.between(along(at), along(station), openEntries));
                begin = begin == null ? at : begin;
                end = station;
                laid = laid.add(open);
            } else {
                elsewhere = elsewhere.add(open);
            }
            open = BigDecimal.ZERO;
            openEntries.clear();
            at = station;
        }

        /** Whether a station lies ahead in the direction of paving; a step back begins a new stretch. */
        private boolean onward(Station next) {
            Job.Direction direction = job.pull(pull, lift)
                    .map(Job.Pull::direction)
                    .orElse(job.stationing().direction());
            int step = at == null ? 0 : along(next).compareTo(along(at));
            return direction == Job.Direction.DOWN ? step <= 0 : step >= 0;
        }

        Run run(String name, List<OddArea> parts) {
            elsewhere = elsewhere.add(open);
            List<Run.Piece> merged = merged(pieces);
            Amount length = new Amount(
                    merged.stream().map(p -> p.high().subtract(p.low())).reduce(BigDecimal.ZERO, BigDecimal::add),
                    along);
            Optional<Amount> width = job.pull(pull, lift).map(Job.Pull::width);
            merged.forEach(p -> put.add(p.text() + " is " + plain(p.high().subtract(p.low())) + " " + along.symbol()));
            put.add("length " + length.text());
            PullArea whole = PullArea.of(Cover.of(stretches), width, parts, along, road);
            put.addAll(whole.put());
            entries.addAll(whole.parts());
            Optional<Amount> area = whole.area();
            Amount weight = new Amount(laid, heavy);
            Optional<Amount> rate = area.flatMap(a -> SpreadRate.of(weight, a));
            put.add("laid there " + weight.text());
            if (elsewhere.signum() != 0) {
                put.add("not in the rate, place not known: " + plain(elsewhere) + " " + heavy.symbol());
            }
            rate.ifPresent(r -> put.add("rate " + r.shown(1).text()));
            return finished(name, merged, length, whole, weight, rate);
        }

        private Run finished(
                String name,
                List<Run.Piece> merged,
                Amount length,
                PullArea area,
                Amount weight,
                Optional<Amount> rate) {
            Target target = Target.of(job, pull, lift, mix);
            put.addAll(target.put());
            return new Run(
                    name,
                    pull,
                    lift,
                    merged,
                    length,
                    area.area(),
                    area.parts(),
                    area.own(),
                    weight,
                    new Amount(elsewhere, heavy),
                    rate,
                    target.rate(),
                    target.percent(rate),
                    target.thickness(rate),
                    List.copyOf(entries),
                    List.copyOf(put),
                    List.copyOf(stretches),
                    begin,
                    end);
        }
    }

    private BigDecimal along(Station station) {
        return distances.computeIfAbsent(station, road::along);
    }

    private Run.Piece piece(Station from, Station to) {
        BigDecimal a = along(from);
        BigDecimal b = along(to);
        return a.compareTo(b) <= 0 ? new Run.Piece(from, to, a, b) : new Run.Piece(to, from, b, a);
    }

    /** The pieces without overlaps, in the order of the road. */
    private static List<Run.Piece> merged(List<Run.Piece> pieces) {
        List<Run.Piece> sorted = new ArrayList<>(pieces);
        sorted.sort(Comparator.comparing(Run.Piece::low));
        List<Run.Piece> merged = new ArrayList<>();
        for (Run.Piece next : sorted) {
            Run.Piece last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last == null || next.low().compareTo(last.high()) > 0) {
                merged.add(next);
            } else if (next.high().compareTo(last.high()) > 0) {
                merged.set(merged.size() - 1, new Run.Piece(last.from(), next.to(), last.low(), next.high()));
            }
        }
        return List.copyOf(merged);
    }

    private static String plain(BigDecimal value) {
        return value.toPlainString();
    }
}
