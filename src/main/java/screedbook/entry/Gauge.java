package screedbook.entry;

import java.math.BigDecimal;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The density of the mat read with a gauge at one place. Readings stand as shown, before any correlation. */
public record Gauge(Reading reading, Spot spot, Keeping keeping) implements Entry {
    /** What the gauge showed. */
    public record Reading(
            @Blank(value = "reading 1", measure = Measure.UNIT_WEIGHT, due = Blank.Due.ALWAYS, width = 6)
            Amount firstReading,

            @Blank(value = "reading 2", measure = Measure.UNIT_WEIGHT, due = Blank.Due.ASKED, width = 6)
            Amount secondReading,

            @Blank(value = "reading 3", measure = Measure.UNIT_WEIGHT, width = 6)
            Amount thirdReading,

            @Blank(value = "reading 4", measure = Measure.UNIT_WEIGHT, width = 6)
            Amount fourthReading,

            @Blank(value = "mode", carry = true, width = 14) Mode mode,

            @Blank(
                    value = "correlation",
                    measure = Measure.UNIT_WEIGHT,
                    carry = true,
                    width = 6,
                    help = "to this mix, added to the mean; from cores")
            Amount correlation,

            @Blank(value = "Gmm", carry = true, width = 6, help = "of the day; else the mix's")
            BigDecimal gmm,

            @Blank(
                    value = "target",
                    measure = Measure.UNIT_WEIGHT,
                    carry = true,
                    width = 6,
                    help = "density of a control strip, where that is what it is held against")
            Amount target,

            @Blank(value = "mat", measure = Measure.TEMPERATURE, width = 6)
            Amount mat,

            @Blank(value = "passes", width = 4) Integer passes) {}

    /** Where it stood. */
    public record Spot(
            @Blank(value = "station", due = Blank.Due.ALWAYS, width = 12)
            Station place,

            @Blank(value = "from left edge", measure = Measure.WIDTH, due = Blank.Due.ASKED, width = 6)
            Amount fromLeft,

            @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
            String pull,

            @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
            Integer lift,

            @Blank(value = "mix", pick = Blank.Pick.MIX, carry = true, width = 14)
            String mix,

            @Blank(value = "lot", width = 4) Integer lot,
            @Blank(value = "sublot", width = 4) Integer sublot,
            @Blank(value = "random", width = 4) YesNo atRandom,

            @Blank(value = "core", width = 10, help = "the core cut at the same place, for the gauge's correlation")
            String core,

            @Blank(value = "again after", width = 10, help = "the reading that this one repeats")
            Ref again) {}

    /** Whose gauge, and how it is kept. */
    public record Keeping(
            @Blank(value = "gauge", pick = Blank.Pick.INSTRUMENT, due = Blank.Due.ASKED, carry = true, width = 12)
            String instrument,

            @Blank(value = "operator", pick = Blank.Pick.PERSON, carry = true, width = 12)
            String operatedBy,

            @Blank(value = "certificate", carry = true, width = 12)
            String certificate,

            @Blank(
                    value = "secured",
                    due = Blank.Due.ASKED,
                    carry = true,
                    width = 24,
                    help = "how the gauge is kept when nobody watches it; a nuclear gauge needs two controls")
            String secured) {}

    /** How it was read. */
    public enum Mode implements Word {
        BACKSCATTER,
        DIRECT,
        THIN_LIFT,
        ELECTROMAGNETIC
    }
}
