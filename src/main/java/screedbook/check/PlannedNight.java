package screedbook.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import screedbook.calc.Sun;
import screedbook.job.Job;
import screedbook.job.Planning;

/**
 * One planned day of work, with the sun of its place and the hours in which night rules apply.
 *
 * @param begins start of work; null where the job settles no hours; so is ends
 * @param sun empty where the job does not say where it is
 * @param told whether the job tells night from day for these hours
 * @param night hours of the work that are night as the contract defines it
 */
public record PlannedNight(
        LocalDate date,
        Planning.Turn shift,
        ZonedDateTime begins,
        ZonedDateTime ends,
        Optional<Times> sun,
        boolean told,
        List<Spell> night) {
    /** Dawn and dusk are the ends of civil twilight; each is empty where the sun has none that day. */
    public record Times(
            Optional<ZonedDateTime> dawn,
            Optional<ZonedDateTime> rise,
            Optional<ZonedDateTime> set,
            Optional<ZonedDateTime> dusk) {}

    /** From one time to another. */
    public record Spell(ZonedDateTime from, ZonedDateTime to) {}

    /** The most days of one period that are looked at. */
    private static final int MOST = 400;

    /** Every planned day, in the order of the periods. */
    public static List<PlannedNight> all(Job job) {
        List<PlannedNight> all = new ArrayList<>();
        for (Planning.Period period : job.planning().work()) {
            period.from()
                    .datesUntil(period.to().plusDays(1))
                    .limit(MOST)
                    .forEach(date -> all.add(of(job, period, date)));
        }
        return List.copyOf(all);
    }

    private static PlannedNight of(Job job, Planning.Period period, LocalDate date) {
        LocalTime from = period.begins();
        LocalTime to = period.ends();
        if (from == null || to == null) {
            return new PlannedNight(date, period.shift(), null, null, sun(job, date), false, List.of());
        }
        ZonedDateTime begins = date.atTime(from).atZone(job.zone());
        ZonedDateTime ends =
                (to.isAfter(from) ? date : date.plusDays(1)).atTime(to).atZone(job.zone());
        boolean told = Cases.light(job, begins).isPresent();
        return new PlannedNight(
                date, period.shift(), begins, ends, sun(job, date), told, told ? spells(job, begins, ends) : List.of());
    }

    private static Optional<Times> sun(Job job, LocalDate date) {
        return Cases.spot(job)
                .map(at -> new Times(
                        local(job, Sun.dawn(date, at.north(), at.east())),
                        local(job, Sun.rise(date, at.north(), at.east())),
                        local(job, Sun.set(date, at.north(), at.east())),
                        local(job, Sun.dusk(date, at.north(), at.east()))));
    }

    private static Optional<ZonedDateTime> local(Job job, Optional<Instant> time) {
        return time.map(t -> t.atZone(job.zone()));
    }

    /** Between two times at which the light may change it stays as it is. */
    private static List<Spell> spells(Job job, ZonedDateTime begins, ZonedDateTime ends) {
        TreeSet<ZonedDateTime> times = new TreeSet<>(Cases.changes(job, begins, ends).stream()
                .filter(at -> at.isAfter(begins) && at.isBefore(ends))
                .toList());
        times.add(begins);
        List<Spell> spells = new ArrayList<>();
        ZonedDateTime since = null;
        for (ZonedDateTime at : times) {
            boolean dark = Cases.light(job, at).filter("night"::equals).isPresent();
            if (dark && since == null) {
                since = at;
            } else if (!dark && since != null) {
                spells.add(new Spell(since, at));
                since = null;
            }
        }
        if (since != null) {
            spells.add(new Spell(since, ends));
        }
        return List.copyOf(spells);
    }
}
