package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The largest gap under a straightedge laid on the mat, or the slope that a level across it shows. */
public record Straightedge(
        @Blank(value = "edge is long", measure = Measure.WIDTH, due = Blank.Due.ASKED, carry = true, width = 5)
        Amount edgeLength,

        @Blank(value = "laid", due = Blank.Due.ASKED, carry = true, width = 12)
        Laid laid,

        @Blank(value = "gap", measure = Measure.DEPTH, due = Blank.Due.ALWAYS, width = 6)
        Amount gap,

        @Blank(value = "cross slope", measure = Measure.PERCENT, width = 5, help = "by a level, signed as on the plans")
        Amount crossSlope,

        @Blank(value = "station", due = Blank.Due.ALWAYS, width = 12)
        Station place,

        @Blank(value = "from left edge", measure = Measure.WIDTH, width = 6, help = "of the pull, looking up station")
        Amount fromLeft,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "instrument", pick = Blank.Pick.INSTRUMENT, carry = true, width = 12)
        String instrument,

        @Blank(value = "action", width = 30) String action)
        implements Entry {
    /** How the edge lay. */
    public enum Laid implements Word {
        ALONG,
        ACROSS,
        OVER_JOINT
    }
}
