package screedbook.diary;

import java.util.List;
import java.util.Optional;
import screedbook.entry.Seal;
import screedbook.entry.Written;

/**
 * One book of a shift as it was read from all its files.
 *
 * @param seal of the close, when the book was closed
 * @param lines in their own order, with those that are foreign or unreadable
 */
public record BookRead(String book, List<FileRead> files, Optional<Seal> seal, List<Written> lines) {}
