package screedbook.report;

import java.util.List;
import screedbook.check.InShort;
import screedbook.entry.Damage;

/**
 * One job's season for its page.
 *
 * @param id as its lines name it
 * @param folder where it lies, as it was named
 * @param parts months, weeks, the job, its mixes, pulls and lifts
 * @param shifts each in one line, oldest first
 * @param damages what is not as it was written
 * @param notRead lines in no total: {@code 2026-05-18-day paver line 12: } and the reason
 */
public record SeasonJob(
        String id,
        String name,
        String folder,
        List<SeasonPart> parts,
        List<InShort> shifts,
        List<Damage> damages,
        List<String> notRead) {
    public SeasonJob with(List<SeasonPart> others) {
        return new SeasonJob(id, name, folder, others, shifts, damages, notRead);
    }
}
