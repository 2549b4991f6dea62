package screedbook.report;

import java.util.List;
import java.util.Map;
import screedbook.check.Finding;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.HaulLoss;
import screedbook.tally.Section;

/**
 * Everything that the pre-paving sheet is made of.
 *
 * @param standing which revision of the job this is, in words: {@code job revision 3}
 * @param findings of the plan
 * @param figures what the planned work comes to
 * @param seen what the job's own loads lost on the way so far, by plant
 * @param reached how people are reached, by their initials; empty where nobody says so
 */
public record PlanPaper(
        Job job,
        String standing,
        SpecSheet sheet,
        List<Finding> findings,
        List<Section> figures,
        List<HaulLoss> seen,
        Map<String, String> reached) {}
