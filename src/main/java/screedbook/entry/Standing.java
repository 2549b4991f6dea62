package screedbook.entry;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * An entry as it stands after corrections, with the line that holds its first words.
 *
 * @param entry with the amendments in force applied
 * @param time when it happened, amended likewise; null when nobody noted it
 * @param struckBy the strike in force; null when the entry counts
 * @param amendedBy the amendments in force, oldest first
 * @param slips values of amendments that could not be read; the value before stands
 */
public record Standing<E extends Entry>(
        Line line,
        E entry,
        Aside aside,
        OffsetDateTime time,
        Line struckBy,
        List<Line> amendedBy,
        List<Built.Slip> slips) {
    public Ref ref() {
        return line.ref();
    }

    public boolean struck() {
        return struckBy != null;
    }

    /** When it happened, or when it was keyed where nobody noted the time; for order only. */
    public OffsetDateTime order() {
        return time == null ? line.keyed() : time;
    }
}
