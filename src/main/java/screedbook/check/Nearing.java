package screedbook.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import screedbook.calc.StraightLine;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Moment;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Working;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * When surface or air will have fallen to the least that the sheet sets, if they go on as the last readings went. Nothing
 * is told where no limit is set, where fewer than three readings make no line that falls, or where it lies farther than
 * twelve hours ahead.
 *
 * @param what {@code surface} or {@code air}
 * @param limit that holds at that time, in the job's degrees
 * @param at to the minute
 */
public record Nearing(String what, Amount limit, OffsetDateTime at, Working working) {
    /** Readings that make a line, the newest of so many hours; common practice, no source. */
    private static final int FEWEST = 3;

    private static final int MOST = 6;
    private static final Duration BACK = Duration.ofHours(6);
    /** So far ahead something is foretold. */
    private static final Duration AHEAD = Duration.ofHours(12);
    /** What of the readings' spread the line has to tell (r squared); common practice, no source. */
    private static final BigDecimal TOLD = new BigDecimal("0.5");

    private static final BigDecimal SECONDS = BigDecimal.valueOf(3600);

    /** One reading with its time. */
    private record Reading(Ref of, OffsetDateTime at, Amount seen) {}

    /** Surface and air of a shift that goes on. */
    public static List<Nearing> of(Day day, Job job, SpecSheet sheet, OffsetDateTime now) {
        List<Nearing> all = new ArrayList<>();
        if (day.closed()) {
            return all;
        }
        Unit degree = Measure.TEMPERATURE.unit(job.system());
        Optional<Surface> surface = day.last(Surface.class).map(Standing::entry);
        surface.flatMap(last -> new Line(
                                "surface", readings(day.standing(Surface.class), Surface::surface, degree, now))
                        .meets(job, now, at -> bounds(sheet, Quantity.SURFACE, Cases.of(job, last, at))))
                .ifPresent(all::add);
        new Line("air", readings(day.standing(Weather.class), Weather::air, degree, now))
                .meets(job, now, at -> bounds(sheet, Quantity.AIR, course(job, day, at)))
                .ifPresent(all::add);
        return List.copyOf(all);
    }

    /** The course that is being paved: as the last load or surface reading has it. */
    private static Situation course(Job job, Day day, OffsetDateTime at) {
        Optional<Standing<Ticket>> ticket = day.last(Ticket.class);
        Optional<Standing<Surface>> surface = day.last(Surface.class);
        boolean newer = ticket.isPresent()
                && (surface.isEmpty()
                        || !ticket.get().order().isBefore(surface.get().order()));
        if (newer) {
            return Cases.of(job, ticket.get().entry(), at);
        }
        return surface.map(s -> Cases.of(job, s.entry(), at))
                .orElseGet(() -> Cases.of(job, null, Cases.lift(job, null, null), at, null));
    }

    /** The highest least that is sure to hold. */
    private static Optional<Bound> bounds(SpecSheet sheet, Quantity quantity, Situation situation) {
        return Bounds.of(sheet, quantity, situation).all().stream()
                .filter(b -> b.sure() && b.low() != null)
                .max((a, b) -> a.low().compareTo(b.low()));
    }

    /** The last readings that are not too old to tell of a pace. */
    private static <E extends Entry> List<Reading> readings(
            List<Standing<E>> seen, Function<E, Amount> part, Unit degree, OffsetDateTime now) {
        List<Reading> readings = new ArrayList<>();
        for (Standing<E> each : seen) {
            Amount amount = part.apply(each.entry());
            boolean recent = each.time() != null
                    && !each.time().isAfter(now)
                    && each.time().isAfter(now.minus(BACK));
            if (recent && amount != null && amount.unit() == degree) {
                readings.add(new Reading(each.ref(), each.time(), amount));
            }
        }
        return readings.subList(Math.max(0, readings.size() - MOST), readings.size());
    }

