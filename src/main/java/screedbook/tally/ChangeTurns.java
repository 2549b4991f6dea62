package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Ref;

/** A check at each change: due when the change is seen, over when a second load came after it. */
final class ChangeTurns implements Turns {
    private final int times;
    private String changed;
    private int loads;
    private Ref load;
    private int got;
    private int done;
    private int asked;
    private final List<Over> over = new ArrayList<>();

    ChangeTurns(int times) {
        this.times = times;
    }

    @Override
    public void take(Step step) {
        if (step.answers()) {
            answer();
            return;
        }
        boolean placed = step.much().signum() > 0;
        if (changed != null && placed && ++loads == 2) {
            over.add(new Over(step.of(), changed));
        }
        load = placed ? step.of() : load;
        if (!step.changed().isEmpty()) {
            changed = step.changed();
            loads = placed ? 1 : 0;
            got = 0;
            asked += times;
        }
        if (step.answered()) {
            answer();
        }
    }

    @Override
    public void close() {
        if (changed != null && loads == 1) {
            over.add(new Over(load, changed));
        }
    }

    private void answer() {
        if (changed != null) {
            done++;
            changed = ++got >= times ? null : changed;
        }
    }

    @Override
    public Next next(OffsetDateTime now) {
        return changed == null
                ? new Next("at a change", false, null)
                : new Next("NOW: " + changed, true, BigDecimal.ZERO);
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
