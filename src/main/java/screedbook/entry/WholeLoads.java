package screedbook.entry;

import java.math.BigDecimal;
import screedbook.unit.UnitSystem;

/**
 * Loads of one mix that need no second look, taken together: no line corrects their tickets, no other ticket has their
 * numbers, and each was placed whole.
 *
 * @param system of the weights and readings
 * @param net of all tickets
 */
public record WholeLoads(String mix, UnitSystem system, int loads, BigDecimal net, Readings paver, Readings plant) {}
