package screedbook.shelf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Ground;
import screedbook.check.InForce;
import screedbook.diary.JobFolder;
import screedbook.diary.LimitSheets;
import screedbook.entry.Day;
import screedbook.entry.Opening;
import screedbook.entry.Plan;
import screedbook.entry.Standing;
import screedbook.job.Agreed;
import screedbook.spec.SpecSheet;

/**
 * The jobs and sheets that lines name by hash. What has been found once is kept: a hash never means anything else. What
 * has not is looked for again.
 */
final class Agreements {
    private final JobFolder folder;
    private final Map<String, Agreed> jobs = new HashMap<>();
    private final Map<Named, SpecSheet> sheets = new HashMap<>();

    /** A sheet as a line names it. */
    private record Named(String name, String sha256) {}

    /** What a book is judged by, as its lines say. */
    private record Said(String job, Named sheet) {}

    Agreements(JobFolder folder) {
        this.folder = folder;
    }

    /** For each opening and plan line what was in force from it on, in reading order. */
    Ground ground(Day day) {
        Map<String, Said> books = new HashMap<>();
        List<InForce> inForce = new ArrayList<>();
        for (Standing<?> each : day.all()) {
            String book = each.line().book();
            if (each.entry() instanceof Opening opening) {
                books.put(book, said(opening));
            } else if (each.entry() instanceof Plan plan && !each.struck()) {
                books.merge(book, said(plan), Agreements::over);
            } else {
                continue;
            }
            Said said = books.get(book);
            inForce.add(new InForce(book, each.line().n(), job(said.job()), sheet(said.sheet())));
        }
        return new Ground(List.copyOf(inForce));
    }

    private static Said said(Opening opening) {
        return new Said(opening.jobSha256(), new Named(opening.sheet(), opening.sheetSha256()));
    }

    private static Said said(Plan plan) {
        return new Said(plan.jobSha256(), new Named(plan.sheet(), plan.sheetSha256()));
    }

    /** A plan line changes the job, the sheet or both; what it does not name stays. */
    private static Said over(Said before, Said plan) {
        return new Said(
                plan.job() == null ? before.job() : plan.job(),
                plan.sheet().sha256() == null ? before.sheet() : plan.sheet());
    }

    private Optional<Agreed> job(String sha256) {
        if (sha256 != null && !jobs.containsKey(sha256)) {
            folder.revisions().forEach(each -> jobs.put(each.sha256(), each));
        }
        return Optional.ofNullable(jobs.get(sha256));
    }

    private Optional<SpecSheet> sheet(Named named) {
        if (named.name() == null || named.sha256() == null) {
            return Optional.empty();
        }
        if (!sheets.containsKey(named)) {
            found(named).ifPresent(sheet -> sheets.put(named, sheet));
        }
        return Optional.ofNullable(sheets.get(named));
    }

    /** The sheet that was frozen for the shift, or the shipped one while it is still the same. */
    private Optional<SpecSheet> found(Named named) {
        Optional<SpecSheet> frozen = LimitSheets.in(folder)
                .frozen(named.name(), named.sha256())
                .flatMap(bytes -> SpecSheet.kept(named.name(), bytes).sheet());
        return frozen.isPresent()
                ? frozen
                : SpecSheet.shipped(named.name()).filter(sheet -> sheet.sha256().equals(named.sha256()));
    }
}
