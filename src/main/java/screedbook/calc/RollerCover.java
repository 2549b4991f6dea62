package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** How often a roller goes side by side to cover a width, and how close its drum's blows lie. */
public final class RollerCover {
    /** Six inches, by which drums overlap each other and the edge. */
    private static final Amount OVERLAP = Amount.of("6", Unit.INCH);

    private RollerCover() {}

    /**
     * Runs side by side that cover a width once, each overlapping the one before by 6 in: {@code W / (R - 6 in)},
     * rounded up (supplier's table of passes for one coverage, Graniterock, asphalt compaction tables; 55 of its 56
     * cells).
     *
     * @param overEdge whether the drum also hangs 6 in over the edge: {@code (W + 6 in) / (R - 6 in)}; common practice,
     *     no source
     * @throws IllegalArgumentException when the drum is no wider than the overlap, or the width is not above zero
     */
    public static int runsAcross(Amount width, Amount drum, boolean overEdge) {
        BigDecimal overlap = OVERLAP.to(Unit.FOOT).value();
        BigDecimal covered = drum.to(Unit.FOOT).value().subtract(overlap);
        BigDecimal wide = width.to(Unit.FOOT).value();
        if (covered.signum() <= 0 || wide.signum() <= 0) {
            throw new IllegalArgumentException("a width of " + width + " and a drum of " + drum);
        }
        BigDecimal over = overEdge ? wide.add(overlap) : wide;
        return over.divide(covered, 6, RoundingMode.HALF_UP)
                .setScale(0, RoundingMode.CEILING)
                .intValueExact();
    }

    /**
     * Blows of a vibrating drum in one foot of way: vibrations a minute over feet a minute (the same tables, vibratory
     * speed).
     *
     * @throws IllegalArgumentException when the roller stands
     */
    public static BigDecimal impactsAFoot(int vibrations, Amount speed) {
        BigDecimal feet = speed.to(Unit.FOOT_PER_MINUTE).value();
        if (feet.signum() <= 0) {
            throw new IllegalArgumentException("a roller at " + speed);
        }
        return BigDecimal.valueOf(vibrations)
                .divide(feet, MathContext.DECIMAL64)
                .setScale(1, RoundingMode.HALF_UP);
    }
}
