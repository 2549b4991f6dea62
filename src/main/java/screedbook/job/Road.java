package screedbook.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Station;
import screedbook.entry.StationBase;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/** The reference line with its station equations: how far it is from one station to another. */
public final class Road {
    private final List<Job.Equation> equations;
    private final StationBase base;
    private final Unit unit;

    private Road(List<Job.Equation> equations, StationBase base, UnitSystem system) {
        this.equations = equations;
        this.base = base;
        this.unit = system == UnitSystem.US ? Unit.FOOT : Unit.METRE;
    }

    public static Road of(Job job) {
        return new Road(job.stationing().equations(), job.stationing().base(), job.system());
    }

    /** Whether the figures of a station stand for two places and neither {@code bk} nor {@code ah} is behind them. */
    public boolean twice(Station station) {
        return station.side().isEmpty() && equations.stream().anyMatch(e -> overlaps(e, station.distance()));
    }

    private static boolean overlaps(Job.Equation e, BigDecimal at) {
        return at.compareTo(e.ahead().distance()) >= 0
                && at.compareTo(e.back().distance()) <= 0
                && e.ahead().distance().compareTo(e.back().distance()) < 0;
    }

    /**
     * How far a station lies along the road from the zero of the figures at the start of the line, equations counted.
     * Figures that stand for two places are read as back unless {@code ah} is behind them.
     */
    public BigDecimal along(Station station) {
        BigDecimal at = station.distance();
        BigDecimal shift = BigDecimal.ZERO;
        boolean ahead = station.side().map("ah"::equals).orElse(false);
        for (Job.Equation e : equations) {
            BigDecimal back = e.back().distance();
            boolean past = at.compareTo(back) > 0 || (ahead && overlaps(e, at)) || (at.compareTo(back) == 0 && ahead);
            if (past) {
                shift = shift.add(back.subtract(e.ahead().distance()));
            }
        }
        return at.add(shift);
    }

    /** From one station to another, in feet or metres, never negative, equations counted. */
    public Amount length(Station from, Station to) {
        return new Amount(along(to).subtract(along(from)).abs(), unit);
    }

    /** The length of a run, when both ends are known. */
    public Optional<Amount> run(Station from, Station to) {
        return from == null || to == null ? Optional.empty() : Optional.of(length(from, to));
    }

    public StationBase base() {
        return base;
    }
}
