package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** How a roller works: its place in the train, its passes, and the mat under it. */
public record Rolling(
        @Blank(value = "roller", due = Blank.Due.ALWAYS, carry = true, width = 10)
        String roller,

        @Blank(value = "as", due = Blank.Due.ASKED, carry = true, width = 12)
        Task task,

        @Blank(value = "drums", due = Blank.Due.ASKED, carry = true, width = 12)
        Drums drums,

        @Blank(value = "passes", due = Blank.Due.ASKED, carry = true, width = 4)
        Integer passes,

        @Blank(value = "mat at first", measure = Measure.TEMPERATURE, due = Blank.Due.ASKED, width = 6)
        Amount matBegins,

        @Blank(value = "mat at last", measure = Measure.TEMPERATURE, due = Blank.Due.ASKED, width = 6)
        Amount matEnds,

        @Blank(value = "speed", measure = Measure.SPEED, width = 5)
        Amount speed,

        @Blank(value = "vibrations a minute", width = 5) Integer vibrations,

        @Blank(value = "drum width", measure = Measure.WIDTH, carry = true, width = 5)
        Amount drumWidth,

        @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ASKED, carry = true, width = 6)
        String pull,

        @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ASKED, carry = true, width = 4)
        Integer lift,

        @Blank(value = "from", width = 12) Station from,
        @Blank(value = "to", width = 12) Station to,

        @Blank(value = "pattern", carry = true, width = 20, help = "how it was settled: control strip, growth curve")
        String pattern)
        implements Entry {
    /** Its place in the train. */
    public enum Task implements Word {
        BREAKDOWN,
        INTERMEDIATE,
        FINISH
    }

    /** What it rolls with. */
    public enum Drums implements Word {
        STATIC,
        VIBRATORY,
        OSCILLATING,
        PNEUMATIC
    }
}
