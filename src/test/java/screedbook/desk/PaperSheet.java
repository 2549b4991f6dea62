package screedbook.desk;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import screedbook.entry.Fields;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.job.JobReading;
import screedbook.job.Revision;

/** The job's files on a paper disk: what is written stays, every write is a revision. */
final class PaperSheet {
    private final List<Revision> revisions = new ArrayList<>();
    private Map<String, Object> values = Map.of();
    private List<Map<String, Object>> contacts = List.of();
    private boolean there;
    private int writes;
    private Map<String, Object> typed = Map.of();
    boolean elsewhere;

    private PaperSheet() {}

    static PaperSheet of(Job job) {
        PaperSheet paper = new PaperSheet();
        paper.values = Fields.plain(job);
        paper.there = true;
        OffsetDateTime may = OffsetDateTime.of(2026, 5, 11, 15, 20, 0, 0, ZoneOffset.ofHours(-6));
        paper.revisions.add(new Revision(new Agreed(job, 1, "ab12"), "RK", may, "as agreed on 7 May"));
        return paper;
    }

    /** No job is there yet. */
    void empty() {
        values = Map.of();
        revisions.clear();
        there = false;
    }

    /** What was typed and not written before the program ended; nothing takes it away. */
    void typed(Map<String, Object> values) {
        typed = values;
    }

    /** What {@code job.json} holds now. */
    Map<String, Object> values() {
        return values;
    }

    List<Map<String, Object>> contacts() {
        return contacts;
    }

    List<Revision> revisions() {
        return revisions;
    }

    Msg.JobSheet read() {
        return new Msg.JobSheet(
                values,
                contacts,
                "stamp " + writes,
                false,
                there,
                List.copyOf(revisions),
                List.of(),
                Map.of("practice", DeskRig.practice()),
                !typed.isEmpty() || there
                        ? typed
                        : DeskRig.map("id", "new-road", "zone", "America/Denver", "sheet", "practice"));
    }

    Msg write(Effect.WriteJobSheet write, OffsetDateTime now) {
        if (elsewhere) {
            return new Msg.JobNotWritten("the files were changed by somebody else", true);
        }
        values = write.sheet().values();
        contacts = write.sheet().contacts();
        there = true;
        writes++;
        Job job = JobReading.of(values).job().orElseThrow();
        int number = revisions.size() + 1;
        revisions.add(new Revision(new Agreed(job, number, "ab" + number), write.who(), now, write.why()));
        return new Msg.JobWritten(read(), "revision " + number + " on disk");
    }
}
