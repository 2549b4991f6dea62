package screedbook.shelf;

import screedbook.check.InForce;
import screedbook.report.DayPaper;

/** A shift read from the disk made ready for its page. */
public final class Papers {
    private Papers() {}

    public static DayPaper of(ShiftFile file) {
        return new DayPaper(
                file.day(),
                file.totals(),
                file.findings(),
                file.ground().now().flatMap(InForce::agreed),
                file.ground().sheet(),
                file.seals(),
                file.read().damages(),
                file.revision());
    }
}
