package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import screedbook.diary.JobFolder;
import screedbook.diary.Synced;

/** {@code screedbook new DIR}: the folder of a new job, with an example to edit. */
@Command(name = "new", description = "make the folder of a new job, with an example to edit")
final class NewJob implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Parameters(paramLabel = "DIR", description = "the folder; files that are there already stay as they are")
    private Path folder;

    @Override
    public Integer call() throws IOException {
        Synced.warning(folder).ifPresent(warning -> Pages.say(spec, warning));
        List<String> made = JobFolder.make(folder);
        StringBuilder page = new StringBuilder();
        made.forEach(name -> page.append("made ").append(folder.resolve(name)).append('\n'));
        if (made.isEmpty()) {
            page.append("everything is there already in ").append(folder).append('\n');
        } else {
            page.append("Edit job.json, which holds an example, then open the desk: screedbook ")
                    .append(folder)
                    .append('\n');
        }
        Pages.print(spec, page.toString());
        return Exit.FINE;
    }
}