    /** The straight line through readings, in hours from now. */
    private record Line(String what, List<Reading> readings) {
        Optional<Nearing> meets(Job job, OffsetDateTime now, Function<OffsetDateTime, Optional<Bound>> limit) {
            StraightLine line = StraightLine.NONE;
            for (Reading each : readings) {
                line = line.and(hours(now, each.at()), each.seen().value());
            }
            boolean falls = line.n() >= FEWEST
                    && line.slope().filter(b -> b.signum() < 0).isPresent()
                    && line.told().filter(t -> t.compareTo(TOLD) >= 0).isPresent();
            return falls ? meets(job, now, limit, line) : Optional.empty();
        }

        /**
         * Between two times at which the light may change the limit stays as it is. What lies below it already is a
         * finding, and nothing is foretold of it.
         */
        private Optional<Nearing> meets(
                Job job, OffsetDateTime now, Function<OffsetDateTime, Optional<Bound>> limit, StraightLine line) {
            ZonedDateTime begins = now.atZoneSameInstant(job.zone());
            ZonedDateTime ends = begins.plus(AHEAD);
            TreeSet<ZonedDateTime> times = new TreeSet<>(Cases.changes(job, begins, ends).stream()
                    .filter(at -> at.isAfter(begins) && at.isBefore(ends))
                    .toList());
            times.add(begins);
            times.add(ends);
            ZonedDateTime from = null;
            for (ZonedDateTime to : times) {
                Optional<Bound> bound = from == null ? Optional.empty() : limit.apply(from.toOffsetDateTime());
                if (bound.isPresent()) {
                    BigDecimal reached = line.reaches(low(bound.get())).orElseThrow();
                    if (reached.signum() < 0 && from.isEqual(begins)) {
                        return Optional.empty();
                    }
                    if (reached.compareTo(hours(now, to.toOffsetDateTime())) < 0) {
                        BigDecimal at = reached.max(hours(now, from.toOffsetDateTime()));
                        return Optional.of(told(bound.get(), after(now, at), now, line));
                    }
                }
                from = to;
            }
            return Optional.empty();
        }

        private BigDecimal low(Bound bound) {
            return bound.low().to(readings.get(0).seen().unit()).value();
        }

        private static OffsetDateTime after(OffsetDateTime now, BigDecimal hours) {
            return now.plusSeconds(
                    hours.multiply(SECONDS).setScale(0, RoundingMode.HALF_UP).longValueExact());
        }

        private Nearing told(Bound bound, OffsetDateTime at, OffsetDateTime now, StraightLine line) {
            List<String> put = new ArrayList<>();
            readings.forEach(r ->
                    put.add(r.of() + " " + Moment.clock(r.at()) + " " + r.seen().text()));
            Unit own = readings.get(0).seen().unit();
            String unit = own.symbol();
            put.add("the line falls by "
                    + line.slope().orElseThrow().negate().setScale(1, RoundingMode.HALF_UP) + " " + unit
                    + " an hour and is at "
                    + line.at(BigDecimal.ZERO).orElseThrow().setScale(1, RoundingMode.HALF_UP) + " " + unit + " at "
                    + Moment.clock(now));
            put.add("limit at that time " + (own == bound.unit() ? bound.text() : bound.full(own)) + ", "
                    + bound.clause());
            Working working = new Working(
                    "straight line through the last readings, at least three and at most six of six hours, by least"
                            + " squares, to where it meets the limit",
                    List.copyOf(put),
                    readings.stream().map(Reading::of).toList(),
                    "common practice, no source; an estimate: clouds, sun and shade are not in it");
            return new Nearing(what, OwnUnits.least(bound.low(), own), at, working);
        }

        private static BigDecimal hours(OffsetDateTime from, OffsetDateTime to) {
            return BigDecimal.valueOf(Duration.between(from, to).toSeconds()).divide(SECONDS, MathContext.DECIMAL128);
        }
    }
}
