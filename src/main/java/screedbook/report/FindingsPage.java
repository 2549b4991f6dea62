package screedbook.report;

import java.util.List;
import screedbook.check.Cautions;
import screedbook.check.Finding;
import screedbook.check.Sort;

/** Every finding of a shift as plain text, 80 columns wide, sort by sort, with its answers. */
public final class FindingsPage {
    private FindingsPage() {}

    /** The page; every line ends with a line feed. */
    public static String text(DayPaper paper) {
        Leaf leaf = new Leaf(Leaf.PAPER);
        Entries entries = new Entries(paper);
        leaf.ends(paper.jobName(), paper.day().shift().toString());
        if (!paper.whole()) {
            leaf.say(0, DayPaper.COPY);
        }
        for (Sort sort : Sort.values()) {
            List<Finding> of =
                    paper.findings().stream().filter(f -> f.sort() == sort).toList();
            if (!of.isEmpty()) {
                leaf.heading(sort.text() + ", " + of.size());
                of.forEach(f -> {
                    leaf.say(1, OneFinding.text(f, entries));
                    OneFinding.answers(f, entries, leaf);
                });
            }
        }
        if (paper.findings().isEmpty()) {
            leaf.say(0, "nothing found");
        }
        leaf.blank();
        leaf.say(0, Cautions.GOVERNS);
        return String.join("\n", leaf.lines()) + "\n";
    }
}
