package screedbook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.diary.Carried;
import screedbook.diary.Carry;
import screedbook.diary.JobFolder;
import screedbook.diary.Synced;
import screedbook.entry.Shown;
import screedbook.job.Job;

/** {@code screedbook carry}: a job to a stick and from a stick. */
@Command(
        name = "carry",
        description = "carry a job to another folder, such as a stick, or back; nothing there that differs is replaced")
final class CarryCommand implements Callable<Integer> {
    private static final int WIDTH = 66;

    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FROM", description = "the folder of the job")
    private Path from;

    @Parameters(
            index = "1",
            paramLabel = "TO",
            description = "its folder elsewhere; made when it is not there: carry my-job /media/stick/my-job")
    private Path to;

    @Option(names = "--look", description = "say what would be carried and what differs, and change nothing")
    private boolean look;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        fit();
        Synced.warning(to).ifPresent(warning -> Pages.say(spec, warning));
        List<Carried> files = Carry.run(JobFolder.at(from), to, look, OffsetDateTime.now(all.clock()));
        StringBuilder page = new StringBuilder();
        for (Carried.Outcome outcome : Carried.Outcome.values()) {
            List<Carried> of =
                    files.stream().filter(file -> file.outcome() == outcome).toList();
            if (outcome == Carried.Outcome.SAME) {
                page.append(of.isEmpty() ? "" : "  same     " + files(of.size()) + "\n");
            } else {
                of.forEach(file -> page.append(text(file)));
            }
        }
        Pages.print(
                spec,
                (look ? "would be carried from " : "carried from ") + Shown.text(from + " to " + to) + "\n" + page);
        if (files.stream().anyMatch(file -> file.outcome() == Carried.Outcome.TROUBLE)) {
            return Exit.DISK;
        }
        return files.stream().anyMatch(Carried::open) ? Exit.WRONG : Exit.FINE;
    }

    /** Both have to be folders of the same job, as far as they say; the second may be empty or not there. */
    private void fit() throws Stopped, IOException {
        if (!Files.isDirectory(from) || !JobWord.isJob(from)) {
            throw Stopped.disk(from + " is not the folder of a job: it holds no job.json and no diary");
        }
        if (!Files.exists(to)) {
            return;
        }
        if (!Files.isDirectory(to)) {
            throw Stopped.disk(to + " is there already and is not a folder");
        }
        if (Files.isSameFile(from, to)) {
            throw Stopped.usage("FROM and TO are one folder");
        }
        try (var inside = Files.list(to)) {
            if (!JobWord.isJob(to) && inside.findAny().isPresent()) {
                throw Stopped.usage(to + " holds something else; right would be " + to.resolve(name()));
            }
        }
        Optional<String> own = id(from);
        Optional<String> there = id(to);
        if (own.isPresent() && there.isPresent() && !own.equals(there)) {
            throw Stopped.usage(
                    to + " is the folder of another job, " + there.get() + ", and this one is " + own.get());
        }
    }

    private Path name() {
        return from.toAbsolutePath().normalize().getFileName();
    }

    private static Optional<String> id(Path folder) {
        return JobFolder.at(folder).job().job().map(Job::id);
    }

    private String text(Carried file) {
        String word = file.outcome() == Carried.Outcome.TROUBLE ? "refused" : word(file.outcome());
        String[] said = file.said().split("\n");
        StringBuilder text = new StringBuilder("  " + word + " ".repeat(9 - word.length()) + Shown.text(file.name()));
        text.append(said[0].isEmpty() ? "" : "  " + Shown.text(said[0])).append('\n');
        for (int i = 1; i < said.length; i++) {
            String line = Shown.text(said[i]);
            text.append("           ").append(line.length() > WIDTH ? line.substring(0, WIDTH) + " ..." : line);
            text.append('\n');
        }
        return text.toString();
    }

    private static String word(Carried.Outcome outcome) {
        return outcome == Carried.Outcome.LEFT ? "not" : outcome.name().toLowerCase(Locale.ROOT);
    }

    private static String files(int count) {
        return count + (count == 1 ? " file" : " files");
    }
}
