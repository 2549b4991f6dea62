package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import screedbook.entry.Ref;

/** The turns of a check: what happened is told one after the other, and it knows when the next check is due. */
sealed interface Turns permits CountedTurns, SublotTurns, TimedTurns, ShiftTurns, ChangeTurns {
    /**
     * A load, a shot or an entry that answers.
     *
     * @param much what it adds to the count; null for an entry that answers
     * @param answered whether a load's own entry answers
     * @param changed what is another than before, for what is asked at a change; of an answer, the sublot to which it
     *     belongs; empty when nothing
     */
    record Step(OffsetDateTime at, Ref of, BigDecimal much, boolean answered, String changed) {
        static Step answer(OffsetDateTime at, Ref of, String sublot) {
            return new Step(at, of, null, true, sublot);
        }

        boolean answers() {
            return much == null;
        }
    }

    /** Where a check was due and the work went on: with which entry, and after how much. */
    record Over(Ref of, String after) {}

    /**
     * How it stands.
     *
     * @param when as on the shift screen
     * @param left of the run; null where nothing is counted
     */
    record Next(String when, boolean now, BigDecimal left) {}

    void take(Step step);

    /** The shift is closed: what is due now was not done. */
    void close();

    Next next(OffsetDateTime now);

    int done();

    int asked();

    List<Over> over();
}
