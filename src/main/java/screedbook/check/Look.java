package screedbook.check;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
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
import screedbook.job.Job;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Load;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
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
    private final Map<Standing<?>, Situation> situations = new IdentityHashMap<>();
    private final Map<Asking, Bounds> bounds = new HashMap<>();

    private record Asking(String sheet, Object what, Situation situation) {}

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
        return totals.map(Totals::loads).orElse(List.of()).stream()
                .filter(Load::laid)
                .toList();
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
        return inForce(entry).flatMap(InForce::agreed).map(screedbook.job.Agreed::job);
    }

    /** The newest job, for what is said of the whole shift. */
    Optional<Job> job() {
        return ground.job();
    }

    Optional<SpecSheet> sheet(Standing<?> entry) {
        return inForce(entry).flatMap(InForce::sheet);
    }

    Situation ofTicket(Job job, Standing<Ticket> t) {
        return situations.computeIfAbsent(t, e -> Cases.of(job, t.entry(), t.order()));
    }

    Situation ofSurface(Job job, Standing<Surface> s) {
        return situations.computeIfAbsent(s, e -> Cases.of(job, s.entry(), s.order()));
    }

    Situation ofTack(Job job, Standing<Tack> t) {
        return situations.computeIfAbsent(t, e -> Cases.of(job, t.entry(), t.order()));
    }

    /** Limits that were worked out for the same case before are not worked out again. */
    Bounds bounds(SpecSheet sheet, Object what, Situation situation, Function<SpecSheet, Bounds> made) {
        Asking asking = new Asking(sheet.sha256(), what, situation);
        Bounds found = bounds.get(asking);
        if (found == null) {
            found = made.apply(sheet);
            bounds.put(asking, found);
        }
        return found;
    }

    Bounds bounds(SpecSheet sheet, Quantity quantity, Situation situation) {
        return bounds(sheet, quantity, situation, s -> Bounds.of(s, quantity, situation));
    }

    private static final Map<Quantity, Bounds> USUAL = new HashMap<>();

    static {
        for (Quantity quantity : Quantity.values()) {
            USUAL.put(quantity, Bounds.of(SpecSheet.usual(), quantity, Situation.UNKNOWN));
        }
    }

    /** The range in which a figure usually lies. */
    static Bounds usual(Quantity quantity) {
        return USUAL.get(quantity);
    }

    static Optional<Asked> asked(SpecSheet sheet, Demand demand, Situation situation) {
        List<Asked> all = sheet.asked(demand, situation);
        return all.stream()
                .filter(Asked::sure)
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /**
     * One mark for each limit outside of which a value lies; none where it lies inside or no limit is set.
     *
     * @param where {@code at the paver}
     */
    static List<Mark> judged(Bounds bounds, List<Ref> of, String where, Amount value, String more) {
        if (value == null) {
            return List.of();
        }
        List<Mark> marks = new ArrayList<>();
        for (Bound bound : bounds.broken(value)) {
            String working =
                    bound.working() + bound.rounded(value).map(r -> " " + r).orElse("");
            marks.add(new Mark(
                    bound.sure() ? null : Sort.LOOK_AGAIN,
                    of,
                    where + " " + told(bound, value) + more,
                    bound.full(),
                    bound.clause(),
                    bound.inside(),
                    working));
        }
        return marks;
    }

    /** The value, and in brackets what it is in the limit's unit where that is another. */
    private static String told(Bound bound, Amount value) {
        Unit unit = bound.unit();
        String text = Figures.text(Figures.shown(value));
        return value.unit() == unit
                ? text
                : text + " (" + Figures.text(value.to(unit).shown(1)) + ")";
    }

    /** Marks of the usual range: these are asked about, whatever the rule's sort. */
    static List<Mark> odd(Quantity quantity, List<Ref> of, String where, Amount value) {
        return judged(usual(quantity), of, where, value, "").stream()
                .map(m -> m.as(Sort.LOOK_AGAIN))
                .toList();
    }

    static Amount minutes(OffsetDateTime from, OffsetDateTime to) {
        return new Amount(
                java.math.BigDecimal.valueOf(Duration.between(from, to).toMinutes()), Unit.MINUTE);
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
