package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The weather as seen at one time, and the engineer's call where one was made. */
public record Weather(
        @Blank(value = "air", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS, carry = true, width = 6)
        Amount air,

        @Blank(value = "humidity", measure = Measure.PERCENT, due = Blank.Due.ALWAYS, carry = true, width = 5)
        Amount humidity,

        @Blank(value = "wind", measure = Measure.SPEED, due = Blank.Due.ALWAYS, carry = true, width = 5)
        Amount wind,

        @Blank(value = "wind from", carry = true, width = 5) Compass windFrom,

        @Blank(value = "sky", due = Blank.Due.ALWAYS, carry = true, width = 14)
        Sky sky,

        @Blank(value = "precipitation", due = Blank.Due.ALWAYS, carry = true, width = 10)
        Precipitation precipitation,

        @Blank(value = "measured rain", measure = Measure.RAIN, width = 6)
        Amount rain,

        @Blank(value = "road", due = Blank.Due.ALWAYS, carry = true, width = 6)
        Road road,

        @Blank(
                value = "engineer's call",
                carry = true,
                width = 14,
                help = "on suitability; it stands beside the tables and is not replaced by them")
        Call engineerCall,

        @Blank(value = "called by", carry = true, width = 14, pick = Blank.Pick.PERSON)
        String calledBy,

        @Blank(value = "where", width = 16) String place)
        implements Entry {
    /** Where the wind comes from. */
    public enum Compass implements Word {
        CALM,
        N,
        NE,
        E,
        SE,
        S,
        SW,
        W,
        NW,
        VARIABLE
    }

    /** How much of the sky is covered. */
    public enum Sky implements Word {
        CLEAR,
        FEW,
        SCATTERED,
        BROKEN,
        OVERCAST,
        FOG
    }

    /** What falls. */
    public enum Precipitation implements Word {
        NONE,
        MIST,
        DRIZZLE,
        LIGHT_RAIN,
        RAIN,
        HEAVY_RAIN,
        SNOW,
        SLEET,
        HAIL
    }

    /** What the road looks like. */
    public enum Road implements Word {
        DRY,
        DAMP,
        WET
    }

    /** The engineer's call on whether the weather suits. */
    public enum Call implements Word {
        NONE_RECORDED,
        SUITABLE,
        NOT_SUITABLE
    }
}
