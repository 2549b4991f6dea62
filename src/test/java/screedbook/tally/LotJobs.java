package screedbook.tally;

import java.util.List;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Jobs that cut lots, for tests of what adds up. Invented throughout. */
public final class LotJobs {
    private LotJobs() {}

    /** {@link Jobs#us} with lots and sublots of so many tons, carried on over night. */
    public static Job of(String lot, String sublot, Lots.End ends) {
        return FillingTest.with(new Lots(
                Amount.of(lot, Unit.SHORT_TON),
                Amount.of(sublot, Unit.SHORT_TON),
                ends,
                Lots.Overnight.CARRY,
                null,
                null,
                null,
                null,
                null,
                List.of()));
    }
}
