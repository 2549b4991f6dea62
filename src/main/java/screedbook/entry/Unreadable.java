package screedbook.entry;

/** A line that cannot be read, kept with its place and the reason; it spoils no other. */
public record Unreadable(String book, int row, String reason, String raw) implements Written {}
