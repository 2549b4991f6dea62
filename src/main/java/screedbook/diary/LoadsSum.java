package screedbook.diary;

import screedbook.diary.TicketRow.Place;
import screedbook.entry.Readings;
import screedbook.entry.WholeLoads;
import screedbook.unit.UnitSystem;

/** Tickets of one mix and one system of units being added up; as exact as decimals, with fewer of them. */
final class LoadsSum {
    private final String mix;
    private final UnitSystem system;
    private final Decimals net = new Decimals();
    private final Decimals paver = new Decimals();
    private final Decimals plant = new Decimals();

    LoadsSum(String mix, UnitSystem system) {
        this.mix = mix;
        this.system = system;
    }

    boolean takes(String its, UnitSystem in) {
        return in == system && its.equals(mix);
    }

    void add(TicketRow ticket) {
        ticket.add(Place.NET, net);
        ticket.add(Place.PAVER_HEAT, paver);
        ticket.add(Place.PLANT_HEAT, plant);
    }

    WholeLoads whole() {
        Readings weights = net.readings();
        return new WholeLoads(mix, system, weights.count(), weights.sum(), paver.readings(), plant.readings());
    }
}
