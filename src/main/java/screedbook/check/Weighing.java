package screedbook.check;

import java.util.Optional;
import screedbook.calc.Rounding;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What the weights of a ticket come to between themselves. */
final class Weighing {
    private Weighing() {}

    /** Gross less tare in tons or tonnes. */
    static Optional<Amount> net(Ticket.Weights w) {
        if (w.gross() == null || w.tare() == null) {
            return Optional.empty();
        }
        Amount net = w.gross().minus(w.tare());
        return Optional.of(AmountText.told(net, net.unit() == Unit.KILOGRAM ? Unit.TONNE : Unit.SHORT_TON, 3));
    }

    /** Printed net against printed gross less tare, without sign, in pounds or kilograms. */
    static Optional<Amount> apart(Ticket.Weights w) {
        if (w.gross() == null || w.tare() == null || w.net() == null) {
            return Optional.empty();
        }
        return Optional.of(
                AmountText.size(w.gross().minus(w.tare()).minus(w.net())).shown(0));
    }

    /** Gross less net: the tare that the weights imply. */
    static Optional<Amount> impliedTare(Ticket.Weights w) {
        return w.gross() == null || w.net() == null
                ? Optional.empty()
                : Optional.of(w.gross().minus(w.net()).shown(0));
    }

    /** The legal gross weight of a truck as the job has it. */
    static Optional<Bound> legalGross(Optional<Job.Truck> truck) {
        return truck.filter(t -> t.legalGross() != null)
                .map(t -> new Bound(
                        null,
                        t.legalGross(),
                        true,
                        "job, truck " + t.number(),
                        Rounding.ABSOLUTE,
                        "The job has " + AmountText.text(t.legalGross()) + " as the legal gross weight of truck "
                                + t.number() + "."));
    }
}
