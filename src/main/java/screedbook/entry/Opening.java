package screedbook.entry;

import java.util.List;

/** The first line of a book: everything that a reader needs who has no other file. */
public record Opening(
        @Blank(value = "format", help = "number of this file format")
        Integer format,

        @Blank(value = "program", width = 20) String program,

        @Blank(value = "file id", help = "random, so that two files of the same name can be told apart", width = 32)
        String fileId,

        @Blank(value = "zone", width = 24, help = "the job's time zone")
        String zone,

        @Blank(value = "laptop zone", width = 24, help = "only where it is not the job's")
        String laptopZone,

        @Blank("job revision") Integer jobRevision,
        @Blank(value = "job sha-256", width = 64) String jobSha256,
        @Blank(value = "sheet", width = 20) String sheet,
        @Blank(value = "sheet sha-256", width = 64) String sheetSha256,
        @Blank("people") List<Person> roster,
        @Blank("instruments") List<Instrument> instruments,

        @Blank(value = "the shift before", width = 64, help = "seal of this book's shift before, when known")
        String sealBefore)
        implements Entry {}
