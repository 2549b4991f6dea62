package screedbook.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import screedbook.check.Cautions;
import screedbook.entry.Seal;
import screedbook.entry.Shown;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** The supervisor's page: one shift as plain text, 80 columns wide, what needs a decision first. */
public final class DayPage {
    /** Lines of a sheet of paper that are written on, the foot counted. */
    private static final int LINES = 60;

    private final DayPaper paper;
    private final Entries entries;
    private final Leaf leaf = new Leaf(Leaf.PAPER);

    private DayPage(DayPaper paper) {
        this.paper = paper;
        this.entries = new Entries(paper);
    }

    /** The page; every line ends with a line feed. The same paper gives the same text for ever. */
    public static String text(DayPaper paper) {
        DayPage page = new DayPage(paper);
        page.write();
        return page.sheets();
    }

    private void write() {
        heading();
        damages();
        new Decisions(paper, entries, leaf).write();
        Sums sums = new Sums(paper, leaf);
        sums.reconciliation();
        sums.tons();
        new TonsByTheClock(paper, leaf).write();
        sums.spread();
        sums.tack();
        new RoadDrawn(paper, leaf).write();
        new Temperatures(paper, leaf).write();
        OnSite site = new OnSite(paper, leaf);
        site.mat();
        sums.weather();
        Tested tested = new Tested(paper, leaf);
        tested.lots();
        tested.density();
        sums.checks();
        site.stops();
        site.people();
        Kept kept = new Kept(paper, entries, leaf);
        kept.said();
        kept.corrections();
        tested.samples();
        foot(kept);
    }

    private void heading() {
        leaf.ends(paper.jobName(), paper.day().shift().toString());
        paper.job().ifPresent(this::agreement);
        leaf.say(
                0,
                "kept by " + (entries.writers().isEmpty() ? "nobody" : entries.writers()) + "; books "
                        + (entries.books().isEmpty() ? "none" : entries.books()));
        String plan = paper.agreed().map(a -> "job revision " + a.revision()).orElse("job revision not found");
        leaf.ends(plan + "; " + sheet(), "page revision " + paper.revision());
        if (!paper.whole()) {
            leaf.say(0, DayPaper.COPY);
        }
        leaf.rule('=');
        new Kept(paper, entries, leaf).noWork();
    }

    private void agreement(Job job) {
        String said = Entries.phrases(
                "job", job.id(), "contract", job.contract(), "owner", job.owner(), "contractor", job.contractor());
        leaf.say(0, said);
    }

    private String sheet() {
        return paper.sheet()
                .map(s -> "limit sheet " + s.name() + " " + s.sha256().substring(0, 8))
                .orElse("limit sheet not found");
    }

    /** First of all: what follows rests on these files. */
    private void damages() {
        if (paper.damages().isEmpty()) {
            return;
        }
        leaf.heading("FILES NOT AS THEY WERE WRITTEN");
        paper.damages().forEach(d -> leaf.say(1, d.file() + (d.row() > 0 ? ":" + d.row() : "") + ": " + d.said()));
    }

    private void foot(Kept kept) {
        leaf.blank();
        leaf.rule('-');
        Cautions.of(paper.day()).forEach(c -> leaf.say(0, c));
        leaf.say(0, Cautions.GOVERNS);
        paper.sheet().map(SpecSheet::foot).orElse(List.of()).forEach(f -> leaf.say(0, f));
        kept.reviews();
        if (paper.seals().isEmpty()) {
            leaf.say(0, "no seal: no book of this shift is closed");
        }
        paper.seals()
                .forEach(s -> leaf.say(0, "seal " + s.book() + "  " + s.shortForm() + "  " + s.lines() + " lines"));
    }

    /** One sheet as it is; more sheets each with a foot that says which of how many. */
    private String sheets() {
        List<String> lines = leaf.lines();
        if (lines.size() <= LINES) {
            return String.join("\n", lines) + "\n";
        }
        List<List<String>> sheets = cut(lines);
        List<String> out = new ArrayList<>();
        for (int sheet = 0; sheet < sheets.size(); sheet++) {
            List<String> part = sheets.get(sheet);
            out.addAll(part);
            boolean last = sheet == sheets.size() - 1;
            out.addAll(Collections.nCopies(last ? 0 : LINES - 2 - part.size(), ""));
            out.add("");
            out.add(sheetFoot(sheet + 1, sheets.size()));
        }
        return String.join("\n", out) + "\n";
    }

    /** The lines by sheets; a part that would be torn begins on the next one, when it is not too long for that. */
    private static List<List<String>> cut(List<String> lines) {
        List<List<String>> sheets = new ArrayList<>();
        int at = 0;
        while (lines.size() - at > LINES - 2) {
            int end = at + LINES - 2;
            int blank = end;
            while (blank > at + 2 * LINES / 3 && !lines.get(blank).isEmpty()) {
                blank--;
            }
            end = lines.get(blank).isEmpty() ? blank : end;
            sheets.add(lines.subList(at, end));
            at = lines.get(end).isEmpty() ? end + 1 : end;
        }
        sheets.add(lines.subList(at, lines.size()));
        return sheets;
    }

    private String sheetFoot(int sheet, int sheets) {
        String seals = paper.seals().stream().map(Seal::shortForm).limit(1).collect(Collectors.joining());
        String right = "page " + sheet + " of " + sheets;
        String left = Shown.text(paper.jobId()) + " " + paper.day().shift() + "  revision " + paper.revision()
                + (seals.isEmpty() ? "" : "  seal " + seals);
        int room = Leaf.PAPER - right.length() - 2;
        int[] points = left.codePoints().limit(room).toArray();
        String cut = new String(points, 0, points.length);
        return cut + " ".repeat(Leaf.PAPER - Leaf.columns(cut) - right.length()) + right;
    }
}
