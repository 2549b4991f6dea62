package screedbook.tally;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Field;
import screedbook.entry.Opening;
import screedbook.entry.Standing;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/** The little that a day's own lines say of its job, for totals where the job revision cannot be found. */
public final class Unplanned {
    private Unplanned() {}

    /** The totals of a day whose plan is not there: as printed and measured, and nothing was asked for. */
    public static Totals totals(Day day, ToDate before, OffsetDateTime now) {
        return Totals.of(day, job(day), before, now);
    }

    /** A job with the lines' id, zone and units, and nothing planned: no width, no rate, no check is taken from elsewhere. */
    public static Job job(Day day) {
        String id = day.all().isEmpty() ? "" : day.all().get(0).line().job();
        ZoneId zone = zone(day);
        Job.Units units = day.all().stream()
                .map(Unplanned::units)
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(Job.Units.US);
        Amount never = Amount.of("0", Unit.MINUTE);
        Checks none = new Checks(0, 0, null, never, never, never, null, 0, YesNo.NO, null);
        return new Job(
                        id, id, null, null, null, null, zone, units, null, null, null, null, null, null, null, null,
                        null, null, null, null, null, null, none, null, null, null, null)
                .settled();
    }

    /** As the opening says; else the offset of the first line. */
    private static ZoneId zone(Day day) {
        return day.opening()
                .map(Standing::entry)
                .map(Opening::zone)
                .filter(ZoneId.getAvailableZoneIds()::contains)
                .map(ZoneId::of)
                .orElseGet(() -> day.all().isEmpty()
                        ? ZoneOffset.UTC
                        : day.all().get(0).line().keyed().getOffset());
    }

    /** The system of an entry's first amount that tells. */
    private static Optional<Job.Units> units(Standing<?> standing) {
        Record entry = (Record) standing.entry();
        return standing.entry().kind().fields().stream()
                .map(field -> units(field, field.get(entry)))
                .filter(Objects::nonNull)
                .findFirst();
    }

    private static Job.Units units(Field field, Object value) {
        if (field.measure().isEmpty() || !(value instanceof Amount amount)) {
            return null;
        }
        boolean us = field.measure().get().unit(UnitSystem.US) == amount.unit();
        boolean metric = field.measure().get().unit(UnitSystem.METRIC) == amount.unit();
        return us == metric ? null : us ? Job.Units.US : Job.Units.METRIC;
    }
}
