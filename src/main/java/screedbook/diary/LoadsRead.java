package screedbook.diary;

import java.util.List;
import screedbook.entry.WholeLoads;

/**
 * A shift as far as its loads go.
 *
 * @param read the lines that have to be looked at one by one
 * @param whole the loads of all other tickets
 */
public record LoadsRead(ShiftRead read, List<WholeLoads> whole) {}
