package screedbook.calc;

import java.math.RoundingMode;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * Wind as a force from 0 to 12.
 *
 * <p>Source: Beaufort scale on land, in miles per hour (read in five copies; one of them has other limits at 11 and 12).
 * The wind is rounded to whole miles per hour first, half up.
 */
public final class Beaufort {
    /** The least miles per hour of each force from 1 on. */
    private static final int[] LEAST = {1, 4, 8, 13, 19, 25, 32, 39, 47, 55, 64, 73};

    private Beaufort() {}

    /**
     * The force of a wind, 0 to 12.
     *
     * @throws IllegalArgumentException when the amount is not a speed
     */
    public static int of(Amount wind) {
        int whole = wind.to(Unit.MILE_PER_HOUR)
                .value()
                .setScale(0, RoundingMode.HALF_UP)
                .intValue();
        int force = 0;
        while (force < LEAST.length && whole >= LEAST[force]) {
            force++;
        }
        return force;
    }
}
