package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Moment;
import screedbook.job.Agreed;
import screedbook.job.JobChanges;
import screedbook.job.Revision;

/** What the keys do where two revisions of a job are held against each other. */
final class ChangeKeys {
    private ChangeKeys() {}

    /** Every accepted revision, oldest first, and the sheet as it lies on the desk behind them. */
    private static List<Revision> versions(Sheet sheet) {
        List<Revision> versions = new ArrayList<>(sheet.read().revisions());
        if (sheet.touched() && sheet.job().isPresent()) {
            Agreed now = new Agreed(sheet.job().get(), versions.size() + 1, "");
            versions.add(new Revision(now, "", null, "as typed here, not written"));
        }
        return versions;
    }

    static Step changes(Model model) {
        int last = versions(model.sheet()).size() - 1;
        if (last < 1) {
            return Step.of(model.say("there is no other revision to hold against"));
        }
        return Step.of(model.push(compared(model, last, last - 1)));
    }

    /** Another revision on one side or the other. */
    static Step other(Model model, int later, int earlier) {
        Screen.Changes changes = (Screen.Changes) model.top();
        return Step.of(model.top(compared(model, changes.later() + later, changes.earlier() + earlier)));
    }

    private static Screen compared(Model model, int later, int earlier) {
        List<Revision> versions = versions(model.sheet());
        int to = Math.max(0, Math.min(versions.size() - 1, later));
        int from = Math.max(0, Math.min(versions.size() - 1, earlier));
        List<String> lines = new ArrayList<>();
        lines.add("to    " + told(versions.get(to)));
        lines.add("from  " + told(versions.get(from)));
        lines.add("");
        List<JobChanges.Change> changes =
                JobChanges.between(versions.get(from).job(), versions.get(to).job());
        changes.forEach(c -> lines.add(c.text()));
        if (changes.isEmpty()) {
            lines.add("both say the same");
        }
        return new Screen.Changes(to, from, List.copyOf(lines), 0);
    }

    static String told(Revision revision) {
        if (revision.agreed().sha256().isEmpty()) {
            return revision.why();
        }
        String when = revision.when() == null
                ? ""
                : " of " + revision.when().toLocalDate() + " " + Moment.clock(revision.when());
        return "revision " + revision.number() + when + " by " + revision.who()
                + (revision.why() == null ? "" : ": " + revision.why());
    }
}
