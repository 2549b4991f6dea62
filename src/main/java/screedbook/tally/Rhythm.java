package screedbook.tally;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Day;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.unit.Measure;

/**
 * Which loads want a mix temperature: for each mix and shift the first so many placed loads, then one in each run of so
 * many, on the last load of the run at the latest. Loads go by the time they were discharged, then by their number.
 */
public final class Rhythm {
    /** Where the job asks for no temperature after the first loads. */
    public static final int NEVER = Integer.MAX_VALUE;

    private final Checks checks;
    private final Map<String, Run> runs = new HashMap<>();

    private Rhythm(Job job) {
        this.checks = job.checks();
    }

    /**
     * A placed load in the rhythm of its mix.
     *
     * @param place from 1 among the placed loads of its mix
     * @param due whether a temperature was wanted of this load
     * @param done whether it has one wherever the job asks for it
     * @param counts whether it stands for a wanted temperature: each of the first loads, and in each run the first load
     *     that was read or, when none was, the last one
     */
    public record Turn(Standing<Ticket> ticket, int place, boolean due, boolean done, boolean counts) {}

    /** How far the rhythm of a mix has come. */
    private static final class Run {
        private int loads;
        private boolean taken;
    }

    /** Every placed load of the day, in its turn. */
    public static List<Turn> turns(Day day, Job job) {
        return turns(placed(day, job), job);
    }

    static List<Turn> turns(List<Standing<Ticket>> placed, Job job) {
        Rhythm rhythm = new Rhythm(job);
        return placed.stream().map(rhythm::turn).toList();
    }

    /** How many loads of a mix come before the one that wants a temperature; 0 when it is the next one. */
    public static int loadsUntil(Day day, Job job, String mix) {
        return loadsUntil(placed(day, job), job, mix);
    }

    static int loadsUntil(List<Standing<Ticket>> placed, Job job, String mix) {
        Rhythm rhythm = new Rhythm(job);
        placed.forEach(rhythm::turn);
        return rhythm.until(rhythm.runs.getOrDefault(key(mix), new Run()));
    }

    private static List<Standing<Ticket>> placed(Day day, Job job) {
        return placed(Loads.of(day, Measure.LOAD.unit(job.system())).loads());
    }

    static List<Standing<Ticket>> placed(List<Load> loads) {
        return loads.stream().filter(Load::laid).map(Load::ticket).toList();
    }

    private Turn turn(Standing<Ticket> ticket) {
        Run run = runs.computeIfAbsent(key(ticket.entry().paper().mix()), k -> new Run());
        boolean due = until(run) == 0;
        boolean done = done(ticket.entry());
        boolean counts = due || (done && !run.taken && until(run) != NEVER);
        run.loads++;
        run.taken |= done;
        if (run.loads <= checks.firstLoads() || (run.loads - checks.firstLoads()) % every() == 0) {
            run.taken = false;
        }
        return new Turn(ticket, run.loads, due, done, counts);
    }

    private int until(Run run) {
        int past = run.loads - checks.firstLoads();
        if (past < 0) {
            return 0;
        }
        if (checks.thenOneIn() < 1) {
            return NEVER;
        }
        int rest = every() - past % every() - 1;
        return run.taken ? rest + every() : rest;
    }

    private int every() {
        return Math.max(1, checks.thenOneIn());
    }

    private static String key(String mix) {
        return mix == null ? "" : mix;
    }

    /** Whether a load has a temperature wherever the job asks for it. */
    private boolean done(Ticket ticket) {
        boolean plant = ticket.heat().plant() != null;
        boolean paver = ticket.heat().paver() != null;
        return switch (checks.heatWhere()) {
            case PAVER -> paver;
            case PLANT -> plant;
            case BOTH -> plant && paver;
        };
    }
}
