package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Amend;
import screedbook.entry.Closing;
import screedbook.entry.Day;
import screedbook.entry.Foreign;
import screedbook.entry.Ref;
import screedbook.entry.Review;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Strike;
import screedbook.entry.Unreadable;
import screedbook.entry.Written;

/** The section that counts the record itself: corrections, late lines, lines that could not be counted. */
final class RecordSection {
    private static final String RECORD = "the diary's lines";

    private RecordSection() {}

    static Section of(Day day, List<Left> left) {
        Figures figures = new Figures();
        figures.count(
                "lines",
                "lines",
                day.written().size(),
                new Working("every line of every book", List.of(), List.of(), RECORD));
        count(
                figures,
                "struck",
                "entries struck",
                refs(day.all().stream().filter(Standing::struck).toList()));
        count(figures, "strikes", "strikes in force or not", refs(day.every(Strike.class)));
        count(figures, "amendments", "amendments", refs(day.every(Amend.class)));
        count(figures, "from-notes", "entries keyed from notes", notes(day));
        count(figures, "late-lines", "lines after the close", late(day));
        count(
                figures,
                "adrift",
                "corrections and answers to no entry",
                day.adrift().stream().map(l -> l.ref()).toList());
        uncounted(figures, day);
        List<String> put = left.stream().map(l -> l.of() + " " + l.why()).toList();
        figures.count(
                "left-out",
                "entries not counted, or not in full",
                left.size(),
                new Working("as named", put, left.stream().map(Left::of).toList(), RECORD));
        return figures.section("record", "Corrections, late lines, lines not counted");
    }

    /** Lines behind a close but for the reviews and the closings themselves. */
    private static List<Ref> late(Day day) {
        return refs(day.late().stream()
                .filter(s -> !(s.entry() instanceof Review) && !(s.entry() instanceof Closing))
                .toList());
    }

    private static List<Ref> notes(Day day) {
        return refs(day.all().stream()
                .filter(s -> s.line().source() == Source.NOTES)
                .toList());
    }

    private static List<Ref> refs(List<? extends Standing<?>> entries) {
        return entries.stream().map(s -> s.ref()).toList();
    }

    private static void count(Figures figures, String id, String label, List<Ref> entries) {
        figures.count(id, label, entries.size(), new Working("counted one by one", List.of(), entries, RECORD));
    }

    private static void uncounted(Figures figures, Day day) {
        List<String> put = new ArrayList<>();
        for (Written each : day.uncounted()) {
            if (each instanceof Foreign f) {
                put.add(f.book() + " line " + f.row() + " is of the kind " + f.kind());
            } else if (each instanceof Unreadable u) {
                put.add(u.book() + " line " + u.row() + ": " + u.reason());
            }
        }
        figures.count(
                "not-read",
                "lines that could not be read",
                put.size(),
                new Working("kept as they are, counted in no total", List.copyOf(put), List.of(), RECORD));
    }
}
