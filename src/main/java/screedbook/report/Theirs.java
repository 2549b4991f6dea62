package screedbook.report;

import java.util.List;
import screedbook.entry.Closing;
import screedbook.entry.Moment;
import screedbook.entry.PlantTotal;
import screedbook.tally.PlantCount;
import screedbook.tally.Tons;
import screedbook.tally.Totals;
import screedbook.unit.Amount;

/** What is kept here beside the figures of the contractor and of the plants. */
final class Theirs {
    private final DayPaper paper;
    private final Totals totals;
    private final Leaf leaf;

    Theirs(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.totals = paper.totals();
        this.leaf = leaf;
    }

    /** Ours beside theirs: in one line where they are the same and agreed. */
    void reconciliation() {
        Closing.Theirs theirs =
                paper.day().last(Closing.class).map(c -> c.entry().theirs()).orElse(null);
        Tons ours = totals.shift();
        String kept = Leaf.many(ours.loads(), "load") + ", "
                + ours.received().shown(2).text();
        if (theirs == null || (theirs.their() == null && theirs.theirLoads() == null)) {
            leaf.say(0, "RECONCILIATION: received, as kept here: " + kept + "; the contractor's figures are not noted");
        } else if (same(theirs, ours)) {
            leaf.say(
                    0,
                    "RECONCILIATION: " + kept + ", here and with "
                            + (theirs.theirName() == null ? "the contractor" : theirs.theirName()) + "; agreed: yes"
                            + Entries.phrases(";", theirs.why()));
        } else {
            leaf.heading("RECONCILIATION");
            compared(theirs, ours);
        }
        plants();
    }

    private static boolean same(Closing.Theirs theirs, Tons ours) {
        return theirs.agreed() == Closing.Agreed.YES
                && theirs.theirLoads() != null
                && theirs.theirLoads() == ours.loads()
                && theirs.their() != null
                && theirs.their().unit() == ours.received().unit()
                && theirs.their().compareTo(ours.received()) == 0;
    }

    /** What the plants told, and how their own lists lie beside the record. */
    private void plants() {
        for (PlantCount count : PlantCount.all(
                paper.day(), totals.loads(), totals.shift().received().unit())) {
            PlantTotal told = count.told().entry();
            leaf.say(
                    1,
                    count.name() + " until " + Moment.clock(count.told().order()) + ": the plant "
                            + Rounded.dash(told.loads()) + " loads, "
                            + (told.tons() == null ? "-" : told.tons().text()) + "; here "
                            + count.mine().size() + " loads, " + Rounded.two(count.tons()) + " "
                            + count.tons().unit().symbol());
        }
        totals.sections().stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().startsWith("plant-list."))
                .forEach(f -> leaf.say(1, f.label() + ": " + f.text()));
    }

    private void compared(Closing.Theirs theirs, Tons ours) {
        Amount their = theirs.their();
        boolean same = their != null && their.unit() == ours.received().unit();
        leaf.table(
                List.of("", "loads", "received " + ours.received().unit().symbol()),
                List.of(
                        List.of("as kept here", Integer.toString(ours.loads()), Rounded.two(ours.received())),
                        List.of(
                                "theirs" + (theirs.theirName() == null ? "" : ", " + theirs.theirName()),
                                Rounded.dash(theirs.theirLoads()),
                                their == null ? "-" : same ? Rounded.two(their) : their.text()),
                        List.of(
                                "difference",
                                theirs.theirLoads() == null
                                        ? "-"
                                        : Integer.toString(ours.loads() - theirs.theirLoads()),
                                same ? Rounded.two(ours.received().minus(their)) : "-")));
        if (theirs.agreed() != null) {
            leaf.say(1, "agreed: " + theirs.agreed().word().replace('-', ' ') + Entries.phrases(";", theirs.why()));
        }
    }
}
