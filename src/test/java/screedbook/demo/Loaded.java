package screedbook.demo;

import java.math.BigDecimal;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A load's ticket while the script still turns it this way and that. */
final class Loaded {
    final Haul.Trip trip;
    final String plant;
    final String mix;
    String number;
    String silo;
    Ticket.Kept kept = Ticket.Kept.PAPER;
    String weighedBy;
    boolean scales;
    boolean arrival;
    boolean unread;
    BigDecimal net;
    Integer gross;
    Integer tare;
    Integer plantHeat;
    Integer paverHeat;
    String instrument;
    Station from;
    Station to;
    String pull;
    Integer lift;
    Ticket.End fate;
    BigDecimal returned;
    String basis;
    String reason;
    String decidedBy;
    String toldTo;

    Loaded(Haul.Trip trip, String plant, String mix, String number) {
        this.trip = trip;
        this.plant = plant;
        this.mix = mix;
        this.number = number;
        this.gross = trip.gross();
        this.tare = trip.tare();
        this.net = trip.net();
    }

    /** The gross weight that the scale printed after all. */
    void weighs(int pounds) {
        gross = pounds;
        net = BigDecimal.valueOf(pounds - tare).divide(BigDecimal.valueOf(2000)).setScale(2);
    }

    boolean rejected() {
        return fate == Ticket.End.REJECTED;
    }

    /** Tons that stay in the mat. */
    BigDecimal placed() {
        if (rejected()) {
            return BigDecimal.ZERO;
        }
        return returned == null ? net : net.subtract(returned);
    }

    void rejected(String why, String by, String told) {
        fate = Ticket.End.REJECTED;
        reason = why;
        decidedBy = by;
        toldTo = told;
    }

    void partPlaced(String tons, String known, String why, String by, String told) {
        fate = Ticket.End.PART_PLACED;
        returned = new BigDecimal(tons);
        basis = known;
        reason = why;
        decidedBy = by;
        toldTo = told;
    }

    Ticket ticket() {
        return ticket(net);
    }

    /** With another net than the one printed, as it was keyed. */
    Ticket ticket(BigDecimal net) {
        return new Ticket(
                new Ticket.Paper(plant, silo, number, trip.truck(), mix, kept, weighedBy, null, null),
                new Ticket.Weights(
                        new Amount(net, Unit.SHORT_TON),
                        scales ? pounds(gross) : null,
                        scales ? pounds(tare) : null,
                        null,
                        null),
                new Ticket.Times(
                        trip.loaded(),
                        arrival || rejected() ? trip.arrived() : null,
                        rejected() ? null : trip.discharged()),
                new Ticket.Heat(degrees(plantHeat), degrees(paverHeat), instrument),
                new Ticket.Spot(from, to, pull, lift, "P1", null),
                new Ticket.Fate(
                        fate,
                        returned == null ? null : new Amount(returned, Unit.SHORT_TON),
                        basis,
                        reason,
                        decidedBy,
                        toldTo,
                        null));
    }

    private static Amount pounds(int weight) {
        return new Amount(BigDecimal.valueOf(weight), Unit.POUND);
    }

    private static Amount degrees(Integer heat) {
        return heat == null ? null : new Amount(BigDecimal.valueOf(heat), Unit.DEG_F);
    }
}
