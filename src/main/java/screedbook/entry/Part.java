package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A further pull's share of a ticket; the ticket keeps the remainder. */
public record Part(
        @Blank(value = "of ticket", due = Blank.Due.ALWAYS, width = 10)
        Ref of,

        @Blank(value = "share", measure = Measure.LOAD, due = Blank.Due.ALWAYS, width = 7)
        Amount share,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ALWAYS, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, carry = true, width = 4)
        Integer lift,

        @Blank(value = "from", width = 12) Station from,
        @Blank(value = "to", width = 12) Station to,
        @Blank(value = "elsewhere", width = 24) String place,
        @Blank(value = "known by", width = 24) String basis)
        implements Entry {}
