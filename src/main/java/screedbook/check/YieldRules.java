package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.calc.SpreadRate;
import screedbook.entry.Depth;
import screedbook.entry.Standing;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.tally.Outlook;
import screedbook.tally.Probed;
import screedbook.tally.Run;
import screedbook.tally.Totals;
import screedbook.tally.Yielded;
import screedbook.tally.Yields;
import screedbook.unit.Amount;

/** Rules about how much mix went where, and how thick it lies. */
final class YieldRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "yield-check",
                    Sort.OUTSIDE,
                    "A yield check over five loads is near the planned spread rate.",
                    YieldRules::checked),
            new Rule(
                    "yield-no-rate",
                    Sort.DOES_NOT_ADD_UP,
                    "A yield check has tons and an area, so that it comes to a rate.",
                    YieldRules::noRate),
            new Rule("spread-paid", Sort.LOOK_AGAIN, "A pull takes no more mix than is paid for.", YieldRules::paid),
            new Rule(
                    "depth-probed",
                    Sort.OUTSIDE,
                    "The rolled mat is as thick as planned, within what job or sheet allow.",
                    YieldRules::depth));

    private YieldRules() {}

    private static List<Yields.Check> checks(Look look) {
        return look.totals().map(t -> t.yields().checks()).orElse(List.of());
    }

    private static Situation situation(Job job, Standing<?> entry, String pull, Integer lift) {
        return Cases.of(job, null, Cases.lift(job, lift, pull), entry.order(), null);
    }

    private static List<Mark> checked(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Yields.Check check : checks(look)) {
            Yielded y = check.yielded();
            if (y.percent().isPresent()) {
                Amount percent = y.percent().get().shown(1);
                marks.addAll(checked(look, check, percent).stream()
                        .map(m -> m.because(m.working() + " " + String.join("; ", y.put())))
                        .toList());
            }
        }
        return marks;
    }

    /** By the sheet's own limits where it has them, else by the usual range; fewer than five loads are no average. */
    private static List<Mark> checked(Look look, Yields.Check check, Amount percent) {
        Standing<Yield> entry = check.entry();
        String where = check.where() + ": of the planned spread rate";
        String loads = check.yielded().loads() == 0
                ? ""
                : ", " + Look.loads(check.yielded().loads());
        Optional<Bounds> own = look.job(entry)
                .flatMap(job -> look.sheet(entry)
                        .map(s -> Bounds.of(
                                s,
                                Quantity.SPREAD,
                                situation(
                                        job,
                                        entry,
                                        entry.entry().pull(),
                                        entry.entry().lift()))))
                .filter(b -> !b.noLimit());
        if (own.isEmpty()) {
            return Marks.odd(Quantity.SPREAD, List.of(entry.ref()), where, percent);
        }
        List<Mark> marks = Marks.judged(own.get(), List.of(entry.ref()), where, percent, loads);
        return check.yielded().loads() >= Outlook.LOADS
                ? marks
                : marks.stream().map(m -> m.as(Sort.LOOK_AGAIN)).toList();
    }

    private static List<Mark> noRate(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Yields.Check check : checks(look)) {
            if (!check.yielded().rate().known()) {
                marks.add(new Mark(
                        check.entry().ref(),
                        check.where() + ": no rate, " + check.yielded().rate().why(),
                        "a rate is tons over an area",
                        "common practice, no source",
                        "both tickets or the tons, and two stations or an area"));
            }
        }
        return marks;
    }

    private static List<Mark> paid(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Run run : look.totals().map(Totals::runs).orElse(List.of())) {
            look.tickets().stream()
                    .filter(t -> run.entries().contains(t.ref()))
                    .findFirst()
                    .ifPresent(t -> look.job(t).ifPresent(job -> marks.addAll(paid(look, run, t, job))));
        }
        return marks;
    }

    private static List<Mark> paid(Look look, Run run, Standing<?> first, Job job) {
        if (run.percent().isEmpty() || run.area().isEmpty()) {
            return List.of();
        }
        Bounds bounds = YieldBounds.paid(job, look.sheet(first), situation(job, first, run.pull(), run.lift()));
        Amount percent = run.percent().get().shown(1);
        return Marks.judged(
                bounds,
                run.entries(),
                () -> run.name() + ": spread rate, of the planned,",
                percent,
                () -> over(run, bounds)
                        .map(o -> ", " + o.text() + " beyond what is paid for")
                        .orElse(""));
    }

    /** The tons that lie beyond the most that is paid for. */
    private static Optional<Amount> over(Run run, Bounds bounds) {
        Amount most = bounds.all().get(0).high();
        return run.target()
                .flatMap(target -> run.area().map(area -> {
                    BigDecimal cap = target.value().multiply(most.value()).movePointLeft(2);
                    Amount paid = SpreadRate.weightFor(area, new Amount(cap, target.unit()));
                    return new Amount(
                            run.laid().value().subtract(paid.value()).setScale(1, RoundingMode.HALF_UP),
                            run.laid().unit());
                }));
    }

    private static List<Mark> depth(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Probed each : look.totals().map(t -> t.yields().depths()).orElse(List.of())) {
            if (each.state() == Depth.State.COMPACTED && each.planned().isPresent()) {
                each.probes().forEach(p -> marks.addAll(depth(look, each, p)));
            }
        }
        return marks;
    }

    private static List<Mark> depth(Look look, Probed of, Standing<Depth> probe) {
        Optional<Job> job = look.job(probe);
        if (job.isEmpty()) {
            return List.of();
        }
        Amount planned = of.planned().orElseThrow();
        Bounds bounds = YieldBounds.depth(
                job.get(), look.sheet(probe), situation(job.get(), probe, of.pull(), of.lift()), planned);
        String where = of.name()
                + (probe.entry().place() == null ? "" : " " + probe.entry().place()) + ": rolled mat, "
                + AmountText.text(planned) + " planned,";
        return Marks.judged(bounds, List.of(probe.ref()), where, probe.entry().thickness(), "");
    }
}
