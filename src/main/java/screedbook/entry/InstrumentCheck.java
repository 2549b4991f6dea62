package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** An instrument held against something known, or a gauge's standard count. */
public record InstrumentCheck(
        @Blank(value = "instrument", pick = Blank.Pick.INSTRUMENT, due = Blank.Due.ALWAYS, carry = true, width = 12)
        String instrument,

        @Blank(value = "checked by", due = Blank.Due.ASKED, carry = true, width = 16)
        Against against,

        @Blank(
                value = "it shows",
                measure = Measure.TEMPERATURE,
                due = Blank.Due.ASKED,
                width = 6,
                help = "of a thermometer")
        Amount shows,

        @Blank(
                value = "should show",
                measure = Measure.TEMPERATURE,
                due = Blank.Due.ASKED,
                width = 6,
                help = "where the other instrument shows it; in an ice bath it is freezing")
        Amount known,

        @Blank(value = "density count", due = Blank.Due.ASKED, width = 7)
        Integer densityCount,

        @Blank(value = "moisture count", width = 7) Integer moistureCount,

        @Blank(value = "fit for use", due = Blank.Due.ASKED, width = 4, help = "by the instrument's own rules")
        YesNo fit,

        @Blank(value = "correlated to", pick = Blank.Pick.MIX, width = 14, help = "mix, for a gauge's correlation")
        String correlatedMix,

        @Blank(value = "correlation", measure = Measure.UNIT_WEIGHT, width = 6, help = "mean of core less gauge")
        Amount correlation,

        @Blank(value = "s of correlation", measure = Measure.UNIT_WEIGHT, width = 6)
        Amount spread,

        @Blank(value = "secured", width = 24, help = "how a nuclear gauge is kept when nobody watches it")
        String secured)
        implements Entry {
    /** What it was held against. */
    public enum Against implements Word {
        ICE_BATH,
        BOILING_WATER,
        OTHER_INSTRUMENT,
        STANDARD_COUNT,
        CORES,
        CERTIFICATE,
        TEST_WEIGHT
    }
}
