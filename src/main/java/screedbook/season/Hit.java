package screedbook.season;

import screedbook.entry.Ref;
import screedbook.entry.ShiftId;

/**
 * An entry that was found.
 *
 * @param row its line in that file, from 1
 * @param told the entry in one line, with what it was found by where the entry does not show it
 */
public record Hit(String job, ShiftId shift, Ref ref, int row, boolean struck, String told) {}
