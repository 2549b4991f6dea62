package screedbook.tally;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Standing;
import screedbook.entry.Waste;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The loads of a day summed by all that they have in common, in one walk. */
final class Groups {
    private final Job job;
    private final Unit unit;
    private final Map<Tons.By, Map<String, Sum>> sums = new LinkedHashMap<>();

    private Groups(Job job) {
        this.job = job;
        this.unit = Measure.LOAD.unit(job.system());
        sum(Tons.By.SHIFT, "");
    }

    static List<Tons> of(Loads loads, Job job) {
        Groups groups = new Groups(job);
        loads.loads().forEach(groups::add);
        loads.loose().forEach(groups::less);
        List<Tons> tons = new ArrayList<>();
        for (Tons.By by : Tons.By.values()) {
            groups.sums.getOrDefault(by, Map.of()).values().forEach(s -> tons.add(s.tons()));
        }
        return List.copyOf(tons);
    }

    private Sum sum(Tons.By by, String of) {
        return sums.computeIfAbsent(by, b -> new LinkedHashMap<>()).computeIfAbsent(of, o -> new Sum(by, o, unit));
    }

    private void add(Load load) {
        sum(Tons.By.SHIFT, "").add(load);
        sum(Tons.By.MIX, load.mix()).add(load);
        sum(Tons.By.PAY_ITEM, item(job, load.mix())).add(load);
        sum(Tons.By.FATE, load.fate().word()).add(load);
        for (Share share : load.shares()) {
            sum(Tons.By.PULL, pull(share)).add(load, share);
            sum(Tons.By.LIFT, lift(share)).add(load, share);
        }
    }

    private void less(Standing<Waste> waste) {
        String mix =
                waste.entry().mix() == null ? "mix not noted" : waste.entry().mix();
        sum(Tons.By.SHIFT, "").less(waste.ref(), waste.entry().weight());
        sum(Tons.By.MIX, mix).less(waste.ref(), waste.entry().weight());
        sum(Tons.By.PAY_ITEM, item(job, mix)).less(waste.ref(), waste.entry().weight());
    }

    /** The pay item of a mix, or the words for none. */
    static String item(Job job, String mix) {
        return job.mix(mix).map(Mix::payItem).orElse("no pay item set for " + mix);
    }

    /** Pull and lift together: the same name may stand in every lift. */
    static String pull(Share share) {
        return (share.pull() == null ? "pull not noted" : share.pull())
                + (share.lift() == null ? "" : " lift " + share.lift());
    }

    private static String lift(Share share) {
        return share.lift() == null ? "lift not noted" : "lift " + share.lift();
    }
}
