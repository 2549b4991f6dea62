package screedbook.job;

import java.util.List;
import screedbook.entry.Blank;
import screedbook.entry.Station;
import screedbook.entry.Word;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** How lots are cut. */
public record Lots(
        @Blank(value = "lot", measure = Measure.LOAD) Amount lot,
        @Blank(value = "sublot", measure = Measure.LOAD) Amount sublot,
        @Blank("ends at") End ends,
        @Blank("over night") Overnight overnight,

        @Blank(value = "random by", help = "tons or places") RandomBy randomBy,

        @Blank("draws a sublot") Integer draws,

        @Blank(value = "no place nearer to a free edge than", measure = Measure.WIDTH)
        Amount freeEdge,

        @Blank(value = "no place nearer to a held edge than", measure = Measure.WIDTH)
        Amount heldEdge,

        @Blank(value = "seed", help = "drawn by the program, or given by somebody")
        Seed seed,

        @Blank(value = "no places in") List<Excluded> excluded,

        @Blank(value = "of a test and its repeat counts", help = "first, newer or both, as the contract says")
        Retest retest) {
    /** Lots of which it is not settled what counts of a test that is repeated. */
    public Lots(
            Amount lot,
            Amount sublot,
            End ends,
            Overnight overnight,
            RandomBy randomBy,
            Integer draws,
            Amount freeEdge,
            Amount heldEdge,
            Seed seed,
            List<Excluded> excluded) {
        this(lot, sublot, ends, overnight, randomBy, draws, freeEdge, heldEdge, seed, excluded, null);
    }

    /** Where a lot ends. */
    public enum End implements Word {
        EXACT_TON,
        NEAREST_TICKET
    }

    /** What becomes of an unfinished sublot at the end of a shift. */
    public enum Overnight implements Word {
        CARRY,
        CLOSE
    }

    /** What random numbers are turned into. */
    public enum RandomBy implements Word {
        TONS,
        PLACES
    }

    /** Where the seed of random numbers comes from. */
    public enum Seed implements Word {
        DRAWN,
        GIVEN
    }

    /** A stretch in which no sample is taken, as a bridge. */
    public record Excluded(
            @Blank(value = "from", due = Blank.Due.ALWAYS) Station from,
            @Blank(value = "to", due = Blank.Due.ALWAYS) Station to,
            @Blank("why") String why) {}

    /** What counts of a test and of the one that repeats it; both are kept. */
    public enum Retest implements Word {
        FIRST,
        NEWER,
        BOTH
    }
}
