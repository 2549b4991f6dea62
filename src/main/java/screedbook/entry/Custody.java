package screedbook.entry;

/** A sample goes from one hand to another. */
public record Custody(
        @Blank(value = "sample", pick = Blank.Pick.SAMPLE, due = Blank.Due.ALWAYS, width = 12)
        String sample,

        @Blank(value = "given by", pick = Blank.Pick.PERSON, due = Blank.Due.ASKED, width = 14)
        String givenBy,

        @Blank(value = "taken by", pick = Blank.Pick.PERSON, due = Blank.Due.ALWAYS, width = 14)
        String takenBy,

        @Blank(value = "seal no.", due = Blank.Due.ASKED, width = 12, help = "as read on the container")
        String sealNumber,

        @Blank(value = "seal whole", due = Blank.Due.ASKED, width = 4)
        YesNo whole,

        @Blank(value = "condition", width = 24) String condition,
        @Blank(value = "where", width = 20) String location)
        implements Entry {}
