package screedbook.term;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.desk.Msg;
import screedbook.diary.Glance;
import screedbook.diary.JobRead;
import screedbook.diary.LimitSheets;
import screedbook.diary.Synced;
import screedbook.entry.Crew;
import screedbook.entry.Moment;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.shelf.SheetNow;
import screedbook.shelf.Shelf;
import screedbook.spec.SpecSheet;

/** What the desk asks of a folder as a whole, read for it: the job and its shifts, the crew before. */
final class FolderHands {
    private final Shelf shelf;

    FolderHands(Shelf shelf) {
        this.shelf = shelf;
    }

    /** What can be told before the whole folder is read. */
    Optional<Msg> look() {
        return shelf.folder().firstLook().map(look -> new Msg.Looked(look.job(), rows(look.shifts())));
    }

    /** The job as it is agreed, what stands in its way, and its shifts. */
    Msg list() {
        JobRead read = shelf.folder().job();
        Optional<Job> job = read.job();
        List<String> troubles =
                new ArrayList<>(read.troubles().stream().map(t -> t.text()).toList());
        job.ifPresent(agreed -> troubles.addAll(sheetTroubles(agreed.sheet())));
        Synced.warning(shelf.folder().path()).ifPresent(troubles::add);
        if (job.isEmpty()) {
            List<Agreed> revisions = shelf.folder().revisions();
            job = revisions.isEmpty()
                    ? Optional.empty()
                    : Optional.of(revisions.get(revisions.size() - 1).job());
        }
        return new Msg.Folder(job, List.copyOf(troubles), rows(shelf.folder().glances()));
    }

    /** The shifts, newest first. */
    private static List<Msg.Row> rows(Map<ShiftId, Glance> glances) {
        List<Msg.Row> rows = new ArrayList<>();
        glances.forEach((id, glance) -> rows.add(0, row(id, glance)));
        return List.copyOf(rows);
    }

    /** What stands in the way in the limit sheet that the job names; with any, an open shift keeps the one it has. */
    List<String> sheetTroubles(String name) {
        boolean shipped = LimitSheets.in(shelf.folder()).sheet(name).isEmpty()
                && SpecSheet.shippedNames().contains(name);
        return shipped ? List.of() : readSheet(name);
    }

    /** Only a sheet of the job's own can have troubles; the shipped ones are not read before a shift needs them. */
    private List<String> readSheet(String name) {
        return SheetNow.of(shelf.folder(), name)
                .map(SheetNow::troubles)
                .orElseGet(() -> List.of("job.json names the limit sheet " + name + ", which is neither in spec/ nor"
                        + " among the shipped ones"));
    }

    private static Msg.Row row(ShiftId id, Glance glance) {
        String by = glance.opening().map(Glance.Mark::who).orElse("");
        return new Msg.Row(id, state(glance), glance.lines(), by);
    }

    private static String state(Glance glance) {
        if (!glance.openInPart().isEmpty()) {
            return "open: book " + String.join(", ", glance.openInPart());
        }
        String since = glance.opening().map(o -> Moment.clock(o.keyed())).orElse("?");
        return glance.closed() ? "closed" : "open since " + since;
    }

    /** The people and machines of the newest shift before this one that has any. */
    Msg crewBefore(ShiftId now) {
        List<ShiftId> shifts = new ArrayList<>(shelf.shifts());
        Collections.reverse(shifts);
        for (ShiftId id : shifts) {
            List<Crew> crews = id.compareTo(now) < 0
                    ? shelf.folder().shift(id).day().standing(Crew.class).stream()
                            .map(Standing::entry)
                            .toList()
                    : List.of();
            if (!crews.isEmpty()) {
                return new Msg.CrewBefore(id, crews);
            }
        }
        return new Msg.CrewBefore(null, List.of());
    }
}
