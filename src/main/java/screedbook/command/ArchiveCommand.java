package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.diary.Archive;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.shelf.Shelf;

/** {@code screedbook archive}: the archivist's copy of a job. */
@Command(
        name = "archive",
        description = "copy the closed shifts of a job, with what they are judged by and a manifest, for keeping")
final class ArchiveCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Option(
            names = "--to",
            paramLabel = "DIR",
            required = true,
            description = "the archive; the job becomes DIR/job=NAME, which must not be there yet")
    private Path to;

    @Option(
            names = "--keep",
            paramLabel = "WORDS",
            defaultValue = "as long as the owner's rules and the law of the place ask",
            description = "how long to keep it; stands in the manifest")
    private String keep;

    @Option(
            names = "--compact",
            description = "also lay the diaries one behind the other in large files, for readers on a cluster")
    private boolean compact;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        Shelf shelf = job.shelf();
        Archive.Copied copied = Archive.copy(shelf.folder(), to, keep, compact);
        int shifts = copied.shifts().size();
        Pages.print(
                spec,
                "copied " + shifts + (shifts == 1 ? " shift, " : " shifts, ") + copied.files() + " files, "
                        + copied.bytes() + " bytes to "
                        + Shown.text(copied.folder().toString()) + "\n");
        for (ShiftId open : copied.open()) {
            Pages.say(spec, open + " is not closed and was left out");
        }
        Pages.warn(spec, copied.damages());
        return Exit.FINE;
    }
}
