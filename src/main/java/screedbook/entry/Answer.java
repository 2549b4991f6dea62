package screedbook.entry;

/** What was done about a finding, by its rule and line. */
public record Answer(
        @Blank(value = "to entry", due = Blank.Due.ALWAYS, width = 10)
        Ref of,

        @Blank(value = "rule", pick = Blank.Pick.RULE, due = Blank.Due.ALWAYS, width = 24)
        String rule,

        @Blank(value = "answer", due = Blank.Due.ALWAYS, width = 50)
        String text,

        @Blank(value = "decided by", pick = Blank.Pick.PERSON, width = 14)
        String decidedBy,

        @Blank(value = "told to", width = 14) String toldTo)
        implements Entry {}
