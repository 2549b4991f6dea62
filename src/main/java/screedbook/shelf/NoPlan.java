package screedbook.shelf;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;
import screedbook.unit.Unit;

/** A shift whose job cannot be found: it is still added up, as printed and measured, and asked for nothing. */
final class NoPlan {
    private NoPlan() {}

    /** The totals that need no plan. */
    static Totals totals(Day day, ToDate before, java.time.OffsetDateTime now) {
        Totals all = Totals.of(day, job(day), before, now);
        return new Totals(
                all.sections().stream()
                        .filter(section -> !section.id().equals("checks"))
                        .toList(),
                List.of(),
                all.loads(),
                all.shots(),
                all.tons(),
                all.runs(),
                List.of(),
                all.left(),
                all.before());
    }

    /** What the lines themselves say of their job; everything else is not settled. */
    private static Job job(Day day) {
        String id =
                day.all().stream().map(each -> each.line().job()).findFirst().orElse("");
        return new Job(
                        id,
                        id,
                        null,
                        null,
                        null,
                        null,
                        zone(day),
                        units(day),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null)
                .settled();
    }

    private static ZoneId zone(Day day) {
        Optional<ZoneId> told =
                day.opening().map(Standing::entry).map(Opening::zone).flatMap(NoPlan::zone);
        return told.orElseGet(() -> day.all().stream()
                .map(Standing::line)
                .map(Line::keyed)
                .<ZoneId>map(keyed -> keyed.getOffset())
                .findFirst()
                .orElse(ZoneOffset.UTC));
    }

    private static Optional<ZoneId> zone(String told) {
        try {
            return Optional.of(ZoneId.of(told));
        } catch (java.time.DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A job has one system: that of its printed weights. */
    private static Job.Units units(Day day) {
        boolean metric = day.standing(Ticket.class).stream()
                .map(each -> each.entry().weights().net())
                .filter(Objects::nonNull)
                .anyMatch(net -> net.unit() == Unit.TONNE);
        return metric ? Job.Units.METRIC : Job.Units.US;
    }
}
