package screedbook.tally;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Depth;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * Thickness as probed on one pull and lift, in one state of the mix.
 *
 * @param name {@code B lift 2}, as totals have it
 * @param state null where nobody said whether it was rolled
 * @param planned compacted thickness; empty where none is planned or it varies
 * @param probes in the order in which they were made, all in the job's unit
 */
public record Probed(
        String name,
        String pull,
        Integer lift,
        Depth.State state,
        Optional<Amount> planned,
        List<Standing<Depth>> probes) {
    private record Key(String pull, Integer lift, Depth.State state) {}

    static List<Probed> of(List<Standing<Depth>> all, Job job) {
        Map<Key, List<Standing<Depth>>> groups = new LinkedHashMap<>();
        for (Standing<Depth> each : all) {
            Depth d = each.entry();
            if (d.thickness() != null && d.thickness().unit() == Measure.DEPTH.unit(job.system())) {
                groups.computeIfAbsent(new Key(d.pull(), d.lift(), d.state()), k -> new ArrayList<>())
                        .add(each);
            }
        }
        List<Probed> probed = new ArrayList<>();
        groups.forEach((key, probes) -> probed.add(new Probed(
                (key.pull() == null ? "pull not noted" : key.pull())
                        + (key.lift() == null ? "" : " lift " + key.lift()),
                key.pull(),
                key.lift(),
                key.state(),
                planned(job, key.pull(), key.lift()),
                List.copyOf(probes))));
        return List.copyOf(probed);
    }

    /** The planned thickness of a pull; empty where it varies. */
    static Optional<Amount> planned(Job job, String pull, Integer lift) {
        return Target.lift(job, pull, lift).filter(l -> !l.levels()).map(Job.Lift::thickness);
    }

    /** {@code compacted}, {@code loose}, {@code core untrimmed}, {@code state not noted}. */
    public String stateText() {
        return state == null ? "state not noted" : state.word().replace('-', ' ');
    }

    public List<Amount> amounts() {
        return probes.stream().map(p -> p.entry().thickness()).toList();
    }

    /** To two decimals, half up. */
    public Amount mean() {
        return Figures.mean(amounts());
    }
}
