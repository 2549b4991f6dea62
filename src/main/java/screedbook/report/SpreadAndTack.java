package screedbook.report;

import java.util.List;
import java.util.stream.Collectors;
import screedbook.job.Job;
import screedbook.tally.Figure;
import screedbook.tally.Run;
import screedbook.tally.Shot;
import screedbook.tally.Totals;
import screedbook.unit.Unit;

/** What was laid and sprayed on so much road: spread rate and tack. */
final class SpreadAndTack {
    private final DayPaper paper;
    private final Totals totals;
    private final Leaf leaf;

    SpreadAndTack(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.totals = paper.totals();
        this.leaf = leaf;
    }

    void spread() {
        if (totals.runs().isEmpty()) {
            return;
        }
        leaf.heading("SPREAD RATE, averages over each pull; the thickness is worked out from them");
        boolean metric = totals.runs().get(0).laid().unit() == Unit.TONNE;
        leaf.table(
                metric
                        ? List.of("pull", "laid t", "m", "m²", "kg/m²", "of", "%", "mm")
                        : List.of("pull", "laid T", "ft", "yd²", "lb/yd²", "of", "%", "in"),
                totals.runs().stream().map(run -> row(run, metric)).toList());
        totals.runs().forEach(this::beside);
    }

    private static List<String> row(Run run, boolean metric) {
        return List.of(
                run.pieces().size() == 1
                        ? run.name() + " " + run.pieces().get(0).text()
                        : run.name(),
                Rounded.two(run.laid()),
                Rounded.shown(run.length(), metric ? 1 : 0),
                Rounded.shown(run.area(), 0),
                Rounded.shown(run.rate(), 1),
                Rounded.shown(run.target(), 1),
                Rounded.shown(run.percent(), 1),
                Rounded.shown(run.thickness(), metric ? 0 : 2));
    }

    /** What the row of a pull has no room for: several pieces, tons at no known place, parts of another width. */
    private void beside(Run run) {
        String where = run.pieces().stream().map(Run.Piece::text).collect(Collectors.joining(", "));
        String rest = run.elsewhere().value().signum() == 0
                ? ""
                : "; " + run.elsewhere().shown(2).text() + " at no known place, not in the rate";
        if (run.pieces().size() != 1 || !rest.isEmpty()) {
            leaf.say(1, run.name() + ": " + (where.isEmpty() ? "stations not known" : where) + rest);
        }
        if (!run.parts().isEmpty()) {
            leaf.say(
                    1,
                    run.name() + ": the area has " + Leaf.many(run.parts().size(), "part")
                            + " of its own; average width "
                            + totals.figure("average-width." + run.name())
                                    .map(Figure::text)
                                    .orElse("-"));
        }
    }

    void tack() {
        if (totals.shots().isEmpty()) {
            return;
        }
        leaf.heading("TACK");
        List<String> names = totals.shots().stream().map(Shot::name).distinct().toList();
        boolean metric = paper.job().map(j -> j.units() == Job.Units.METRIC).orElse(false);
        List<List<String>> rows = names.stream()
                .filter(n -> !face(n))
                .map(n -> List.of(
                        n,
                        Rounded.value(totals, "tack-shots." + n, 0),
                        Rounded.value(totals, "tack-volume." + n, 1),
                        Rounded.value(totals, "tack-volume-at-base." + n, 1),
                        Rounded.value(totals, "tack-area." + n, 0),
                        Rounded.value(totals, "tack-applied." + n, 3),
                        Rounded.value(totals, "tack-residual." + n, 3)))
                .toList();
        if (!rows.isEmpty()) {
            leaf.table(
                    metric
                            ? List.of("on", "shots", "L", "at 15 °C", "m²", "L/m² applied", "residual")
                            : List.of("on", "shots", "gal", "at 60 °F", "yd²", "gal/yd² applied", "residual"),
                    rows);
        }
        faces(names, metric);
        totals.sections().stream()
                .filter(s -> s.id().equals("tack"))
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.value() == null || f.label().contains(","))
                .forEach(f -> leaf.say(1, f.label() + ": " + f.text()));
    }

    /** Whether all shots of a name are of contact faces without a width; such a shot is counted and has no rate. */
    private boolean face(String name) {
        return totals.shots().stream()
                .filter(s -> s.name().equals(name))
                .allMatch(s ->
                        s.tack().entry().target().face() != null && !s.area().known());
    }

    private void faces(List<String> names, boolean metric) {
        List<String> told = names.stream()
                .filter(this::face)
                .map(n -> n + " " + Rounded.value(totals, "tack-shots." + n, 0)
                        + totals.figure("tack-volume." + n)
                                .filter(f -> f.value() != null)
                                .map(f ->
                                        ", " + Rounded.value(totals, "tack-volume." + n, 1) + (metric ? " L" : " gal"))
                                .orElse(""))
                .toList();
        if (!told.isEmpty()) {
            leaf.say(1, "shots of contact faces: " + String.join("; ", told));
        }
    }
}
