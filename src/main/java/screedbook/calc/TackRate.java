package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Tack for each unit of area: as it left the bar, and as it stays when the water has gone. */
public final class TackRate {
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    private TackRate() {}

    /**
     * Volume over area: gal/yd2 from an area in square yards, L/m2 from one in square metres. Give the volume at 60
     * degrees F (15 degrees C) for a rate at that temperature. Empty where the area is not above zero.
     *
     * @throws IllegalArgumentException when an amount is not a volume or not an area
     */
    public static Optional<Amount> applied(Amount volume, Amount area) {
        if (area.value().signum() <= 0) {
            return Optional.empty();
        }
        boolean metric = area.unit() == Unit.SQUARE_METRE;
        BigDecimal over = volume.to(metric ? Unit.LITRE : Unit.GALLON).value();
        BigDecimal under =
                area.to(metric ? Unit.SQUARE_METRE : Unit.SQUARE_YARD).value();
        return Optional.of(
                new Amount(quotient(over, under), metric ? Unit.LITRE_PER_SQUARE_METRE : Unit.GALLON_PER_SQUARE_YARD));
    }

    /**
     * What stays on the road: applied rate times the residue of the undiluted emulsion times the emulsion's share of
     * what was sprayed (the Asphalt Institute works its answer on tack rates so: 0.15 of a 1:1 dilution of an emulsion
     * with two thirds residue leaves 0.05).
     *
     * @param residue percent by which the emulsion is asphalt, above 0 to 100
     * @throws IllegalArgumentException when the residue is outside its range
     */
    public static Amount residual(Amount applied, BigDecimal residue, Dilution dilution) {
        checkResidue(residue);
        BigDecimal over = applied.value().multiply(residue).multiply(dilution.emulsion());
        return new Amount(quotient(over, HUNDRED.multiply(dilution.parts())), applied.unit());
    }

    /**
     * The applied rate that leaves a residual rate; {@link #residual} the other way round.
     *
     * @param residue percent by which the emulsion is asphalt, above 0 to 100
     * @throws IllegalArgumentException when the residue is outside its range
     */
    public static Amount appliedFor(Amount residual, BigDecimal residue, Dilution dilution) {
        checkResidue(residue);
        BigDecimal over = residual.value().multiply(HUNDRED).multiply(dilution.parts());
        return new Amount(quotient(over, residue.multiply(dilution.emulsion())), residual.unit());
    }

    /**
     * The volume that a rate takes for an area, with an allowance for loss: {@code area * rate * (1 + loss / 100)} (US
     * Army FM 5-436, chapter 6). Gallons from gal/yd2, litres from L/m2.
     *
     * @param loss percent, 0 where nothing is allowed for
     */
    public static Amount volumeFor(Amount area, Amount rate, BigDecimal loss) {
        boolean metric = rate.unit() == Unit.LITRE_PER_SQUARE_METRE;
        BigDecimal wide = area.to(metric ? Unit.SQUARE_METRE : Unit.SQUARE_YARD).value();
        BigDecimal share = HUNDRED.add(loss);
        BigDecimal volume = quotient(wide.multiply(rate.value()).multiply(share), HUNDRED);
        return new Amount(volume, metric ? Unit.LITRE : Unit.GALLON);
    }

    /** An estimate in whole gallons or litres: always the next higher number (NAVEDTRA 14081, prime and tack examples). */
    public static Amount toOrder(Amount volume) {
        return new Amount(volume.value().setScale(0, RoundingMode.CEILING), volume.unit());
    }

    private static void checkResidue(BigDecimal residue) {
        if (residue.signum() <= 0 || residue.compareTo(HUNDRED) > 0) {
            throw new IllegalArgumentException("a residue is above 0 to 100 percent: " + residue.toPlainString());
        }
    }

    private static BigDecimal quotient(BigDecimal over, BigDecimal under) {
        return over.divide(under, MathContext.DECIMAL128);
    }
}
