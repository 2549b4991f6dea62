package screedbook.tally;

import java.util.List;
import java.util.Optional;
import screedbook.calc.SpreadRate;
import screedbook.calc.Strip;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.job.Road;
import screedbook.unit.Amount;

/** A planned stretch of a pull with its measures; equations are counted in its length. */
record Length(Planning.Stretch stretch, Job.Pull pull, Job.Lift lift, Amount along, Amount area) {
    /** The stretches of a plan whose pull and lift are in the job, in the job's order. */
    static List<Length> all(Job job) {
        Road road = Road.of(job);
        return job.planning().planned().stream()
                .map(s -> of(job, road, s))
                .flatMap(Optional::stream)
                .toList();
    }

    static Optional<Length> of(Job job, Road road, Planning.Stretch s) {
        return job.pull(s.pull(), s.lift())
                .flatMap(pull -> job.lift(s.lift()).map(lift -> {
                    Amount along = road.length(s.from(), s.to());
                    return new Length(s, pull, lift, along, Strip.area(pull.width(), along));
                }));
    }

    /** Pull, lift and stations, with the area as it comes. */
    String put() {
        return "pull " + pull.name() + " lift " + lift.number() + " " + stretch.from() + " to " + stretch.to() + ": "
                + pull.width().text() + " x " + along.text() + " = "
                + area.shown(1).text();
    }

    /** What the stretch takes of its lift's mix at the planned thickness; empty where the job has no such mix. */
    Optional<Amount> tons(Job job) {
        return job.mix(lift.mix())
                .map(mix ->
                        SpreadRate.target(lift.thickness(), UnitWeight.of(mix).weight()))
                .map(rate -> SpreadRate.weightFor(area, rate));
    }
}
