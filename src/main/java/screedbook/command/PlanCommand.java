package screedbook.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.diary.JobRead;
import screedbook.job.Job;
import screedbook.report.PlanPage;
import screedbook.shelf.PlanPapers;
import screedbook.shelf.Shelf;
import screedbook.spec.Loaded;
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
        Job planned = planned(shelf);
        Pages.print(spec, PlanPage.text(PlanPapers.of(shelf.folder(), planned, sheet(shelf, planned.sheet()))));
        return Exit.FINE;
    }

    private Job planned(Shelf shelf) throws Stopped {
        JobRead read = shelf.folder().job();
        if (read.job().isEmpty()) {
            read.troubles().forEach(each -> Pages.say(spec, each.text()));
            throw Stopped.disk("job.json cannot be used as it is");
        }
        return read.job().get();
    }

    private SpecSheet sheet(Shelf shelf, String name) throws Stopped {
        byte[] bytes = shelf.folder()
                .sheet(name)
                .or(() -> SpecSheet.shippedBytes(name))
                .orElseThrow(() -> Stopped.disk("there is no limit sheet " + name + ": neither spec/" + name
                        + ".csv nor a shipped one of the name"));
        Loaded loaded = SpecSheet.read(name, bytes);
        loaded.troubles().forEach(each -> Pages.say(spec, each.text()));
        return loaded.sheet().orElseThrow(() -> Stopped.disk("the limit sheet " + name + " cannot be used as it is"));
    }
}
