package screedbook.entry;

import java.math.BigDecimal;
import java.time.OffsetDateTime;

/** The laptop's clock was seen to jump or to be wrong; older lines stay as they are. */
public record Clock(
        @Blank("was") OffsetDateTime was,
        @Blank("is") OffsetDateTime now,

        @Blank(value = "seconds between", help = "by the steady counter of the machine, where it is known")
        BigDecimal seconds,

        @Blank(value = "note", width = 40) String text)
        implements Entry {}
