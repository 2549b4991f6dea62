package screedbook.entry;

import java.util.List;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** Anything else that was seen, said or done, with free tags. */
public record Note(
        @Blank(
                value = "tags",
                width = 30,
                help = "instruction, visitor, incident, lane closed, lane opened, traffic control walked")
        List<String> tags,

        @Blank(value = "text", due = Blank.Due.ALWAYS, width = 60)
        String text,

        @Blank(value = "from whom", width = 16) String fromWhom,
        @Blank(value = "answer", width = 40) String answer,

        @Blank(value = "mat", measure = Measure.TEMPERATURE, width = 6, help = "of the mat, when a lane is opened")
        Amount mat,

        @Blank(value = "station", width = 12) Station place,

        @Blank(value = "pull", pick = Blank.Pick.PULL, width = 6)
        String pull)
        implements Entry {}
