package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.calc.SpreadRate;
import screedbook.entry.Area;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * How a pull of a lift comes out: its last loads, and what it takes to the end of what is planned.
 *
 * @param run of this shift
 * @param loads of which the last rate is the mean; five, or as many as there are
 * @param last spread rate of those; empty where their area is not known
 * @param ahead length of what is planned and not laid, in this shift or before; zero where nothing is planned
 * @param areaLeft of that; empty where nothing is planned or the width is not known
 * @param left tons for that at the rate of this shift
 * @param planned tons for that at the planned rate
 * @param atEnd tons laid in this shift and left to lay, at the rate of this shift
 */
public record Outlook(
        Run run,
        int loads,
        Optional<Amount> last,
        Optional<Amount> lastPercent,
        Amount ahead,
        Optional<Amount> areaLeft,
        Optional<Amount> left,
        Optional<Amount> planned,
        Optional<Amount> atEnd,
        List<Ref> lastEntries,
        List<String> lastPut,
        List<String> leftPut) {
    /** Five truckloads are averaged: Florida DOT training on spread rates, slide 24; local agency section 334-5.6.6. */
    public static final int LOADS = 5;

    static List<Outlook> of(List<Run> runs, List<Load> loads, List<Standing<Area>> parts, Job job, ToDate before) {
        Road road = Road.of(job);
        return runs.stream()
                .filter(r -> !r.stretches().isEmpty())
                .map(r -> new Looking(r, loads, parts, job, road, before).outlook())
                .toList();
    }

    /** One run being looked at. */
    private static final class Looking {
        private final Run run;
        private final List<Load> loads;
        private final List<OddArea> parts;
        private final Job job;
        private final Road road;
        private final ToDate before;
        private final Optional<Amount> width;
        private final Unit along;

        Looking(Run run, List<Load> loads, List<Standing<Area>> parts, Job job, Road road, ToDate before) {
            this.run = run;
            this.loads = loads;
            this.job = job;
            this.road = road;
            this.before = before;
            this.width = job.pull(run.pull(), run.lift()).map(Job.Pull::width);
            this.along = Measure.WIDTH.unit(job.system());
            this.parts = parts.stream()
                    .filter(p -> run.parts().contains(p.ref()))
                    .map(p -> OddArea.of(p, job))
                    .toList();
        }

        Outlook outlook() {
            List<Stretch> last = new ArrayList<>();
            Set<Ref> entries = new LinkedHashSet<>();
            for (int i = run.stretches().size() - 1; i >= 0 && entries.size() < LOADS; i--) {
                last.add(0, run.stretches().get(i));
                entries.addAll(run.stretches().get(i).by());
            }
            List<String> put = new ArrayList<>();
            Amount weight = weight(entries, put);
            PullArea area = PullArea.of(Cover.of(last), width, parts, along, road);
            put.addAll(area.put());
            Optional<Amount> rate = area.area().flatMap(a -> SpreadRate.of(weight, a));
            Optional<Amount> percent = rate.flatMap(r -> run.target().flatMap(t -> SpreadRate.percentOf(t, r)));
            return ahead(rate, percent, entries, put);
        }

        private Amount weight(Set<Ref> entries, List<String> put) {
            BigDecimal sum = BigDecimal.ZERO;
            for (Load load : loads) {
                for (Share share : load.shares()) {
                    if (entries.contains(share.of())) {
                        sum = sum.add(share.weight().value());
                        put.add(load.put() + " " + share.weight().text());
                    }
                }
            }
            Amount weight = new Amount(sum, run.laid().unit());
            put.add("together " + weight.text());
            return weight;
        }

        private Outlook ahead(Optional<Amount> rate, Optional<Amount> percent, Set<Ref> entries, List<String> put) {
            Cover left = planned().minus(laid());
            Amount length = new Amount(left.length(), along);
            Optional<Amount> area = left.empty()
                    ? Optional.empty()
                    : PullArea.of(left, width, List.of(), along, road).area();
            Optional<Amount> tons = area.flatMap(a -> run.rate().map(r -> SpreadRate.weightFor(a, r)));
            Optional<Amount> plan = area.flatMap(a -> run.target().map(t -> SpreadRate.weightFor(a, t)));
            List<String> steps = new ArrayList<>();
            left.joined()
                    .forEach(s -> steps.add("planned and not laid: " + road.station(s.low()) + " to "
                            + road.station(s.high()) + ", " + new Amount(s.length(), along).text()));
            area.ifPresent(a -> steps.add("area " + a.shown(1).text()));
            run.rate()
                    .ifPresent(r ->
                            steps.add("at the rate of this shift, " + r.shown(1).text()));
            steps.add("laid in this shift " + run.laid().text());
            return new Outlook(
                    run,
                    entries.size(),
                    rate,
                    percent,
                    length,
                    area,
                    tons,
                    plan,
                    tons.map(t -> t.plus(run.laid().to(t.unit()))),
                    List.copyOf(entries),
                    List.copyOf(put),
                    List.copyOf(steps));
        }

        private Cover planned() {
            return Cover.of(job.planning().planned().stream()
                    .filter(p -> p.pull().equals(run.pull()) && Objects.equals(p.lift(), liftOf()))
                    .map(p -> Stretch.between(road.along(p.from()), road.along(p.to()), List.of()))
                    .toList());
        }

        private Integer liftOf() {
            return Target.lift(job, run.pull(), run.lift())
                    .map(Job.Lift::number)
                    .orElse(run.lift());
        }

        private Cover laid() {
            Cover laid = Cover.of(run.stretches());
            for (PavedBefore each : before.paved()) {
                boolean same = Objects.equals(each.pull(), run.pull())
                        && (each.lift() == null || Objects.equals(each.lift(), liftOf()));
                laid = same ? laid.plus(each.on(road)) : laid;
            }
            return laid;
        }
    }
}
