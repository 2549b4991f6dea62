package screedbook.check;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import screedbook.calc.Rounding;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Reckoned;
import screedbook.tally.Shot;
import screedbook.unit.Amount;

/** What a tack shot is judged by. */
final class Shooting {
    private Shooting() {}

    /** Whether water was added, as far as it was noted. */
    static boolean diluted(Tack tack) {
        Tack.Product p = tack.product();
        boolean parts = p.waterParts() != null && p.waterParts().signum() > 0;
        return parts || p.diluted() == Tack.Dilution.YES || p.diluted() == Tack.Dilution.RATIO_UNKNOWN;
    }

    static boolean dilutionAllowed(Job job, Tack tack) {
        return job.product(tack.product().product())
                .map(p -> p.dilution() == YesNo.YES)
                .orElse(false);
    }

    /** The sheet's limits of a rate, and the job's own target where its tolerance is settled. */
    static Bounds rate(Job job, Optional<SpecSheet> sheet, Tack tack, OffsetDateTime at, Job.Basis basis) {
        Situation situation = Cases.of(job, tack, at);
        Quantity quantity = basis == Job.Basis.APPLIED ? Quantity.TACK_APPLIED : Quantity.TACK_RESIDUAL;
        Bounds bounds = sheet.map(s -> Bounds.of(s, quantity, situation)).orElse(Bounds.NONE);
        return bounds.and(own(job, tack.target().surface(), basis));
    }

    /** The job's own target for a surface, where its tolerance is settled. */
    static List<Bound> own(Job job, Tack.Under surface, Job.Basis basis) {
        return surface == null
                ? List.of()
                : job.tackTarget(surface)
                        .filter(t -> basis(t) == basis && t.tolerance() != null)
                        .map(t -> List.of(agreed(t)))
                        .orElse(List.of());
    }

    /** The target agreed for the surface under the tack. */
    static Optional<Job.TackTarget> target(Job job, Tack tack) {
        return tack.target().surface() == null
                ? Optional.empty()
                : job.tackTarget(tack.target().surface());
    }

    /** A target that does not say what it speaks of speaks of what stays on the road. */
    static Job.Basis basis(Job.TackTarget target) {
        return target.basis() == null ? Job.Basis.RESIDUAL : target.basis();
    }

    /** The rate that the form comes to, against what it is judged by. */
    static Guide guide(Job job, Optional<SpecSheet> sheet, Tack tack, OffsetDateTime at) {
        Optional<Job.TackTarget> target = target(job, tack);
        Job.Basis basis = target.map(Shooting::basis).orElse(Job.Basis.APPLIED);
        Bounds bounds = rate(job, sheet, tack, at, basis);
        Shot shot = Shot.of(tack, job);
        Reckoned rate = basis == Job.Basis.APPLIED ? shot.applied() : shot.residual();
        String aimed = bounds.noLimit() && target.isPresent()
                ? ", target " + target.get().rate().text()
                : "";
        String limit = bounds.text(job.system()) + (bounds.noLimit() ? "" : " " + basis.word()) + aimed;
        Verdict verdict = rate.known() ? bounds.of(rate.amount()) : Verdict.NONE;
        if (rises(job, tack) || verdict != Verdict.OUTSIDE && odd(shot)) {
            verdict = Verdict.LOOK_AGAIN;
        }
        String working = bounds.working() + " " + String.join("; ", shot.put());
        return new Guide(limit, bounds.clause(), verdict, working, List.of());
    }

    private static boolean odd(Shot shot) {
        return shot.applied()
                .seen()
                .filter(a -> Slips.unusual(Quantity.TACK_APPLIED, a))
                .isPresent();
    }

    /** Whether a tank reads more after the shot than before it, or a meter less. */
    static boolean rises(Job job, Tack tack) {
        Tack.Gauge g = tack.gauge();
        Amount before = g.before() == null ? g.depthBefore() : g.before();
        Amount after = g.after() == null ? g.depthAfter() : g.after();
        if (before == null
                || after == null
                || before.unit().dimension() != after.unit().dimension()) {
            return false;
        }
        Tack.Reading reading = g.reading() != null
                ? g.reading()
                : job.distributor(tack.product().distributor())
                        .map(Job.Distributor::reading)
                        .orElse(Tack.Reading.TANK);
        int c = after.compareTo(before);
        return reading == Tack.Reading.METER ? c < 0 : c > 0;
    }

    private static Bound agreed(Job.TackTarget t) {
        String source = t.source() == null ? "job, tack target" : t.source();
        String working =
                "The job's " + basis(t).word() + " target on " + t.surface().word() + " is "
                        + t.rate().text() + " ± " + t.tolerance().text() + ".";
        return new Bound(
                t.rate().minus(t.tolerance()), t.rate().plus(t.tolerance()), true, source, Rounding.HALF_EVEN, working);
    }
}
