package screedbook.report;

import screedbook.picture.LotEnd;
import screedbook.picture.RoadStrip;

/** The road by pull and station on the page, in pieces of its width. */
final class RoadDrawn {
    private final DayPaper paper;
    private final Leaf leaf;

    RoadDrawn(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.leaf = leaf;
    }

    void write() {
        paper.job().ifPresent(job -> {
            RoadStrip strip = RoadStrip.fitted(
                    paper.totals().road(),
                    job,
                    LotEnd.of(paper.day(), job, paper.totals().before()),
                    Leaf.PAPER - 1);
            if (strip.empty()) {
                return;
            }
            leaf.heading("ROAD BY PULL AND STATION");
            strip.pieces(Leaf.PAPER - 1).forEach(piece -> piece.forEach(line -> leaf.drawn(" " + line)));
            strip.legend(Leaf.PAPER - 1).forEach(line -> leaf.drawn(" " + line));
        });
    }
}
