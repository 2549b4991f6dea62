package screedbook.entry;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** One shot of tack: what, where, how much, how warm, and whether it had broken. */
public record Tack(Product product, Target target, Gauge gauge, After after) implements Entry {
    /** What was sprayed. */
    public record Product(
            @Blank(value = "product", pick = Blank.Pick.PRODUCT, due = Blank.Due.ASKED, carry = true, width = 12)
            String product,

            @Blank(
                    value = "distributor",
                    pick = Blank.Pick.DISTRIBUTOR,
                    due = Blank.Due.ASKED,
                    carry = true,
                    width = 10)
            String distributor,

            @Blank(value = "delivery paper", carry = true, width = 12)
            String paper,

            @Blank(value = "parts emulsion", width = 5, help = "of a diluted product; the water beside it")
            BigDecimal emulsionParts,

            @Blank(value = "parts water", width = 5) BigDecimal waterParts,
            @Blank(value = "diluted", width = 14) Dilution diluted,
            @Blank(value = "diluted by", width = 14) String dilutedBy) {}

    /** What it was sprayed on. */
    public record Target(
            @Blank(value = "surface", due = Blank.Due.ASKED, carry = true, width = 10)
            Under surface,

            @Blank(value = "contact face", width = 18) Face face,

            @Blank(value = "from", width = 12, due = Blank.Due.ALWAYS)
            Station from,

            @Blank(value = "to", width = 12, due = Blank.Due.ALWAYS)
            Station to,

            @Blank(value = "width", measure = Measure.WIDTH, due = Blank.Due.ASKED, carry = true, width = 6)
            Amount width,

            @Blank(value = "area", measure = Measure.AREA, width = 7, help = "where width and stations do not say it")
            Amount area,

            @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
            String pull,

            @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
            Integer lift) {}

    /** How much and how warm. */
    public record Gauge(
            @Blank(value = "before", measure = Measure.VOLUME, due = Blank.Due.ASKED, width = 7)
            Amount before,

            @Blank(value = "after", measure = Measure.VOLUME, due = Blank.Due.ASKED, width = 7)
            Amount after,

            @Blank(value = "depth before", measure = Measure.DEPTH, due = Blank.Due.ASKED, width = 6)
            Amount depthBefore,

            @Blank(value = "depth after", measure = Measure.DEPTH, due = Blank.Due.ASKED, width = 6)
            Amount depthAfter,

            @Blank(value = "used", measure = Measure.VOLUME, width = 7, help = "where only the volume used is known")
            Amount used,

            @Blank(value = "read off", carry = true, width = 8)
            Reading reading,

            @Blank(value = "temperature", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS, width = 6)
            Amount material,

            @Blank(value = "volume is at 60 °F (15 °C)", width = 4)
            YesNo at60,

            @Blank(value = "known by", width = 24, help = "hand work: how the volume is known")
            String basis) {}

    /** What followed. */
    public record After(
            @Blank(value = "broken at", width = 8) OffsetDateTime broken,
            @Blank(value = "tracked", width = 4) YesNo tracked,
            @Blank(value = "sample", width = 12) String sample,
            @Blank(value = "seal no.", width = 12) String sealNumber,

            @Blank(value = "again after", width = 10, help = "the shot that this one repeats")
            Ref again) {}

    /** What lies under the tack. */
    public enum Under implements Word {
        NEW,
        EXISTING,
        MILLED,
        CONCRETE
    }

    /** A face that the mix will touch. */
    public enum Face implements Word {
        LONGITUDINAL_JOINT,
        TRANSVERSE_JOINT,
        CURB_AND_GUTTER,
        CASTING
    }

    /** Whether the product had water added to it. */
    public enum Dilution implements Word {
        NO,
        YES,
        RATIO_UNKNOWN
    }

    /** What the volumes were read off: a tank falls, a meter rises. */
    public enum Reading implements Word {
        TANK,
        METER
    }
}
