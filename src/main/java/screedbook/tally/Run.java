package screedbook.tally;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.unit.Amount;

/**
 * One pull of one lift as it was laid in this shift: where, how much, and the spread rate.
 *
 * @param name pull and lift as in {@link Tons}
 * @param pieces what was covered, merged, in the order of the road
 * @param length of all pieces; zero when no load has both ends
 * @param area empty when the pull's width is not known
 * @param parts entries of parts of the pull that count with an area of their own
 * @param own stretches that have a width or area of their own in place of the planned width, by those entries
 * @param laid weight of the loads whose place is known; only these are in the rate
 * @param elsewhere weight of the loads whose place is not known
 * @param rate empty when there is no area
 * @param target the planned thickness at the mix's unit weight; empty when either is not known
 * @param stretches what each load covered, with the entries that tell of it, in the order of laying
 * @param begin from where the paver laid first; null when no load has both ends
 * @param end where the paver came to last; null when no load has both ends
 * @param thickness what the rate is worth on the average; never to be judged against a lift's limit
 */
public record Run(
        String name,
        String pull,
        Integer lift,
        List<Piece> pieces,
        Amount length,
        Optional<Amount> area,
        List<Ref> parts,
        Cover own,
        Amount laid,
        Amount elsewhere,
        Optional<Amount> rate,
        Optional<Amount> target,
        Optional<Amount> percent,
        Optional<Amount> thickness,
        List<Ref> entries,
        List<String> put,
        List<Stretch> stretches,
        Station begin,
        Station end) {
    /**
     * A stretch of road, the lower end first.
     *
     * @param low distance of the lower end along the road, equations counted
     * @param high distance of the upper end
     */
    public record Piece(Station from, Station to, BigDecimal low, BigDecimal high) {
        public String text() {
            return from + " to " + to;
        }
    }
}
