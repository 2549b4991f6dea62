package screedbook.term;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.JobSheet;
import screedbook.diary.Rewritten;
import screedbook.spec.SpecSheet;

/** The job's files read and written for the job sheet at the desk. */
final class SheetHands {
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
                offered());
    }

    /** The limit sheets that can be read: the job's own copy of a sheet, else the shipped one. */
    private Map<String, SpecSheet> sheets() {
        Map<String, SpecSheet> sheets = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(SpecSheet.shippedNames());
        names.addAll(folder.sheetNames());
        for (String name : names) {
            folder.sheet(name)
                    .or(() -> SpecSheet.shippedBytes(name))
                    .flatMap(bytes -> SpecSheet.read(name, bytes).sheet())
                    .ifPresent(sheet -> sheets.put(name, sheet));
        }
        return sheets;
    }

    /** What is known of a new job without asking; all of it can be typed over. */
    private Map<String, Object> offered() {
        Map<String, Object> offered = new LinkedHashMap<>();
        Path name = folder.path().toAbsolutePath().normalize().getFileName();
        JobFolder.bookName(name == null ? "" : name.toString()).ifPresent(id -> offered.put("id", id));
        offered.put("zone", clock.getZone().getId());
        offered.put("sheet", SpecSheet.usual().name());
        return offered;
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
