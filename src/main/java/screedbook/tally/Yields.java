package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Area;
import screedbook.entry.Day;
import screedbook.entry.Depth;
import screedbook.entry.Standing;
import screedbook.entry.Yield;
import screedbook.job.Job;

/**
 * How much went where: yield checks, how each pull comes out, and how thick it was found.
 *
 * @param checks the yield checks, oldest first
 * @param ahead for each pull and lift of which something was laid at a known place
 * @param depths by pull, lift and state of the mix
 */
public record Yields(List<Check> checks, List<Outlook> ahead, List<Probed> depths) {
    /** A yield check and what it comes to. */
    public record Check(Standing<Yield> entry, Yielded yielded) {
        /** {@code B lift 2}, as totals have it. */
        public String name() {
            Yield y = entry.entry();
            return (y.pull() == null ? "pull not noted" : y.pull()) + (y.lift() == null ? "" : " lift " + y.lift());
        }

        /** {@code B lift 2 12+00 to 14+00}. */
        public String where() {
            return name() + " "
                    + (entry.entry().from() == null ? "?" : entry.entry().from()) + " to "
                    + (entry.entry().to() == null ? "?" : entry.entry().to());
        }
    }

    static Yields of(Day day, Job job, List<Load> loads, List<Run> runs, ToDate before) {
        List<Check> checks = new ArrayList<>();
        for (Standing<Yield> each : day.standing(Yield.class)) {
            checks.add(new Check(each, Yielded.of(each.entry(), loads, job)));
        }
        return new Yields(
                List.copyOf(checks),
                Outlook.of(runs, loads, day.standing(Area.class), job, before),
                Probed.of(day.standing(Depth.class), job));
    }
}
