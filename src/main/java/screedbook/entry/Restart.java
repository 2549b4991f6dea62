package screedbook.entry;

/** The paver goes on after a {@link Stop}; the entry's time is when. */
public record Restart(
        @Blank(value = "after", due = Blank.Due.ALWAYS, width = 10, help = "the stop that it ends")
        Ref of,

        @Blank(value = "station", width = 12) Station place,

        @Blank(value = "joint made", width = 4, help = "whether a transverse joint was made")
        YesNo joint,

        @Blank(value = "action", width = 30) String action)
        implements Entry {}
