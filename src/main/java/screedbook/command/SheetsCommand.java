package screedbook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import screedbook.diary.JobFolder;
import screedbook.diary.LimitSheets;
import screedbook.report.SheetPage;
import screedbook.spec.Loaded;
import screedbook.spec.SpecSheet;

/** {@code screedbook sheets}: the limit sheets that come with the program, and any other by its file. */
@Command(
        name = "sheets",
        description = "list the limit sheets, print one with its clauses, show what differs between two, or copy one")
final class SheetsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "NAME",
            arity = "0..2",
            description = "a shipped sheet, or the file of another: JOB/spec/town.csv; of two, what differs")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--copy",
            paramLabel = "JOB",
            description = "copy the sheet into JOB/spec/ for editing; there it governs before the shipped one")
    private Path copy;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        if (copy != null) {
            return copied();
        }
        List<SpecSheet> sheets = read();
        if (sheets.isEmpty()) {
            sheets = SpecSheet.shippedNames().stream()
                    .map(name -> SpecSheet.shipped(name).orElseThrow())
                    .toList();
            Pages.print(spec, SheetPage.list(sheets));
        } else if (sheets.size() == 1) {
            Pages.print(spec, SheetPage.one(sheets.get(0)));
        } else {
            Pages.print(spec, SheetPage.two(sheets.get(0), sheets.get(1)));
        }
        return Exit.FINE;
    }

    /** The sheets that are named; what stands in the way in any of them is said for all, with file and line. */
    private List<SpecSheet> read() throws Stopped, IOException {
        List<SpecSheet> sheets = new ArrayList<>();
        boolean trouble = false;
        for (String name : names) {
            Path file = name.endsWith(".csv") ? Path.of(name) : null;
            Loaded loaded = file == null ? shipped(name) : SpecSheet.read(stem(file), Files.readAllBytes(file));
            String folder = file == null || file.getParent() == null ? "" : file.getParent() + "/";
            loaded.troubles().forEach(each -> Pages.say(spec, folder + each.text()));
            trouble |= loaded.sheet().isEmpty();
            loaded.sheet().ifPresent(sheets::add);
        }
        if (trouble) {
            throw Stopped.disk("a sheet cannot be used while lines stand in its way");
        }
        return sheets;
    }

    private static String stem(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - ".csv".length());
    }

    private static Loaded shipped(String name) throws Stopped {
        return SpecSheet.read(name, bytes(name));
    }

    private static byte[] bytes(String name) throws Stopped {
        if (!SpecSheet.shippedNames().contains(name)) {
            throw Stopped.usage("no sheet " + name + " comes with the program; right would be one of "
                    + String.join(", ", SpecSheet.shippedNames()) + ", or a file that ends in .csv");
        }
        return SpecSheet.shippedBytes(name).orElseThrow();
    }

    private int copied() throws Stopped, IOException {
        if (names.size() != 1) {
            throw Stopped.usage("--copy takes one sheet: screedbook sheets NAME --copy JOB");
        }
        String name = names.get(0);
        byte[] bytes = bytes(name);
        if (!Files.isDirectory(copy) || !JobWord.isJob(copy)) {
            throw Stopped.disk(copy + " is not the folder of a job: it holds no job.json and no diary");
        }
        Path file = LimitSheets.in(JobFolder.at(copy))
                .copy(name, bytes)
                .orElseThrow(() -> Stopped.disk(
                        copy.resolve("spec").resolve(name + ".csv") + " is there already and stays as it is"));
        Pages.print(
                spec,
                "made " + file
                        + "\nEdit it with any editor or spreadsheet program that keeps CSV. It governs once job.json"
                        + " names\nthe sheet " + name + ", from the next shift that is opened.\n");
        return Exit.FINE;
    }
}
