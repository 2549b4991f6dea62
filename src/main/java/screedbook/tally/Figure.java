package screedbook.tally;

import java.math.BigDecimal;

/**
 * One figure of the day with its working.
 *
 * @param id permanent word, unique within the day: {@code placed-tons.12.5-70A}
 * @param label as on screen and page
 * @param text the figure as shown, with its unit
 * @param value the same as a plain decimal for machines; null where the figure is text (a time, a range)
 * @param unit suffix of the unit: {@code ston}; empty for a count or text
 * @param whole of a mean, the sum that it was made of; null elsewhere
 */
public record Figure(
        String id, String label, String text, BigDecimal value, String unit, Working working, BigDecimal whole) {
    public Figure(String id, String label, String text, BigDecimal value, String unit, Working working) {
        this(id, label, text, value, unit, working, null);
    }
}
