package screedbook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.diary.JobFolder;
import screedbook.diary.Verdict;
import screedbook.diary.Verify;

/** {@code screedbook verify}: whether a record is as it was written, and which line is not. */
@Command(
        name = "verify",
        description = "tell whether the record of a job, or of every job in a folder, is as it was written")
final class VerifyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        boolean sound = true;
        for (Path each : jobs()) {
            JobFolder folder = JobFolder.at(each);
            Verdict verdict = Verify.of(folder);
            if (verdict.files().isEmpty() && verdict.sound()) {
                throw Stopped.disk(each + " holds no record yet");
            }
            Pages.print(spec, new VerdictPage(folder, verdict).text());
            sound &= verdict.sound();
        }
        return sound ? Exit.FINE : Exit.WRONG;
    }

    private List<Path> jobs() throws Stopped, IOException {
        job.there();
        if (JobWord.isJob(job.folder())) {
            return List.of(job.folder());
        }
        try (Stream<Path> inside = Files.list(job.folder())) {
            List<Path> jobs = inside.filter(Files::isDirectory)
                    .filter(JobWord::isJob)
                    .sorted()
                    .toList();
            if (jobs.isEmpty()) {
                throw Stopped.disk("neither " + job.folder()
                        + " nor a folder in it is the folder of a job: there is no job.json and no diary");
            }
            return jobs;
        }
    }
}
