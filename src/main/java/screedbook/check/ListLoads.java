package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Day;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.tally.ListMatch;
import screedbook.tally.ListPair;

/** The loads of a plant's list that are not here, in runs as they follow each other in the list. */
public final class ListLoads {
    private ListLoads() {}

    /**
     * A load that the list has and that is not here.
     *
     * @param mix the job's name of its mix; null where that is not known
     * @param from where it stands: {@code Quarry Road's list, line 17}
     */
    public record Load(PlantRows.Row row, String plant, String mix, String from) {}

    /**
     * Rows without a row in between that has its ticket.
     *
     * @param of the ticket that the list has before them, or behind them, and the list's line
     */
    record Run(List<Ref> of, List<PlantRows.Row> rows) {}

    static List<Run> runs(ListMatch match) {
        List<Run> runs = new ArrayList<>();
        List<PlantRows.Row> run = new ArrayList<>();
        Standing<?> beside = null;
        int at = 0;
        for (PlantRows.Row row : match.rows().rows()) {
            ListPair pair = at < match.pairs().size() && match.pairs().get(at).row() == row
                    ? match.pairs().get(at++)
                    : null;
            if (pair != null) {
                close(runs, run, beside == null ? pair.ticket() : beside, match);
                beside = pair.ticket();
            } else if (match.notHere().contains(row)) {
                run.add(row);
            }
        }
        close(runs, run, beside, match);
        return runs;
    }

    private static void close(List<Run> runs, List<PlantRows.Row> run, Standing<?> beside, ListMatch match) {
        if (!run.isEmpty()) {
            Ref list = match.list().ref();
            runs.add(new Run(beside == null ? List.of(list) : List.of(beside.ref(), list), List.copyOf(run)));
            run.clear();
        }
    }

    /** The loads of which a finding speaks, in the order of the list. */
    public static List<Load> notHere(Day day, Job job, Finding finding) {
        List<Load> loads = new ArrayList<>();
        for (ListMatch match : ListMatch.all(day, job)) {
            runs(match).stream()
                    .filter(run -> run.of().equals(finding.of()))
                    .flatMap(run -> run.rows().stream())
                    .forEach(row -> loads.add(new Load(
                            row,
                            match.rows().plant(),
                            match.meant(row),
                            PlantRules.plant(match.rows().plant()) + "'s list, line " + row.line())));
        }
        return List.copyOf(loads);
    }
}
