package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A truck comes onto the job, leaves it, is seen somewhere, or is weighed again on another scale. */
public record Truck(
        @Blank(value = "truck", pick = Blank.Pick.TRUCK, due = Blank.Due.ALWAYS, width = 8)
        String truck,

        @Blank(value = "is", due = Blank.Due.ASKED, carry = true, width = 8)
        Step step,

        @Blank(value = "where", width = 20) String location,

        @Blank(value = "tare", measure = Measure.SCALE, width = 7, help = "as weighed empty")
        Amount tare,

        @Blank(value = "gross", measure = Measure.SCALE, width = 7, help = "as weighed loaded, on another scale")
        Amount gross,

        @Blank(value = "ticket", width = 12, help = "of the load that was weighed")
        String ticket,

        @Blank(value = "insulated", width = 4) YesNo insulated,
        @Blank(value = "cover", width = 4) YesNo cover,
        @Blank(value = "hauler", width = 16) String hauler)
        implements Entry {
    /** What the truck does. */
    public enum Step implements Word {
        ON_JOB,
        OFF_JOB,
        SEEN
    }
}
