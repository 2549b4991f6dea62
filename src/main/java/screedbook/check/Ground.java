package screedbook.check;

import java.util.List;
import java.util.Optional;
import screedbook.entry.Line;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** What entries are judged by: for each line the job and the sheet that were in force when it was keyed. */
public record Ground(List<InForce> inForce) {
    /** What was in force when a line was written: the last opening or plan line of its book up to it. */
    public Optional<InForce> of(Line line) {
        InForce found = null;
        for (InForce each : inForce) {
            if (each.book().equals(line.book()) && each.from() <= line.n()) {
                found = each;
            }
        }
        return Optional.ofNullable(found);
    }

    /** What is in force for an entry that is being keyed: the newest. */
    public Optional<InForce> now() {
        return inForce.isEmpty() ? Optional.empty() : Optional.of(inForce.get(inForce.size() - 1));
    }

    /** The newest job, for totals and lists; empty when its revision cannot be found. */
    public Optional<Job> job() {
        return now().flatMap(InForce::agreed).map(Agreed::job);
    }

    public Optional<SpecSheet> sheet() {
        return now().flatMap(InForce::sheet);
    }
}
