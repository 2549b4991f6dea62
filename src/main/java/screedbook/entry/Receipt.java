package screedbook.entry;

/** The disk's word that a line was written and forced. */
public record Receipt(Line line, String file) {}
