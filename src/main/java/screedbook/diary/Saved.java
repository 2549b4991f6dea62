package screedbook.diary;

import java.util.List;
import java.util.Optional;
import screedbook.entry.Receipt;
import screedbook.entry.Refused;
import screedbook.entry.Seal;

/**
 * What came of writing entries.
 *
 * @param receipts of the entries that are on the disk, in their order
 * @param seal when one of them closed the book
 * @param refused why the next entry and those after it are not on the disk; empty when all are
 * @param said what else the disk had to say; empty when nothing
 */
public record Saved(List<Receipt> receipts, Optional<Seal> seal, Optional<Refused> refused, String said) {}
