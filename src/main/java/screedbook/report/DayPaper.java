package screedbook.report;

import java.util.List;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Seal;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.Totals;

/**
 * Everything that a shift's page is made of.
 *
 * @param agreed the job revision in force; empty when it cannot be found by its hash
 * @param sheet the limit sheet in force; empty when it cannot be found by its hash
 * @param seals of the books that are closed
 * @param damages where the shift's files are not as they were written
 * @param revision of the page: 1, and 2 and more after late lines
 * @param whole whether remarks are in it; without them it is a copy for the contractor
 */
public record DayPaper(
        Day day,
        Totals totals,
        List<Finding> findings,
        Optional<Agreed> agreed,
        Optional<SpecSheet> sheet,
        List<Seal> seals,
        List<Damage> damages,
        int revision,
        boolean whole) {
    public DayPaper(
            Day day,
            Totals totals,
            List<Finding> findings,
            Optional<Agreed> agreed,
            Optional<SpecSheet> sheet,
            List<Seal> seals,
            List<Damage> damages,
            int revision) {
        this(day, totals, findings, agreed, sheet, seals, damages, revision, true);
    }

    /** What a copy says of itself. */
    static final String COPY = "copy without remarks: notes, answers and who said what stand in the record";

    Optional<Job> job() {
        return agreed.map(Agreed::job);
    }

    /** The job's id as its lines have it, or as agreed where there is no line. */
    String jobId() {
        return day.all().isEmpty()
                ? job().map(Job::id).orElse("job not known")
                : day.all().get(0).line().job();
    }

    /** The job's name, or its id where the revision cannot be found. */
    String jobName() {
        return job().map(Job::name).orElseGet(this::jobId);
    }
}
