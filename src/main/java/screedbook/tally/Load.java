package screedbook.tally;

import java.util.List;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.unit.Amount;

/**
 * A ticket that stands, in figures. All weights are in the job's unit and zero where nothing counts.
 *
 * @param received net as printed; zero for a ticket void at the plant, another job's, or one keyed twice
 * @param placed net less what was not placed; zero for a load that was rejected or thrown away whole
 * @param pay placed less waste of this ticket: tons for pay as kept here
 * @param shares by pull; they sum to {@code pay}
 * @param left why the ticket's weight does not count, or does not count in full; empty when it does
 */
public record Load(
        Standing<Ticket> ticket, Amount received, Amount placed, Amount pay, List<Share> shares, String left) {
    /** What became of the load; a fate that nobody noted is placed, or part placed where a part not placed is noted. */
    public static Ticket.End fate(Ticket ticket) {
        if (ticket.fate().fate() != null) {
            return ticket.fate().fate();
        }
        return ticket.fate().returned() == null ? Ticket.End.PLACED : Ticket.End.PART_PLACED;
    }

    /** Whether some of a load goes into the mat by its fate. */
    public static boolean laid(Ticket ticket) {
        Ticket.End fate = fate(ticket);
        return fate == Ticket.End.PLACED || fate == Ticket.End.PART_PLACED;
    }

    public Ticket.End fate() {
        return fate(ticket.entry());
    }

    /** Whether the load reached the road for this job. */
    public boolean came() {
        return fate() != Ticket.End.VOID_AT_PLANT && fate() != Ticket.End.OTHER_JOB && !again();
    }

    /** Whether the load went into the mat, wholly or in part. */
    public boolean laid() {
        return laid(ticket.entry()) && !again();
    }

    /** Whether another entry of the same ticket counts in its place. */
    boolean again() {
        return left.startsWith(Loads.AGAIN);
    }

    /** The mix as the ticket names it. */
    public String mix() {
        String mix = ticket.entry().paper().mix();
        return mix == null ? "mix not noted" : mix;
    }

    /** Number and weight, as a line of a working. */
    String put() {
        String number = ticket.entry().paper().number();
        return ticket.ref() + (number == null ? "" : " ticket " + number);
    }
}
