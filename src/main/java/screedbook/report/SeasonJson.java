package screedbook.report;

import java.io.IOException;
import screedbook.entry.Damage;
import screedbook.tally.Section;

/** A season as JSON, one object a line (JSON Lines); its form is in {@code schema/season.json}. */
public final class SeasonJson {
    private static final String FORM = "screedbook season 1";

    private SeasonJson() {}

    /** One part in one line. */
    public static String line(SeasonPart part) {
        return Json.line(json -> {
            json.text("form", FORM);
            json.text("part", part.by());
            json.text("of", part.of());
            json.text("job", part.job());
            json.text("from_date", part.from().toString());
            json.text("to_date", part.to().toString());
            json.number("shifts", part.shifts());
            json.list("sections", part.sections(), section -> section(json, section));
        });
    }

    /** What is not as it was written and what is in no total; nothing when there is neither. */
    public static String record(SeasonJob job) {
        if (job.damages().isEmpty() && job.notRead().isEmpty()) {
            return "";
        }
        return Json.line(json -> {
            json.text("form", FORM);
            json.text("part", "record");
            json.text("of", job.folder());
            json.text("job", job.id());
            json.list("damages", job.damages(), damage -> damage(json, damage));
            json.texts("not_read", job.notRead());
        });
    }

    private static void section(Json json, Section section) throws IOException {
        json.text("id", section.id());
        json.text("heading", section.heading());
        json.list("figures", section.figures(), figure -> {
            json.text("id", figure.id());
            json.text("label", figure.label());
            json.text("shown", figure.text());
            json.number("value", figure.value());
            if (!figure.unit().isEmpty()) {
                json.text("unit", figure.unit());
            }
            json.text("formula", figure.working().formula());
        });
    }

    private static void damage(Json json, Damage damage) throws IOException {
        json.text("file", damage.file());
        json.number("line", damage.row());
        json.text("said", damage.said());
    }
}
