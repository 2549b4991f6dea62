package screedbook.entry;

import java.math.BigDecimal;

/** Bytes that were found behind the last whole line and are kept in a file beside this one. */
public record SetAside(
        @Blank(value = "file", width = 40) String file,
        @Blank("offset") BigDecimal fileOffset,
        @Blank("bytes") BigDecimal byteCount,
        @Blank(value = "sha-256", width = 64) String sha256)
        implements Entry {}
