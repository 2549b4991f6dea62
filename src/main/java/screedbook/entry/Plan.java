package screedbook.entry;

/** From here on another job revision or limit sheet is in force. */
public record Plan(
        @Blank("job revision") Integer jobRevision,
        @Blank(value = "job sha-256", width = 64) String jobSha256,
        @Blank(value = "sheet", width = 20) String sheet,
        @Blank(value = "sheet sha-256", width = 64) String sheetSha256,
        @Blank(value = "reason", width = 40) String reason)
        implements Entry {}
