package screedbook.entry;

import java.time.LocalDate;

/** A thermometer, gauge, camera or straightedge, named by an id that readings carry. */
public record Instrument(
        @Blank(value = "id", due = Blank.Due.ALWAYS, width = 12)
        String id,

        @Blank(value = "kind", width = 20) String kind,
        @Blank(value = "serial no.", width = 16) String serial,

        @Blank(value = "check due", help = "date of the next check")
        LocalDate due) {}
