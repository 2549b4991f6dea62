package screedbook.check;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Moment;
import screedbook.entry.Opening;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.entry.Word;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.ListMatch;
import screedbook.tally.Load;
import screedbook.tally.PlantCount;
import screedbook.tally.Roadwork;
import screedbook.tally.Samples;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** A day laid out for the rules, each list made once. */
final class Look {
    private final Day day;
    private final Optional<Totals> totals;
    private final Ground ground;
    private final OffsetDateTime now;
    private final List<Standing<Ticket>> tickets;
    private final List<Standing<Weather>> weathers;
    private final List<Standing<Surface>> surfaces;
    private final List<Standing<Tack>> tacks;
    private final NavigableMap<Long, Standing<Weather>> weatherAt = new TreeMap<>();
    private final NavigableMap<Long, Standing<Surface>> surfaceAt = new TreeMap<>();
    private final Map<Standing<?>, Optional<InForce>> inForce = new IdentityHashMap<>();
    private final Map<InForce, Map<Key, Case>> cases = new IdentityHashMap<>();
    private final Map<Standing<?>, Optional<Case>> caseOf = new IdentityHashMap<>();
    private final Map<Job, Known> known = new IdentityHashMap<>();
    private List<Load> laid;
    private Placed placed;
    private List<ListMatch> lists;
    private List<PlantCount> plantCounts;

    /** Trucks and plants of a job by their names. */
    private record Known(Map<String, Job.Truck> trucks, Map<String, Job.Plant> plants) {
        static Known of(Job job) {
            Known known = new Known(new HashMap<>(), new HashMap<>());
            job.trucks().forEach(t -> known.trucks.putIfAbsent(t.number(), t));
            job.plants().forEach(p -> known.plants.putIfAbsent(p.name(), p));
            return known;
        }
    }

    /** What tells the case of one entry from that of another under the same job and sheet. */
    private record Key(
            String mix,
            Integer lift,
            String pull,
            Word base,
            Word under,
            String product,
            String light,
            LocalDate date) {}

    Look(Day day, Optional<Totals> totals, Ground ground, OffsetDateTime now) {
        this.day = day;
        this.totals = totals;
        this.ground = ground;
        this.now = now;
        this.tickets = day.standing(Ticket.class);
        this.weathers = day.standing(Weather.class);
        this.surfaces = day.standing(Surface.class);
        this.tacks = day.standing(Tack.class);
        surfaces.forEach(s -> surfaceAt.put(s.order().toInstant().toEpochMilli(), s));
        weathers.forEach(w -> weatherAt.put(w.order().toInstant().toEpochMilli(), w));
    }

    Day day() {
        return day;
    }

    Optional<Totals> totals() {
        return totals;
    }

    Ground ground() {
        return ground;
    }

    /** Null when it is not asked how long ago the last line was. */
    OffsetDateTime now() {
        return now;
    }

    /** Those that count, by the time they happened; so are the others. */
    List<Standing<Ticket>> tickets() {
        return tickets;
    }

    List<Standing<Weather>> weathers() {
        return weathers;
    }

    List<Standing<Surface>> surfaces() {
        return surfaces;
    }

    List<Standing<Tack>> tacks() {
        return tacks;
    }

    /** The loads that went into the mat; none where the job is not found. */
    List<Load> laid() {
        if (laid == null) {
            laid = totals.map(Totals::loads).orElse(List.of()).stream()
                    .filter(Load::laid)
                    .toList();
        }
        return laid;
    }

    /** Where on the road what was done; nothing where the job is not found. */
    Roadwork road() {
        return totals.map(Totals::road).orElse(Roadwork.NONE);
    }

    /** The plants' lists laid beside the tickets; none where the job is not found. */
    List<ListMatch> lists() {
        if (lists == null) {
            lists = job().map(job -> ListMatch.all(day, job)).orElse(List.of());
        }
        return lists;
    }

    /** What the plants told beside what is kept here; none where the job is not found. */
    List<PlantCount> plantCounts() {
        if (plantCounts == null) {
            plantCounts = job().flatMap(
                            job -> totals.map(t -> PlantCount.all(day, t.loads(), Measure.LOAD.unit(job.system()))))
                    .orElse(List.of());
        }
        return plantCounts;
    }

    /** What lies where along the road; worked out when it is first asked for. */
    Placed placed() {
        if (placed == null) {
            placed = new Placed(this);
        }
        return placed;
    }

    /** The newest weather at a time, if any was noted until then. */
    Optional<Standing<Weather>> weather(OffsetDateTime at) {
        return Optional.ofNullable(weatherAt.floorEntry(at.toInstant().toEpochMilli()))
                .map(Map.Entry::getValue);
    }

    /** The newest surface reading at a time, if there was any until then. */
    Optional<Standing<Surface>> surface(OffsetDateTime at) {
        return Optional.ofNullable(surfaceAt.floorEntry(at.toInstant().toEpochMilli()))
                .map(Map.Entry::getValue);
    }

