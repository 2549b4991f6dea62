package screedbook.shelf;

import java.util.List;
import screedbook.check.PlanFigures;
import screedbook.check.PlanFindings;
import screedbook.diary.JobFolder;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.report.PlanPaper;
import screedbook.spec.SpecSheet;
import screedbook.tally.HaulLoss;
import screedbook.unit.Measure;

/** A plan read from the disk made ready for the pre-paving sheet. */
public final class PlanPapers {
    private PlanPapers() {}

    public static PlanPaper of(JobFolder folder, Job job, SpecSheet sheet) {
        return new PlanPaper(
                job,
                standing(folder, job),
                sheet,
                PlanFindings.of(job, sheet),
                PlanFigures.of(job, sheet),
                HaulLoss.of(new Before(folder, new Agreements(folder)).all(), Measure.TEMPERATURE.unit(job.system())),
                folder.reached());
    }

    private static String standing(JobFolder folder, Job job) {
        List<Agreed> revisions = folder.revisions();
        if (revisions.isEmpty()) {
            return "job not accepted yet";
        }
        Agreed last = revisions.get(revisions.size() - 1);
        return last.job().equals(job)
                ? "job revision " + last.revision()
                : "job changed since revision " + last.revision();
    }
}
