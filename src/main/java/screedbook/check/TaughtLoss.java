package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.job.Planning;
import screedbook.spec.SpecSheet;
import screedbook.tally.HaulLoss;
import screedbook.unit.Amount;

/** What the job's own loads say of the loss that a plan counts; it stands beside the plan's own and never in its place. */
public final class TaughtLoss {
    private TaughtLoss() {}

    /**
     * One sentence for a window of target temperatures: what loads of its plant lost, what that is for the planned haul,
     * and the window with it. Empty where no haul is settled or too few of its loads were read at both ends.
     */
    public static Optional<String> of(HeatBand band, Job job, SpecSheet sheet, List<HaulLoss> seen) {
        if (band.haul() == null) {
            return Optional.empty();
        }
        Optional<HaulLoss> own = seen.stream()
                .filter(each -> each.plant().equals(band.haul().plant()))
                .findFirst();
        return own.map(o -> "the job's own loads lost " + o.text() + beside(band, job, sheet, o));
    }

    private static String beside(HeatBand band, Job job, SpecSheet sheet, HaulLoss own) {
        Planning.Haul plan = band.haul();
        Amount minutes = plan.minutes() == null ? own.meanMinutes() : plan.minutes();
        Amount loss = whole(own.at(minutes).orElse(own.meanLoss()));
        Optional<Mix> mix = job.mix(band.mix());
        if (mix.isEmpty()) {
            return "";
        }
        Planning.Haul taught = new Planning.Haul(
                plan.plant(), plan.mix(), plan.season(), plan.minutes(), loss, plan.insulated(), plan.source());
        Job.Lift lift = band.lift() == null ? null : job.lift(band.lift()).orElse(null);
        HeatBand other = HeatBand.of(job, sheet, mix.get(), lift, taught);
        return "; for " + minutes.shown(0).text() + " that is " + loss.text() + " where the plan counts "
                + plan.loss().text() + ", and the target would be " + other.text();
    }

    /** To the next higher degree; a gain counts as no loss. */
    private static Amount whole(Amount loss) {
        return new Amount(loss.value().setScale(0, RoundingMode.CEILING).max(BigDecimal.ZERO), loss.unit());
    }
}
