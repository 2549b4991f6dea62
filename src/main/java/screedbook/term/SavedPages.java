package screedbook.term;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import screedbook.diary.KeptPages;
import screedbook.entry.ShiftId;
import screedbook.report.DayCsv;
import screedbook.report.DayPage;
import screedbook.report.DayPaper;
import screedbook.shelf.Papers;
import screedbook.shelf.Shelf;

/** Pages of a shift saved beside the diary. */
final class SavedPages {
    private SavedPages() {}

    /** The page of a closed shift, kept for ever; after late lines its next revision. */
    static String save(Shelf shelf, ShiftId shift) throws IOException {
        DayPaper paper = Papers.of(shelf.shift(shift));
        Path file = KeptPages.in(shelf.folder()).page(shift, DayPage.text(paper), DayCsv.text(paper));
        return file.getFileName().toString();
    }

    /** The page as far as the shift has come; it takes the place of an earlier one of its kind. */
    static Path soFar(Shelf shelf, ShiftId shift, OffsetDateTime now) throws IOException {
        DayPaper paper = Papers.of(shelf.shift(shift, now));
        return KeptPages.in(shelf.folder()).soFar(shift, DayPage.text(paper), DayCsv.text(paper));
    }
}
