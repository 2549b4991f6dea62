package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import screedbook.entry.Blank;
import screedbook.entry.Core;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Joint;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.tally.Roadwork.Lane;
import screedbook.tally.Roadwork.Place;
import screedbook.tally.Roadwork.What;

/** The entries of a day brought to their lanes on the road. */
final class Survey {
    /** The kinds of entry that tell of a place in the mat, and what was done there. */
    private static final Map<Kind, What> PLACES = new EnumMap<>(Map.ofEntries(
            Map.entry(Kind.DEPTH, What.PROBED),
            Map.entry(Kind.MAT, What.PROBED),
            Map.entry(Kind.PROFILE, What.PROBED),
            Map.entry(Kind.JOINT, What.PROBED),
            Map.entry(Kind.STRAIGHTEDGE, What.PROBED),
            Map.entry(Kind.GAUGE, What.PROBED),
            Map.entry(Kind.CORE, What.SAMPLED),
            Map.entry(Kind.SAMPLE, What.SAMPLED),
            Map.entry(Kind.STOP, What.MARKED),
            Map.entry(Kind.DRAW, What.MARKED)));

    /** Pull and lift. */
    private record Key(String pull, Integer lift) {
        /** A lift that is not named may be any. */
        boolean meets(Key other) {
            return Objects.equals(pull, other.pull) && (lift == null || other.lift == null || lift.equals(other.lift));
        }
    }

    /** What is noted of one pull and lift. */
    private record Noted(
            List<Stretch> tacked, List<Stretch> faces, List<Stretch> paved, List<Stretch> before, List<Place> places) {
        Noted() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        boolean laidOrPlaced() {
            return !paved.isEmpty() || !before.isEmpty();
        }
    }

    private final Job job;
    private final Road road;
    private final Map<Key, Noted> noted = new LinkedHashMap<>();

    Survey(Job job) {
        this.job = job;
        this.road = Road.of(job);
    }

    private Noted at(String pull, Integer lift) {
        return noted.computeIfAbsent(new Key(pull, lift), k -> new Noted());
    }

    Roadwork of(Day day, List<Run> runs, ToDate before) {
        for (Run run : runs) {
            if (!run.stretches().isEmpty()) {
                at(run.pull(), run.lift()).paved().addAll(run.stretches());
            }
        }
        day.standing(Tack.class).forEach(this::tack);
        for (Standing<?> each : day.all()) {
            if (!each.struck() && PLACES.containsKey(each.entry().kind())) {
                place(each.ref(), each.entry());
            }
        }
        for (PavedBefore each : before.paved()) {
            at(each.pull(), each.lift()).before().addAll(each.on(road).stretches());
        }
        return new Roadwork(lanes());
    }

    private Optional<Stretch> stretch(Station from, Station to, Ref by) {
        Station a = from == null ? to : from;
        Station b = to == null ? from : to;
        return a == null ? Optional.empty() : Optional.of(Stretch.between(road.along(a), road.along(b), List.of(by)));
    }

    private void tack(Standing<Tack> tack) {
        Tack.Target on = tack.entry().target();
        if (on.from() == null || on.to() == null) {
            return;
        }
        Noted here = at(on.pull(), on.lift());
        Stretch stretch = stretch(on.from(), on.to(), tack.ref()).orElseThrow();
        if (on.face() == null) {
            here.tacked().add(stretch);
        } else if (on.face() == Tack.Face.LONGITUDINAL_JOINT) {
            here.faces().add(stretch);
        }
    }

    private void place(Ref ref, Entry entry) {
        Record record = (Record) entry;
        String pull = null;
        Integer lift = null;
        Map<String, Station> stations = new LinkedHashMap<>();
        for (Field field : Fields.of(record.getClass())) {
            if (field.pick() == Blank.Pick.PULL && field.name().equals("pull")) {
                pull = (String) field.get(record);
            } else if (field.pick() == Blank.Pick.LIFT) {
                lift = (Integer) field.get(record);
            } else if (field.type() == Station.class && field.get(record) != null) {
                stations.put(field.name(), (Station) field.get(record));
            }
        }
        Station from = stations.getOrDefault("place_sta", stations.get("from_sta"));
        Optional<Stretch> on = stretch(from, stations.get("to_sta"), ref);
        if (on.isEmpty()) {
            return;
        }
        Noted here = at(pull, lift);
        here.places().add(new Place(PLACES.get(entry.kind()), entry.kind(), on.get()));
        if (entry instanceof Core core && core.spot().markedAt() != null) {
            stretch(core.spot().markedAt(), null, ref)
                    .ifPresent(at -> here.places().add(new Place(What.MARKED, Kind.CORE, at)));
        }
        if (entry instanceof Joint joint && joint.run() == Joint.Run.LONGITUDINAL && joint.tacked() == YesNo.YES) {
            here.faces().add(on.get());
        }
    }

    private List<Lane> lanes() {
        List<Lane> lanes = new ArrayList<>();
        for (Map.Entry<Key, Noted> each : noted.entrySet()) {
            Key key = each.getKey();
            Noted here = each.getValue();
            boolean elsewhere = key.lift() == null
                    && !here.laidOrPlaced()
                    && here.places().isEmpty()
                    && noted.keySet().stream().anyMatch(k -> !k.equals(key) && k.meets(key));
            if (!elsewhere) {
                lanes.add(new Lane(
                        key.pull(),
                        key.lift(),
                        Cover.of(gathered(key, Noted::tacked)),
                        Cover.of(gathered(key, Noted::faces)),
                        Cover.of(here.paved()),
                        Cover.of(here.before()),
                        List.copyOf(here.places())));
            }
        }
        lanes.sort(Comparator.comparing(Lane::lift, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(this::left, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Lane::name));
        return List.copyOf(lanes);
    }

    private List<Stretch> gathered(Key key, Function<Noted, List<Stretch>> part) {
        List<Stretch> all = new ArrayList<>();
        noted.forEach((other, there) -> {
            if (other.meets(key)) {
                all.addAll(part.apply(there));
            }
        });
        return all;
    }

    /** The left edge as planned, so that lanes stand as they lie across the road. */
    private BigDecimal left(Lane lane) {
        return job.pull(lane.pull(), lane.lift()).map(p -> p.left().value()).orElse(null);
    }
}
