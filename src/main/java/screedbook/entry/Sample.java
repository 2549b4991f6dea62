package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * A sample taken for the laboratory: what, where, of which load, under which seal. What it stands
 * for is worked out from the loads of its sublot and is never written.
 */
public record Sample(What what, Origin origin, Keeping keeping) implements Entry {
    /** What was taken, why and by whom. */
    public record What(
            @Blank(value = "sample", due = Blank.Due.ALWAYS, width = 12, help = "its number, used once")
            String sample,

            @Blank(value = "of", due = Blank.Due.ASKED, carry = true, width = 10)
            Material material,

            @Blank(value = "for", due = Blank.Due.ASKED, carry = true, width = 16)
            Purpose purpose,

            @Blank(value = "random", due = Blank.Due.ASKED, width = 4)
            YesNo atRandom,

            @Blank(value = "taken by", pick = Blank.Pick.PERSON, carry = true, width = 14)
            String takenBy,

            @Blank(value = "certificate", carry = true, width = 12)
            String certificate,

            @Blank(value = "witnessed by", pick = Blank.Pick.PERSON, width = 14)
            String witness) {}

    /** Where it comes from. */
    public record Origin(
            @Blank(value = "ticket", due = Blank.Due.ASKED, width = 12)
            String ticket,

            @Blank(value = "station", due = Blank.Due.ASKED, width = 12)
            Station place,

            @Blank(
                    value = "from left edge",
                    measure = Measure.WIDTH,
                    width = 6,
                    help = "of the pull, looking up station")
            Amount fromLeft,

            @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
            String pull,

            @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
            Integer lift,

            @Blank(value = "mix", pick = Blank.Pick.MIX, carry = true, width = 14)
            String mix,

            @Blank(value = "lot", width = 4) Integer lot,
            @Blank(value = "sublot", width = 4) Integer sublot,

            @Blank(value = "random place", width = 10, help = "the entry that told the place")
            Ref draw,

            @Blank(value = "instead of", width = 24, help = "the place or load that was missed")
            String insteadOf,

            @Blank(value = "allowed by", pick = Blank.Pick.PERSON, width = 14)
            String allowedBy) {}

    /** How it is kept. */
    public record Keeping(
            @Blank(value = "seal no.", due = Blank.Due.ASKED, width = 12)
            String sealNumber,

            @Blank(value = "container", carry = true, width = 14)
            String container,

            @Blank(value = "split with", width = 24, help = "numbers of the companion samples")
            String companions) {}

    /** What was taken. */
    public enum Material implements Word {
        MIX,
        TACK,
        BINDER,
        CORE,
        AGGREGATE,
        OTHER
    }

    /** What it is taken for. */
    public enum Purpose implements Word {
        ACCEPTANCE,
        QUALITY_CONTROL,
        VERIFICATION,
        INDEPENDENT_ASSURANCE,
        INFORMATION
    }
}
