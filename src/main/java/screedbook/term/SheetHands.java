package screedbook.term;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.JobRead;
import screedbook.diary.JobSheet;
import screedbook.diary.KeptPages;
import screedbook.diary.LimitSheets;
import screedbook.diary.Rewritten;
import screedbook.job.Job;
import screedbook.report.PlanPage;
import screedbook.shelf.PlanPapers;
import screedbook.shelf.SheetNow;
import screedbook.spec.SpecSheet;

/** The job's files read and written for the job sheet at the desk. */
final class SheetHands {
    /** The limit sheet that a new job begins with, as in the example that comes with the program. */
    private static final String USUAL = "practice";

    private final JobFolder folder;
    private final Clock clock;

    SheetHands(JobFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    Msg read() {
        try {
            return told(folder.jobSheet());
        } catch (IOException e) {
            return new Msg.Refused("the job's files cannot be read: " + e.getMessage());
        }
    }

    private Msg.JobSheet told(JobSheet sheet) {
        return new Msg.JobSheet(
                sheet.values(),
                sheet.contacts(),
                sheet.stamp(),
                sheet.commented(),
                sheet.there(),
                sheet.revisions(),
                sheet.unread().stream().map(t -> t.text()).toList(),
                sheets(),
                sheet.there() || !sheet.typed().isEmpty() ? sheet.typed() : offered());
    }

    /** The limit sheets that can be read: the job's own copy of a sheet, else the shipped one. */
    private Map<String, SpecSheet> sheets() {
        Map<String, SpecSheet> sheets = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(SpecSheet.shippedNames());
        names.addAll(LimitSheets.in(folder).names());
        for (String name : names) {
            SheetNow.of(folder, name).flatMap(SheetNow::sheet).ifPresent(sheet -> sheets.put(name, sheet));
        }
        return sheets;
    }

    /** What is known of a new job without asking; all of it can be typed over. */
    private Map<String, Object> offered() {
        Map<String, Object> offered = new LinkedHashMap<>();
        Path name = folder.path().toAbsolutePath().normalize().getFileName();
        JobFolder.bookName(name == null ? "" : name.toString()).ifPresent(id -> offered.put("id", id));
        offered.put("zone", clock.getZone().getId());
        offered.put("sheet", USUAL);
        return offered;
    }

    /** Empty when it was done; else what the person has to know. */
    Optional<Msg> keep(Effect effect) {
        try {
            if (effect instanceof Effect.KeepJobSheet keep) {
                folder.keepTyped(keep.stamp(), keep.values());
            } else {
                folder.dropTyped();
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new Msg.Said("what is typed could not be kept: " + e.getMessage()));
        }
    }

    /** Saves the pre-paving sheet of the job as it is on the disk. */
    Msg print(LocalDate day) {
        JobRead read = folder.job();
        if (read.job().isEmpty()) {
            return new Msg.Refused(read.troubles().get(0).text());
        }
        Job job = read.job().get();
        Optional<SpecSheet> sheet = SheetNow.of(folder, job.sheet()).flatMap(SheetNow::sheet);
        if (sheet.isEmpty()) {
            return new Msg.Refused("no limit sheet " + job.sheet() + " can be read");
        }
        try {
            Path file = KeptPages.in(folder).plan(day, PlanPage.text(PlanPapers.of(folder, job, sheet.get())));
            return new Msg.Said("page saved as " + folder.path().relativize(file));
        } catch (IOException e) {
            return new Msg.Refused("the page could not be saved: " + e.getMessage());
        }
    }

    Msg write(Effect.WriteJobSheet write, OffsetDateTime now) {
        Msg.JobSheet sheet = write.sheet();
        JobSheet revised = new JobSheet(
                sheet.values(),
                sheet.contacts(),
                sheet.stamp(),
                sheet.commented(),
                sheet.there(),
                sheet.revisions(),
                Map.of(),
                List.of());
        try {
            Rewritten rewritten = folder.rewrite(revised, write.who(), now, write.why());
            if (rewritten instanceof Rewritten.Not not) {
                return new Msg.JobNotWritten(not.said(), not.elsewhere());
            }
            Rewritten.Done done = (Rewritten.Done) rewritten;
            String also = done.said().isEmpty() ? "" : "; " + done.said();
            return new Msg.JobWritten(
                    told(folder.jobSheet()), "revision " + done.agreed().revision() + " on disk" + also);
        } catch (IOException e) {
            return new Msg.JobNotWritten(e.getMessage(), false);
        }
    }
}
