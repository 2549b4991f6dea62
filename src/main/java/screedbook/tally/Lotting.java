package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * How the tons of a mix, as they are placed, come to lie in lots and sublots. Tons are counted exactly; where a lot ends
 * with the nearest ticket, the load in which its last ton lies is still cut here, so that a random ton keeps its place.
 */
final class Lotting {
    private final BigDecimal lotSize;
    private final BigDecimal sublotSize;
    private final boolean closes;
    private int lot = 1;
    private int sublot = 1;
    private BigDecimal in = BigDecimal.ZERO;

    /**
     * A part of some tons that lies in one sublot.
     *
     * @param size of the sublot
     * @param from tons of the sublot before it
     * @param to tons of the sublot with it
     * @param fillsLot whether the lot is full with it
     */
    record Cut(int lot, int sublot, BigDecimal size, BigDecimal from, BigDecimal to, boolean fillsLot) {}

    private Lotting(BigDecimal lotSize, BigDecimal sublotSize, boolean closes) {
        this.lotSize = lotSize;
        this.sublotSize = sublotSize;
        this.closes = closes;
    }

    /** From the first ton of a mix; empty where the job cuts no lots. A lot that is not cut up is one sublot. */
    static Optional<Lotting> of(Job job) {
        Lots lots = job.lots();
        if (lots == null || lots.lot() == null && lots.sublot() == null) {
            return Optional.empty();
        }
        Unit unit = Measure.LOAD.unit(job.system());
        Amount whole = lots.lot() == null ? lots.sublot() : lots.lot();
        Amount part = lots.sublot() == null ? lots.lot() : lots.sublot();
        BigDecimal size = whole.to(unit).value();
        BigDecimal share = part.to(unit).value().min(size);
        return share.signum() <= 0
                ? Optional.empty()
                : Optional.of(new Lotting(size, share, lots.overnight() == Lots.Overnight.CLOSE));
    }

    /** The lot to which the next ton belongs. */
    int lot() {
        return lot;
    }

    /**
     * A shift is over: where the job closes what is not full at night, the next ton begins a sublot.
     *
     * @param closedOut lots of the mix that were closed out in the shift; where this one is among them, the next ton begins a
     *     lot
     */
    void night(Set<Integer> closedOut) {
        if (closedOut.contains(lot) && begun()) {
            lot++;
            sublot = 1;
            in = BigDecimal.ZERO;
        } else if (closes && in.signum() > 0) {
            next();
        }
    }

    /** Whether no ton comes to a sublot any more. */
    boolean past(int otherLot, int otherSublot) {
        return otherLot < lot || otherLot == lot && otherSublot < sublot;
    }

    /** How many sublots a lot is cut into. */
    int sublots() {
        int number = 1;
        while (before(number + 1).compareTo(lotSize) < 0) {
            number++;
        }
        return number;
    }

    /** The same as it stands now. */
    Lotting copy() {
        Lotting copy = new Lotting(lotSize, sublotSize, closes);
        copy.lot = lot;
        copy.sublot = sublot;
        copy.in = in;
        return copy;
    }

    private boolean begun() {
        return sublot > 1 || in.signum() > 0;
    }

    /** Some tons more, cut where a sublot ends. */
    List<Cut> add(BigDecimal tons) {
        List<Cut> cuts = new ArrayList<>();
        BigDecimal left = tons;
        while (left.signum() > 0) {
            BigDecimal size = size();
            BigDecimal to = in.add(left).min(size);
            boolean full = to.compareTo(size) == 0;
            cuts.add(new Cut(lot, sublot, size, in, to, full && last()));
            left = left.subtract(to.subtract(in));
            in = to;
            if (full) {
                next();
            }
        }
        return cuts;
    }

    private BigDecimal size() {
        return lotSize.subtract(before(sublot)).min(sublotSize);
    }

    private boolean last() {
        return before(sublot + 1).compareTo(lotSize) >= 0;
    }

    private BigDecimal before(int number) {
        return sublotSize.multiply(BigDecimal.valueOf(number - 1));
    }

    private void next() {
        boolean over = last();
        lot = over ? lot + 1 : lot;
        sublot = over ? 1 : sublot + 1;
        in = BigDecimal.ZERO;
    }
}
