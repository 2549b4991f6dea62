package screedbook.entry;

import java.util.List;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The last line of a book: what was counted, what the contractor's representative said, who signed. */
public record Closing(
        Theirs theirs,
        @Blank(value = "controlling item", width = 24) String controllingItem,

        @Blank(value = "day charged", due = Blank.Due.ALWAYS, width = 5)
        YesNo dayCharged,

        @Blank(
                value = "lots end here",
                width = 4,
                help =
                        "yes when no load of the job comes any more: lots that are not full are closed out, their seeds told")
        YesNo lotsEnd,

        @Blank(value = "remarks", width = 50) String text,
        @Blank("entries") List<Count> counts,
        @Blank("tons") List<Tons> tons,
        @Blank("findings") List<Count> findings)
        implements Entry {
    /** A closing of which nothing is said about lots. */
    public Closing(
            Theirs theirs,
            String controllingItem,
            YesNo dayCharged,
            String text,
            List<Count> counts,
            List<Tons> tons,
            List<Count> findings) {
        this(theirs, controllingItem, dayCharged, null, text, counts, tons, findings);
    }

    /** The contractor's representative's word on the day's figures. */
    public record Theirs(
            @Blank(value = "representative", due = Blank.Due.ALWAYS, width = 20)
            String theirName,

            @Blank(value = "their loads", due = Blank.Due.ALWAYS, width = 5)
            Integer theirLoads,

            @Blank(value = "their tons", measure = Measure.LOAD, due = Blank.Due.ALWAYS, width = 9)
            Amount their,

            @Blank(value = "agreed", due = Blank.Due.ALWAYS, width = 8)
            Agreed agreed,

            @Blank(value = "why not", width = 30) String why) {}

    /** Whether the representative agrees. */
    public enum Agreed implements Word {
        YES,
        NO,
        NOT_PRESENT
    }

    /** So many of something. */
    public record Count(
            @Blank("what") String what, @Blank("how many") Integer count) {}

    /** What stands for one mix. */
    public record Tons(
            @Blank("mix") String mix,
            @Blank("loads") Integer loads,

            @Blank(value = "received", measure = Measure.LOAD)
            Amount received,

            @Blank(value = "for pay as kept here", measure = Measure.LOAD)
            Amount pay) {}
}
