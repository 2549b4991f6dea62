package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A paver's speed and the tons that it takes in an hour. */
public final class PaverSpeed {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private PaverSpeed() {}

    /**
     * Tons that a paver lays in an hour: {@code speed x width x thickness x unit weight x 60 / 2000}, in ft/min, ft, ft
     * and lb/ft3 (NAVEDTRA 14080, estimates for asphalt plants); tonnes from m/min, m, m and kg/m3. Short tons when the
     * width is in feet, tonnes when it is in metres.
     *
     * @param thickness after compaction, in any unit of length
     * @throws IllegalArgumentException when the width is in neither feet nor metres
     */
    public static Amount tonsAnHour(Amount speed, Amount width, Amount thickness, Amount unitWeight) {
        boolean metric = metric(width);
        BigDecimal along =
                speed.to(metric ? Unit.METRE_PER_MINUTE : Unit.FOOT_PER_MINUTE).value();
        BigDecimal weight =
                along.multiply(alongOne(width, thickness, unitWeight)).multiply(SIXTY);
        return new Amount(weight, metric ? Unit.KILOGRAM : Unit.POUND).to(metric ? Unit.TONNE : Unit.SHORT_TON);
    }

    /**
     * The speed at which a paver takes so many tons in an hour; {@link #tonsAnHour} the other way round. ft/min when the
     * width is in feet, m/min when it is in metres.
     *
     * @param perHour tons in one hour
     * @throws IllegalArgumentException when the width is in neither feet nor metres, or nothing would be laid
     */
    public static Amount of(Amount perHour, Amount width, Amount thickness, Amount unitWeight) {
        boolean metric = metric(width);
        BigDecimal weight = perHour.to(metric ? Unit.KILOGRAM : Unit.POUND).value();
        BigDecimal each = alongOne(width, thickness, unitWeight);
        if (each.signum() <= 0) {
            throw new IllegalArgumentException(
                    "a mat has a width and a thickness: " + width.text() + ", " + thickness.text());
        }
        BigDecimal speed = weight.divide(SIXTY.multiply(each), MathContext.DECIMAL128);
        return new Amount(speed, metric ? Unit.METRE_PER_MINUTE : Unit.FOOT_PER_MINUTE);
    }

    /** Weight of a mat one foot, or one metre, long. */
    private static BigDecimal alongOne(Amount width, Amount thickness, Amount unitWeight) {
        Unit dense = metric(width) ? Unit.KILOGRAM_PER_CUBIC_METRE : Unit.POUND_PER_CUBIC_FOOT;
        return width.value()
                .multiply(thickness.to(width.unit()).value())
                .multiply(unitWeight.to(dense).value());
    }

    private static boolean metric(Amount width) {
        return switch (width.unit()) {
            case FOOT -> false;
            case METRE -> true;
            default -> throw new IllegalArgumentException("a width is in feet or metres: " + width.text());
        };
    }
}
