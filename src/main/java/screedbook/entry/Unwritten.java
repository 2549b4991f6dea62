package screedbook.entry;

import java.time.OffsetDateTime;

/** An entry that is ready to be written: the disk adds number, machine time and chain. */
public record Unwritten(OffsetDateTime time, String who, Source source, Entry entry, Aside aside) {}
