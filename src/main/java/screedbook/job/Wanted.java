package screedbook.job;

import java.math.BigDecimal;
import screedbook.entry.Blank;
import screedbook.entry.Kind;
import screedbook.entry.Word;
import screedbook.entry.YesNo;

/** A check that the job wants beside the usual ones: which entry answers it, and how often. */
public record Wanted(
        @Blank(value = "kind", due = Blank.Due.ALWAYS, help = "of entry that answers it")
        Kind kind,

        @Blank(value = "with", help = "a blank of it that is filled, or a word or tag that stands in it")
        String with,

        @Blank(value = "first", help = "so many loads or shots one by one, before the rhythm")
        Integer first,

        @Blank(value = "once in", help = "how many of what stands in the next blank")
        BigDecimal each,

        @Blank("of") Count of,

        @Blank(value = "times", help = "how many each time; one where nothing stands")
        Integer times,

        @Blank(value = "for each mix", help = "yes when every mix has its own count")
        YesNo mix,

        @Blank("at a change of") Change change,

        @Blank(value = "source", help = "clause or agreement")
        String source) {
    /** What is counted from one check to the next. */
    public enum Count implements Word {
        LOADS,
        TONS,
        SUBLOTS,
        LOTS,
        SHOTS,
        /** Joints across the road. */
        JOINTS,
        MINUTES,
        SHIFTS
    }

    /** What asks for the check when it changes. */
    public enum Change implements Word {
        WEATHER,
        MIX,
        PULL,
        PLANT
    }

    /** How many entries each time. */
    public int howMany() {
        return times == null || times < 1 ? 1 : times;
    }
}
