package screedbook.check;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * The lines between which a mix temperature lies, in the job's degrees; of limits only those that are sure to hold.
 *
 * @param low the least; empty where no limit is set
 * @param high the most, likewise
 */
public record HeatLines(Optional<BigDecimal> low, Optional<BigDecimal> high) {
    public static final HeatLines NONE = new HeatLines(Optional.empty(), Optional.empty());

    /** Those of a load at the plant. */
    public static HeatLines plant(Job job, SpecSheet sheet, Standing<Ticket> load) {
        Situation s = Cases.of(job, load.entry(), load.order());
        return of(Bounds.plantHeat(job, sheet, s, load.entry().paper().mix()), job);
    }

    /** Those of a load at the paver. */
    public static HeatLines paver(Job job, SpecSheet sheet, Standing<Ticket> load) {
        Situation s = Cases.of(job, load.entry(), load.order());
        return of(Bounds.paverHeat(job, sheet, s, load.entry().paper().mix()), job);
    }

    /** The mat while it is rolled, where the job settles until when that is. */
    public static HeatLines mat(Job job) {
        Unit degree = Measure.TEMPERATURE.unit(job.system());
        return new HeatLines(
                Optional.ofNullable(job.planning().rollUntil())
                        .map(u -> u.mat().to(degree).value()),
                Optional.empty());
    }

    /** Lines that are the same for all; where they differ there is none. */
    public static HeatLines common(List<HeatLines> all) {
        Set<HeatLines> different = new HashSet<>(all);
        return different.size() == 1 ? different.iterator().next() : NONE;
    }

    private static HeatLines of(Bounds bounds, Job job) {
        Unit degree = Measure.TEMPERATURE.unit(job.system());
        List<Bound> sure = bounds.all().stream().filter(Bound::sure).toList();
        return new HeatLines(
                sure.stream()
                        .map(Bound::low)
                        .filter(Objects::nonNull)
                        .max(Comparator.naturalOrder())
                        .map(a -> in(a, degree)),
                sure.stream()
                        .map(Bound::high)
                        .filter(Objects::nonNull)
                        .min(Comparator.naturalOrder())
                        .map(a -> in(a, degree)));
    }

    private static BigDecimal in(Amount amount, Unit degree) {
        return amount.to(degree).value().stripTrailingZeros();
    }
}
