package screedbook.report;

import java.util.List;
import java.util.stream.Collectors;
import screedbook.entry.Ref;
import screedbook.tally.Figure;
import screedbook.tally.Working;

/** How one figure came about, wrapped to a width, for paper and for a file. */
public final class WorkingPage {
    private WorkingPage() {}

    /** The figure, its formula, each step, the entries and the source; no line is wider than asked, nor than 20. */
    public static List<String> lines(Figure figure, int width) {
        return lines(figure.label() + "  " + figure.text(), figure.working(), width);
    }

    /** The same for anything else that has a working: a check that is due. */
    public static List<String> lines(String title, Working working, int width) {
        Leaf leaf = new Leaf(width);
        leaf.say(0, title);
        leaf.blank();
        leaf.say(0, working.formula());
        working.put().forEach(step -> leaf.say(1, step));
        if (!working.entries().isEmpty()) {
            leaf.blank();
            leaf.say(
                    0,
                    "entries " + working.entries().stream().map(Ref::toString).collect(Collectors.joining(", ")));
        }
        leaf.blank();
        leaf.say(0, "source: " + working.source());
        return leaf.lines();
    }
}
