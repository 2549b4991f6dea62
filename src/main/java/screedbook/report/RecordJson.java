package screedbook.report;

import java.io.IOException;
import java.util.List;
import screedbook.entry.Damage;

/** What was found when records were looked at, as JSON; its form is in {@code schema/verify.json}. */
public final class RecordJson {
    private RecordJson() {}

    /** One object for all jobs together. */
    public static String text(List<RecordPaper> papers) {
        return Json.object(json -> {
            json.text("form", "screedbook verify 1");
            json.yes("as_written", papers.stream().allMatch(RecordPaper::sound));
            json.list("jobs", papers, paper -> job(json, paper));
        });
    }

    private static void job(Json json, RecordPaper paper) throws IOException {
        json.text("folder", paper.folder());
        json.yes("as_written", paper.sound());
        json.list("files", paper.files(), file -> file(json, file));
        json.list("seals", paper.seals(), each -> {
            json.text("shift", each.shift().toString());
            json.text("book", each.seal().book());
            json.text("sha256", each.seal().sha256());
            json.text("short", each.seal().shortForm());
            json.number("lines", each.seal().lines());
            json.list("signatures", each.signed(), signed -> {
                json.text("who", signed.who());
                json.text("time", signed.time());
                json.text("key", signed.key());
                json.yes("named", signed.named());
            });
        });
        json.list("damages", paper.damages(), damage -> damage(json, damage));
        json.list("beside", paper.beside(), file -> {
            json.text("file", file.file());
            json.text("said", file.said().isEmpty() ? null : file.said());
        });
    }

    private static void file(Json json, RecordPaper.Looked file) throws IOException {
        json.text("file", file.name());
        json.number("lines", file.lines());
        if (file.diary()) {
            json.yes("closed", file.closed());
        }
        json.text("stands", file.damages().isEmpty() || file.stands().isEmpty() ? null : file.stands());
        json.texts("notes", file.notes());
    }

    private static void damage(Json json, Damage damage) throws IOException {
        json.text("file", damage.file());
        if (damage.row() > 0) {
            json.number("line", damage.row());
        }
        json.text("said", damage.said());
    }
}
