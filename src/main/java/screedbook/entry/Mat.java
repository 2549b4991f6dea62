package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The temperature of the mat at one place: behind the screed, under a roller, or before traffic. */
public record Mat(
        @Blank(value = "taken", due = Blank.Due.ASKED, carry = true, width = 14)
        Taken taken,

        @Blank(value = "mat", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS, width = 6)
        Amount mat,

        @Blank(
                value = "read in",
                carry = true,
                width = 10,
                help = "an infrared reading is the surface's, a probe's is inside")
        ReadIn readIn,

        @Blank(value = "station", due = Blank.Due.ALWAYS, width = 12)
        Station place,

        @Blank(value = "from left edge", measure = Measure.WIDTH, width = 6, help = "of the pull, looking up station")
        Amount fromLeft,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "roller", carry = true, width = 10) String roller,

        @Blank(value = "instrument", pick = Blank.Pick.INSTRUMENT, carry = true, width = 12)
        String instrument)
        implements Entry {
    /** When in the laying it was taken. */
    public enum Taken implements Word {
        BEHIND_SCREED,
        ROLLING_BEGINS,
        ROLLING_ENDS,
        BEFORE_TRAFFIC
    }

    /** Where in the mat it was read. */
    public enum ReadIn implements Word {
        SURFACE,
        INSIDE
    }
}
