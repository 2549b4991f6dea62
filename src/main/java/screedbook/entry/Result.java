package screedbook.entry;

import java.math.BigDecimal;
import java.time.LocalDate;

/** What a laboratory told of a sample, or the Gmm of the day of a mix. */
public record Result(
        @Blank(
                value = "sample",
                pick = Blank.Pick.SAMPLE,
                due = Blank.Due.ASKED,
                width = 12,
                help = "or the core; none for the Gmm of a mix")
        String sample,

        @Blank(value = "what", due = Blank.Due.ALWAYS, carry = true, width = 16)
        What what,

        @Blank(value = "value", due = Blank.Due.ALWAYS, width = 8)
        BigDecimal found,

        @Blank(value = "in", width = 8, help = "the unit, where it is not plain from what it is")
        String inUnit,

        @Blank(value = "mix", pick = Blank.Pick.MIX, carry = true, width = 14)
        String mix,

        @Blank(value = "for lot", width = 4, help = "of the Gmm of a mix, when it holds for one lot only")
        Integer lot,

        @Blank(value = "tested on", due = Blank.Due.ASKED, carry = true, width = 10)
        LocalDate tested,

        @Blank(value = "laboratory", carry = true, width = 20)
        String laboratory,

        @Blank(value = "report", width = 14) String report,

        @Blank(value = "last of it", due = Blank.Due.ASKED, width = 4, help = "whether the sample is closed with it")
        YesNo closes,

        @Blank(value = "again after", width = 10, help = "the result that this one repeats")
        Ref again)
        implements Entry {
    /** What was found. */
    public enum What implements Word {
        GMB,
        GMM,
        DENSITY,
        AIR_VOIDS,
        /** Of a core, in hundredths of its volume. */
        WATER_ABSORBED,
        BINDER_CONTENT,
        THICKNESS,
        RESIDUE,
        OTHER
    }
}
