package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Moment;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.job.Road;
import screedbook.unit.Amount;

/**
 * Tons against the clock: when the planned work is done if it goes on as it went, and by when the last load has to
 * leave. It is told of a shift that goes on, and only of what the job plans.
 *
 * @param shift tons of the whole shift that are planned; empty where the job settles none
 * @param pull the stretch that is being paved; empty where the job plans no stretch of this pull
 * @param last by what the work ends, as the job has it
 */
public record Pace(Optional<Finish> shift, Optional<Finish> pull, List<LastLoad> last) {
    /** Nothing is foretold. */
    public static final Pace NONE = new Pace(Optional.empty(), Optional.empty(), List.of());

    private static final int SECONDS = 3600;

    /**
     * When planned work is done.
     *
     * @param what {@code the shift}, {@code pull B lift 2}
     * @param planned tons of all of it; of a pull what is left of it and what was laid of it in this shift
     * @param left tons that are still to be placed, never below 0
     * @param at when they are placed at the pace of the shift so far; null when nothing is left
     */
    public record Finish(String what, Amount planned, Amount left, OffsetDateTime at, Working working) {}

    /** Of a day with its totals. */
    public static Pace of(Day day, Job job, Totals totals) {
        return of(day, job, totals.shift(), totals.runs());
    }

    static Pace of(Day day, Job job, Tons all, List<Run> runs) {
        if (day.closed() || all.perHour().isEmpty() || all.perHour().get().signum() <= 0) {
            return NONE;
        }
        return new Pace(
                shift(job, all),
                pull(job, all, runs),
                LastLoad.on(job, day.shift().date()));
    }

    private static Optional<Finish> shift(Job job, Tons all) {
        Planning.Production made = job.planning().production();
        if (made == null || made.plantRate() == null || made.hours() == null) {
            return Optional.empty();
        }
        Amount planned = new Amount(
                made.plantRate().to(all.placed().unit()).value().multiply(made.hours()),
                all.placed().unit());
        Amount left = planned.minus(all.placed());
        String put = made.plantRate().text() + " an hour x " + made.hours().toPlainString() + " h = "
                + planned.shown(0).text() + ", less " + all.placed().text() + " placed";
        return Optional.of(finish("the shift", planned, left, all, put));
    }

    /** What is left of the planned stretch on which the paver stands, at the planned thickness. */
    private static Optional<Finish> pull(Job job, Tons all, List<Run> runs) {
        if (runs.isEmpty() || runs.get(runs.size() - 1).end() == null) {
            return Optional.empty();
        }
        Run run = runs.get(runs.size() - 1);
        Road road = Road.of(job);
        return job.planning().planned().stream()
                .filter(s -> s.pull().equals(run.pull()) && s.lift().equals(run.lift()) && on(road, s, run))
                .findFirst()
                .flatMap(s -> {
                    Planning.Stretch rest = new Planning.Stretch(s.pull(), s.lift(), run.end(), far(job, road, s, run));
                    return Length.of(job, road, rest).flatMap(l -> l.tons(job).map(t -> pull(run, l, t, all)));
                });
    }

    private static Finish pull(Run run, Length rest, Amount tons, Tons all) {
        Amount left = new Amount(tons.value(), all.placed().unit());
        return finish(
                "pull " + run.name(),
                left.plus(run.laid()),
                left,
                all,
                rest.put() + ": " + left.shown(1).text());
    }

    private static boolean on(Road road, Planning.Stretch s, Run run) {
        return road.between(road.along(run.end()), s.from(), s.to());
    }

    /** The end of the stretch that lies ahead as the pull is paved. */
    private static Station far(Job job, Road road, Planning.Stretch s, Run run) {
        Job.Direction direction = job.pull(run.pull(), run.lift())
                .map(Job.Pull::direction)
                .orElse(job.stationing().direction());
        boolean rises = road.along(s.from()).compareTo(road.along(s.to())) <= 0;
        return rises == (direction != Job.Direction.DOWN) ? s.to() : s.from();
    }

    private static Finish finish(String what, Amount planned, Amount left, Tons all, String put) {
        BigDecimal rate = all.perHour().orElseThrow();
        boolean done = left.value().signum() <= 0;
        long seconds = done
                ? 0
                : left.value()
                        .multiply(BigDecimal.valueOf(SECONDS))
                        .divide(rate, 0, RoundingMode.HALF_UP)
                        .longValueExact();
        OffsetDateTime at = done ? null : all.last().plusSeconds(seconds);
        List<String> steps = new ArrayList<>(List.of(put));
        if (!done) {
            steps.add(
                    left.shown(1).text() + " / " + rate.toPlainString() + " an hour after " + Moment.clock(all.last()));
        }
        Working working = new Working(
                "last discharge + tons left / tons an hour of the shift so far",
                List.copyOf(steps),
                all.entries(),
                "common practice, no source");
        Amount rest = done ? new Amount(BigDecimal.ZERO, left.unit()) : left;
        return new Finish(what, planned, rest, at, working);
    }

    Section section() {
        Figures figures = new Figures();
        shift.ifPresent(f -> told(figures, "shift", f));
        pull.ifPresent(f -> told(figures, "pull", f));
        if (shift.isPresent() || pull.isPresent()) {
            last.forEach(l -> figures.text(
                    "pace-last-load." + l.name(),
                    "last load leaves " + l.way() + ", " + l.what(),
                    l.leaves().toString(),
                    l.working()));
        }
        return figures.section("pace", "Pace");
    }

    private static void told(Figures figures, String id, Finish f) {
        figures.amount("pace-left." + id, f.what() + ", tons left as planned", f.left(), 0, f.working());
        String at = f.at() == null ? "all that was planned is placed" : Moment.clock(f.at());
        figures.text("pace-finish." + id, f.what() + ", done at this pace", at, f.working());
    }
}
