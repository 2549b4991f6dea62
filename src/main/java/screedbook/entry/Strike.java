package screedbook.entry;

/** A line through an entry: it stays legible and no longer counts. */
public record Strike(
        @Blank(value = "entry", due = Blank.Due.ALWAYS, width = 10)
        Ref of,

        @Blank(value = "reason", due = Blank.Due.ALWAYS, width = 40)
        String reason)
        implements Entry {}
