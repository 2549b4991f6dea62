package screedbook.entry;

import java.math.BigDecimal;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A core cut from the mat, with what was measured on it. What the laboratory tells later is a {@link Result}. */
public record Core(Cut cut, Spot spot, Measured measured, Keeping keeping) implements Entry {
    /** Which core. */
    public record Cut(
            @Blank(value = "core", due = Blank.Due.ALWAYS, width = 10)
            String core,

            @Blank(value = "diameter", measure = Measure.DEPTH, carry = true, width = 6)
            Amount diameter,

            @Blank(value = "taken by", pick = Blank.Pick.PERSON, carry = true, width = 14)
            String takenBy,

            @Blank(value = "witnessed by", pick = Blank.Pick.PERSON, carry = true, width = 14)
            String witness,

            @Blank(value = "hole filled", width = 4) YesNo filled,

            @Blank(value = "again after", width = 10, help = "the core that this one repeats")
            Ref again) {}

    /** Where it was cut, and where it was to be cut. */
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

            @Blank(value = "marked at", width = 12, help = "where it was to be cut, when that was elsewhere")
            Station markedAt,

            @Blank(value = "marked from left", measure = Measure.WIDTH, width = 6)
            Amount markedLeft,

            @Blank(value = "why elsewhere", width = 30) String why) {}

    /** What was measured on it. */
    public record Measured(
            @Blank(
                    value = "untrimmed",
                    measure = Measure.DEPTH,
                    due = Blank.Due.ASKED,
                    width = 6,
                    help = "height before it is trimmed")
            Amount height,

            @Blank(value = "Gmb", width = 6, help = "bulk specific gravity")
            BigDecimal gmb,

            @Blank(value = "Gmm", width = 6, help = "of the day or of this core; else the mix's")
            BigDecimal gmm,

            @Blank(value = "density", measure = Measure.PERCENT, width = 5, help = "of Gmm, where only that is told")
            Amount density) {}

    /** How it is kept. */
    public record Keeping(
            @Blank(
                    value = "sample",
                    pick = Blank.Pick.SAMPLE,
                    width = 12,
                    help = "the sample under which it goes to the laboratory")
            String sample,

            @Blank(value = "seal no.", width = 12) String sealNumber) {}
}
