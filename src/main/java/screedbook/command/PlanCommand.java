package screedbook.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.job.Job;
import screedbook.report.PlanPage;
import screedbook.shelf.PlanPapers;
import screedbook.shelf.Shelf;
import screedbook.spec.SpecSheet;

/** {@code screedbook plan}: the pre-paving sheet. */
@Command(name = "plan", description = "print the pre-paving sheet: what is agreed, what cannot work, what is open")
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped {
        Shelf shelf = job.shelf();
        Job planned = PlannedJob.read(spec, shelf);
        SpecSheet sheet = PlannedJob.sheet(spec, shelf, planned.sheet());
        Pages.print(spec, PlanPage.text(PlanPapers.of(shelf.folder(), planned, sheet)));
        return Exit.FINE;
    }
}
