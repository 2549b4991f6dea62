package screedbook.entry;

import java.math.BigDecimal;

/** People or machines at work: one line for each trade or machine of a firm. */
public record Crew(
        @Blank(value = "firm", due = Blank.Due.ASKED, carry = true, width = 16)
        String firm,

        @Blank(value = "counted as", due = Blank.Due.ASKED, carry = true, width = 8)
        What what,

        @Blank(value = "trade, machine", due = Blank.Due.ALWAYS, width = 20)
        String named,

        @Blank(value = "how many", due = Blank.Due.ALWAYS, width = 4)
        Integer howMany,

        @Blank(value = "hours each", due = Blank.Due.ASKED, width = 5, help = "worked; half hours")
        BigDecimal hours,

        @Blank(value = "hours idle", width = 5) BigDecimal idle,

        @Blank(value = "id", width = 12, help = "number of the machine")
        String id)
        implements Entry {
    /** Whether a line tells of people or of machines. */
    public enum What implements Word {
        PEOPLE,
        MACHINES
    }
}
