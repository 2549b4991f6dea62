package screedbook.entry;

import java.math.BigDecimal;
import java.util.List;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * What the record tells of random places: that a lot's seed was drawn, that a place was reached, what the seed was. The
 * program writes these lines; nobody keys them.
 */
public record Draw(
        @Blank(value = "what", help = "begun: the seed is drawn; reached: a place; closed: the seed is told")
        Step step,

        @Blank(value = "mix", pick = Blank.Pick.MIX) String mix,
        @Blank("lot") Integer lot,
        Begun begun,
        Reached reached,

        @Blank(value = "seed", width = 32, help = "told when the lot is closed; its SHA-256 was told when it began")
        String seed)
        implements Entry {
    /** How a lot's random places are drawn, told before any of them is. */
    public record Begun(
            @Blank(value = "method", width = 20, help = "how a seed makes numbers; see README.txt of the job")
            String method,

            @Blank(value = "seed sha-256", width = 64, help = "of the seed's text")
            String seedSha256,

            @Blank(value = "tons of the lot", measure = Measure.LOAD)
            Amount lotSize,

            @Blank(value = "tons of a sublot", measure = Measure.LOAD)
            Amount sublotSize,

            @Blank("draws a sublot") Integer draws) {
        static final Begun NOTHING = new Begun(null, null, null, null, null);
    }

    /** A random place that the paving has come to. */
    public record Reached(
            @Blank("sublot") Integer sublot,

            @Blank(value = "draw", help = "which of the sublot's draws")
            Integer nth,

            @Blank(value = "into the sublot", measure = Measure.LOAD, help = "tons placed before it")
            Amount into,

            @Blank(value = "in ticket", help = "the load that holds it")
            Ref of,

            @Blank(value = "pull", pick = Blank.Pick.PULL) String pull,
            @Blank(value = "lift", pick = Blank.Pick.LIFT) Integer lift,
            @Blank("station") Station place,

            @Blank(value = "from left edge", measure = Measure.WIDTH, help = "of the pull, looking up station")
            Amount fromLeft,

            @Blank(value = "left edge kept free", measure = Measure.WIDTH)
            Amount leftFree,

            @Blank(value = "right edge kept free", measure = Measure.WIDTH)
            Amount rightFree,

            @Blank(value = "numbers drawn", help = "every number, used or not")
            List<Tried> tried) {
        static final Reached NOTHING = new Reached(null, null, null, null, null, null, null, null, null, null, null);
    }

    /** One random number and what it came to. */
    public record Tried(
            @Blank("what") What what,
            @Blank("number") Integer number,

            @Blank(value = "fraction", help = "0.0000 to 0.9999")
            BigDecimal fraction,

            @Blank(value = "into the sublot", measure = Measure.LOAD)
            Amount into,

            @Blank("station") Station place,

            @Blank(value = "from left edge", measure = Measure.WIDTH)
            Amount fromLeft,

            @Blank("used") YesNo used,
            @Blank("why not") String why) {}

    /** What a line tells of. */
    public enum Step implements Word {
        BEGUN,
        REACHED,
        CLOSED
    }

    /** What a number is drawn for. */
    public enum What implements Word {
        TON,
        OFFSET
    }

    public static Draw begun(String mix, int lot, Begun begun) {
        return new Draw(Step.BEGUN, mix, lot, begun, Reached.NOTHING, null);
    }

    public static Draw reached(String mix, int lot, Reached reached) {
        return new Draw(Step.REACHED, mix, lot, Begun.NOTHING, reached, null);
    }

    public static Draw closed(String mix, int lot, String seed) {
        return new Draw(Step.CLOSED, mix, lot, Begun.NOTHING, Reached.NOTHING, seed);
    }
}
