package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Answer;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.tally.Totals;

/** A day, its totals and what it is judged by give its findings. */
public final class Findings {
    private final Map<Answered, List<Standing<Answer>>> answers = new HashMap<>();
    private final Map<Ref, Integer> places = new HashMap<>();

    private record Answered(String rule, Ref of) {}

    private Findings(Day day) {
        for (Standing<?> each : day.all()) {
            places.put(each.ref(), places.size());
        }
        for (Standing<Answer> each : day.every(Answer.class)) {
            if (!each.struck()) {
                answers.computeIfAbsent(
                                new Answered(each.entry().rule(), each.entry().of()), a -> new ArrayList<>())
                        .add(each);
            }
        }
    }

    /** The findings of a day as it stands with its last line; nothing is said of how long ago that was. */
    public static List<Finding> of(Day day, Totals totals, Ground ground) {
        return of(day, Optional.of(totals), ground, null);
    }

    /**
     * The findings of a day, in the order of the entries that carry them; those of the whole shift stand with its
     * opening.
     *
     * @param totals empty where the job is not found, and then nothing is judged by a plan
     * @param now for shifts that were never closed; null when that is not asked
     */
    public static List<Finding> of(Day day, Optional<Totals> totals, Ground ground, OffsetDateTime now) {
        Findings findings = new Findings(day);
        Look look = new Look(day, totals, ground, now);
        List<Finding> all = new ArrayList<>();
        for (Rule rule : Rules.all()) {
            for (Mark mark : rule.marks(look)) {
                all.add(findings.finding(rule, mark));
            }
        }
        all.sort(Comparator.comparingInt(findings::place));
        return List.copyOf(all);
    }

    private int place(Finding finding) {
        return finding.of().isEmpty() ? -1 : places.getOrDefault(finding.of().get(0), -1);
    }

    private Finding finding(Rule rule, Mark mark) {
        Sort sort = mark.sort() == null ? rule.sort() : mark.sort();
        List<Standing<Answer>> given = new ArrayList<>();
        for (Ref ref : mark.of()) {
            given.addAll(answers.getOrDefault(new Answered(rule.id(), ref), List.of()));
        }
        return new Finding(
                rule.id(),
                sort,
                List.copyOf(mark.of()),
                mark.seen(),
                mark.limit(),
                mark.clause(),
                mark.inside(),
                mark.working(),
                List.copyOf(given),
                mark.beyond());
    }
}
