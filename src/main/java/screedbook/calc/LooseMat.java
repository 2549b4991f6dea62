package screedbook.calc;

import java.math.BigDecimal;
import screedbook.unit.Amount;

/** How thick a mat is laid so that it is rolled down to what is planned. */
public final class LooseMat {
    private static final BigDecimal EIGHTH_MORE = new BigDecimal("1.125");

    private LooseMat() {}

    /**
     * An eighth more than the compacted thickness, in the same unit: 1/8 in for each inch of mat (NAVEDTRA 14080, p.
     * 8-31). A start for the screed; the mix and the rollers settle the rest.
     */
    public static Amount about(Amount compacted) {
        return new Amount(compacted.value().multiply(EIGHTH_MORE), compacted.unit());
    }
}
