package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** Mix that was thrown away after it had been received: of a ticket, or of the shift. */
public record Waste(
        @Blank(value = "of ticket", width = 10) Ref of,

        @Blank(value = "weight", measure = Measure.LOAD, due = Blank.Due.ALWAYS, width = 7)
        Amount weight,

        @Blank(value = "mix", pick = Blank.Pick.MIX, carry = true, width = 14)
        String mix,

        @Blank(value = "reason", due = Blank.Due.ALWAYS, width = 30)
        String reason,

        @Blank(value = "known by", width = 24) String basis,
        @Blank(value = "went to", width = 24) String wentWhere)
        implements Entry {}
