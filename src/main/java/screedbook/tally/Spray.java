package screedbook.tally;

import screedbook.unit.Amount;

/**
 * How warm a tack product is sprayed.
 *
 * @param low null where nothing is said; the same for high
 * @param source document and clause
 */
public record Spray(Amount low, Amount high, String source) {}
