package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import screedbook.check.Cautions;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Instrument;
import screedbook.entry.Person;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** The pre-paving sheet: what a meeting agrees on, as plain text, 80 columns wide. */
public final class PlanPage {
    private final PlanPaper paper;
    private final Job job;
    private final Leaf leaf = new Leaf(Leaf.PAPER);

    private PlanPage(PlanPaper paper) {
        this.paper = paper;
        this.job = paper.job();
    }

    /** The sheet; every line ends with a line feed. */
    public static String text(PlanPaper paper) {
        return String.join("\n", lines(paper)) + "\n";
    }

    /** The same line by line. */
    public static List<String> lines(PlanPaper paper) {
        PlanPage page = new PlanPage(paper);
        page.write();
        return page.leaf.lines();
    }

    private void write() {
        heading();
        found("What cannot work as planned", Sort.OUTSIDE, Sort.DOES_NOT_ADD_UP);
        found("Open questions", Sort.MISSING);
        found("Worth another look", Sort.LOOK_AGAIN);
        agreed();
        PlanParts parts = new PlanParts(paper, leaf);
        parts.lifts();
        parts.joints();
        parts.targets();
        parts.surface();
        parts.days();
        figures();
        checks();
        instruments();
        people();
        foot();
    }

    private void heading() {
        leaf.ends(job.name(), "pre-paving sheet");
        leaf.say(
                0,
                Entries.phrases(
                        "job",
                        job.id(),
                        "contract",
                        job.contract(),
                        "owner",
                        job.owner(),
                        "contractor",
                        job.contractor()));
        leaf.ends(
                paper.standing(),
                "limit sheet " + paper.sheet().name() + " "
                        + paper.sheet().sha256().substring(0, 8));
        leaf.rule('=');
    }

    private void found(String title, Sort... sorts) {
        List<Finding> of = paper.findings().stream()
                .filter(f -> List.of(sorts).contains(f.sort()))
                .toList();
        leaf.heading(title + (of.isEmpty() ? ": nothing found" : ", " + of.size()));
        int n = 0;
        for (Finding each : of) {
            n++;
            leaf.say(1, n + ". " + each.seen());
            leaf.say(4, "asked for: " + each.limit() + " (" + each.clause() + ")");
            leaf.say(4, "inside would be: " + each.inside());
            if (!each.working().isBlank()) {
                leaf.say(4, each.working());
            }
        }
    }

    private void agreed() {
        List<Planning.Agreement> all = job.planning().agreements();
        leaf.heading(all.isEmpty() ? "Agreed: nothing is noted" : "Agreed");
        for (Planning.Agreement each : all) {
            String date = each.date() == null ? "no date" : each.date().toString();
            String who = each.who() == null ? "nobody is named" : each.who();
            leaf.say(1, date + "  " + each.what() + " (" + who + ")");
        }
    }

    /** Each figure with the sentence that leads to it. */
    private void figures() {
        for (Section section : paper.figures()) {
            leaf.heading(section.heading());
            for (Figure each : section.figures()) {
                leaf.say(1, each.label() + ": " + each.text());
                leaf.say(4, each.working().formula());
                if (!each.working().put().isEmpty()) {
                    leaf.say(4, String.join("; ", each.working().put()));
                }
                leaf.say(4, "source: " + each.working().source());
            }
        }
    }

    private void checks() {
        Checks c = job.checks();
        leaf.heading("Checks" + (c.source() == null ? "" : " (" + c.source() + ")"));
        leaf.say(
                1,
                "Mix temperature at the " + c.heatWhere().word() + ": the first " + c.firstLoads()
                        + " loads of each mix, then one in " + c.thenOneIn() + ".");
        leaf.say(
                1,
                "Surface read every " + c.surfaceEvery().text() + ", weather every "
                        + c.weatherEvery().text() + ", loads at most "
                        + c.loadAge().text() + " old.");
        if (c.yieldEvery() != null) {
            leaf.say(1, "Spread rate once in " + c.yieldEvery().text() + ".");
        }
        leaf.say(1, "Tack samples: " + c.tackSamples() + ".");
    }

    private void instruments() {
        List<String> due = new ArrayList<>();
        for (Job.Plant plant : job.plants()) {
            due.add("scale of " + plant.name() + ": certificate "
                    + (plant.scaleUntil() == null ? "no date noted" : "until " + plant.scaleUntil()));
        }
        for (Instrument each : job.instruments()) {
            due.add(words(each.id(), each.kind(), each.serial()) + ": check "
                    + (each.due() == null ? "no date noted" : "due " + each.due()));
        }
        if (!due.isEmpty()) {
            leaf.heading("Certificates and instruments");
            due.forEach(d -> leaf.say(1, d));
        }
    }

    private static String words(String... words) {
        return String.join(" ", Stream.of(words).filter(Objects::nonNull).toList());
    }

    private void people() {
        leaf.heading(job.people().isEmpty() ? "People: nobody is noted" : "People");
        for (Person each : job.people()) {
            String reached = paper.reached().getOrDefault(each.initials(), "");
            leaf.say(
                    1,
                    words(each.initials(), each.name())
                            + (each.role() == null ? "" : ", " + each.role())
                            + (reached.isBlank() ? "" : ", " + reached));
        }
    }

    private void foot() {
        leaf.blank();
        leaf.rule('-');
        Cautions.planned(job).forEach(c -> leaf.say(0, c));
        leaf.say(0, Cautions.GOVERNS);
        paper.sheet().foot().forEach(f -> leaf.say(0, f));
    }
}
