package screedbook.tally;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import screedbook.entry.Ref;

/**
 * A check that the job asks for, and when.
 *
 * @param what as on the shift screen: {@code temperature}
 * @param when {@code NOW}, {@code in 3 loads}, {@code in 84 T}, {@code not yet}
 * @param now whether it is due or over
 * @param done how often it was done in this shift
 * @param asked how often it was due up to now
 * @param left what is left of the run until it is due, from 0 when it is to 1 and more; null where nothing is counted
 * @param missed the times at which work went on without it
 */
public record Due(
        String id,
        String what,
        String when,
        boolean now,
        int done,
        int asked,
        Working working,
        BigDecimal left,
        List<Missed> missed) {
    /** The random places of a sublot. */
    static final String PLACE = "sample";

    /**
     * A random place that is reached before all else, for its load drives off; then what is over before what is due, then by
     * what is left of each run; what is not counted comes last.
     */
    public static final Comparator<Due> MOST_URGENT_FIRST = Comparator.comparing(
                    (Due due) -> !(due.now() && due.id().equals(PLACE)))
            .thenComparing((Due due) -> !(due.now() && !due.missed().isEmpty()))
            .thenComparing(due -> !due.now())
            .thenComparing(Due::left, Comparator.nullsLast(Comparator.naturalOrder()));

    /**
     * A time at which work went on although the check was due.
     *
     * @param of the load or shot with which it went on
     * @param seen {@code no yield check in 412 T}
     * @param wanted {@code once in 200 T}
     */
    public record Missed(Ref of, String seen, String wanted, String source) {}
}
