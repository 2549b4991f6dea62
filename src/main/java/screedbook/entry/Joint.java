package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A joint as it was made: longitudinal along a length, transverse at a station. */
public record Joint(
        @Blank(value = "joint", due = Blank.Due.ALWAYS, carry = true, width = 14)
        Run run,

        @Blank(value = "shape", carry = true, width = 14) Shape shape,

        @Blank(value = "from", width = 12, due = Blank.Due.ALWAYS)
        Station from,

        @Blank(value = "to", width = 12, due = Blank.Due.ASKED, help = "of a longitudinal joint")
        Station to,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "beside pull", pick = Blank.Pick.PULL, carry = true, width = 6)
        String besidePull,

        @Blank(value = "other side is", due = Blank.Due.ASKED, carry = true, width = 6)
        Heat heat,

        @Blank(value = "face tacked", due = Blank.Due.ASKED, width = 4)
        YesNo tacked,

        @Blank(value = "cut back", width = 4) YesNo cut,

        @Blank(value = "from lane line", measure = Measure.WIDTH, width = 6, help = "left negative, looking up station")
        Amount laneLine,

        @Blank(
                value = "off one below",
                measure = Measure.DEPTH,
                due = Blank.Due.ASKED,
                width = 6,
                help = "across to the joint of the lift below, without a sign")
        Amount below,

        @Blank(value = "vertical edge", measure = Measure.DEPTH, width = 6, help = "of a notched wedge")
        Amount notch,

        @Blank(
                value = "wedge slopes",
                measure = Measure.TIMES,
                width = 5,
                help = "so many across for one down: 4 for 4H:1V")
        Amount slope,

        @Blank(value = "overlap", measure = Measure.DEPTH, width = 6)
        Amount overlap,

        @Blank(value = "new side higher by", measure = Measure.DEPTH, width = 6, help = "after rolling")
        Amount higher,

        @Blank(value = "action", width = 30) String action)
        implements Entry {
    /** How it runs. */
    public enum Run implements Word {
        LONGITUDINAL,
        TRANSVERSE
    }

    /** How its face is shaped. */
    public enum Shape implements Word {
        BUTT,
        WEDGE,
        NOTCHED_WEDGE
    }

    /** Whether the mat on the other side was still hot. */
    public enum Heat implements Word {
        HOT,
        COLD
    }
}
