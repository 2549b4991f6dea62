package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import screedbook.tally.Due;
import screedbook.tally.Totals;

/** Rules about the checks that the job wants: each is made before the work goes on. */
final class DueRules {
    static final List<Rule> ALL = List.of(new Rule(
            "check-overdue",
            Sort.MISSING,
            "A check that the job wants is made before the work goes on.",
            DueRules::overdue));

    private DueRules() {}

    private static List<Mark> overdue(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Due due : look.totals().map(Totals::dues).orElse(List.of())) {
            for (Due.Missed missed : due.missed()) {
                marks.add(new Mark(
                        missed.of(),
                        missed.seen(),
                        missed.wanted(),
                        missed.source(),
                        "a " + due.what() + " before this one"));
            }
        }
        return marks;
    }
}
