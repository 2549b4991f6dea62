package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** What the plant says it has sent, as it was told: loads and tons of a mix up to the entry's time. */
public record PlantTotal(
        @Blank(value = "plant", pick = Blank.Pick.PLANT, due = Blank.Due.ASKED, carry = true, width = 14)
        String plant,

        @Blank(value = "mix", pick = Blank.Pick.MIX, due = Blank.Due.ASKED, carry = true, width = 14)
        String mix,

        @Blank(value = "loads", due = Blank.Due.ALWAYS, width = 4)
        Integer loads,

        @Blank(value = "tons", measure = Measure.LOAD, due = Blank.Due.ALWAYS, width = 9)
        Amount tons,

        @Blank(value = "first ticket", width = 12) String firstTicket,
        @Blank(value = "last ticket", width = 12) String lastTicket,
        @Blank(value = "told by", width = 16) String toldBy)
        implements Entry {}
