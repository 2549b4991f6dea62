package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import screedbook.entry.Ref;

/** So many checks in a shift in which something was placed; what is not there when it is closed is missing. */
final class ShiftTurns implements Turns {
    private final int times;
    private Ref load;
    private int done;
    private boolean closed;

    ShiftTurns(int times) {
        this.times = times;
    }

    @Override
    public void close() {
        closed = true;
    }

    @Override
    public void take(Step step) {
        done += step.answered() ? 1 : 0;
        load = step.answers() ? load : step.of();
    }

    @Override
    public Next next(OffsetDateTime now) {
        if (done >= times) {
            return new Next("done", false, null);
        }
        String of = times == 1 ? "" : ", " + done + " of " + times;
        return load == null
                ? new Next("in this shift" + of, false, BigDecimal.ONE)
                : new Next("NOW" + of, true, BigDecimal.ZERO);
    }

    @Override
    public int done() {
        return done;
    }

    @Override
    public int asked() {
        return load == null ? 0 : times;
    }

    @Override
    public List<Over> over() {
        return closed && load != null && done < times
                ? List.of(new Over(load, "this shift, " + done + " of " + times))
                : List.of();
    }
}
