package screedbook.tally;

import java.util.List;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.unit.Amount;

/**
 * A load that went into the mat, as lots count it.
 *
 * @param mix never null; a load without one lies in no lot
 * @param plant null where none was noted
 * @param number of the ticket; null where none was noted
 * @param placed net less what was not placed
 * @param shares where it went
 */
public record Laid(
        ShiftId shift, Ref ticket, String plant, String number, String mix, Amount placed, List<Share> shares) {
    /** The loads of a shift that lie in lots, in the order in which they were discharged. */
    static List<Laid> of(ShiftId shift, List<Load> loads) {
        return loads.stream()
                .filter(l -> l.laid() && l.ticket().entry().paper().mix() != null)
                .map(l -> new Laid(
                        shift,
                        l.ticket().ref(),
                        l.ticket().entry().paper().plant(),
                        l.ticket().entry().paper().number(),
                        l.mix(),
                        l.placed(),
                        l.shares()))
                .toList();
    }

    /** {@code ticket 48217}, or the entry's own name where no number was noted. */
    String name() {
        return number == null ? "load " + ticket : "ticket " + number;
    }
}
