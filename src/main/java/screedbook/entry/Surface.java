package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The temperature of the surface that is about to be paved, at one place. */
public record Surface(
        @Blank(value = "surface", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS, width = 6)
        Amount surface,

        @Blank(value = "station", due = Blank.Due.ALWAYS, width = 12)
        Station place,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "light", carry = true, width = 6) Light light,

        @Blank(value = "instrument", pick = Blank.Pick.INSTRUMENT, carry = true, width = 12)
        String instrument,

        @Blank(value = "base", carry = true, width = 12, help = "what is paved over")
        Base base)
        implements Entry {
    /** In what light it was read. */
    public enum Light implements Word {
        SUN,
        SHADE,
        NIGHT
    }

    /** What is paved over. */
    public enum Base implements Word {
        ASPHALT,
        CONCRETE,
        AGGREGATE
    }
}
