package screedbook.term;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.ListFile;
import screedbook.diary.PlantLists;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantList;
import screedbook.entry.ShiftId;
import screedbook.job.Job;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** A plant's list read and kept for the desk. */
final class PlantHands {
    private static final int SHOWN = 3;

    private final JobFolder folder;
    private final Optional<Job> inForce;

    /** @param inForce the job by which the shift is kept */
    PlantHands(JobFolder folder, Optional<Job> inForce) {
        this.folder = folder;
        this.inForce = inForce;
    }

    /** A path as it is typed, pasted or dropped on the window: in quotes perhaps, {@code ~} for one's own folder. */
    ListFile read(String typed) throws IOException {
        String bare = typed.strip();
        for (String quote : new String[] {"'", "\""}) {
            boolean quoted = bare.length() > 1 && bare.startsWith(quote) && bare.endsWith(quote);
            bare = quoted ? bare.substring(1, bare.length() - 1) : bare;
        }
        boolean home = bare.startsWith("~/");
        return ListFile.read(
                home ? Path.of(System.getProperty("user.home")).resolve(bare.substring(2)) : Path.of(bare));
    }

    /** What the job says now of how a plant's list is read. */
    ListColumns known(String plant) {
        return folder.job()
                .job()
                .or(() -> inForce)
                .flatMap(job -> job.plant(plant))
                .map(Job.Plant::list)
                .orElse(ListColumns.NONE);
    }

    boolean reads(ListFile list, ListColumns columns) {
        return columns.enough() && list.missing(columns).isEmpty();
    }

    Msg asked(Effect.BringList bring, ListFile list) {
        return new Msg.ListAsked(
                bring.plant(),
                bring.path(),
                list.heading(ListColumns.NONE),
                list.first(ListColumns.NONE, SHOWN),
                list.guess(),
                known(bring.plant()));
    }

    PlantList keep(ShiftId shift, String plant, ListFile list, ListColumns columns) throws IOException {
        Unit counts = inForce.map(job -> Measure.LOAD.unit(job.system())).orElse(Unit.SHORT_TON);
        return PlantLists.in(folder).keep(shift, plant.isEmpty() ? null : plant, list, columns, counts);
    }

    /** The columns go into the job; what became of that is said behind the echo. */
    Msg settled(Msg.Wrote wrote, String plant, ListColumns columns, String who, OffsetDateTime now) {
        String said;
        try {
            said = PlantLists.settle(folder, plant, columns, who, now);
        } catch (IOException e) {
            said = "how it is read could not be kept in the job: " + e.getMessage();
        }
        return said.isEmpty() ? wrote : new Msg.Wrote(wrote.lines(), wrote.page(), wrote.said() + said);
    }
}
