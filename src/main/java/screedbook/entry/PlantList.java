package screedbook.entry;

import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * A plant's own list of loads that was laid beside the record: a second source, kept as it came, which changes no
 * entry. The program writes this line; the list lies in the job's folder.
 */
public record PlantList(
        @Blank(value = "plant", pick = Blank.Pick.PLANT, width = 14)
        String plant,

        @Blank(value = "file", width = 30, help = "its name under plant/")
        String listFile,

        @Blank(value = "sha-256", width = 64) String listSha256,
        @Blank(value = "rows", width = 5) Integer listRows,
        @Blank(value = "loads", width = 4) Integer loads,

        @Blank(value = "tons", measure = Measure.LOAD, width = 9)
        Amount tons)
        implements Entry {}
