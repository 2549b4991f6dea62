package screedbook.report;

/** The findings of a shift as JSON; its form is in {@code schema/findings.json}. */
public final class FindingsJson {
    private FindingsJson() {}

    /** One object with the shift and every finding. */
    public static String text(DayPaper paper) {
        return Json.object(json -> {
            json.text("form", "screedbook findings 1");
            json.text("job", paper.jobId());
            json.text("shift", paper.day().shift().toString());
            if (!paper.whole()) {
                json.yes("without_remarks", true);
            }
            json.findings(paper.findings());
        });
    }
}
