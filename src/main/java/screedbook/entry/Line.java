package screedbook.entry;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * One line of a diary that this program understands.
 *
 * @param row place in its file, from 1
 * @param n its number through all files of its book's shift, from 1
 * @param time when it happened; null when nobody noted it
 * @param keyed when the machine wrote it
 * @param who initials of the writer
 * @param unknown keys of a newer program, kept in the raw text
 * @param raw the line's exact text
 */
public record Line(
        String book,
        int row,
        int n,
        String job,
        ShiftId shift,
        OffsetDateTime time,
        OffsetDateTime keyed,
        String who,
        Source source,
        Entry entry,
        Aside aside,
        List<String> unknown,
        String raw)
        implements Written {
    public Ref ref() {
        return new Ref(book, n);
    }

    public Kind kind() {
        return entry.kind();
    }
}
