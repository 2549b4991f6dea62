package screedbook.tally;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.entry.Day;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.entry.Written;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * What the shifts before this one come to.
 *
 * @param pay tons for pay as kept here, by pay item
 * @param loads that came, by pay item
 * @param tackSamples tack samples taken
 * @param shifts that are in these figures
 * @param uncounted entries of those shifts that are in no total
 */
public record ToDate(
        Map<String, Amount> pay, Map<String, Integer> loads, int tackSamples, List<ShiftId> shifts, int uncounted) {
    /** Before the first shift. */
    public static final ToDate NONE = new ToDate(Map.of(), Map.of(), 0, List.of(), 0);

    /** These figures and another shift's, by the job that was in force in it. */
    public ToDate and(Day day, Job job) {
        Loads loads = Loads.of(day, Measure.LOAD.unit(job.system()));
        List<Tons> items = Groups.of(loads, job).stream()
                .filter(t -> t.by() == Tons.By.PAY_ITEM)
                .toList();
        Map<String, Amount> pays = new TreeMap<>(pay);
        Map<String, Integer> counts = new TreeMap<>(this.loads);
        for (Tons each : items) {
            pays.merge(each.of(), each.pay(), Amount::plus);
            counts.merge(each.of(), each.loads(), Integer::sum);
        }
        return new ToDate(
                Map.copyOf(pays),
                Map.copyOf(counts),
                tackSamples + Dues.tackSamples(day),
                Stream.concat(shifts.stream(), Stream.of(day.shift())).toList(),
                uncounted + loads.left().size() + day.uncounted().size());
    }

    /** A day as it stood at a moment: only lines keyed before it. Lines that cannot be read have no time and stay. */
    public static Day asOf(Day day, OffsetDateTime moment) {
        Map<String, List<Written>> books = new LinkedHashMap<>();
        for (Written each : day.written()) {
            if (!(each instanceof Line line) || line.keyed().toInstant().isBefore(moment.toInstant())) {
                books.computeIfAbsent(each.book(), b -> new java.util.ArrayList<>())
                        .add(each);
            }
        }
        return Day.of(day.shift(), List.copyOf(books.values()));
    }
}
