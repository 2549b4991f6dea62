package screedbook.tally;

import java.math.BigDecimal;
import screedbook.calc.SpreadRate;
import screedbook.job.Mix;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What a mix weighs in the mat, and where that is from: the first of four that the job settles. */
record UnitWeight(Amount weight, String source) {
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    static UnitWeight of(Mix mix) {
        if (mix.spread() != null) {
            return new UnitWeight(spread(mix.spread()), "spread rate for a unit of thickness, from the job");
        }
        if (mix.unitWeight() != null) {
            return new UnitWeight(mix.unitWeight(), "unit weight, from the job");
        }
        if (mix.gmm() != null) {
            return new UnitWeight(
                    SpreadRate.unitWeightFromGmm(mix.gmm()),
                    "43.3 x Gmm " + mix.gmm().toPlainString() + ", Florida DOT training on spread rates");
        }
        return new UnitWeight(SpreadRate.USUAL_UNIT_WEIGHT, "usual 110 lb/yd² for each inch, common practice");
    }

    /** lb/yd2 for each inch, or kg/m2 for each mm, as a weight of a volume. */
    private static Amount spread(Amount rate) {
        return rate.unit() == Unit.KILOGRAM_PER_SQUARE_METRE
                ? new Amount(rate.value().multiply(THOUSAND), Unit.KILOGRAM_PER_CUBIC_METRE)
                : new Amount(rate.value(), Unit.POUND_PER_SQUARE_YARD_INCH);
    }
}
