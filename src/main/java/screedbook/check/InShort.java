package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.NoWork;
import screedbook.entry.ShiftId;
import screedbook.tally.Figure;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * A shift in one line: for a season's list and its strips.
 *
 * @param state {@code closed}, {@code open} or {@code no work}; {@link #NOT_READ}
 * @param placed tons placed
 * @param spread percent of the target, weighed by area; empty when no pull has both
 * @param paver mean temperature at the paver of all readings; empty without a reading
 * @param findings how many of each sort
 * @param notRead lines that could not be read
 * @param damages places that are not as they were written
 */
public record InShort(
        ShiftId shift,
        String state,
        int loads,
        Amount placed,
        Optional<BigDecimal> spread,
        Optional<BigDecimal> paver,
        Map<Sort, Integer> findings,
        int notRead,
        int damages) {
    /** The state of a shift of which nothing is known but that it is there. */
    public static final String NOT_READ = "not read";

    /** A shift that is there and was not read yet. */
    public static InShort unread(ShiftId shift) {
        Amount nothing = new Amount(BigDecimal.ZERO, Unit.SHORT_TON);
        return new InShort(shift, NOT_READ, 0, nothing, Optional.empty(), Optional.empty(), Map.of(), 0, 0);
    }

    /** A day with what it comes to. */
    public static InShort of(Day day, Totals totals, List<Finding> findings, int damages) {
        Map<Sort, Integer> sorts = new EnumMap<>(Sort.class);
        findings.forEach(f -> sorts.merge(f.sort(), 1, Integer::sum));
        boolean none = !day.standing(NoWork.class).isEmpty();
        return new InShort(
                day.shift(),
                none ? "no work" : day.closed() ? "closed" : "open",
                totals.shift().loads(),
                totals.shift().placed(),
                weighed(totals, "spread-percent", "area"),
                weighed(totals, "paver-temperature-mean", "paver-temperature-readings"),
                Map.copyOf(sorts),
                day.uncounted().size(),
                damages);
    }

    public int count(Sort sort) {
        return findings.getOrDefault(sort, 0);
    }

    private static Optional<BigDecimal> weighed(Totals totals, String head, String over) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal weight = BigDecimal.ZERO;
        for (Figure each : totals.sections().stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().startsWith(head + "."))
                .toList()) {
            Optional<Figure> by = totals.figure(over + each.id().substring(head.length()));
            if (by.isPresent() && each.value() != null && by.get().value() != null) {
                sum = sum.add(each.value().multiply(by.get().value()));
                weight = weight.add(by.get().value());
            }
        }
        return weight.signum() == 0 ? Optional.empty() : Optional.of(sum.divide(weight, 1, RoundingMode.HALF_UP));
    }
}
