package screedbook.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.diary.JobFolder;
import screedbook.entry.Closing;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;
import screedbook.entry.YesNo;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.tally.Tons;

/** The closing line of a book whose shift is on the disk: what was counted until then, as the desk counts it. */
final class Closings {
    private Closings() {}

    /** @param theirs the representative's word on what was kept here */
    static Closing of(
            JobFolder folder,
            ShiftId shift,
            String book,
            Function<Tons, Closing.Theirs> theirs,
            String item,
            String text,
            YesNo charged) {
        ShiftFile file = Shelf.of(folder).shift(shift);
        return new Closing(
                theirs.apply(file.totals().shift()),
                item,
                charged,
                text,
                counts(file.day(), book),
                tons(file.totals().tons()),
                bySort(file.findings()));
    }

    private static List<Closing.Count> counts(Day day, String book) {
        Map<Kind, Integer> kinds = new LinkedHashMap<>();
        day.all().stream()
                .filter(each -> each.line().book().equals(book))
                .forEach(each -> kinds.merge(each.line().kind(), 1, Integer::sum));
        List<Closing.Count> counts = new ArrayList<>();
        kinds.forEach((kind, count) -> counts.add(new Closing.Count(kind.word(), count)));
        return counts;
    }

    private static List<Closing.Tons> tons(List<Tons> tons) {
        return tons.stream()
                .filter(t -> t.by() == Tons.By.MIX)
                .map(t -> new Closing.Tons(t.of(), t.loads(), t.received(), t.pay()))
                .toList();
    }

    private static List<Closing.Count> bySort(List<Finding> findings) {
        List<Closing.Count> counts = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            List<Finding> of = findings.stream().filter(f -> f.sort() == sort).toList();
            int open = (int) of.stream().filter(f -> !f.answered()).count();
            if (!of.isEmpty()) {
                counts.add(new Closing.Count(sort.text(), of.size()));
            }
            if (open > 0) {
                counts.add(new Closing.Count(sort.text() + ", not answered", open));
            }
        }
        return counts;
    }
}
