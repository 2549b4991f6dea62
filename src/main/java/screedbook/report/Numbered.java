package screedbook.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import screedbook.check.Finding;
import screedbook.check.Sort;

/**
 * The findings of a page, each with the number by which it is found on any of the page's sheets, in the order in which
 * the page tells them.
 *
 * @param open without an answer; what was not placed is left to {@code notPlaced}
 * @param placed outside a limit, placed and answered
 * @param notPlaced outside a limit on loads that were not placed: nothing is left to decide
 * @param also of the other sorts, and answered
 */
record Numbered(List<Group> open, List<Group> placed, List<Group> notPlaced, List<Group> also) {
    private static final Map<Sort, Integer> ORDER =
            Map.of(Sort.OUTSIDE, 0, Sort.DOES_NOT_ADD_UP, 1, Sort.LOOK_AGAIN, 2, Sort.MISSING, 3);

    /** A finding with its number on the page. */
    record Item(int number, Finding finding) {}

    static Numbered of(DayPaper paper, Entries entries) {
        List<Finding> open = new ArrayList<>();
        List<Finding> placed = new ArrayList<>();
        List<Finding> also = new ArrayList<>();
        List<Finding> notPlaced = new ArrayList<>();
        for (Finding each : paper.findings()) {
            boolean outside = each.sort() == Sort.OUTSIDE;
            if (outside && !entries.stayed(each)) {
                notPlaced.add(each);
            } else if (!each.answered()) {
                open.add(each);
            } else {
                (outside ? placed : also).add(each);
            }
        }
        open.sort(Comparator.comparing(f -> ORDER.get(f.sort())));
        Groups groups = new Groups(entries);
        return new Numbered(groups.of(open), groups.of(placed), groups.of(notPlaced), groups.of(also));
    }
}
