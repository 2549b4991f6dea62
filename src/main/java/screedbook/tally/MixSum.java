package screedbook.tally;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Day;
import screedbook.entry.Readings;
import screedbook.entry.WholeLoads;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * Loads, weights and mix temperatures of one mix: what is asked most of an archive. The same figures as in
 * {@link Totals}, with no working.
 *
 * @param loads that came
 * @param received net as printed
 * @param placed net less what was not placed
 * @param paver readings at the paver of the loads that were laid
 * @param plant readings at the plant of the loads that were laid
 */
public record MixSum(
        String mix,
        UnitSystem system,
        int loads,
        BigDecimal received,
        BigDecimal placed,
        Readings paver,
        Readings plant) {
    /** A day's mixes in the order in which they came. */
    public static List<MixSum> of(Day day, UnitSystem system) {
        Unit degree = Measure.TEMPERATURE.unit(system);
        Map<String, MixSum> sums = new LinkedHashMap<>();
        for (Load load : Loads.of(day, Measure.LOAD.unit(system)).loads()) {
            boolean laid = load.laid();
            Readings paver = laid ? heat(load.ticket().entry().heat().paver(), degree) : Readings.NONE;
            Readings plant = laid ? heat(load.ticket().entry().heat().plant(), degree) : Readings.NONE;
            MixSum one = new MixSum(
                    load.mix(),
                    system,
                    load.came() ? 1 : 0,
                    load.received().value(),
                    load.placed().value(),
                    paver,
                    plant);
            sums.merge(load.mix(), one, MixSum::plus);
        }
        return List.copyOf(sums.values());
    }

    /** Loads that need no second look; weights and readings of another system of units than the job's do not count. */
    public static MixSum of(WholeLoads whole, UnitSystem system) {
        return whole.system() == system
                ? new MixSum(whole.mix(), system, whole.loads(), whole.net(), whole.net(), whole.paver(), whole.plant())
                : new MixSum(
                        whole.mix(),
                        system,
                        whole.loads(),
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        Readings.NONE,
                        Readings.NONE);
    }

    private static Readings heat(Amount seen, Unit degree) {
        return seen == null || seen.unit() != degree ? Readings.NONE : Readings.of(seen.value());
    }

    /** This and another shift's of the same mix and system. */
    public MixSum plus(MixSum other) {
        return new MixSum(
                mix,
                system,
                loads + other.loads,
                received.add(other.received),
                placed.add(other.placed),
                paver.plus(other.paver),
                plant.plus(other.plant));
    }
}
