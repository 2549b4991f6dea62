package screedbook.tally;

import java.math.BigDecimal;
import java.util.List;
import screedbook.entry.Aside;
import screedbook.entry.Day;
import screedbook.entry.Line;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.job.Job;

/**
 * A tack shot that stands, in figures.
 *
 * @param volume as measured
 * @param factor volume at 60 °F (15 °C) for each of it as measured; null when the volume is not corrected
 * @param at60 the volume at 60 °F (15 °C)
 * @param applied rate from {@code at60}, or from the volume as measured when that is not known
 * @param residual what stays of the applied rate
 * @param corrected whether the applied rate is one at 60 °F (15 °C)
 * @param entries the shot, and refills within it
 * @param put the steps of all this
 */
public record Shot(
        Standing<Tack> tack,
        Reckoned volume,
        BigDecimal factor,
        Reckoned at60,
        Reckoned area,
        Reckoned applied,
        boolean corrected,
        Reckoned residual,
        List<Ref> entries,
        List<String> put) {
    /** A shot worked out by itself, without the refills of its day: for a form that is still being keyed. */
    public static Shot of(Tack tack, Job job) {
        Line line = new Line("", 0, 0, job.id(), null, null, null, "", Source.LIVE, tack, Aside.NONE, List.of(), "");
        Standing<Tack> shot = new Standing<>(line, tack, Aside.NONE, null, null, List.of(), List.of());
        return Shots.of(new Day(null, List.of(), List.of(shot), List.of()), job).get(0);
    }

    /** Product and what it went on: {@code CSS-1h on milled}. */
    public String name() {
        String product = tack.entry().product().product();
        Tack.Target on = tack.entry().target();
        String where = on.face() != null
                ? on.face().word().replace('-', ' ')
                : on.surface() != null ? on.surface().word() : "surface not noted";
        return (product == null ? "product not noted" : product) + " on " + where;
    }
}
