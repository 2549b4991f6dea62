package screedbook.tally;

import java.util.List;
import java.util.Optional;
import screedbook.entry.Custody;
import screedbook.entry.Result;
import screedbook.entry.Sample;
import screedbook.entry.Standing;

/**
 * A sample with what became of it, over all shifts up to this one.
 *
 * @param number as it is written on the container
 * @param hands its hand-overs in order
 * @param results what a laboratory told of it, in order
 * @param open whether no result has closed it
 * @param where the sublot that it stands for, where that can be told
 */
public record Taken(
        String number,
        Standing<Sample> sample,
        List<Standing<Custody>> hands,
        List<Standing<Result>> results,
        boolean open,
        Optional<Filling.Where> where) {
    /** Who has it now as far as is written: who took it from the last hand, else who took the sample. */
    public String holder() {
        return holder(hands.size());
    }

    /** Who had it before a hand-over. */
    public String holder(int hand) {
        for (int i = hand - 1; i >= 0; i--) {
            String taken = hands.get(i).entry().takenBy();
            if (taken != null) {
                return taken;
            }
        }
        String by = sample.entry().what().takenBy();
        return by == null ? sample.line().who() : by;
    }
}
