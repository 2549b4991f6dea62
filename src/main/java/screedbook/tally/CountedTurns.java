package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import screedbook.entry.Ref;

/** Turns by loads, tons or shots: one ends with each so many of them, and a check made before the next load counts in it. */
final class CountedTurns implements Turns {
    private final int singly;
    private final BigDecimal each;
    private final int times;
    private final boolean withTheLoad;
    private final Function<BigDecimal, String> text;

    private BigDecimal counted = BigDecimal.ZERO;
    private BigDecimal began = BigDecimal.ZERO;
    private int turn;
    private int got;
    private boolean due;
    private boolean owed;
    private Ref last;
    private int done;
    private int asked;
    private final List<Over> over = new ArrayList<>();

    /**
     * @param singly loads or shots at the start that are a turn each
     * @param each count of a turn after those; null when there is none
     * @param gone of the first turn before this shift
     * @param times checks in a turn
     * @param withTheLoad whether the check is part of the load's own entry, so that it is due with the load and not after
     *     it
     */
    CountedTurns(
            int singly,
            BigDecimal each,
            BigDecimal gone,
            int times,
            boolean withTheLoad,
            Function<BigDecimal, String> text) {
        this.singly = singly;
        this.each = each;
        this.began = gone.negate();
        this.times = times;
        this.withTheLoad = withTheLoad;
        this.text = text;
    }

    @Override
    public void take(Step step) {
        if (step.answers()) {
            answer();
            return;
        }
        if (due) {
            miss(step.of());
        }
        last = step.of();
        if (step.answered()) {
            answer();
        }
        counted = counted.add(step.much());
        if (turn < singly) {
            end();
        } else {
            full();
        }
        if (due && withTheLoad) {
            miss(step.of());
        }
    }

    @Override
    public void close() {
        if (due) {
            miss(last);
        }
    }

    private void answer() {
        owed = false;
        done += got < times ? 1 : 0;
        asked += !due && got < times ? 1 : 0;
        got++;
        if (due && got >= times) {
            due = false;
            follow();
            full();
        }
    }

    /** Ends the turn: answered, or due from now on. What was answered early has been asked for already. */
    private void end() {
        int early = Math.min(got, times);
        asked += times - early;
        due = early < times;
        if (!due) {
            follow();
        }
    }

    private void follow() {
        began = turn < singly || each == null ? counted : began.add(each);
        turn++;
        got = 0;
    }

    /** Ends every turn that is full, up to one that is due. */
    private void full() {
        while (!due && turn >= singly && each != null && left().signum() <= 0) {
            end();
        }
    }

    private void miss(Ref with) {
        BigDecimal since = counted.subtract(began.max(BigDecimal.ZERO));
        over.add(new Over(with, text.apply(since)));
        owed = !withTheLoad;
        while (due) {
            due = false;
            follow();
            full();
        }
    }

    private BigDecimal left() {
        return began.add(each).subtract(counted);
    }

    @Override
    public Next next(OffsetDateTime now) {
        if (due || owed) {
            return new Next("NOW", true, BigDecimal.ZERO);
        }
        boolean answered = got >= times;
        if (turn < singly && !answered) {
            return withTheLoad
                    ? new Next("NOW", true, BigDecimal.ZERO)
                    : new Next("with the next", false, BigDecimal.ONE);
        }
        if (each == null) {
            return new Next("no more asked", false, null);
        }
        BigDecimal rest = turn < singly ? each : answered ? left().add(each) : left();
        BigDecimal until = withTheLoad ? rest.subtract(BigDecimal.ONE) : rest;
        boolean at = until.signum() <= 0;
        BigDecimal share = rest.divide(each, MathContext.DECIMAL32);
        return new Next(at ? "NOW" : "in " + text.apply(until), at, at ? BigDecimal.ZERO : share);
    }

    @Override
    public int done() {
        return done;
    }

    @Override
    public int asked() {
        return asked;
    }

    @Override
    public List<Over> over() {
        return List.copyOf(over);
    }
}
