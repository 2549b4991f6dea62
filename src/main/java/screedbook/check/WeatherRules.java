package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import screedbook.entry.NoWork;
import screedbook.entry.Standing;
import screedbook.entry.Stop;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.tally.Load;
import screedbook.tally.Stoppage;
import screedbook.unit.Amount;

/** Rules about weather, the surface, and what was placed meanwhile. */
final class WeatherRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "surface-temperature",
                    Sort.OUTSIDE,
                    "The surface is as warm as the sheet says for the course.",
                    WeatherRules::surface),
            new Rule(
                    "air-temperature",
                    Sort.OUTSIDE,
                    "The air is as warm as the sheet says for the course that is placed.",
                    WeatherRules::air),
            new Rule(
                    "surface-not-read",
                    Sort.MISSING,
                    "A load is placed within the job's time after a surface reading.",
                    WeatherRules::surfaceAge),
            new Rule(
                    "weather-at-start",
                    Sort.MISSING,
                    "The weather is noted before the first load is placed, and on a day without work.",
                    WeatherRules::start),
            new Rule(
                    "weather-again",
                    Sort.MISSING,
                    "A load is placed within the job's time after the weather was noted.",
                    WeatherRules::weatherAge),
            new Rule(
                    "weather-after-stop",
                    Sort.MISSING,
                    "The weather is noted before a load is placed after a stop for rain or cold.",
                    WeatherRules::afterStop),
            new Rule(
                    "placed-not-suitable",
                    Sort.OUTSIDE,
                    "Nothing is placed while the engineer's call is not suitable.",
                    WeatherRules::notSuitable),
            new Rule("placed-not-dry", Sort.LOOK_AGAIN, "Loads are placed on a dry road.", WeatherRules::notDry),
            new Rule(
                    "air-unusual",
                    Sort.LOOK_AGAIN,
                    "An air temperature lies where air temperatures lie.",
                    WeatherRules::oddAir),
            new Rule(
                    "surface-unusual",
                    Sort.LOOK_AGAIN,
                    "A surface temperature lies where surface temperatures lie.",
                    WeatherRules::oddSurface));

    private WeatherRules() {}

    private static List<Mark> surface(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Surface> s : look.surfaces()) {
            look.ofSurface(s)
                    .ifPresent(c -> marks.addAll(Marks.judged(
                            c.bounds(Quantity.SURFACE),
                            List.of(s.ref()),
                            "surface",
                            s.entry().surface(),
                            "")));
        }
        return marks;
    }

    /** An air reading is judged by the course of each load that was placed while it was the newest. */
    private static List<Mark> air(Look look) {
        Map<String, Mark> marks = new LinkedHashMap<>();
        for (Standing<Ticket> t : placed(look)) {
            Standing<Weather> w = look.weather(t.order()).orElse(null);
            Optional<Case> at = w == null || w.entry().air() == null ? Optional.empty() : look.ofTicket(t);
            if (at.isPresent()) {
                Marks.judged(
                                at.get().bounds(Quantity.AIR),
                                List.of(w.ref(), t.ref()),
                                () -> "air",
                                w.entry().air(),
                                () -> ", " + Look.name(t) + " placed " + Look.clock(t.order()))
                        .forEach(m -> marks.putIfAbsent(w.ref() + m.clause() + m.limit(), m));
            }
        }
        return new ArrayList<>(marks.values());
    }

    /** Loads that went into the mat, by the time they did. */
    private static List<Standing<Ticket>> placed(Look look) {
        return look.laid().stream().map(Load::ticket).toList();
    }

    private static List<Mark> surfaceAge(Look look) {
        Spells spells = new Spells();
        for (Standing<Ticket> t : placed(look)) {
            Standing<Surface> last = look.surface(t.order()).orElse(null);
            Optional<Checks> checks = look.job(t).map(Job::checks);
            boolean old = checks.isPresent() && aged(last, t, checks.get().surfaceEvery());
            spells.next(old ? last == null ? "none" : last.ref().toString() : null, t);
        }
        return spells.marks((first, loads) -> {
            Checks checks = look.job(first).orElseThrow().checks();
            return ages(
                    "surface reading",
                    look.surface(first.order()).map(Standing::order),
                    first,
                    loads,
                    checks.surfaceEvery(),
                    PlanRules.source(checks));
        });
    }

    private static List<Mark> weatherAge(Look look) {
        Spells spells = new Spells();
        for (Standing<Ticket> t : placed(look)) {
            Optional<Standing<Weather>> last = look.weather(t.order());
            Optional<Checks> checks = look.job(t).map(Job::checks);
            boolean old = last.isPresent()
                    && checks.isPresent()
                    && aged(last.get(), t, checks.get().weatherEvery());
            spells.next(old ? last.get().ref().toString() : null, t);
        }
        return spells.marks((first, loads) -> {
            Checks checks = look.job(first).orElseThrow().checks();
            Optional<OffsetDateTime> last = look.weather(first.order()).map(Standing::order);
            return ages("weather", last, first, loads, checks.weatherEvery(), PlanRules.source(checks));
        });
    }

    /** What stopped the paver was weather, so its going on is a change of it: nobody may know later what it had become. */
    private static List<Mark> afterStop(Look look) {
        List<Stoppage> stops = Stoppage.of(look.day()).stream()
                .filter(s -> s.stop().entry().cause() == Stop.Cause.RAIN
                        || s.stop().entry().cause() == Stop.Cause.COLD)
                .filter(s -> s.stop().time() != null && s.ended() != null)
                .toList();
        List<Mark> marks = new ArrayList<>();
        for (Stoppage each : stops) {
            OffsetDateTime began = each.stop().time();
            placed(look).stream()
                    .filter(t -> !t.order().isBefore(each.ended()))
                    .findFirst()
                    .filter(t -> look.weather(t.order())
                            .filter(w -> w.order().isBefore(began))
                            .isPresent())
                    .ifPresent(t -> marks.add(new Mark(
                            List.of(each.stop().ref(), t.ref()),
                            Look.name(t) + " placed " + Look.clock(t.order()) + " after the stop for "
                                    + each.stop().entry().cause().word() + " at " + Look.clock(began)
                                    + ", last weather "
                                    + Look.clock(look.weather(t.order())
                                            .orElseThrow()
                                            .order()),
                            "the weather is noted at the start and at each change",
                            "common practice",
                            "the weather between " + Look.clock(began) + " and " + Look.clock(t.order()))));
        }
        return marks;
    }

    /** No reading, or one that is older than a time; a time of nothing asks for none. */
    private static boolean aged(Standing<?> reading, Standing<Ticket> load, Amount every) {
        return every.value().signum() > 0
                && (reading == null
                        || Look.minutes(reading.order(), load.order()).compareTo(every) > 0);
    }

    private static Mark ages(
            String what,
            Optional<OffsetDateTime> last,
            Standing<Ticket> first,
            List<Standing<Ticket>> loads,
            Amount every,
            String source) {
        String since = last.map(l -> "last " + what + " " + Look.clock(l)).orElse("no " + what + " until then");
        return new Mark(
                Look.refs(loads),
                Look.name(first) + " placed " + Look.clock(first.order()) + more(loads) + ", " + since,
                what + " at most " + every.text() + " old when a load is placed",
                source,
                (what.equals("weather") ? "the " : "a ") + what + " between "
                        + Look.clock(first.order().minusMinutes(every.value().longValue())) + " and "
                        + Look.clock(first.order()));
    }

    private static String more(List<Standing<Ticket>> loads) {
        int others = loads.size() - 1;
        return others == 0 ? "" : " and " + Look.loads(others) + " after it";
    }

    private static List<Mark> start(Look look) {
        List<Standing<Ticket>> placed = placed(look);
        Optional<Standing<NoWork>> idle =
                look.day().standing(NoWork.class).stream().findFirst();
        String inside = "the weather at the start of work";
        if (!placed.isEmpty() && look.weather(placed.get(0).order()).isEmpty()) {
            Standing<Ticket> first = placed.get(0);
            return List.of(new Mark(
                    first.ref(),
                    Look.name(first) + " placed " + Look.clock(first.order()) + ", no weather noted until then",
                    "the weather is noted at the start and at each change",
                    "common practice",
                    inside));
        }
        if (placed.isEmpty() && idle.isPresent() && look.weathers().isEmpty()) {
            return List.of(new Mark(
                    idle.get().ref(),
                    "no work, and no weather noted",
                    "the weather is noted on a day without work too",
                    "common practice",
                    inside));
        }
        return List.of();
    }

    private static List<Mark> notSuitable(Look look) {
        return meanwhile(
                look,
                w -> w.engineerCall() == Weather.Call.NOT_SUITABLE,
                w -> "the engineer's call is not suitable",
                "nothing is placed while the engineer's call is not suitable",
                w -> w.calledBy() == null ? "engineer's call" : "engineer's call, " + w.calledBy(),
                "placing after a call of suitable");
    }

    private static List<Mark> notDry(Look look) {
        return meanwhile(
                look,
                w -> w.road() == Weather.Road.DAMP || w.road() == Weather.Road.WET,
                w -> "the road is " + w.road().word(),
                "loads are placed on a dry road",
                w -> "common practice",
                "placing after the road was noted dry");
    }

    /** One mark for each weather in which something was placed. */
    private static List<Mark> meanwhile(
            Look look,
            Predicate<Weather> bad,
            Function<Weather, String> seen,
            String limit,
            Function<Weather, String> clause,
            String inside) {
        Spells spells = new Spells();
        for (Standing<Ticket> t : placed(look)) {
            Optional<Standing<Weather>> w = look.weather(t.order()).filter(x -> bad.test(x.entry()));
            spells.next(w.map(x -> x.ref().toString()).orElse(null), t);
        }
        return spells.marks((first, loads) -> {
            Standing<Weather> w = look.weather(first.order()).orElseThrow();
            return new Mark(
                    Look.refs(loads),
                    Look.name(first) + " placed " + Look.clock(first.order()) + more(loads) + ", "
                            + seen.apply(w.entry()) + " since " + Look.clock(w.order()),
                    limit,
                    clause.apply(w.entry()),
                    inside);
        });
    }

    private static List<Mark> oddAir(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.weathers()
                .forEach(w -> marks.addAll(Marks.odd(
                        Quantity.AIR, List.of(w.ref()), "air", w.entry().air())));
        return marks;
    }

    private static List<Mark> oddSurface(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.surfaces()
                .forEach(s -> marks.addAll(Marks.odd(
                        Quantity.SURFACE, List.of(s.ref()), "surface", s.entry().surface())));
        return marks;
    }
}
