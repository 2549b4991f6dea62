package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.diary.JobFolder;
import screedbook.report.DataPackage;
import screedbook.report.LoadsCsv;
import screedbook.report.SeasonCsv;
import screedbook.report.SeasonJob;
import screedbook.report.SeasonJson;
import screedbook.report.SeasonPage;
import screedbook.report.SeasonPart;
import screedbook.report.SeasonsPage;
import screedbook.season.LoadsOf;
import screedbook.season.Season;

/** {@code screedbook season}: what many shifts of many jobs come to. */
@Command(
        name = "season",
        description = "add up many shifts of many jobs: by shift, day, week, month, job, mix, pull and lift")
final class SeasonCommand implements Callable<Integer> {
    static final List<String> FORMATS = List.of("text", "csv", "json");

    private static final Set<String> PAGE = Set.of("week", "month", "job");

    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Mixin
    private PathsWord paths;

    @Mixin
    private DatesWord dates;

    @Option(
            names = "--by",
            paramLabel = "PARTS",
            split = ",",
            description =
                    "of csv and json, which parts: shift, day, week, month, job, mix, pull, lift; without it, all")
    private List<String> by = new ArrayList<>();

    @Option(
            names = "--loads",
            description =
                    "only loads, tons and mix temperatures by job, day and mix, as csv: nothing is judged, quickest")
    private boolean loads;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "text (80 columns; the usual), csv (one figure a line) or json (one part a line)")
    private String format;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "write season.csv, or loads.csv, with datapackage.json into DIR in place of printing it")
    private Path out;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    private final SeasonsPage together = new SeasonsPage();
    private Progress progress;
    private TableFile printed;
    private int shifts;

    @Override
    public Integer call() throws Stopped, IOException {
        Set<String> parts = parts();
        Pages.known(format, FORMATS);
        if (!by.isEmpty() && (loads || format.equals("text"))) {
            throw Stopped.usage("--by goes with --format csv or json");
        }
        if (out != null && !loads && !format.equals("csv")) {
            throw Stopped.usage("--out goes with --format csv or --loads");
        }
        LocalDate from = dates.from();
        LocalDate to = dates.to();
        List<Path> jobs = paths.jobs();
        progress = progress(jobs, to);
        try (TableFile sheet = sheet()) {
            printed = sheet;
            if (loads) {
                loads(jobs, from, to);
            } else {
                print(format.equals("csv") ? SeasonCsv.head() : "");
                for (Path job : jobs) {
                    one(job, from, to, parts);
                }
                print(format.equals("text") && jobs.size() > 1 ? together.text() : "");
            }
            progress.end();
            if (sheet != null) {
                sheet.whole();
            }
        }
        if (!loads && shifts == 0) {
            Pages.say(spec, "no shift in these dates");
        }
        return Exit.FINE;
    }

    /** The table that is written in place of being printed; null where it is printed. */
    private TableFile sheet() throws IOException {
        if (out == null) {
            return null;
        }
        String name = loads ? "loads.csv" : "season.csv";
        String head = loads ? LoadsCsv.head() : SeasonCsv.head();
        return new TableFile(out, name, DataPackage.text("season", Map.of(name, head)));
    }

    private Set<String> parts() throws Stopped {
        for (String each : by) {
            if (!Season.PARTS.contains(each)) {
                throw Stopped.usage(
                        "--by " + each + " is not known; right would be any of " + String.join(", ", Season.PARTS));
            }
        }
        return new HashSet<>(by.isEmpty() ? Season.PARTS : by);
    }

    private Progress progress(List<Path> jobs, LocalDate to) {
        int shifts = 0;
        for (Path job : all.watched() ? jobs : List.<Path>of()) {
            shifts += (int) JobFolder.at(job).shifts().stream()
                    .filter(shift -> !shift.date().isAfter(to))
                    .count();
        }
        return all.progress(shifts);
    }

    private void loads(List<Path> jobs, LocalDate from, LocalDate to) {
        print(LoadsCsv.head());
        try (LoadsOf reading = new LoadsOf()) {
            for (Path job : jobs) {
                LoadsOf.Trouble trouble = reading.job(
                        job,
                        from,
                        to,
                        shift -> progress.one(),
                        day -> day.mixes().forEach(mix -> print(LoadsCsv.row(day.job(), day.day(), mix))));
                Pages.warn(spec, trouble.damages());
                trouble.notRead().forEach(each -> Pages.say(spec, "in no total: " + each));
            }
        }
    }

    private void one(Path folder, LocalDate from, LocalDate to, Set<String> parts) {
        boolean page = format.equals("text");
        List<SeasonPart> kept = new ArrayList<>();
        SeasonJob job = Season.read(folder, from, to, shift -> progress.one(), part -> {
            if (page && PAGE.contains(part.by())) {
                kept.add(part);
            } else if (!page && parts.contains(part.by())) {
                print(format.equals("csv") ? SeasonCsv.rows(part) : SeasonJson.line(part));
            }
        });
        shifts += job.shifts().size();
        if (page) {
            together.add(job.with(kept));
            print(SeasonPage.text(job.with(kept)));
        } else {
            print(format.equals("csv") ? SeasonCsv.record(job) : SeasonJson.record(job));
        }
        Pages.warn(spec, job.damages());
    }

    private void print(String page) {
        if (printed == null) {
            progress.aside(() -> Pages.print(spec, page), spec.commandLine().getOut());
        } else {
            printed.print(page);
        }
    }
}
