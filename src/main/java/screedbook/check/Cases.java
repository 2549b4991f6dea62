package screedbook.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.calc.Sun;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Word;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Situation;
import screedbook.unit.Unit;

/** The cases for which limits are looked up: a job, a mix, a lift and a time put together. */
public final class Cases {
    private Cases() {}

    /**
     * The case of a mix on a lift at a time; what the job does not settle is not known in it.
     *
     * @param mix null for the mix with which the lift is planned
     * @param at null where nobody noted the time
     * @param seen what is paved over, where it was noted; else as planned
     */
    public static Situation of(Job job, String mix, Optional<Job.Lift> lift, OffsetDateTime at, Surface.Base seen) {
        String named = mix == null ? lift.map(Job.Lift::mix).orElse(null) : mix;
        Optional<Mix> design = job.mix(named);
        Surface.Base base = seen == null ? lift.map(Job.Lift::base).orElse(null) : seen;
        return new Situation(
                word(lift.map(Job.Lift::layer).orElse(null)),
                lift.map(Job.Lift::thickness).orElse(null),
                design.map(Mix::nmas)
                        .map(size -> size.to(Unit.MILLIMETRE).value())
                        .orElse(null),
                design.flatMap(Mix::highGrade).orElse(null),
                word(design.map(Mix::polymer).orElse(null)),
                word(design.map(Mix::aid).orElse(null)),
                light(job, at).orElse(null),
                word(job.thermal()),
                word(base),
                null,
                null,
                at == null ? null : at.atZoneSameInstant(job.zone()).toLocalDate(),
                design.map(Mix::type).orElse(null));
    }

    /** The case of a load. */
    public static Situation of(Job job, Ticket ticket, OffsetDateTime at) {
        return of(
                job,
                ticket.paper().mix(),
                lift(job, ticket.spot().lift(), ticket.spot().pull()),
                at,
                null);
    }

    /** The case of a surface reading: the mix with which the lift is planned. */
    public static Situation of(Job job, Surface surface, OffsetDateTime at) {
        return of(job, null, lift(job, surface.lift(), surface.pull()), at, surface.base());
    }

    /** The case of a tack shot: the course that it is sprayed for. */
    public static Situation of(Job job, Tack tack, OffsetDateTime at) {
        Situation s =
                of(job, null, lift(job, tack.target().lift(), tack.target().pull()), at, null);
        String grade =
                job.product(tack.product().product()).map(Job.Product::grade).orElse(null);
        return s.tacked(word(tack.target().surface()), grade);
    }

    /** The lift that is named; else the one in which the pull lies; else the only one of the job. */
    public static Optional<Job.Lift> lift(Job job, Integer lift, String pull) {
        if (lift != null) {
            return job.lift(lift);
        }
        List<Integer> ofPull = job.pulls().stream()
                .filter(p -> p.name().equals(pull))
                .map(Job.Pull::lift)
                .distinct()
                .toList();
        if (ofPull.size() == 1) {
            return job.lift(ofPull.get(0));
        }
        return job.lifts().size() == 1 ? Optional.of(job.lifts().get(0)) : Optional.empty();
    }

    /**
     * {@code day} or {@code night} as the contract defines it; empty where the job does not say, or says it by the sun
     * and not where it is. The hour at which night begins is night, the one at which it ends is day.
     */
    public static Optional<String> light(Job job, OffsetDateTime at) {
        return at == null ? Optional.empty() : light(job, at.atZoneSameInstant(job.zone()));
    }

    /** The same of a time in the job's zone. */
    static Optional<String> light(Job job, ZonedDateTime at) {
        Job.Night night = job.night();
        if (night == null) {
            return Optional.empty();
        }
        Optional<Boolean> dark = night.sun() == YesNo.YES ? bySun(job, night, at) : byHours(night, at.toLocalTime());
        return dark.map(d -> d ? "night" : "day");
    }

    private static Optional<Boolean> byHours(Job.Night night, LocalTime hour) {
        if (night.begins() == null || night.ends() == null) {
            return Optional.empty();
        }
        boolean begun = !hour.isBefore(night.begins());
        boolean lasts = hour.isBefore(night.ends());
        boolean overMidnight = night.begins().isAfter(night.ends());
        return Optional.of(overMidnight ? begun || lasts : begun && lasts);
    }

    private static Optional<Boolean> bySun(Job job, Job.Night night, ZonedDateTime time) {
        return spot(job).map(spot -> bySun(spot, night, time));
    }

    /** Where the sun is looked at from, in degrees. */
    record Spot(double north, double east) {}

    /** Where the job is; empty where it does not say so, or names no place on the earth. */
    static Optional<Spot> spot(Job job) {
        Job.Place place = job.place();
        if (place == null || place.latitude() == null || place.longitude() == null) {
            return Optional.empty();
        }
        double north = place.latitude().doubleValue();
        double east = place.longitude().doubleValue();
        return Math.abs(north) > 90 || Math.abs(east) > 180 ? Optional.empty() : Optional.of(new Spot(north, east));
    }

    private static boolean bySun(Spot spot, Job.Night night, ZonedDateTime time) {
        Instant at = time.toInstant();
        Optional<Instant> rise = rise(spot, night, time.toLocalDate());
        Optional<Instant> set = set(spot, night, time.toLocalDate());
        if (rise.isEmpty() || set.isEmpty()) {
            return !Sun.isUp(at, spot.north(), spot.east());
        }
        return at.isBefore(rise.get()) || !at.isBefore(set.get());
    }

    /** Every time at which day or night may begin, on the dates of two times and on those beside them. */
    static List<ZonedDateTime> changes(Job job, ZonedDateTime from, ZonedDateTime to) {
        Job.Night night = job.night();
        List<ZonedDateTime> changes = new ArrayList<>();
        if (night == null) {
            return changes;
        }
        from.toLocalDate().minusDays(1).datesUntil(to.toLocalDate().plusDays(2)).forEach(date -> {
            changes.add(date.atStartOfDay(job.zone()));
            if (night.sun() == YesNo.YES) {
                spot(job)
                        .ifPresent(spot -> Stream.of(rise(spot, night, date), set(spot, night, date))
                                .flatMap(Optional::stream)
                                .forEach(at -> changes.add(at.atZone(job.zone()))));
            } else {
                Stream.of(night.begins(), night.ends())
                        .filter(Objects::nonNull)
                        .forEach(hour -> changes.add(date.atTime(hour).atZone(job.zone())));
            }
        });
        return changes;
    }

    private static Optional<Instant> rise(Spot spot, Job.Night night, LocalDate date) {
        return Sun.rise(date, spot.north(), spot.east()).map(r -> r.minusSeconds(60L * minutes(night.beforeSunrise())));
    }

    private static Optional<Instant> set(Spot spot, Job.Night night, LocalDate date) {
        return Sun.set(date, spot.north(), spot.east()).map(s -> s.plusSeconds(60L * minutes(night.afterSunset())));
    }

    private static int minutes(Integer noted) {
        return noted == null ? 0 : noted;
    }

    private static String word(Word word) {
        return word == null ? null : word.word();
    }
}
