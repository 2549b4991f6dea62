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
        if (!whole.isEmpty()) {
            leaf.say(0, Cautions.GOVERNS);
            leaf.blank();
        }
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
        if (!job.shifts().isEmpty() && !mixed()) {
            leaf.heading("From shift to shift, 0 the least and 9 the greatest");
            SeasonStrips.lines(job.shifts(), Leaf.PAPER - 1).forEach(line -> leaf.drawn(" " + line));
        }
    }

    private List<SeasonPart> of(String by) {
        return job.parts().stream().filter(part -> part.by().equals(by)).toList();
    }

    private void table(String heading, String by) {
        List<SeasonPart> parts = of(by);
        if (!parts.isEmpty()) {
            leaf.heading(heading + unit());
            leaf.table(
                    SeasonRow.HEADS,
                    parts.stream()
                            .map(part -> SeasonRow.of(part).cells(part.of(), mixed()))
                            .toList());
        }
    }

    /** The unit of all tons of the job, for the heads; where a job changed its units each figure has its own. */
    private String unit() {
        return mixed()
                ? ""
                : ", weights in " + job.shifts().get(0).placed().unit().symbol();
    }

    private boolean mixed() {
        return job.shifts().stream().map(s -> s.placed().unit()).distinct().count() > 1;
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
                    mixed()
                            ? each.placed().shown(2).text()
                            : each.placed().shown(2).value().toPlainString(),
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
            List<Figure> figures = section.figures();
            for (int i = 0; i < figures.size(); i++) {
                Figure each = figures.get(i);
                Optional<String> span = i + 1 < figures.size() ? span(each, figures.get(i + 1)) : Optional.empty();
                leaf.say(1, span.orElse(each.label() + ": " + each.text()));
                i += span.isPresent() ? 1 : 0;
            }
        }
    }

    /** The least and the greatest of the shifts in one line, where one follows the other. */
    private static Optional<String> span(Figure least, Figure most) {
        String of = least.label().replaceFirst(" least$", "");
        if (of.equals(least.label()) || !most.label().equals(of + " most")) {
            return Optional.empty();
        }
        return Optional.of(of + ": "
                + (least.value().equals(most.value()) ? "" : least.text().split(" ")[0] + " to ") + most.text());
    }
}
