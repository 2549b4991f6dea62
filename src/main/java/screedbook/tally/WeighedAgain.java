package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Truck;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * A loaded truck that was weighed again on another scale, beside what its ticket prints: gross against gross; where the
 * ticket prints no gross, what it comes to with the tare as weighed, else with the truck's usual one, against the net.
 *
 * @param ticket the one that the entry names, else the load that the truck discharged next
 * @param what {@code gross} or {@code net}
 * @param found by the other scale
 * @param printed on the ticket, in the other scale's unit
 * @param how how the net was found; empty of a gross
 */
public record WeighedAgain(
        Standing<Truck> weighed, Standing<Ticket> ticket, String what, Amount found, Amount printed, String how) {
    /** Those of a day whose ticket is known and prints a weight. */
    public static List<WeighedAgain> of(Day day, Job job) {
        List<WeighedAgain> all = new ArrayList<>();
        for (Standing<Truck> each : day.standing(Truck.class)) {
            if (each.entry().gross() != null) {
                ticket(day, each).flatMap(t -> of(job, each, t)).ifPresent(all::add);
            }
        }
        return List.copyOf(all);
    }

    private static Optional<Standing<Ticket>> ticket(Day day, Standing<Truck> weighed) {
        String number = weighed.entry().ticket();
        Instant at = weighed.order().toInstant();
        return day.standing(Ticket.class).stream()
                .filter(t -> Objects.equals(
                        t.entry().paper().truck(), weighed.entry().truck()))
                .filter(t -> number == null
                        ? !t.order().toInstant().isBefore(at)
                        : number.equals(t.entry().paper().number()))
                .findFirst();
    }

    private static Optional<WeighedAgain> of(Job job, Standing<Truck> weighed, Standing<Ticket> ticket) {
        Amount gross = weighed.entry().gross();
        Ticket.Weights printed = ticket.entry().weights();
        if (printed.gross() != null) {
            return Optional.of(new WeighedAgain(
                    weighed, ticket, "gross", gross, printed.gross().to(gross.unit()), ""));
        }
        Optional<Amount> usual = job.truck(weighed.entry().truck()).map(Job.Truck::tare);
        Optional<Amount> tare = Optional.ofNullable(weighed.entry().tare())
                .or(() -> Optional.ofNullable(printed.tare()))
                .or(() -> usual);
        if (printed.net() == null || tare.isEmpty()) {
            return Optional.empty();
        }
        Amount less = tare.get().to(gross.unit());
        String whose = weighed.entry().tare() != null ? "weighed empty" : printed.tare() != null ? "printed" : "usual";
        return Optional.of(new WeighedAgain(
                weighed,
                ticket,
                "net",
                gross.minus(less),
                printed.net().to(gross.unit()),
                "gross " + gross.text() + " less tare " + less.shown(0).text() + ", " + whose));
    }

    /** The other scale less the ticket. */
    public Amount apart() {
        return found.minus(printed);
    }

    /** How far they are apart, without sign, in hundredths of what is printed, to two decimals; empty where that is 0. */
    public Optional<Amount> percent() {
        return printed.value().signum() == 0
                ? Optional.empty()
                : Optional.of(new Amount(
                        apart().value()
                                .abs()
                                .movePointRight(2)
                                .divide(printed.value().abs(), 2, RoundingMode.HALF_UP),
                        Unit.PERCENT));
    }

    /** {@code 80 lb less}, {@code the same}. */
    public String difference() {
        BigDecimal by = apart().value();
        return by.signum() == 0
                ? "the same"
                : new Amount(by.abs(), found.unit()).shown(0).text() + (by.signum() < 0 ? " less" : " more");
    }
}
