package screedbook.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.check.Cautions;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.picture.CalendarPicture;
import screedbook.picture.SeasonStrips;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** One job's season as plain text, 80 columns wide. */
public final class SeasonPage {
    private final SeasonJob job;
    private final Leaf leaf = new Leaf(Leaf.PAPER);

    private SeasonPage(SeasonJob job) {
        this.job = job;
    }

    /** The page; every line ends with a line feed. */
    public static String text(SeasonJob job) {
        SeasonPage page = new SeasonPage(job);
        page.write();
        return String.join("\n", page.leaf.lines()) + "\n";
    }

    private void write() {
        List<SeasonPart> whole = of("job");
        leaf.ends(
                job.name(),
                whole.isEmpty()
                        ? "no shift"
                        : whole.get(0).from() + " to " + whole.get(0).to());
        leaf.say(0, job.folder());
        leaf.rule('=');
        trouble();
        calendar();
        strips();
        table("by month", "month");
        table("by week", "week");
        shifts();
        whole.forEach(this::sections);
        leaf.blank();
        leaf.say(0, Cautions.GOVERNS);
        leaf.blank();
    }

    private void trouble() {
        if (!job.damages().isEmpty()) {
            leaf.heading("FILES NOT AS THEY WERE WRITTEN");
            job.damages().forEach(d -> leaf.say(1, d.file() + (d.row() > 0 ? ":" + d.row() : "") + ": " + d.said()));
        }
        if (!job.notRead().isEmpty()) {
            leaf.heading("In no total, " + Leaf.many(job.notRead().size(), "line"));
            job.notRead().forEach(each -> leaf.say(1, each));
        }
    }

    private void calendar() {
        if (job.shifts().isEmpty()) {
            return;
        }
        leaf.heading("Calendar: " + CalendarPicture.KEY);
        CalendarPicture.lines(job.shifts()).forEach(line -> leaf.drawn(" " + line));
        List<String> gaps = CalendarPicture.gaps(job.shifts());
        leaf.say(1, gaps.isEmpty() ? "no day without a record" : "days without a record: " + String.join(", ", gaps));
    }

    private void strips() {
        if (!job.shifts().isEmpty()) {
            leaf.heading("From shift to shift, 0 the least and 9 the greatest");
            SeasonStrips.lines(job.shifts(), Leaf.PAPER - 1).forEach(line -> leaf.drawn(" " + line));
        }
    }

    private List<SeasonPart> of(String by) {
        return job.parts().stream().filter(part -> part.by().equals(by)).toList();
    }

    private void table(String heading, String by) {
        List<SeasonPart> parts = of(by);
        if (parts.isEmpty()) {
            return;
        }
        leaf.heading(heading + unit());
        List<List<String>> rows = new ArrayList<>();
        for (SeasonPart part : parts) {
            List<String> row = new ArrayList<>(List.of(part.of(), Integer.toString(part.shifts())));
            for (String id : List.of("loads", "placed-tons", "pay-tons")) {
                row.add(shown(part, id));
            }
            for (Sort sort : Sort.values()) {
                row.add(shown(part, "found." + word(sort)));
            }
            row.add(shown(part, "late-lines"));
            rows.add(row);
        }
        leaf.table(List.of("", "shifts", "loads", "placed", "for pay", "out", "miss.", "look", "adds?", "late"), rows);
    }

    /** The unit of all tons of the job, for the heads. */
    private String unit() {
        return job.shifts().isEmpty()
                ? ""
                : ", weights in " + job.shifts().get(0).placed().unit().symbol();
    }

    private static String word(Sort sort) {
        return sort.text().replace(' ', '-');
    }

    private static String shown(SeasonPart part, String id) {
        return figure(part, id).map(f -> f.text().split(" ", 2)[0]).orElse("");
    }

    private static Optional<Figure> figure(SeasonPart part, String id) {
        return part.sections().stream()
                .flatMap(section -> section.figures().stream())
                .filter(figure -> figure.id().equals(id))
                .findFirst();
    }

    private void shifts() {
        if (job.shifts().isEmpty()) {
            return;
        }
        leaf.heading("by shift" + unit());
        List<List<String>> rows = new ArrayList<>();
        for (InShort each : job.shifts()) {
            List<String> row = new ArrayList<>(List.of(
                    each.shift().toString(),
                    each.state(),
                    Integer.toString(each.loads()),
                    each.placed().shown(2).value().toPlainString(),
                    each.spread().map(BigDecimal::toPlainString).orElse(""),
                    each.paver().map(BigDecimal::toPlainString).orElse("")));
            for (Sort sort : Sort.values()) {
                row.add(Integer.toString(each.count(sort)));
            }
            rows.add(row);
        }
        leaf.table(List.of("", "", "loads", "placed", "spread", "paver", "out", "miss.", "look", "adds?"), rows);
        leaf.say(
                1,
                "spread: % of the target; paver: mean temperature there; out, miss., look, adds?: findings"
                        + " outside, missing, to look at again, that do not add up");
    }

    private void sections(SeasonPart whole) {
        for (Section section : whole.sections()) {
            leaf.heading(section.heading());
            section.figures().forEach(f -> leaf.say(1, f.label() + ": " + f.text()));
        }
    }
}
