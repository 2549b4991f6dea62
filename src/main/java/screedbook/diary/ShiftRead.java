package screedbook.diary;

import java.util.List;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.ShiftId;

/** A shift as it was read from all its books, with everything that was found wrong; nothing stops the reading. */
public record ShiftRead(ShiftId shift, Day day, List<BookRead> books, List<Damage> damages) {}
