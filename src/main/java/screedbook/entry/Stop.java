package screedbook.entry;

import java.time.OffsetDateTime;

/** The paver stands; the entry's time is when it stopped. A {@link Restart} ends it, or the end keyed here. */
public record Stop(
        @Blank(value = "cause", due = Blank.Due.ALWAYS, width = 16)
        Cause cause,

        @Blank(value = "more of it", width = 30) String text,

        @Blank(value = "station", due = Blank.Due.ASKED, width = 12)
        Station place,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "paver", pick = Blank.Pick.PAVER, carry = true, width = 8)
        String paver,

        @Blank(value = "trucks waiting", due = Blank.Due.ASKED, width = 4)
        Integer waiting,

        @Blank(value = "their tickets", width = 24) String tickets,

        @Blank(value = "ended", width = 8, help = "when it is keyed afterwards")
        OffsetDateTime ended,

        @Blank(value = "action", width = 30) String action)
        implements Entry {
    /** Why the paver stands. */
    public enum Cause implements Word {
        NO_TRUCKS,
        PAVER,
        ROLLERS,
        PLANT,
        RAIN,
        COLD,
        TRAFFIC,
        TRANSFER_VEHICLE,
        JOINT,
        MEAL,
        ENGINEER,
        OTHER
    }
}
