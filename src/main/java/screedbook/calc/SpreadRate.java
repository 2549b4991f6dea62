package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Mix placed for each unit of area, and the thickness and tons that go with it. */
public final class SpreadRate {
    /**
     * 110 lb/yd2 for each inch of compacted thickness, when the job says nothing else: common practice (INDOT's paving
     * technician manual, chapter 8, and NAVEDTRA 14080, p. 8-31, work their examples with it).
     */
    public static final Amount USUAL_UNIT_WEIGHT = Amount.of("110", Unit.POUND_PER_SQUARE_YARD_INCH);

    private static final BigDecimal FLORIDA = new BigDecimal("43.3");
    private static final BigDecimal MILLIMETRES = new BigDecimal("1000");
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    private SpreadRate() {}

    /**
     * Weight over area: lb/yd2 from an area in square yards, {@code tons * 2000 / (length * width / 9)}; kg/m2 from one
     * in square metres. Empty where the area is not above zero.
     *
     * @throws IllegalArgumentException when an amount is not a weight or not an area
     */
    public static Optional<Amount> of(Amount weight, Amount area) {
        if (area.value().signum() <= 0) {
            return Optional.empty();
        }
        boolean metric = area.unit() == Unit.SQUARE_METRE;
        Unit heavy = metric ? Unit.KILOGRAM : Unit.POUND;
        Unit wide = metric ? Unit.SQUARE_METRE : Unit.SQUARE_YARD;
        Unit rate = metric ? Unit.KILOGRAM_PER_SQUARE_METRE : Unit.POUND_PER_SQUARE_YARD;
        return Optional.of(
                new Amount(quotient(weight.to(heavy).value(), area.to(wide).value()), rate));
    }

    /**
     * The rate that makes a thickness: thickness times unit weight. lb/yd2 from a thickness in inches, kg/m2 from one in
     * millimetres; the unit weight in any unit of density.
     *
     * @throws IllegalArgumentException when the thickness is in neither inches nor millimetres
     */
    public static Amount target(Amount thickness, Amount unitWeight) {
        return switch (thickness.unit()) {
            case INCH -> new Amount(thickness.value().multiply(perInch(unitWeight)), Unit.POUND_PER_SQUARE_YARD);
            case MILLIMETRE ->
                new Amount(thickness.value().multiply(perMillimetre(unitWeight)), Unit.KILOGRAM_PER_SQUARE_METRE);
            default ->
                throw new IllegalArgumentException("a thickness is in inches or millimetres: " + thickness.text());
        };
    }

    /**
     * Unit weight of a mat from the mix's theoretical maximum specific gravity: 43.3 times Gmm, in lb/yd2 for each inch
     * (Florida DOT training on spread rates). 43.3 is 92.5 percent of the 46.8 that water would give.
     */
    public static Amount unitWeightFromGmm(BigDecimal gmm) {
        return new Amount(FLORIDA.multiply(gmm), Unit.POUND_PER_SQUARE_YARD_INCH);
    }

    /**
     * The compacted thickness that a rate is worth on the average: rate over unit weight; inches from lb/yd2,
     * millimetres from kg/m2. It says nothing of the thickness at any one place.
     *
     * @throws IllegalArgumentException when the unit weight is not above zero
     */
    public static Amount equivalentThickness(Amount rate, Amount unitWeight) {
        if (unitWeight.value().signum() <= 0) {
            throw new IllegalArgumentException("a unit weight is above zero: " + unitWeight.text());
        }
        return rate.unit() == Unit.KILOGRAM_PER_SQUARE_METRE
                ? new Amount(quotient(rate.value(), perMillimetre(unitWeight)), Unit.MILLIMETRE)
                : new Amount(quotient(rate.to(Unit.POUND_PER_SQUARE_YARD).value(), perInch(unitWeight)), Unit.INCH);
    }

    /** The weight that a rate takes for an area: short tons from lb/yd2, tonnes from kg/m2. */
    public static Amount weightFor(Amount area, Amount rate) {
        return rate.unit() == Unit.KILOGRAM_PER_SQUARE_METRE
                ? new Amount(area.to(Unit.SQUARE_METRE).value().multiply(rate.value()), Unit.KILOGRAM).to(Unit.TONNE)
                : new Amount(area.to(Unit.SQUARE_YARD).value().multiply(rate.value()), Unit.POUND).to(Unit.SHORT_TON);
    }

    /** The rate in percent of its target; empty where the target is not above zero. */
    public static Optional<Amount> percentOf(Amount target, Amount rate) {
        if (target.value().signum() <= 0) {
            return Optional.empty();
        }
        BigDecimal same = rate.to(target.unit()).value();
        return Optional.of(new Amount(quotient(same.multiply(HUNDRED), target.value()), Unit.PERCENT));
    }

    private static BigDecimal perInch(Amount unitWeight) {
        return unitWeight.to(Unit.POUND_PER_SQUARE_YARD_INCH).value();
    }

    private static BigDecimal perMillimetre(Amount unitWeight) {
        return quotient(unitWeight.to(Unit.KILOGRAM_PER_CUBIC_METRE).value(), MILLIMETRES);
    }

    private static BigDecimal quotient(BigDecimal over, BigDecimal under) {
        return over.divide(under, MathContext.DECIMAL128);
    }
}
