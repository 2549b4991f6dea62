package screedbook.check;

import java.math.RoundingMode;
import java.util.List;
import screedbook.calc.Rounding;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * The mat temperature below which rolling makes it no denser: as the job settles it, else as is usual, in whole degrees
 * of the job.
 *
 * @param source where it comes from, short
 */
record RolledUntil(Amount mat, String source) {
    static RolledUntil of(Job job) {
        Planning.RollUntil own = job.planning().rollUntil();
        if (own != null) {
            return new RolledUntil(own.mat(), own.source() == null ? "job, rolled until" : own.source());
        }
        Bound usual = Marks.usual(Quantity.MAT_ROLLING_ENDS).all().get(0);
        Unit degree = Measure.TEMPERATURE.unit(job.system());
        Amount mat = usual.low().unit() == degree
                ? usual.low()
                : new Amount(usual.low().to(degree).value().setScale(0, RoundingMode.HALF_UP), degree);
        return new RolledUntil(mat, "a rule of thumb, " + usual.clause());
    }

    /** As a limit of the job's own. */
    Bounds bounds() {
        String working = "The job settles that the mat is rolled until " + AmountText.text(mat) + ": " + source + ".";
        return new Bounds(
                List.of(new Bound(mat, null, true, "job, rolled until", Rounding.ABSOLUTE, working)), List.of());
    }
}
