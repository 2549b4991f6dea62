package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.ListFile;
import screedbook.diary.Opened;
import screedbook.diary.PlantLists;
import screedbook.diary.Preferences;
import screedbook.diary.Saved;
import screedbook.diary.ShiftRead;
import screedbook.entry.Aside;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantList;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.job.Job;
import screedbook.shelf.Shelf;
import screedbook.tally.Figure;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** {@code screedbook plant-list}: a plant's own list of loads laid beside a shift. */
@Command(
        name = "plant-list",
        description =
                "lay a plant's own list of loads (CSV) beside a shift; it is kept as it came and changes no entry")
final class PlantListCommand implements Callable<Integer> {
    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "the folder of the job")
    private Path folder;

    @Parameters(
            index = "1",
            paramLabel = "FILE",
            description = "the list: comma-separated values, a line for each load")
    private Path file;

    @Mixin
    private ShiftWord shift;

    @Option(names = "--plant", paramLabel = "PLANT", description = "whose list it is; without it, the job's only plant")
    private String plant;

    @Option(
            names = "--who",
            paramLabel = "INITIALS",
            description = "who brings it in; without it, the preferred writer")
    private String who;

    @Option(names = "--book", paramLabel = "NAME", description = "in which book it is noted; without it, the only one")
    private String book;

    @Mixin
    private ColumnWords columns;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        Shelf shelf = JobWord.shelf(folder);
        Job job = PlannedJob.read(spec, shelf);
        ShiftId id = shift.of(shelf);
        String whose = plant(job);
        String by = who(job);
        String in = book(shelf.folder().shift(id));
        ListFile list = list();
        ListColumns read = columns(job, whose, list);
        OffsetDateTime now =
                OffsetDateTime.now(all.clock()).atZoneSameInstant(job.zone()).toOffsetDateTime();
        try (Book open = open(shelf.folder(), id, in, job, by, now)) {
            Unit counts = Measure.LOAD.unit(job.system());
            PlantList kept = PlantLists.in(shelf.folder()).keep(id, whose, list, read, counts);
            bring(open, new Unwritten(now, by, Source.LIVE, kept, Aside.NONE), kept, now);
        }
        String settled = PlantLists.settle(shelf.folder(), whose, read, by, now);
        list.troubles(read).forEach(t -> t.text().lines().forEach(line -> Pages.say(spec, line)));
        compared(Shelf.at(folder), id, whose);
        if (!settled.isEmpty()) {
            Pages.say(spec, settled);
        }
        return Exit.FINE;
    }

    private String plant(Job job) throws Stopped {
        List<String> names = job.plants().stream().map(Job.Plant::name).toList();
        String one = plant == null && names.size() == 1 ? names.get(0) : plant;
        if (one == null || !names.contains(one)) {
            throw Stopped.usage((one == null ? "--plant is not said" : "--plant " + one + " is not in the job")
                    + "; right would be one of " + String.join(", ", names));
        }
        return one;
    }

    private String who(Job job) throws Stopped {
        Optional<String> preferred = Preferences.read(System.getenv()).value("who");
        List<String> people = job.people().stream().map(p -> p.initials()).toList();
        String one = who != null ? who : preferred.orElse(people.size() == 1 ? people.get(0) : null);
        if (one == null || one.isBlank()) {
            throw Stopped.usage("--who is not said; right would be the initials of who brings it in");
        }
        return one;
    }

    private String book(ShiftRead read) throws Stopped {
        List<String> books = read.books().stream().map(b -> b.book()).toList();
        String one = book == null && books.size() == 1 ? books.get(0) : book;
        if (one == null || !books.contains(one)) {
            throw Stopped.usage((one == null ? "--book is not said" : "the shift has no book " + one)
                    + "; right would be one of " + String.join(", ", books));
        }
        return one;
    }

    private ListFile list() throws Stopped {
        try {
            return ListFile.read(file);
        } catch (IOException e) {
            throw Stopped.disk(Reason.of(e));
        }
    }

    /** What is typed before what the job says; what it may be is offered and not taken. */
    private ListColumns columns(Job job, String plant, ListFile list) throws Stopped {
        ListColumns said = columns.over(job.plant(plant).map(Job.Plant::list).orElse(ListColumns.NONE));
        List<String> missing = list.missing(said);
        if (said.enough() && missing.isEmpty()) {
            return said;
        }
        Pages.say(
                spec,
                missing.isEmpty()
                        ? "it is not said yet how the list of " + plant + " is read"
                        : "the list has no column headed " + String.join(", ", missing));
        Pages.say(spec, "its columns: " + String.join(", ", list.heading(said)));
        String offered = ColumnWords.options(list.guess());
        if (!offered.isEmpty()) {
            Pages.say(spec, "they may be: " + offered);
        }
        throw Stopped.usage("type which column is which; it is asked once, and the job keeps it");
    }

    private Book open(JobFolder job, ShiftId id, String in, Job agreed, String by, OffsetDateTime now) throws Stopped {
        Opened opened = job.open(id, in, agreed.id(), by, now);
        if (opened instanceof Opened.Held held) {
            throw Stopped.disk(held.by().text() + "; the desk can bring a list in itself");
        }
        if (opened instanceof Opened.No no) {
            throw Stopped.disk(no.refused().said());
        }
        Opened.Ready ready = (Opened.Ready) opened;
        ready.said().forEach(said -> Pages.say(spec, said));
        return ready.book();
    }

    private void bring(Book open, Unwritten line, PlantList list, OffsetDateTime now) throws Stopped {
        Saved saved = open.append(List.of(line), now).join();
        if (saved.refused().isPresent()) {
            throw Stopped.disk("NOT on disk: " + saved.refused().get().said());
        }
        Pages.print(
                spec,
                "line " + saved.receipts().get(0).line().n() + " on disk in book " + open.name()
                        + "; the list is kept as plant/" + list.listFile() + ", " + list.loads() + " loads"
                        + (list.tons() == null ? "" : ", " + list.tons().text()) + "\n");
    }

    private void compared(Shelf shelf, ShiftId id, String plant) {
        List<Figure> figures = shelf.shift(id, OffsetDateTime.now(all.clock())).totals().sections().stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().equals("plant-list." + plant))
                .toList();
        Pages.print(
                spec,
                figures.stream()
                        .map(f -> Shown.text(f.label() + ": " + f.text()) + "\n"
                                + f.working().put().stream()
                                        .skip(1)
                                        .map(put -> "  " + Shown.text(put) + "\n")
                                        .collect(Collectors.joining()))
                        .collect(Collectors.joining()));
    }
}
