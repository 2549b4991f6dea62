package screedbook.calc;

import java.math.BigDecimal;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Areas of what was covered in one run: widths across, length along. */
public final class Strip {
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private Strip() {}

    /**
     * Width times length; square yards when the length is in feet, square metres when it is in metres.
     *
     * @throws IllegalArgumentException when an amount is not a length, or the length is in neither feet nor metres
     */
    public static Amount area(Amount width, Amount length) {
        return taper(width, width, length);
    }

    /**
     * A piece whose width changes evenly from one end to the other (a taper; with one width of zero a gore): half the
     * sum of the end widths times the length. The rule is the trapezoid's, as average end areas use it.
     *
     * @throws IllegalArgumentException when an amount is not a length, or the length is in neither feet nor metres
     */
    public static Amount taper(Amount widthAtStart, Amount widthAtEnd, Amount length) {
        Unit along = length.unit();
        BigDecimal widths =
                widthAtStart.to(along).value().add(widthAtEnd.to(along).value());
        BigDecimal product = widths.multiply(length.value()).multiply(HALF);
        return switch (along) {
            case FOOT -> new Amount(product, Unit.SQUARE_FOOT).to(Unit.SQUARE_YARD);
            case METRE -> new Amount(product, Unit.SQUARE_METRE);
            default ->
                throw new IllegalArgumentException("the length of a strip is in feet or metres: " + length.text());
        };
    }
}
