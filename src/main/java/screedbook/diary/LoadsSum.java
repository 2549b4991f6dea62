package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import screedbook.diary.TicketRow.Place;
import screedbook.entry.Readings;
import screedbook.entry.WholeLoads;
import screedbook.unit.UnitSystem;

/** Tickets of one mix and one system of units being added up; as exact as decimals, with fewer of them. */
final class LoadsSum {
    private final byte[] mix;
    private final UnitSystem system;
    private final Decimals net = new Decimals();
    private final Decimals paver = new Decimals();
    private final Decimals plant = new Decimals();

    LoadsSum(TicketRow first) {
        this.mix = first.mix();
        this.system = first.system();
    }

    boolean takes(TicketRow ticket) {
        return ticket.system() == system && ticket.isOfMix(mix);
    }

    void add(TicketRow ticket) {
        ticket.add(Place.NET, net);
        ticket.add(Place.PAVER_HEAT, paver);
        ticket.add(Place.PLANT_HEAT, plant);
    }

    WholeLoads whole() {
        Readings weights = net.readings();
        return new WholeLoads(
                new String(mix, UTF_8), system, weights.count(), weights.sum(), paver.readings(), plant.readings());
    }
}
