package screedbook.shelf;

import screedbook.check.InForce;
import screedbook.report.DayPaper;

/** A shift read from the disk made ready for its page. */
public final class Papers {
    private Papers() {}

    public static DayPaper of(ShiftFile file) {
        return of(file, true);
    }

    /** A copy for the contractor: of a shift whose remarks were left out. */
    public static DayPaper copy(ShiftFile file) {
        return of(file, false);
    }

    private static DayPaper of(ShiftFile file, boolean whole) {
        return new DayPaper(
                file.day(),
                file.totals(),
                file.findings(),
                file.ground().now().flatMap(InForce::agreed),
                file.ground().sheet(),
                file.seals(),
                file.read().damages(),
                file.revision(),
                whole);
    }
}
