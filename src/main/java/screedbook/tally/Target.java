package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.calc.SpreadRate;
import screedbook.job.Job;
import screedbook.unit.Amount;

/**
 * The spread rate that a pull is planned with.
 *
 * @param weight what the mix weighs in the mat; empty where the job has no such mix
 * @param rate empty where no thickness is planned, or it varies
 * @param put the steps
 */
record Target(Optional<UnitWeight> weight, Optional<Amount> rate, List<String> put) {
    /** @param mix as the ticket has it; null where none is noted, then the lift's */
    static Target of(Job job, String pull, Integer lift, String mix) {
        Optional<Job.Lift> planned = lift(job, pull, lift);
        Optional<UnitWeight> weight = job.mix(planned.map(Job.Lift::mix).orElse(mix))
                .or(() -> job.mix(mix))
                .map(UnitWeight::of);
        List<String> put = new ArrayList<>();
        weight.ifPresent(u -> put.add("unit weight " + u.weight().text() + ": " + u.source()));
        Optional<Amount> thick = planned.filter(l -> !l.levels()).map(Job.Lift::thickness);
        Optional<Amount> rate = weight.flatMap(u -> thick.map(t -> SpreadRate.target(t, u.weight())));
        rate.ifPresent(t -> put.add("target " + t.shown(1).text() + " for "
                + thick.map(Amount::text).orElse("") + " planned"));
        if (planned.filter(Job.Lift::levels).isPresent()) {
            put.add("no target: the lift levels, its thickness varies");
        }
        return new Target(weight, rate, List.copyOf(put));
    }

    /** The lift noted; else the one in which the pull lies; else the only one of the job. */
    static Optional<Job.Lift> lift(Job job, String pull, Integer lift) {
        if (lift != null) {
            return job.lift(lift);
        }
        List<Job.Lift> of = job.pulls().stream()
                .filter(p -> p.name().equals(pull))
                .flatMap(p -> job.lift(p.lift()).stream())
                .distinct()
                .toList();
        List<Job.Lift> any = of.isEmpty() ? job.lifts() : of;
        return any.size() == 1 ? Optional.of(any.get(0)) : Optional.empty();
    }

    Optional<Amount> percent(Optional<Amount> is) {
        return is.flatMap(r -> rate.flatMap(t -> SpreadRate.percentOf(t, r)));
    }

    Optional<Amount> thickness(Optional<Amount> is) {
        return is.flatMap(r -> weight.map(u -> SpreadRate.equivalentThickness(r, u.weight())));
    }
}
