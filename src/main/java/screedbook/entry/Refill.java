package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** Tack taken on between two shots. */
public record Refill(
        @Blank(value = "distributor", pick = Blank.Pick.DISTRIBUTOR, carry = true, due = Blank.Due.ASKED, width = 10)
        String distributor,

        @Blank(value = "product", pick = Blank.Pick.PRODUCT, carry = true, width = 12)
        String product,

        @Blank(value = "before", measure = Measure.VOLUME, due = Blank.Due.ALWAYS, width = 7)
        Amount before,

        @Blank(value = "after", measure = Measure.VOLUME, due = Blank.Due.ALWAYS, width = 7)
        Amount after,

        @Blank(value = "delivery paper", width = 14) String paper)
        implements Entry {}
