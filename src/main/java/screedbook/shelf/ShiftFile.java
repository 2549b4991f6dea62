package screedbook.shelf;

import java.util.List;
import screedbook.check.Ground;
import screedbook.diary.ShiftRead;
import screedbook.entry.Day;
import screedbook.entry.Seal;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;

/**
 * A shift with what it is judged by and what it comes to.
 *
 * @param read its files as they were read
 * @param ground the jobs and sheets in force; where one cannot be found, nothing takes its place
 * @param before the shifts before this one, as they stood at its close
 * @param totals without checks that were asked for when the job cannot be found
 * @param seals of the books that were closed
 */
public record ShiftFile(ShiftRead read, Ground ground, ToDate before, Totals totals, List<Seal> seals) {
    public Day day() {
        return read.day();
    }
}
