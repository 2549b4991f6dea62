package screedbook.tally;

import java.util.List;
import screedbook.entry.Ref;

/**
 * How a figure came about, so that anybody can do it again by hand.
 *
 * @param formula in words and signs: {@code area = length x width / 9}
 * @param put one line for each step with its figures
 * @param entries the entries that went in
 * @param source of the formula: document, edition, section, or "common practice, no source"
 */
public record Working(String formula, List<String> put, List<Ref> entries, String source) {}
