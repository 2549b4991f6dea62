package screedbook.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Station;
import screedbook.entry.StationBase;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * The reference line with its station equations: how far it is from one station to another. Between two equations lies
 * a stretch on which the figures run on.
 */
public final class Road {
    private final List<Stretch> stretches;
    private final StationBase base;
    private final Unit unit;

    /**
     * A part of the line, both ends belonging to it.
     *
     * @param first figures at its beginning; null for the first stretch
     * @param last figures at its end; null for the last stretch
     * @param shift what figures lack to the distance along the line
     */
    private record Stretch(BigDecimal first, BigDecimal last, BigDecimal shift) {
        boolean holds(BigDecimal at) {
            return (first == null || at.compareTo(first) >= 0) && (last == null || at.compareTo(last) <= 0);
        }
    }

    private Road(List<Job.Equation> equations, StationBase base, UnitSystem system) {
        this.stretches = stretches(equations);
        this.base = base;
        this.unit = system == UnitSystem.US ? Unit.FOOT : Unit.METRE;
    }

    private static List<Stretch> stretches(List<Job.Equation> equations) {
        List<Stretch> stretches = new ArrayList<>();
        BigDecimal first = null;
        BigDecimal shift = BigDecimal.ZERO;
        for (Job.Equation e : equations) {
            stretches.add(new Stretch(first, e.back().distance(), shift));
            first = e.ahead().distance();
            shift = shift.add(e.back().distance().subtract(first));
        }
        stretches.add(new Stretch(first, null, shift));
        return List.copyOf(stretches);
    }

    /** The road of a job; its equations stand in the order in which they come along the line. */
    public static Road of(Job job) {
        return new Road(job.stationing().equations(), job.stationing().base(), job.system());
    }

    private List<Stretch> of(BigDecimal at) {
        return stretches.stream().filter(s -> s.holds(at)).toList();
    }

    /** Why a station names no one place, and what would; empty when it does. */
    public Optional<String> doubt(Station station) {
        List<Stretch> on = of(station.distance());
        if (on.isEmpty()) {
            return Optional.of(station + " is in the gap of an equation, the figures jump over it; right would be a"
                    + " station of the plan");
        }
        boolean twice = on.stream().map(Stretch::shift).distinct().count() > 1;
        return twice && station.side().isEmpty()
                ? Optional.of(station + " is there twice; right would be " + station + " bk or " + station + " ah")
                : Optional.empty();
    }

    /** Whether a distance along the road lies between two stations, whichever is higher; the ends are in it. */
    public boolean between(BigDecimal at, Station from, Station to) {
        BigDecimal one = along(from);
        BigDecimal other = along(to);
        return at.compareTo(one.min(other)) >= 0 && at.compareTo(one.max(other)) <= 0;
    }

    /**
     * How far a station lies along the road from the zero of the figures at the start of the line, equations counted.
     * Figures that stand for two places are read as back unless {@code ah} is behind them; figures that an equation
     * jumps over are read as the place of the equation.
     */
    public BigDecimal along(Station station) {
        BigDecimal at = station.distance();
        List<Stretch> on = of(at);
        if (on.isEmpty()) {
            return jumped(at);
        }
        boolean ahead = station.side().map("ah"::equals).orElse(false);
        return at.add(on.get(ahead ? on.size() - 1 : 0).shift());
    }

    private BigDecimal jumped(BigDecimal at) {
        return stretches.stream()
                .filter(s -> s.first() != null && at.compareTo(s.first()) < 0)
                .map(s -> s.first().add(s.shift()))
                .findFirst()
                .orElse(at);
    }

    /**
     * The station of a distance along the road, as {@link #along} has it: its figures, and back or ahead where they
     * stand for two places. At an equation it is the one seen from behind.
     */
    public Station station(BigDecimal along) {
        for (Stretch each : stretches) {
            BigDecimal at = along.subtract(each.shift());
            if (each.last() == null || at.compareTo(each.last()) <= 0) {
                return sided(Station.at(at, base), along);
            }
        }
        throw new IllegalStateException("the last stretch of a road has no end");
    }

    private Station sided(Station bare, BigDecimal along) {
        if (doubt(bare).isEmpty()) {
            return bare;
        }
        Station back = Station.of(bare.text() + " bk");
        Station ahead = Station.of(bare.text() + " ah");
        return off(back, along).compareTo(off(ahead, along)) <= 0 ? back : ahead;
    }

    private BigDecimal off(Station station, BigDecimal along) {
        return along(station).subtract(along).abs();
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
