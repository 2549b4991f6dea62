package screedbook.entry;

/** A line of a kind that this program does not know, kept as raw text in its place. */
public record Foreign(String book, int row, int n, String kind, String raw) implements Written {}
