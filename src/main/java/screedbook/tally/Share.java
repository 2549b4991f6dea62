package screedbook.tally;

import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.unit.Amount;

/**
 * What one pull got of a load: the ticket's own remainder, or a part.
 *
 * @param of the ticket, or the part
 * @param weight as laid: waste of the ticket is taken off its own remainder
 * @param from null when not noted; the same for the others that say where
 */
public record Share(Ref of, String pull, Integer lift, Station from, Station to, String elsewhere, Amount weight) {}
