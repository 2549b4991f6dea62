package screedbook.entry;

/** Another inspector writes from here on. */
public record HandOver(
        @Blank(value = "next", pick = Blank.Pick.PERSON, due = Blank.Due.ALWAYS, width = 6)
        String nextWho,

        @Blank(value = "told", due = Blank.Due.ALWAYS, width = 50, help = "what the next one has to know")
        String text)
        implements Entry {}
