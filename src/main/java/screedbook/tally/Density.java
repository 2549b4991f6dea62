package screedbook.tally;

import java.util.Optional;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.unit.Amount;

/**
 * One density of the mat as it was found.
 *
 * @param of the core or the gauge reading
 * @param from the entry that tells the figure: the core itself, a result, the reading
 * @param mix null where it is not known
 * @param where the sublot that it belongs to, where that can be told
 * @param percent of the theoretical maximum; not rounded
 * @param ofTarget a gauge's density in hundredths of the target that was keyed; empty without one
 * @param again whether it repeats a test, or is repeated
 * @param counts whether it is in the lot's mean: of a repeated test what the job says
 */
public record Density(
        Standing<?> of,
        Standing<?> from,
        By by,
        String name,
        String mix,
        Station place,
        Optional<Filling.Where> where,
        Reckoned percent,
        Optional<Amount> ofTarget,
        boolean again,
        boolean counts,
        Working working) {
    /** How a density was found. */
    public enum By {
        CORE,
        GAUGE
    }

    Density counting(boolean repeated, boolean inMean) {
        return new Density(of, from, by, name, mix, place, where, percent, ofTarget, repeated, inMean, working);
    }
}
