package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Equal shares of a lot, each of which is sampled (ERLPM training, Random Sampling, chapter 6, both ways). */
public final class Sublot {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private Sublot() {}

    /**
     * Tons of a sublot: the lot over their number.
     *
     * @param number above 0
     */
    public static Amount tons(Amount lot, int number) {
        return new Amount(quotient(lot.value(), BigDecimal.valueOf(number)), lot.unit());
    }

    /**
     * Minutes of a sublot, where lots go by time: hours x 60 over their number.
     *
     * @param number above 0
     */
    public static Amount minutes(BigDecimal hours, int number) {
        return new Amount(quotient(hours.multiply(SIXTY), BigDecimal.valueOf(number)), Unit.MINUTE);
    }

    /**
     * Trucks in a sublot: its tons over the load of a truck, or its minutes over the minutes from truck to truck.
     *
     * @param each above 0, of the sublot's dimension
     */
    public static BigDecimal trucks(Amount sublot, Amount each) {
        return quotient(sublot.value(), each.to(sublot.unit()).value());
    }

    private static BigDecimal quotient(BigDecimal over, BigDecimal under) {
        return over.divide(under, MathContext.DECIMAL128);
    }
}
