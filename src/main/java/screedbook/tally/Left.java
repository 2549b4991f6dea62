package screedbook.tally;

import screedbook.entry.Ref;

/** An entry, or one figure of it, that is in no total, and why. */
public record Left(Ref of, String why) {}
