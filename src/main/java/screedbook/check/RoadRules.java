package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Field;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.spec.Quantity;
import screedbook.tally.Cover;
import screedbook.tally.Load;
import screedbook.tally.PavedBefore;
import screedbook.tally.Roadwork.Lane;
import screedbook.tally.Run;
import screedbook.tally.Share;
import screedbook.tally.Stretch;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** Rules about places: what lies where along the road, in this shift and the ones before. */
final class RoadRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "station-beyond-job",
                    Sort.LOOK_AGAIN,
                    "Stations lie between the ends of the job.",
                    RoadRules::beyond),
            new Rule("paved-twice", Sort.LOOK_AGAIN, "A pull is laid once in a lift.", RoadRules::twice),
            new Rule(
                    "paved-before",
                    Sort.LOOK_AGAIN,
                    "A pull is laid where no shift before laid it in the same lift.",
                    RoadRules::before),
            new Rule(
                    "gap-to-last-shift",
                    Sort.LOOK_AGAIN,
                    "A pull goes on where it ended in the shift before.",
                    RoadRules::gap));

    private RoadRules() {}

    static Unit along(Job job) {
        return Measure.WIDTH.unit(job.system());
    }

    private static List<Mark> beyond(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<?> each : look.day().all()) {
            Optional<Job> job = each.struck() ? Optional.empty() : look.job(each);
            if (job.isPresent()
                    && job.get().stationing().begins() != null
                    && job.get().stationing().ends() != null) {
                beyond(each, job.get()).ifPresent(marks::add);
            }
        }
        return marks;
    }

    private static Optional<Mark> beyond(Standing<?> entry, Job job) {
        Road road = Road.of(job);
        Station begins = job.stationing().begins();
        Station ends = job.stationing().ends();
        BigDecimal low = road.along(begins).min(road.along(ends));
        BigDecimal high = road.along(begins).max(road.along(ends));
        Set<String> out = new LinkedHashSet<>();
        for (Field field : entry.entry().kind().fields()) {
            if (field.type() == Station.class && field.get((Record) entry.entry()) instanceof Station station) {
                BigDecimal at = road.along(station);
                if (at.compareTo(low) < 0 || at.compareTo(high) > 0) {
                    out.add(station.text());
                }
            }
        }
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of(new Mark(
                        entry.ref(),
                        Told.kind(entry.entry().kind()) + ": " + String.join(" and ", out)
                                + (out.size() == 1 ? " lies" : " lie") + " beyond the job",
                        "stations from " + begins + " to " + ends,
                        "job, stationing",
                        "a station from " + begins + " to " + ends));
    }

    static Stretch stretch(Road road, Station from, Station to, Ref by) {
        return Stretch.between(road.along(from), road.along(to), List.of(by));
    }

    static String run(Stretch on, Road road) {
        return road.station(on.low()) + " to " + road.station(on.high());
    }

    /** Loads by the entries of which a stretch knows, a share by its ticket. */
    static Map<Ref, Standing<Ticket>> loads(Look look) {
        Map<Ref, Standing<Ticket>> loads = new LinkedHashMap<>();
        for (Load load : look.laid()) {
            for (Share share : load.shares()) {
                loads.put(share.of(), load.ticket());
            }
        }
        return loads;
    }

    /** {@code ticket 1001, ticket 1002 and 3 more}. */
    private static String named(List<Ref> by, Map<Ref, Standing<Ticket>> loads) {
        List<String> names = by.stream()
                .map(ref -> loads.containsKey(ref) ? Look.name(loads.get(ref)) : ref.toString())
                .distinct()
                .toList();
        int shown = names.size() > 3 ? 2 : names.size();
        String some = String.join(", ", names.subList(0, shown));
        return names.size() > shown ? some + " and " + (names.size() - shown) + " more" : some;
    }

    private static List<Mark> twice(Look look) {
        Map<Ref, Standing<Ticket>> loads = loads(look);
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            Road road = Road.of(job);
            for (Lane lane : look.road().lanes()) {
                for (Stretch on : lane.pull() == null
                        ? List.<Stretch>of()
                        : lane.paved().times(2).joined()) {
                    Amount length = new Amount(on.length(), along(job));
                    for (Bound bound : Marks.usual(Quantity.PAVED_TWICE).broken(length)) {
                        marks.add(new Mark(
                                null,
                                on.by(),
                                lane.name() + ": " + run(on, road) + " (" + length.text() + ") paved twice, by "
                                        + named(on.by(), loads),
                                "loads of a pull lie one behind the other, " + bound.full(length.unit())
                                        + " paved twice",
                                bound.clause(),
                                "the end of one load where the next begins, or another pull or lift",
                                bound.working()));
                    }
                }
            }
        });
        return marks;
    }

    private static List<Mark> before(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            for (Lane lane : look.road().lanes()) {
                if (lane.pull() != null) {
                    for (Stretch on : lane.paved().and(lane.before()).joined()) {
                        marks.addAll(before(look, job, lane, on));
                    }
                }
            }
        });
        return marks;
    }

    private static List<Mark> before(Look look, Job job, Lane lane, Stretch on) {
        Road road = Road.of(job);
        Amount length = new Amount(on.length(), along(job));
        List<String> shifts = laidBefore(look, lane).stream()
                .filter(p -> p.meets(on, road))
                .map(p -> p.shift().toString())
                .distinct()
                .toList();
        List<Mark> marks = new ArrayList<>();
        for (Bound bound : Marks.usual(Quantity.PAVED_TWICE).broken(length)) {
            marks.add(new Mark(
                    null,
                    on.by(),
                    lane.name() + ": " + run(on, road) + " (" + length.text() + ") was paved in "
                            + String.join(" and ", shifts),
                    "a pull is laid once in a lift, " + bound.full(length.unit()) + " paved twice",
                    bound.clause(),
                    "a stretch that is not paved yet" + others(job, lane),
                    bound.working()));
        }
        return marks;
    }

    private static String others(Job job, Lane lane) {
        List<String> others = job.pulls().stream()
                .filter(p -> Objects.equals(p.lift(), lane.lift()))
                .map(Job.Pull::name)
                .filter(name -> !name.equals(lane.pull()))
                .toList();
        return others.isEmpty()
                ? ", or another lift"
                : ", or pull " + String.join(" or ", others) + ", or another lift";
    }

    private static List<PavedBefore> laidBefore(Look look, Lane lane) {
        return look.totals().map(Totals::before).map(ToDate::paved).orElse(List.of()).stream()
                .filter(p -> Objects.equals(p.pull(), lane.pull()) && Objects.equals(p.lift(), lane.lift()))
                .toList();
    }

    private static List<Mark> gap(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Run run : look.totals().map(Totals::runs).orElse(List.of())) {
            Optional<Lane> lane = look.road().lane(run.pull(), run.lift());
            if (run.pull() != null
                    && run.begin() != null
                    && lane.isPresent()
                    && look.job().isPresent()) {
                marks.addAll(gap(look, look.job().get(), run, lane.get()));
            }
        }
        return marks;
    }

    private static List<Mark> gap(Look look, Job job, Run run, Lane lane) {
        List<PavedBefore> earlier = laidBefore(look, lane);
        if (earlier.isEmpty()) {
            return List.of();
        }
        PavedBefore last = earlier.get(earlier.size() - 1);
        Road road = Road.of(job);
        Cover open = Cover.of(List.of(Stretch.between(road.along(last.end()), road.along(run.begin()), List.of())))
                .minus(lane.before())
                .minus(lane.paved());
        Amount length = new Amount(open.length(), along(job));
        List<Mark> marks = new ArrayList<>();
        for (Bound bound : Marks.usual(Quantity.GAP_TO_LAST).broken(length)) {
            marks.add(new Mark(
                    null,
                    run.stretches().get(0).by(),
                    lane.name() + " begins at " + run.begin() + ", " + last.shift() + " ended at " + last.end() + ": "
                            + length.text() + " between them not paved",
                    "a pull goes on where it ended, " + bound.full(length.unit()) + " between",
                    bound.clause(),
                    "a first load from " + last.end(),
                    bound.working()));
        }
        return marks;
    }
}