    /** The line that carries what is said of the whole shift. */
    List<Ref> shift() {
        List<Standing<?>> all = day.all();
        return day.opening()
                .<Standing<?>>map(o -> o)
                .or(() -> all.isEmpty() ? Optional.empty() : Optional.of(all.get(0)))
                .map(s -> List.of(s.ref()))
                .orElse(List.of());
    }

    Optional<Standing<Opening>> opening() {
        return day.opening();
    }

    private Optional<InForce> inForce(Standing<?> entry) {
        return inForce.computeIfAbsent(entry, e -> ground.of(e.line()));
    }

    /** The job that was in force when the entry was keyed. */
    Optional<Job> job(Standing<?> entry) {
        return inForce(entry).flatMap(InForce::agreed).map(Agreed::job);
    }

    /** The newest job, for what is said of the whole shift. */
    Optional<Job> job() {
        return ground.job();
    }

    /** The truck of a load, if the job lists it. */
    Optional<Job.Truck> truck(Standing<Ticket> t) {
        return job(t).map(j -> known.computeIfAbsent(j, Known::of)
                .trucks()
                .get(t.entry().paper().truck()));
    }

    /** The plant of a load, if the job has it. */
    Optional<Job.Plant> plant(Standing<Ticket> t) {
        return job(t).map(j -> known.computeIfAbsent(j, Known::of)
                .plants()
                .get(t.entry().paper().plant()));
    }

    Optional<SpecSheet> sheet(Standing<?> entry) {
        return inForce(entry).flatMap(InForce::sheet);
    }

    /** The case of a load; empty where its job or its sheet is not found. */
    Optional<Case> ofTicket(Standing<Ticket> t) {
        return caseOf.computeIfAbsent(t, e -> {
            Ticket.Spot spot = t.entry().spot();
            String mix = t.entry().paper().mix();
            return made(
                    t,
                    job -> key(job, t, mix, spot.lift(), spot.pull(), null, null, null),
                    mix,
                    job -> Cases.of(job, t.entry(), t.order()));
        });
    }

    /** The case of a surface reading. */
    Optional<Case> ofSurface(Standing<Surface> s) {
        Surface e = s.entry();
        return caseOf.computeIfAbsent(
                s,
                x -> made(
                        s,
                        job -> key(job, s, null, e.lift(), e.pull(), e.base(), null, null),
                        null,
                        job -> Cases.of(job, e, s.order())));
    }

    /** The case of a tack shot. */
    Optional<Case> ofTack(Standing<Tack> t) {
        Tack.Target on = t.entry().target();
        String product = t.entry().product().product();
        return caseOf.computeIfAbsent(
                t,
                x -> made(
                        t,
                        job -> key(job, t, null, on.lift(), on.pull(), null, on.surface(), product),
                        null,
                        job -> Cases.of(job, t.entry(), t.order())));
    }

    /** The case of the mat at a place: a mix on a lift, as an entry names them. */
    Optional<Case> ofMat(Standing<?> entry, String mix, Integer lift, String pull) {
        return caseOf.computeIfAbsent(
                entry,
                e -> made(
                        entry,
                        job -> key(job, entry, mix, lift, pull, null, null, null),
                        mix,
                        job -> Cases.of(job, mix, Cases.lift(job, lift, pull), entry.order(), null)));
    }

    /** Lots, samples and densities over all shifts; empty where the job is not found. */
    Optional<Samples> samples() {
        return totals.map(Totals::samples);
    }

    private static Key key(
            Job job, Standing<?> entry, String mix, Integer lift, String pull, Word base, Word under, String product) {
        ZonedDateTime at = entry.order().atZoneSameInstant(job.zone());
        String light = Cases.light(job, at).orElse(null);
        return new Key(mix, lift, pull, base, under, product, light, at.toLocalDate());
    }

    private Optional<Case> made(
            Standing<?> entry, Function<Job, Key> key, String mix, Function<Job, Situation> situation) {
        Optional<InForce> by = inForce(entry);
        if (by.isEmpty() || by.get().agreed().isEmpty() || by.get().sheet().isEmpty()) {
            return Optional.empty();
        }
        Job job = by.get().agreed().get().job();
        SpecSheet sheet = by.get().sheet().get();
        return Optional.of(cases.computeIfAbsent(by.get(), f -> new HashMap<>())
                .computeIfAbsent(key.apply(job), k -> new Case(job, sheet, situation.apply(job), mix)));
    }

    /** {@code 1 load}, {@code 2 loads}. */
    static String loads(int count) {
        return count + (count == 1 ? " load" : " loads");
    }

    static Amount minutes(OffsetDateTime from, OffsetDateTime to) {
        return new Amount(BigDecimal.valueOf(Duration.between(from, to).toMinutes()), Unit.MINUTE);
    }

    static String clock(OffsetDateTime time) {
        return Moment.clock(time);
    }

    /** {@code ticket 48217}, or the entry's own name where no number was noted. */
    static String name(Standing<Ticket> ticket) {
        String number = ticket.entry().paper().number();
        return number == null ? "ticket at " + ticket.ref() : "ticket " + number;
    }

    static <E extends Entry> List<Ref> refs(List<Standing<E>> entries) {
        return entries.stream().map(Standing::ref).toList();
    }
}
