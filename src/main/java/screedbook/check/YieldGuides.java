package screedbook.check;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import screedbook.calc.LooseMat;
import screedbook.entry.Day;
import screedbook.entry.Depth;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Yielded;
import screedbook.unit.Amount;

/** What stands beside the blanks of a yield check and of a probe. */
final class YieldGuides {
    private YieldGuides() {}

    private static Situation situation(Job job, String pull, Integer lift, OffsetDateTime at) {
        return Cases.of(job, null, Cases.lift(job, lift, pull), at, null);
    }

    /** The limit of the rate, and what the check comes to as far as it is keyed. */
    static Guide yield(Job job, Optional<SpecSheet> sheet, Day day, Yield check, OffsetDateTime at) {
        Bounds bounds = sheet.map(s -> Bounds.of(s, Quantity.SPREAD, situation(job, check.pull(), check.lift(), at)))
                .orElse(Bounds.NONE);
        Yielded y = Yielded.of(check, day, job);
        Amount percent = y.percent().map(p -> p.shown(1)).orElse(null);
        boolean keyed = y.weight().known() && check.from() != null && check.to() != null;
        String rate = y.percent().map(p -> ", " + p.shown(1).text()).orElse("");
        String comes = y.rate().known()
                ? "comes to " + y.rate().text(1) + rate + "; "
                : keyed ? "no rate: " + y.rate().why() + "; " : "";
        String paver =
                check.to() == null && y.weight().known() ? "tons " + y.weight().text(2) + "; " : "";
        String target = y.target().map(t -> " of " + t.shown(1).text()).orElse("");
        String limit = bounds.noLimit() ? "no limit set" : bounds.text() + " %" + target;
        return new Guide(
                paver + comes + limit,
                bounds.clause(),
                bounds.of(percent),
                bounds.working() + " " + String.join("; ", y.put()) + ".",
                List.of());
    }

    /** The planned thickness; rolled mat is held against what job or sheet allow, loose mat against nothing. */
    static Guide depth(Job job, Optional<SpecSheet> sheet, Depth probe, OffsetDateTime at) {
        Optional<Job.Lift> lift = Cases.lift(job, probe.lift(), probe.pull());
        if (lift.isEmpty()) {
            return Guide.NOTHING;
        }
        if (lift.get().levels()) {
            return new Guide("levels, no thickness judged", "job", Verdict.NONE, "", List.of());
        }
        Amount planned = lift.get().thickness();
        String plan = "planned " + AmountText.plain(planned);
        if (probe.state() != Depth.State.COMPACTED) {
            boolean loose = probe.state() == Depth.State.LOOSE;
            Amount about = LooseMat.about(planned);
            return new Guide(
                    plan + " rolled" + (loose ? ", about " + AmountText.plain(about.shown(2)) + " loose" : ""),
                    loose ? "NAVEDTRA 14080, p. 8-31" : "job",
                    Verdict.NONE,
                    "An eighth more than planned is where a screed is begun; no limit is set for it.",
                    List.of());
        }
        Bounds bounds = YieldBounds.depth(job, sheet, situation(job, probe.pull(), probe.lift(), at), planned);
        return new Guide(
                plan + ", " + bounds.text(job.system()),
                bounds.clause(),
                bounds.of(probe.thickness()),
                bounds.working(),
                List.of());
    }
}
