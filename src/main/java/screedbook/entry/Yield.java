package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** A check of the spread rate: what some loads came to over a measured length and width. */
public record Yield(
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
        Integer lift,

        @Blank(value = "paver", pick = Blank.Pick.PAVER, carry = true, width = 8)
        String paver,

        @Blank(value = "first ticket", width = 12, due = Blank.Due.ASKED)
        String firstTicket,

        @Blank(value = "last ticket", width = 12, due = Blank.Due.ASKED)
        String lastTicket,

        @Blank(value = "loads", width = 4, help = "where the tickets do not say it")
        Integer loads,

        @Blank(value = "tons", measure = Measure.LOAD, width = 8, help = "less waste, where the tickets do not say it")
        Amount tons,

        @Blank(value = "thickness", measure = Measure.DEPTH, width = 6, help = "as probed")
        Amount thickness,

        @Blank(value = "action", width = 30) String action)
        implements Entry {}
