package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** How thick the mix lies at one place: probed loose or compacted, or the height of a core before it is trimmed. */
public record Depth(
        @Blank(value = "thickness", measure = Measure.DEPTH, due = Blank.Due.ALWAYS, width = 6)
        Amount thickness,

        @Blank(value = "mix is", due = Blank.Due.ASKED, carry = true, width = 12)
        State state,

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

        @Blank(value = "core", width = 10, help = "its number, for the height of a core")
        String core,

        @Blank(value = "action", width = 30) String action)
        implements Entry {
    /** In what state the mix was measured. */
    public enum State implements Word {
        LOOSE,
        COMPACTED,
        CORE_UNTRIMMED
    }
}
