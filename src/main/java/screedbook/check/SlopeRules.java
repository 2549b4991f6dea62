package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Straightedge;
import screedbook.spec.Quantity;
import screedbook.tally.CrossSlope;
import screedbook.unit.Amount;

/** Rules about the slope across the mat beside the planned one. */
final class SlopeRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "cross-slope",
                    Sort.OUTSIDE,
                    "A cross slope lies as near to the planned one as the sheet says.",
                    SlopeRules::single),
            new Rule(
                    "cross-slope-mean",
                    Sort.OUTSIDE,
                    "Ten cross slopes in a row lie on average as near to the planned one as the sheet says.",
                    SlopeRules::mean));

    private SlopeRules() {}

    private static List<CrossSlope> all(Look look) {
        return look.job().map(job -> CrossSlope.of(look.day(), job)).orElse(List.of());
    }

    private static Bounds bounds(Look look, Standing<Straightedge> entry, Quantity quantity) {
        return look.ofMat(entry, null, entry.entry().lift(), entry.entry().pull())
                .map(c -> c.bounds(quantity))
                .orElse(Bounds.NONE);
    }

    private static List<Mark> single(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (CrossSlope on : all(look)) {
            for (CrossSlope.Reading each : on.readings()) {
                Straightedge read = each.entry().entry();
                marks.addAll(Marks.judged(
                        bounds(look, each.entry(), Quantity.CROSS_SLOPE),
                        List.of(each.entry().ref()),
                        on.name() + (read.place() == null ? "" : " " + read.place()) + ": cross slope "
                                + each.slope().text()
                                + (on.planned() == null
                                        ? ""
                                        : ", planned " + on.planned().text()) + ", off",
                        each.off(),
                        ""));
            }
        }
        return marks;
    }

    private static List<Mark> mean(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (CrossSlope on : all(look)) {
            for (int last = 0; last < on.readings().size(); last++) {
                Optional<Amount> mean = on.mean(last);
                Standing<Straightedge> entry = on.readings().get(last).entry();
                List<Ref> of = new ArrayList<>(List.of(entry.ref()));
                on.readings()
                        .subList(Math.max(0, last + 1 - CrossSlope.IN_A_ROW), last)
                        .forEach(r -> of.add(r.entry().ref()));
                mean.ifPresent(m -> marks.addAll(Marks.judged(
                        bounds(look, entry, Quantity.CROSS_SLOPE_MEAN),
                        of,
                        on.name() + ": mean of ten cross slopes in a row, off the planned "
                                + on.planned().text(),
                        m,
                        "")));
            }
        }
        return marks;
    }
}
