package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** Turns by minutes: a check is good for so long, from the first load to the last; wanted with the first, or once in them. */
final class TimedTurns implements Turns {
    private final long minutes;
    private final boolean atOnce;
    private OffsetDateTime first;
    private OffsetDateTime last;
    private OffsetDateTime load;
    private boolean late;
    private boolean told;
    private int done;
    private final List<Over> over = new ArrayList<>();

    /** @param atOnce whether the first is due with the first load */
    TimedTurns(BigDecimal minutes, boolean atOnce) {
        this.minutes = Math.max(1, minutes.longValue());
        this.atOnce = atOnce;
    }

    @Override
    public void take(Step step) {
        if (step.answered()) {
            done++;
            last = step.at();
            late = false;
            told = false;
        }
        if (step.answers()) {
            return;
        }
        first = first == null ? step.at() : first;
        load = step.at();
        boolean old = last == null && atOnce || minutes(since(), step.at()) > minutes;
        if (old && late && !told) {
            over.add(new Over(step.of(), minutes(since(), step.at()) + " min"));
            told = true;
        }
        late |= old;
    }

    /** Nothing is placed any more that a reading would have to stand for. */
    @Override
    public void close() {
        late = false;
    }

    private OffsetDateTime since() {
        return last == null ? first : last;
    }

    private static long minutes(OffsetDateTime from, OffsetDateTime to) {
        return Duration.between(from, to).toMinutes();
    }

    @Override
    public Next next(OffsetDateTime now) {
        if (since() == null) {
            return new Next("with the next", false, BigDecimal.ONE);
        }
        long left = last == null && atOnce ? 0 : minutes - minutes(since(), now);
        return left <= 0
                ? new Next("NOW", true, BigDecimal.ZERO)
                : new Next(
                        "in " + left + " min",
                        false,
                        BigDecimal.valueOf(left).divide(BigDecimal.valueOf(minutes), MathContext.DECIMAL32));
    }

    @Override
    public int done() {
        return done;
    }

    /** One for each run of minutes up to the last load, and one at the first where it is wanted there. */
    @Override
    public int asked() {
        return first == null ? 0 : (atOnce ? 1 : 0) + (int) (minutes(first, load) / minutes);
    }

    @Override
    public List<Over> over() {
        return List.copyOf(over);
    }
}
