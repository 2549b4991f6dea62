package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Ref;
import screedbook.unit.Amount;

/**
 * Loads and weights that belong together: of a mix, a pull, a lift, a pay item or a fate. A load that was split between
 * pulls is a load of each of them.
 *
 * @param by what they have in common
 * @param of its name: {@code 12.5-70A}
 * @param loads that came; of a pull or lift, loads that left mix there, a part of a load counted by itself
 * @param parts whether a part of a load is among them
 * @param received zero for a pull or a lift
 * @param placed zero for a pull or a lift
 * @param pay tons for pay as kept here; of a pull or a lift, tons laid there
 * @param first discharge of the first load; null when no time was noted
 * @param last discharge of the last load; null when no time was noted
 * @param perHour tons for each hour, of all loads but the last, from the first discharge to the last; empty with fewer than two times
 */
public record Tons(
        By by,
        String of,
        int loads,
        boolean parts,
        Amount received,
        Amount placed,
        Amount pay,
        OffsetDateTime first,
        OffsetDateTime last,
        Optional<BigDecimal> perHour,
        List<Ref> entries,
        List<String> put) {
    /** What loads have in common. */
    public enum By {
        SHIFT,
        MIX,
        PULL,
        LIFT,
        PAY_ITEM,
        FATE
    }
}
