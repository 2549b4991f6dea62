package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.diary.KeptPages;
import screedbook.entry.Damage;
import screedbook.entry.Remarks;
import screedbook.entry.ShiftId;
import screedbook.job.Job;
import screedbook.report.DataPackage;
import screedbook.report.DayCsv;
import screedbook.report.KindCsv;
import screedbook.shelf.Papers;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.unit.UnitSystem;

/** {@code screedbook csv}: every entry of a job as tables, one for each kind, and one of the totals. */
@Command(name = "csv", description = "write all entries of a job as tables: one file for each kind, and totals.csv")
final class CsvCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Mixin
    private CopyWord copy;

    @Option(
            names = "--to",
            paramLabel = "DIR",
            required = true,
            description = "the folder for the tables; those of an earlier run are replaced")
    private Path to;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        Shelf shelf = job.shelf();
        List<ShiftFile> shifts = shelf.shifts().stream()
                .map(id -> copy.asked() ? shelf.withoutRemarks(id, null) : shelf.shift(id))
                .toList();
        if (shifts.isEmpty()) {
            throw Stopped.disk(job.folder() + " holds no shift yet");
        }
        Map<String, String> tables = tables(shifts);
        KeptPages.tables(to, tables);
        String name = shifts.get(0).ground().job().map(Job::id).orElse("job");
        KeptPages.tables(to, Map.of(DataPackage.FILE, DataPackage.text(name, tables)));
        Pages.print(
                spec,
                "wrote " + tables.size() + " tables of " + shifts.size()
                        + (shifts.size() == 1 ? " shift" : " shifts") + " to "
                        + to
                        + "\n");
        for (ShiftFile shift : shifts) {
            leftOut(shift);
        }
        return Exit.FINE;
    }

    private Map<String, String> tables(List<ShiftFile> shifts) {
        Map<String, String> tables = new LinkedHashMap<>(
                KindCsv.files(shifts.stream().map(ShiftFile::day).toList(), system(shifts)));
        if (copy.asked()) {
            Remarks.kinds().forEach(kind -> tables.remove(kind.word() + ".csv"));
        }
        tables.put("totals.csv", DayCsv.text(shifts.stream().map(Papers::of).toList()));
        return tables;
    }

    /** That of the newest job that is known. */
    private static UnitSystem system(List<ShiftFile> shifts) {
        return shifts.stream()
                .flatMap(shift -> shift.ground().job().stream())
                .map(Job::system)
                .reduce((older, newer) -> newer)
                .orElse(UnitSystem.US);
    }

    private void leftOut(ShiftFile shift) {
        int count = shift.day().uncounted().size();
        ShiftId id = shift.read().shift();
        if (count > 0) {
            Pages.say(
                    spec,
                    id + ": " + count + (count == 1 ? " line is" : " lines are") + " in no table; the diary has "
                            + (count == 1 ? "it" : "them"));
        }
        List<Damage> damages = shift.read().damages();
        Pages.warn(spec, damages);
    }
}
