package screedbook.report;

import java.util.List;
import screedbook.check.InCase;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** The limits in force as JSON; its form is in {@code schema/limits.json}. */
public final class LimitsJson {
    private LimitsJson() {}

    /** One object with the sheet and every case. */
    public static String text(Job job, SpecSheet sheet, List<InCase> cases) {
        return Json.object(json -> {
            json.text("form", "screedbook limits 1");
            json.text("job", job.id());
            json.text("sheet", sheet.name());
            json.text("sheet_sha256", sheet.sha256());
            json.texts("sheet_says", sheet.foot());
            json.list("cases", cases, each -> {
                json.text("mix", each.mix().name());
                json.number("lift", each.lift().number());
                json.text("layer", each.lift().layer().word());
                json.amount("thickness", each.lift().thickness());
                json.yes("planned", each.planned());
                json.text("light", each.light());
                json.time("at", each.at());
                json.list("quantities", each.limits(), told -> {
                    json.text("quantity", told.quantity().word());
                    json.text("on", told.on().isEmpty() ? null : told.on());
                    json.text("text", told.text());
                    json.list("limits", told.ends(), end -> {
                        json.amount("low", end.low());
                        json.amount("high", end.high());
                        json.yes("sure", end.sure());
                        json.text("clause", end.clause());
                        json.text("working", end.working());
                    });
                    json.texts("silent", told.silent());
                });
                json.list("asked", each.asked(), asked -> {
                    json.text("demand", asked.demand().word());
                    json.number("count", asked.count());
                    json.yes("sure", asked.sure());
                    json.text("clause", asked.citation());
                    json.text("working", asked.says());
                });
            });
        });
    }
}
