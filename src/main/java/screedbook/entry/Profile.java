package screedbook.entry;

import java.util.Optional;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A thermal profile: the hottest and the coldest of a length of uncompacted mat. */
public record Profile(
        @Blank(value = "from", width = 12, due = Blank.Due.ALWAYS)
        Station from,

        @Blank(value = "to", width = 12, due = Blank.Due.ALWAYS)
        Station to,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "lot", width = 4) Integer lot,

        @Blank(value = "sublot", width = 4, due = Blank.Due.ASKED)
        Integer sublot,

        @Blank(value = "hottest", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS, width = 6)
        Amount hottest,

        @Blank(value = "coldest", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS, width = 6)
        Amount coldest,

        @Blank(value = "method", due = Blank.Due.ASKED, carry = true, width = 12)
        Method method,

        @Blank(value = "coldest at", width = 12) Station coldAt,

        @Blank(value = "paver stopped", width = 4, help = "whether the paver stood within this length")
        YesNo stopped,

        @Blank(value = "transfer vehicle", carry = true, width = 4)
        YesNo transfer,

        @Blank(value = "cause", width = 20) String cause,
        @Blank(value = "action", width = 30) String action,

        @Blank(value = "density here", width = 4, help = "whether a density profile is to be taken here")
        YesNo densityWanted,

        @Blank(value = "witnessed by", pick = Blank.Pick.PERSON, due = Blank.Due.ASKED, carry = true, width = 14)
        String witness,

        @Blank(value = "image", width = 12, help = "number of the picture")
        String image,

        @Blank(value = "instrument", pick = Blank.Pick.INSTRUMENT, carry = true, width = 12)
        String instrument)
        implements Entry {
    /** Hottest less coldest; empty where one was not read, or they were read in two units. */
    public Optional<Amount> apart() {
        return Amount.apart(hottest, coldest);
    }

    /** How the length was scanned. */
    public enum Method implements Word {
        CONTINUOUS,
        CAMERA
    }
}
