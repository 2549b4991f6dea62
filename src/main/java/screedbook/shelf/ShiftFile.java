package screedbook.shelf;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import screedbook.check.Finding;
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
public record ShiftFile(
        ShiftRead read, Ground ground, ToDate before, Totals totals, List<Finding> findings, List<Seal> seals) {
    private static final Pattern REVISION = Pattern.compile(".*\\.r([1-9][0-9]?)(?:-[b-z])?\\.jsonl");

    public Day day() {
        return read.day();
    }

    /** The revision of the shift's page: 1, and 2 or more when something was written behind a close. */
    public int revision() {
        return read.books().stream()
                .flatMap(book -> book.files().stream())
                .map(file -> REVISION.matcher(file.file()))
                .filter(Matcher::matches)
                .mapToInt(late -> Integer.parseInt(late.group(1)))
                .max()
                .orElse(1);
    }
}
