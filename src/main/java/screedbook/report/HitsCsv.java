package screedbook.report;

import java.util.List;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;

/** Entries that were found as comma-separated values, one a line. */
public final class HitsCsv {
    private HitsCsv() {}

    public static String head() {
        Cells cells = new Cells();
        List.of("job", "shift", "entry", "line", "struck", "told").forEach(cells::text);
        return cells.end().lines();
    }

    /**
     * One entry.
     *
     * @param line its line in its file
     */
    public static String row(String job, ShiftId shift, Ref entry, int line, boolean struck, String told) {
        return new Cells()
                .text(job)
                .text(shift.toString())
                .text(entry.toString())
                .number(line)
                .text(struck ? "yes" : "no")
                .text(told)
                .end()
                .lines();
    }
}
