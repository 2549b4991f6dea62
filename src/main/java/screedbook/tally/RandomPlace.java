package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.calc.RandomNumber;
import screedbook.entry.Draw;
import screedbook.entry.Station;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * One random place of a sublot, drawn from the lot's seed. A number that falls where no sample may be taken is drawn
 * again, and both are told.
 */
final class RandomPlace {
    /** More numbers than these are not drawn: then there is hardly a place that may be used. */
    private static final int MOST = 200;

    private final Job job;
    private final String seed;
    private final String mix;
    private final int lot;
    private final int sublot;
    private final int nth;
    private final Unit tons;
    private final Unit wide;
    private final List<Draw.Tried> tried = new ArrayList<>();

    /**
     * A load, or what of it lies in the sublot.
     *
     * @param inLoad tons of the load before it
     */
    record Piece(Load load, Lotting.Cut cut, BigDecimal inLoad) {
        boolean holds(BigDecimal into) {
            return into.compareTo(cut.from()) >= 0 && into.compareTo(cut.to()) < 0;
        }
    }

    /** Where in a load a ton lies. */
    private record Spot(Share share, Station station) {}

    RandomPlace(Job job, String seed, String mix, int lot, int sublot, int nth) {
        this.job = job;
        this.seed = seed;
        this.mix = mix;
        this.lot = lot;
        this.sublot = sublot;
        this.nth = nth;
        this.tons = Measure.LOAD.unit(job.system());
        this.wide = Measure.WIDTH.unit(job.system());
    }

    /** The place, once the shift's loads of the sublot have come to it. */
    Optional<Draw.Reached> among(List<Piece> pieces) {
        BigDecimal first = pieces.get(0).cut().from();
        BigDecimal last = pieces.get(pieces.size() - 1).cut().to();
        BigDecimal size = pieces.get(0).cut().size();
        for (int number = 1; number <= MOST; number++) {
            BigDecimal fraction = fraction(Draw.What.TON, number);
            BigDecimal into = fraction.multiply(size).setScale(Measure.LOAD.decimals(), RoundingMode.DOWN);
            if (into.compareTo(last) >= 0) {
                return Optional.empty();
            }
            Piece piece = pieces.stream().filter(p -> p.holds(into)).findFirst().orElse(null);
            Spot spot = piece == null ? null : spot(piece, into);
            String why = into.compareTo(first) < 0 ? "passed before this shift" : spot == null ? "" : excluded(spot);
            add(
                    Draw.What.TON,
                    number,
                    fraction,
                    new Amount(into, tons),
                    spot == null ? null : spot.station(),
                    null,
                    why);
            if (why.isEmpty()) {
                return Optional.of(reached(piece, spot, into));
            }
        }
        return Optional.empty();
    }

    private BigDecimal fraction(Draw.What what, int number) {
        return RandomNumber.fraction(seed, mix, lot, sublot, nth, what.word(), number);
    }

    private void add(
            Draw.What what,
            int number,
            BigDecimal fraction,
            Amount into,
            Station station,
            Amount fromLeft,
            String why) {
        tried.add(new Draw.Tried(
                what,
                number,
                fraction,
                into,
                station,
                fromLeft,
                why.isEmpty() ? YesNo.YES : YesNo.NO,
                why.isEmpty() ? null : why));
    }

    private Draw.Reached reached(Piece piece, Spot spot, BigDecimal into) {
        Optional<Job.Pull> pull = spot.share().pull() == null || job.lots().randomBy() != Lots.RandomBy.PLACES
                ? Optional.empty()
                : job.pull(spot.share().pull(), spot.share().lift());
        Amount left = pull.map(p -> free(p, p.left())).orElse(null);
        Amount right = pull.map(p -> free(p, p.right())).orElse(null);
        Amount offset = pull.map(p -> offset(p.width(), left, right)).orElse(null);
        return new Draw.Reached(
                sublot,
                nth,
                new Amount(into, tons),
                piece.load().ticket().ref(),
                spot.share().pull(),
                spot.share().lift(),
                spot.station(),
                offset,
                left,
                right,
                List.copyOf(tried));
    }

