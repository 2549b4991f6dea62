package screedbook.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.picture.Dot;
import screedbook.picture.TonsStrip;
import screedbook.tally.Pace;

/** Tons placed against the clock on the page; of a shift that goes on, with when the planned work is done at its pace. */
final class TonsByTheClock {
    private static final int LINES = 5;
    /** Of fewer loads the table says as much. */
    private static final int FEWEST = 10;

    private final DayPaper paper;
    private final Leaf leaf;

    TonsByTheClock(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.leaf = leaf;
    }

    void write() {
        List<Dot> dots = Dot.placed(paper.totals().loads());
        if (dots.size() < FEWEST) {
            return;
        }
        Optional<TonsStrip.Target> target = target(dots);
        leaf.blank();
        leaf.say(
                1,
                "placed against the clock"
                        + target.map(t -> "; : at this pace, = as planned").orElse(""));
        TonsStrip.of(dots, target, Leaf.PAPER - 1, LINES).forEach(line -> leaf.drawn(" " + line));
    }

    private Optional<TonsStrip.Target> target(List<Dot> dots) {
        Pace pace =
                paper.job().map(j -> Pace.of(paper.day(), j, paper.totals())).orElse(Pace.NONE);
        return Stream.of(pace.shift(), pace.pull())
                .flatMap(Optional::stream)
                .filter(f -> f.at() != null)
                .findFirst()
                .map(f -> new TonsStrip.Target(
                        dots.get(dots.size() - 1).value().add(f.left().value()), f.at(), Optional.empty()));
    }
}
