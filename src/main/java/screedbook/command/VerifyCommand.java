package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.diary.FileRead;
import screedbook.diary.JobFolder;
import screedbook.diary.Jobs;
import screedbook.diary.Verdict;
import screedbook.diary.Verify;
import screedbook.report.RecordJson;
import screedbook.report.RecordPage;
import screedbook.report.RecordPaper;

/** {@code screedbook verify}: whether a record is as it was written, and which line is not. */
@Command(
        name = "verify",
        description = "tell whether the record of a job, or of every job in a folder, is as it was written")
final class VerifyCommand implements Callable<Integer> {
    static final Map<String, Function<List<RecordPaper>, String>> FORMS = new LinkedHashMap<>();

    static {
        FORMS.put("text", RecordPage::text);
        FORMS.put("json", RecordJson::text);
    }

    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "text (the usual) or json")
    private String format;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        Function<List<RecordPaper>, String> form = Pages.form(format, FORMS);
        job.there();
        boolean one = JobWord.isJob(job.folder());
        List<RecordPaper> papers = new ArrayList<>();
        List<Path> jobs = Jobs.in(job.folder());
        Progress progress = progress(jobs);
        for (Path each : jobs) {
            RecordPaper paper = paper(each, Verify.of(JobFolder.at(each), shift -> progress.one()));
            if (one && paper.files().isEmpty() && paper.sound()) {
                throw Stopped.disk(each + " holds no record yet");
            }
            papers.add(paper);
        }
        if (papers.isEmpty()) {
            throw Stopped.disk("neither " + job.folder()
                    + " nor a folder in it is the folder of a job: there is no job.json and no diary");
        }
        progress.end();
        Pages.print(spec, form.apply(papers));
        return papers.stream().allMatch(RecordPaper::sound) ? Exit.FINE : Exit.WRONG;
    }

    private Progress progress(List<Path> jobs) {
        return all.progress(jobs.stream().mapToInt(this::shifts).sum());
    }

    /** Not worth a look at the disk where nobody looks on. */
    private int shifts(Path folder) {
        return all.watched() ? JobFolder.at(folder).shifts().size() : 0;
    }

    private static RecordPaper paper(Path folder, Verdict verdict) {
        return new RecordPaper(
                folder.toString(),
                verdict.files().stream().map(VerifyCommand::looked).toList(),
                verdict.seals().stream().map(VerifyCommand::sealed).toList(),
                verdict.damages(),
                verdict.beside().stream()
                        .map(file -> new RecordPaper.Beside(file.file(), file.said()))
                        .toList());
    }

    private static RecordPaper.Sealed sealed(Verdict.Sealed sealed) {
        List<RecordPaper.Signed> signed = sealed.signed().stream()
                .map(each -> new RecordPaper.Signed(each.who(), each.time(), each.key(), each.named()))
                .toList();
        return new RecordPaper.Sealed(sealed.shift(), sealed.seal(), signed, sealed.expected());
    }

    private static RecordPaper.Looked looked(FileRead file) {
        boolean diary = !file.file().startsWith("job");
        return new RecordPaper.Looked(
                file.file(), diary, file.lines(), file.closed(), file.damages(), file.stands(), file.notes());
    }
}
