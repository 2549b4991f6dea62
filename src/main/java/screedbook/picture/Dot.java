package screedbook.picture;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import screedbook.entry.Ref;
import screedbook.tally.Load;
import screedbook.unit.Amount;

/**
 * One figure at one time.
 *
 * @param outside whether it lies outside its limit; then it is drawn with another sign
 */
public record Dot(OffsetDateTime time, BigDecimal value, boolean outside) {
    /**
     * The temperatures at the paver, by the time of discharge; loads without a time or a reading have no dot.
     *
     * @param outside entries of which a temperature at the paver was found outside
     */
    public static List<Dot> atThePaver(List<Load> loads, Set<Ref> outside) {
        List<Dot> dots = new ArrayList<>();
        for (Load load : loads) {
            Amount seen = load.ticket().entry().heat().paver();
            if (seen != null && load.ticket().time() != null) {
                dots.add(new Dot(
                        load.ticket().time(),
                        seen.value(),
                        outside.contains(load.ticket().ref())));
            }
        }
        return List.copyOf(dots);
    }

    /** Tons placed up to each load, by the time of discharge. */
    public static List<Dot> placed(List<Load> loads) {
        List<Dot> dots = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        for (Load load : loads) {
            sum = sum.add(load.placed().value());
            if (load.laid() && load.ticket().time() != null) {
                dots.add(new Dot(load.ticket().time(), sum, false));
            }
        }
        return List.copyOf(dots);
    }
}
