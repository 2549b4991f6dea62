package screedbook.entry;

/** Something about safety that was seen, and what was done. It is no safety plan. */
public record Safety(
        @Blank(value = "seen", due = Blank.Due.ALWAYS, width = 50)
        String text,

        @Blank(value = "about", due = Blank.Due.ASKED, width = 16)
        About about,

        @Blank(value = "where", width = 20) String location,

        @Blank(value = "told to", due = Blank.Due.ASKED, width = 16)
        String toldTo,

        @Blank(value = "done", due = Blank.Due.ASKED, width = 40)
        String action)
        implements Entry {
    /** What it is about. */
    public enum About implements Word {
        TRAFFIC,
        REVERSING,
        BURNS,
        FUMES,
        HEAT,
        LIGHT,
        GAUGE,
        MACHINES,
        OTHER
    }
}
