package screedbook.command;

import picocli.CommandLine.Model.CommandSpec;
import screedbook.diary.JobRead;
import screedbook.job.Job;
import screedbook.shelf.SheetNow;
import screedbook.shelf.Shelf;
import screedbook.spec.SpecSheet;

/** A job as it is planned now, with the sheet that it names. */
final class PlannedJob {
    private PlannedJob() {}

    /** @throws Stopped when job.json cannot be used; every trouble in it is told before */
    static Job read(CommandSpec spec, Shelf shelf) throws Stopped {
        JobRead read = shelf.folder().job();
        if (read.job().isEmpty()) {
            read.troubles().forEach(each -> each.text().lines().forEach(line -> Pages.say(spec, line)));
            throw Stopped.disk("job.json cannot be used as it is");
        }
        return read.job().get();
    }

    /** @throws Stopped when there is no such sheet or it cannot be used; every trouble in it is told before */
    static SpecSheet sheet(CommandSpec spec, Shelf shelf, String name) throws Stopped {
        SheetNow now = SheetNow.of(shelf.folder(), name)
                .orElseThrow(() -> Stopped.disk("there is no limit sheet " + name + ": neither spec/" + name
                        + ".csv nor a shipped one of the name"));
        now.troubles().forEach(each -> Pages.say(spec, each));
        return now.sheet().orElseThrow(() -> Stopped.disk("the limit sheet " + name + " cannot be used as it is"));
    }
}
