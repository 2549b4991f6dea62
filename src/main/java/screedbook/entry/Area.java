package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A part of a pull that is not as wide as planned, or lies beside it: taper, gore, odd area. */
public record Area(
        @Blank(value = "shape", due = Blank.Due.ALWAYS, width = 10)
        Shape shape,

        @Blank(value = "from", width = 12, due = Blank.Due.ASKED)
        Station from,

        @Blank(value = "to", width = 12, due = Blank.Due.ASKED)
        Station to,

        @Blank(value = "width at from", measure = Measure.WIDTH, due = Blank.Due.ASKED, width = 6)
        Amount widthFrom,

        @Blank(value = "width at to", measure = Measure.WIDTH, due = Blank.Due.ASKED, width = 6)
        Amount widthTo,

        @Blank(value = "area", measure = Measure.AREA, width = 7, help = "measured, where widths do not say it")
        Amount area,

        @Blank(value = "counts", width = 12, help = "in place of the planned width, beside it, or taken off")
        Counts counts,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "known by", width = 24, help = "how it was measured")
        String basis)
        implements Entry {
    /** How the part is shaped. */
    public enum Shape implements Word {
        STRIP,
        TAPER,
        GORE,
        OTHER
    }

    /** How it counts in the area of its pull. */
    public enum Counts implements Word {
        IN_PLACE,
        BESIDE,
        OFF
    }
}
