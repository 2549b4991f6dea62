package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * A plant's own list of loads that was laid beside the record: a second source, kept as it came, which changes no
 * entry. The program writes this line, with the columns by which the list was read; the list lies in the job's folder.
 */
public record PlantList(
        @Blank(value = "plant", pick = Blank.Pick.PLANT, width = 14)
        String plant,

        @Blank(value = "file", width = 30, help = "its name under plant/")
        String listFile,

        @Blank(value = "sha-256", width = 64) String listSha256,

        @Blank(value = "rows", width = 5, help = "below its heading, those without a ticket number too")
        Integer listRows,

        @Blank(value = "loads", width = 4, help = "rows with a ticket number")
        Integer loads,

        @Blank(value = "tons", measure = Measure.LOAD, width = 9)
        Amount tons,

        ListColumns columns)
        implements Entry {}
