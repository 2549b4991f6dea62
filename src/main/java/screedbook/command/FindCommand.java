package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.check.Rule;
import screedbook.check.Rules;
import screedbook.check.Sort;
import screedbook.diary.JobFolder;
import screedbook.entry.Shown;
import screedbook.report.HitsCsv;
import screedbook.season.Hit;
import screedbook.season.Search;
import screedbook.season.Sought;
import screedbook.shelf.Shelf;

/** {@code screedbook find}: entries in any shift of any job. */
@Command(
        name = "find",
        description = "find entries in any shift of any job: by ticket, truck, station, person, finding or words")
final class FindCommand implements Callable<Integer> {
    static final List<String> FORMATS = List.of("text", "csv");

    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Mixin
    private PathsWord paths;

    @Mixin
    private DatesWord dates;

    @Option(names = "--ticket", paramLabel = "NUMBER", description = "a ticket's number; ? stands for any digit")
    private String ticket;

    @Option(names = "--truck", paramLabel = "NUMBER", description = "a truck's number")
    private String truck;

    @Option(
            names = "--station",
            paramLabel = "STATION",
            description = "12+50, or a stretch: 12+00..14+00; what covers some of it is found")
    private String station;

    @Option(
            names = "--person",
            paramLabel = "WHO",
            description = "initials or a name: who wrote, decided, was told, weighed, saw")
    private String person;

    @Option(
            names = "--finding",
            paramLabel = "RULE",
            description = "the word of a rule or of a sort: heat-at-paver, outside, missing")
    private String finding;

    @Option(names = "--text", paramLabel = "WORDS", description = "words that all stand in the line")
    private String text;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "text (the usual) or csv")
    private String format;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        Pages.known(format, FORMATS);
        Sought sought = sought();
        List<Shelf> shelves = new ArrayList<>();
        for (Path job : paths.jobs()) {
            shelves.add(Shelf.of(JobFolder.at(job).listed()));
        }
        Progress progress = progress(shelves, sought);
        Pages.print(spec, format.equals("csv") ? HitsCsv.head() : "");
        int[] count = {0};
        List<String> passed = new ArrayList<>();
        for (Shelf shelf : shelves) {
            Search.job(
                    shelf,
                    sought,
                    shift -> progress.one(),
                    hit -> {
                        count[0]++;
                        progress.aside(
                                () -> print(shelf.folder().path(), hit),
                                spec.commandLine().getOut());
                    },
                    passed::add);
        }
        progress.end();
        passed.forEach(line -> Pages.say(spec, "not looked through: " + line));
        if (count[0] == 0) {
            Pages.say(spec, "nothing found");
        }
        return Exit.FINE;
    }

    private Progress progress(List<Shelf> shelves, Sought sought) {
        int shifts = shelves.stream()
                .mapToInt(shelf -> (int) shelf.shifts().stream()
                        .filter(id ->
                                !id.date().isBefore(sought.from()) && !id.date().isAfter(sought.until()))
                        .count())
                .sum();
        return all.progress(shifts);
    }

    private Sought sought() throws Stopped {
        Sought sought = Sought.ANYTHING.withDates(dates.from(), dates.to());
        sought = ticket == null ? sought : sought.withTicket(ticket);
        sought = truck == null ? sought : sought.withTruck(truck);
        sought = person == null ? sought : sought.withPerson(person);
        sought = finding == null ? sought : sought.withFinding(finding());
        sought = text == null ? sought : sought.withText(text);
        try {
            sought = station == null ? sought : sought.withStations(station);
        } catch (IllegalArgumentException e) {
            throw Stopped.usage("--station " + station + " is no station; right would be 12+50 or 12+00..14+00");
        }
        if (sought.equals(Sought.ANYTHING)) {
            throw Stopped.usage("find what? right would be any of --ticket, --truck, --station, --person, --finding,"
                    + " --text, --from, --to");
        }
        return sought;
    }

    /** The word of a finding; one that no finding can have would only ever find nothing. */
    private String finding() throws Stopped {
        String asked = finding.toLowerCase(Locale.ROOT).replace(' ', '-');
        List<String> sorts = Stream.of(Sort.values())
                .map(sort -> sort.text().replace(' ', '-'))
                .toList();
        if (Stream.concat(sorts.stream(), Rules.all().stream().map(Rule::id)).noneMatch(w -> w.startsWith(asked))) {
            throw Stopped.usage("--finding " + finding + " is the word of no finding; right would be one of "
                    + String.join(", ", sorts) + ", or a rule's, such as heat-at-paver");
        }
        return finding;
    }

    private void print(Path job, Hit hit) {
        Pages.print(
                spec,
                format.equals("csv")
                        ? HitsCsv.row(hit.job(), hit.shift(), hit.ref(), hit.row(), hit.struck(), hit.told())
                        : Shown.text(job + "  " + hit.shift() + "  " + hit.ref() + (hit.struck() ? "  struck" : "")
                                        + "  " + hit.told())
                                + "\n");
    }
}
