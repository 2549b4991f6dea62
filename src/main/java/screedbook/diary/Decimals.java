package screedbook.diary;

import java.math.BigDecimal;
import screedbook.entry.Readings;

/**
 * Decimals being added up by their digits, mostly of one scale; the sum has the largest scale that was seen, as that of
 * {@link BigDecimal} has.
 */
final class Decimals {
    private Readings others = Readings.NONE;
    private int scale;
    private int count;
    private long sum;
    private long least;
    private long most;

    /**
     * Adds a decimal of 13 digits at most.
     *
     * @param digits without the point
     * @param behind how many of them stand behind the point
     */
    void add(long digits, int behind) {
        if (count > 0 && behind != scale || Math.abs(sum) > Long.MAX_VALUE / 4) {
            others = readings();
            count = 0;
            sum = 0;
        }
        scale = behind;
        least = count == 0 || digits < least ? digits : least;
        most = count == 0 || digits > most ? digits : most;
        sum += digits;
        count++;
    }

    Readings readings() {
        Readings these = count == 0 ? Readings.NONE : new Readings(count, decimal(sum), decimal(least), decimal(most));
        return others.plus(these);
    }

    private BigDecimal decimal(long digits) {
        return BigDecimal.valueOf(digits, scale);
    }
}
