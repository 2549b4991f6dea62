package screedbook.entry;

/** A shift on which nothing was placed, and why. */
public record NoWork(
        @Blank(value = "why", due = Blank.Due.ALWAYS, width = 14)
        Why why,

        @Blank(value = "said by", width = 16) String saidBy,
        @Blank(value = "detail", width = 40) String detail)
        implements Entry {
    /** Why nothing was placed. */
    public enum Why implements Word {
        RAIN,
        WET_ROAD,
        COLD,
        WIND,
        PLANT_DOWN,
        MACHINE_DOWN,
        NO_CREW,
        TRAFFIC,
        HOLIDAY,
        SUNDAY,
        NOT_PLANNED,
        OTHER
    }
}