    /** The station of a ton: as far along its share of the load as the share's tons before it. */
    private Spot spot(Piece piece, BigDecimal into) {
        BigDecimal sum =
                piece.load().shares().stream().map(s -> s.weight().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal part = piece.inLoad()
                .add(into.subtract(piece.cut().from()))
                .divide(piece.load().placed().value(), MathContext.DECIMAL64);
        BigDecimal at = part.multiply(sum);
        Share share = piece.load().shares().get(0);
        for (Share each : piece.load().shares()) {
            share = each;
            if (at.compareTo(each.weight().value()) < 0) {
                break;
            }
            at = at.subtract(each.weight().value());
        }
        return new Spot(share, station(share, at));
    }

    /** Null where an end is not noted, or a station equation lies between them. */
    private Station station(Share share, BigDecimal at) {
        if (share.from() == null || share.to() == null || share.weight().value().signum() <= 0) {
            return null;
        }
        BigDecimal begins = share.from().distance();
        BigDecimal run = share.to().distance().subtract(begins);
        Road road = Road.of(job);
        if (road.length(share.from(), share.to()).value().compareTo(run.abs()) != 0) {
            return null;
        }
        BigDecimal far = run.multiply(at).divide(share.weight().value(), MathContext.DECIMAL64);
        int decimals = wide == Unit.METRE ? 1 : 0;
        return Station.at(begins.add(far).setScale(decimals, RoundingMode.HALF_UP), road.base());
    }

    private String excluded(Spot spot) {
        if (spot.station() == null) {
            return "";
        }
        Road road = Road.of(job);
        BigDecimal at = road.along(spot.station());
        return job.lots().excluded().stream()
                .filter(e -> within(at, road.along(e.from()), road.along(e.to())))
                .map(e -> "no places in " + e.from() + " to " + e.to() + (e.why() == null ? "" : ": " + e.why()))
                .findFirst()
                .orElse("");
    }

    private static boolean within(BigDecimal at, BigDecimal one, BigDecimal other) {
        return at.compareTo(one.min(other)) >= 0 && at.compareTo(one.max(other)) <= 0;
    }

    /**
     * How much of an edge is kept free. An edge is held where a pull that stands before this one in the job's list has
     * it too.
     */
    private Amount free(Job.Pull pull, Amount edge) {
        boolean held = job.pulls().stream()
                .takeWhile(p -> !p.equals(pull))
                .filter(p -> p.lift().equals(pull.lift()))
                .anyMatch(p -> p.left().compareTo(edge) == 0 || p.right().compareTo(edge) == 0);
        Amount free = held ? job.lots().heldEdge() : job.lots().freeEdge();
        return free == null ? new Amount(BigDecimal.ZERO, wide) : free;
    }

    /** Null where the edges leave nothing between them. */
    private Amount offset(Amount width, Amount left, Amount right) {
        Amount most = width.minus(right);
        if (left.compareTo(most) >= 0) {
            return null;
        }
        int decimals = wide == Unit.METRE ? 2 : 1;
        for (int number = 1; number <= MOST; number++) {
            BigDecimal fraction = fraction(Draw.What.OFFSET, number);
            Amount offset =
                    new Amount(fraction.multiply(width.value()).setScale(decimals, RoundingMode.HALF_UP), width.unit());
            String why = offset.compareTo(left) < 0
                    ? "nearer than " + left.text() + " to the left edge"
                    : offset.compareTo(most) > 0 ? "nearer than " + right.text() + " to the right edge" : "";
            add(Draw.What.OFFSET, number, fraction, null, null, offset, why);
            if (why.isEmpty()) {
                return offset;
            }
        }
        return null;
    }
}
