package screedbook.entry;

import java.time.OffsetDateTime;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** One load as its ticket prints it, as it arrived, and what became of it. */
public record Ticket(Paper paper, Weights weights, Times times, Heat heat, Spot spot, Fate fate) implements Entry {
    /** What the ticket says beside weights and times. */
    public record Paper(
            @Blank(value = "plant", pick = Blank.Pick.PLANT, due = Blank.Due.ASKED, carry = true, width = 14)
            String plant,

            @Blank(value = "silo", carry = true, width = 4) String silo,

            @Blank(value = "ticket", due = Blank.Due.ASKED, width = 12, help = "an unread digit stands as ?")
            String number,

            @Blank(value = "truck", pick = Blank.Pick.TRUCK, due = Blank.Due.ALWAYS, width = 8)
            String truck,

            @Blank(value = "mix", pick = Blank.Pick.MIX, due = Blank.Due.ASKED, carry = true, width = 14)
            String mix,

            @Blank(value = "ticket is", carry = true, width = 12)
            Kept kept,

            @Blank(value = "weighed by", width = 16) String weighedBy,
            @Blank(value = "received by", width = 8) String receivedBy,
            @Blank(value = "cover", carry = true, width = 5) YesNo cover) {}

    /** Weights, only as the ticket prints them. */
    public record Weights(
            @Blank(value = "net", measure = Measure.LOAD, due = Blank.Due.ALWAYS, width = 7)
            Amount net,

            @Blank(value = "gross", measure = Measure.SCALE, due = Blank.Due.ASKED, width = 7)
            Amount gross,

            @Blank(value = "tare", measure = Measure.SCALE, due = Blank.Due.ASKED, width = 7)
            Amount tare,

            @Blank(value = "batches", width = 3) Integer batches,

            @Blank(value = "a batch", measure = Measure.SCALE, width = 7)
            Amount batch) {}

    /** When it was loaded, came and was discharged; what was not noted stays absent. */
    public record Times(
            @Blank(value = "loaded", due = Blank.Due.ASKED, width = 8)
            OffsetDateTime loaded,

            @Blank(value = "arrived", width = 8) OffsetDateTime arrived,
            @Blank(value = "discharged", width = 8) OffsetDateTime discharged) {}

    /** Mix temperatures at the plant and at the paver. */
    public record Heat(
            @Blank(value = "at the plant", measure = Measure.TEMPERATURE, due = Blank.Due.ASKED, width = 6)
            Amount plant,

            @Blank(value = "at the paver", measure = Measure.TEMPERATURE, due = Blank.Due.ASKED, width = 6)
            Amount paver,

            @Blank(value = "instrument", pick = Blank.Pick.INSTRUMENT, carry = true, width = 12)
            String instrument) {}

    /** Where it went down. */
    public record Spot(
            @Blank(value = "from", width = 12) Station from,
            @Blank(value = "to", width = 12) Station to,

            @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
            String pull,

            @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
            Integer lift,

            @Blank(value = "paver", pick = Blank.Pick.PAVER, carry = true, width = 8)
            String paver,

            @Blank(value = "elsewhere", width = 24, help = "a place without stations: patch, driveway")
            String place) {}

    /** What became of the load, and who decided. */
    public record Fate(
            @Blank(value = "fate", width = 14) End fate,

            @Blank(value = "not placed", measure = Measure.LOAD, width = 7, help = "weigh-back or estimate")
            Amount returned,

            @Blank(value = "known by", width = 24, help = "how the part not placed is known")
            String basis,

            @Blank(value = "reason", width = 30) String reason,

            @Blank(value = "decided by", pick = Blank.Pick.PERSON, width = 14)
            String decidedBy,

            @Blank(value = "told to", width = 14) String toldTo,

            @Blank(value = "instead of", width = 12, help = "the ticket number that this one was issued again for")
            String reissueOf) {}

    /** What became of a load. */
    public enum End implements Word {
        PLACED,
        PART_PLACED,
        REJECTED,
        WASTE,
        VOID_AT_PLANT,
        OTHER_JOB
    }

    /** In what form the ticket came. */
    public enum Kept implements Word {
        PAPER,
        ELECTRONIC,
        HANDWRITTEN,
        LOST
    }
}
