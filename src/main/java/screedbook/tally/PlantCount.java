package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.PlantTotal;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * What a plant told of a mix up to a time, beside what is kept here up to then.
 *
 * @param told the newest of the plant and mix
 * @param mine loads of plant and mix that came here and were loaded until then
 * @param others every other load of the plant up to then: of another mix, void, another job's
 * @param tons of {@code mine}, received
 */
public record PlantCount(Standing<PlantTotal> told, List<Load> mine, List<Load> others, Amount tons) {
    private record Of(String plant, String mix) {}

    /** The newest count of each plant and mix, in the order in which they were first told. */
    public static List<PlantCount> all(Day day, List<Load> loads, Unit unit) {
        Map<Of, Standing<PlantTotal>> newest = new LinkedHashMap<>();
        for (Standing<PlantTotal> each : day.standing(PlantTotal.class)) {
            newest.put(new Of(each.entry().plant(), each.entry().mix()), each);
        }
        return newest.values().stream().map(told -> of(told, loads, unit)).toList();
    }

    private static PlantCount of(Standing<PlantTotal> told, List<Load> loads, Unit unit) {
        PlantTotal t = told.entry();
        List<Load> mine = new ArrayList<>();
        List<Load> others = new ArrayList<>();
        Amount tons = new Amount(BigDecimal.ZERO, unit);
        for (Load load : loads) {
            if (!ofPlant(t, load) || !until(told, load)) {
                continue;
            }
            boolean mix = t.mix() == null
                    || t.mix().equals(load.ticket().entry().paper().mix());
            if (mix && load.came()) {
                mine.add(load);
                tons = tons.plus(load.received());
            } else if (!load.again()) {
                others.add(load);
            }
        }
        return new PlantCount(told, List.copyOf(mine), List.copyOf(others), tons);
    }

    private static boolean ofPlant(PlantTotal told, Load load) {
        String plant = load.ticket().entry().paper().plant();
        return told.plant() == null || plant == null || plant.equals(told.plant());
    }

    /** By the numbers where the plant told its first and last one, else by the hour of loading. */
    private static boolean until(Standing<PlantTotal> told, Load load) {
        Ticket ticket = load.ticket().entry();
        Optional<Long> number = number(ticket.paper().number());
        Optional<Long> first = number(told.entry().firstTicket());
        Optional<Long> last = number(told.entry().lastTicket());
        if (number.isPresent() && last.isPresent()) {
            return number.get() <= last.get()
                    && first.map(f -> number.get() >= f).orElse(true);
        }
        OffsetDateTime loaded = ticket.times().loaded();
        OffsetDateTime at = loaded == null ? load.ticket().order() : loaded;
        return !at.toInstant().isAfter(told.order().toInstant());
    }

    /** A ticket's number as a number; empty where it is none, or has more than 18 digits. */
    public static Optional<Long> number(String text) {
        return text != null && text.matches("\\d{1,18}") ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }

    /** Theirs less ours; null where they told no loads. */
    public Integer loadsApart() {
        return told.entry().loads() == null ? null : told.entry().loads() - mine.size();
    }

    /** Theirs less ours, in the unit in which the job counts; null where they told no tons, or another unit's. */
    public Amount tonsApart() {
        Amount theirs = told.entry().tons();
        return theirs == null || theirs.unit() != tons.unit() ? null : theirs.minus(tons);
    }

    public boolean same() {
        Amount by = tonsApart();
        return Objects.requireNonNullElse(loadsApart(), 0) == 0
                && (by == null ? told.entry().tons() == null : by.value().signum() == 0);
    }

    /** {@code Quarry Road 12.5-70A}. */
    public String name() {
        String plant = Objects.requireNonNullElse(told.entry().plant(), "plant not noted");
        return told.entry().mix() == null ? plant : plant + " " + told.entry().mix();
    }
}
