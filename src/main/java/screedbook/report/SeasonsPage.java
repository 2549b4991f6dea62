package screedbook.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The page behind those of many jobs: a line for each, and all of them by month. It keeps no more than its lines. */
public final class SeasonsPage {
    /** Late lines stand on the page of each job; here there is no room for them. */
    private static final int COLUMNS = SeasonRow.HEADS.size() - 1;

    private final List<List<String>> jobs = new ArrayList<>();
    private final Map<String, SeasonRow> months = new TreeMap<>();
    private final Map<String, SeasonRow> all = new TreeMap<>();
    private LocalDate first;
    private LocalDate last;
    private int damages;
    private int notRead;

    /** Takes up a job with its months and itself among its parts. */
    public void add(SeasonJob job) {
        damages += job.damages().size();
        notRead += job.notRead().size();
        List<String> row = null;
        for (SeasonPart part : job.parts()) {
            String units = SeasonRow.of(part).units();
            if (part.by().equals("job")) {
                row = SeasonRow.of(part).cells(job.id(), true);
                all.computeIfAbsent("all in " + units, u -> new SeasonRow()).add(part);
                first = first == null || part.from().isBefore(first) ? part.from() : first;
                last = last == null || part.to().isAfter(last) ? part.to() : last;
            } else if (part.by().equals("month")) {
                months.computeIfAbsent(part.of() + " in " + units, u -> new SeasonRow())
                        .add(part);
            }
        }
        jobs.add(row == null ? new SeasonRow().cells(job.id(), true) : row);
    }

    /** Whether no job had a shift in the dates. */
    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** The page; every line ends with a line feed. */
    public String text() {
        Leaf leaf = new Leaf(Leaf.PAPER);
        leaf.ends("All " + Leaf.many(jobs.size(), "job"), isEmpty() ? "no shift" : first + " to " + last);
        leaf.rule('=');
        if (damages + notRead > 0) {
            leaf.heading("Not as it was written: " + Leaf.many(damages, "place") + "; in no total: "
                    + Leaf.many(notRead, "line") + "; each is named on the page of its job");
        }
        leaf.heading("by job");
        table(leaf, Stream.concat(jobs.stream(), rows(all)));
        if (!isEmpty()) {
            leaf.heading("by month, all jobs");
            table(leaf, rows(months));
        }
        leaf.blank();
        return String.join("\n", leaf.lines()) + "\n";
    }

    private static void table(Leaf leaf, Stream<List<String>> rows) {
        leaf.table(
                SeasonRow.HEADS.subList(0, COLUMNS),
                rows.map(row -> row.subList(0, COLUMNS)).toList());
    }

    private static Stream<List<String>> rows(Map<String, SeasonRow> rows) {
        return rows.entrySet().stream().map(row -> row.getValue().cells(row.getKey(), true));
    }
}
