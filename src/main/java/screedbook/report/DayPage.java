package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import screedbook.check.Cautions;
import screedbook.entry.HandOver;
import screedbook.entry.Note;
import screedbook.entry.Seal;
import screedbook.entry.Shown;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** The supervisor's page: one shift as plain text, 80 columns wide, what needs a decision first. */
public final class DayPage {
    private final DayPaper paper;
    private final Entries entries;
    private final Sheets sheets = new Sheets();

    private DayPage(DayPaper paper) {
        this.paper = paper;
        this.entries = new Entries(paper);
    }

    /** The page; every line ends with a line feed. The same paper gives the same text for ever. */
    public static String text(DayPaper paper) {
        DayPage page = new DayPage(paper);
        page.write();
        return page.whole();
    }

    /** In the order in which a supervisor asks: what needs a decision, what it came to, what was looked at, what is left. */
    private void write() {
        first(this::heading);
        first(this::damages);
        first(leaf -> new Decisions(paper, entries, leaf).write());
        answered();
        first(leaf -> new Sums(paper, leaf).reconciliation());
        first(leaf -> new Sums(paper, leaf).tons());
        if (!paper.day().closed()) {
            first(leaf -> new InBrief(paper, leaf).section("pace"));
        }
        first(leaf -> new Sums(paper, leaf).spread());
        first(leaf -> new InBrief(paper, leaf).yield());
        first(leaf -> new InBrief(paper, leaf).depth());
        first(leaf -> new Sums(paper, leaf).tack());
        first(leaf -> new Temperatures(paper, leaf).write());
        picture(leaf -> new Temperatures(paper, leaf).strip());
        picture(leaf -> new TonsByTheClock(paper, leaf).write());
        first(leaf -> new Sums(paper, leaf).weather());
        first(leaf -> new OnSite(paper, leaf).mat());
        first(leaf -> new Tested(paper, leaf).lots());
        first(leaf -> new Tested(paper, leaf).density());
        first(leaf -> new Sums(paper, leaf).checks());
        first(leaf -> new OnSite(paper, leaf).stops());
        room("PEOPLE, MACHINES, INSTRUMENTS, SAFETY: told further behind", leaf -> new OnSite(paper, leaf).people());
        said();
        first(leaf -> new Kept(paper, entries, leaf).corrections());
        first(leaf -> new Tested(paper, leaf).samples());
        first(leaf -> new Sums(paper, leaf).close());
        picture(leaf -> new RoadDrawn(paper, leaf).write());
        first(this::foot);
        spare(leaf -> Cautions.of(paper.day()).forEach(c -> leaf.say(0, c)));
        spare(leaf -> paper.sheet().map(SpecSheet::foot).orElse(List.of()).forEach(f -> leaf.say(0, f)));
    }

    private void answered() {
        int found =
                new Decisions(paper, entries, new Leaf(Leaf.PAPER)).answered().size();
        room(
                "ALSO FOUND, AND ANSWERED: " + Leaf.many(found, "finding") + ", told further behind",
                leaf -> new Decisions(paper, entries, leaf).others());
    }

    private void said() {
        int notes = paper.day().standing(Note.class).size()
                + paper.day().standing(HandOver.class).size();
        room(
                "SAID AND SEEN: " + Leaf.many(notes, "entry", "entries") + ", told further behind",
                leaf -> new Kept(paper, entries, leaf).said());
    }

    private void first(Consumer<Leaf> writes) {
        add(Sheets.Where.FIRST, "", writes);
    }

    private void room(String instead, Consumer<Leaf> writes) {
        add(Sheets.Where.WHERE_ROOM, instead, writes);
    }

    private void picture(Consumer<Leaf> writes) {
        add(Sheets.Where.PICTURE, "", writes);
    }

    private void spare(Consumer<Leaf> writes) {
        add(Sheets.Where.SPARE, "", writes);
    }

    private void add(Sheets.Where where, String instead, Consumer<Leaf> writes) {
        Leaf leaf = new Leaf(Leaf.PAPER);
        writes.accept(leaf);
        sheets.add(where, leaf, instead);
    }

    private void heading(Leaf leaf) {
        leaf.ends(paper.jobName(), paper.day().shift().toString());
        paper.job().ifPresent(job -> agreement(job, leaf));
        leaf.say(
                0,
                "job " + paper.jobId() + "; kept by " + (entries.writers().isEmpty() ? "nobody" : entries.writers())
                        + "; books " + (entries.books().isEmpty() ? "none" : entries.books()));
        String plan = paper.agreed().map(a -> "job revision " + a.revision()).orElse("job revision not found");
        leaf.ends(plan + "; " + sheet(), "page revision " + paper.revision());
        if (!paper.whole()) {
            leaf.say(0, DayPaper.COPY);
        }
        leaf.rule('=');
        new Kept(paper, entries, leaf).noWork();
    }

    private void agreement(Job job, Leaf leaf) {
        String said = Entries.phrases("contract", job.contract(), "owner", job.owner(), "contractor", job.contractor());
        leaf.say(0, said);
    }

    private String sheet() {
        return paper.sheet()
                .map(s -> "limit sheet " + s.name() + " " + s.sha256().substring(0, 8))
                .orElse("limit sheet not found");
    }

    /** First of all: what follows rests on these files. */
    private void damages(Leaf leaf) {
        if (paper.damages().isEmpty()) {
            return;
        }
        leaf.heading("FILES NOT AS THEY WERE WRITTEN");
        paper.damages().forEach(d -> leaf.say(1, d.file() + (d.row() > 0 ? ":" + d.row() : "") + ": " + d.said()));
    }

    private void foot(Leaf leaf) {
        leaf.rule('-');
        leaf.say(0, Cautions.GOVERNS);
        new Kept(paper, entries, leaf).reviews();
        if (paper.seals().isEmpty()) {
            leaf.say(0, "no seal: no book of this shift is closed");
        }
        paper.seals()
                .forEach(s -> leaf.say(0, "seal " + s.book() + "  " + s.shortForm() + "  " + s.lines() + " lines"));
    }

    /** One sheet as it is; more sheets each with a foot that says which of how many. */
    private String whole() {
        List<List<String>> all = sheets.sheets();
        if (all.size() == 1) {
            return String.join("\n", all.get(0)) + "\n";
        }
        List<String> out = new ArrayList<>();
        for (int sheet = 0; sheet < all.size(); sheet++) {
            boolean last = sheet == all.size() - 1;
            out.addAll(last ? all.get(sheet) : Sheets.filled(all.get(sheet)));
            out.add("");
            out.add(sheetFoot(sheet + 1, all.size()));
        }
        return String.join("\n", out) + "\n";
    }

    private String sheetFoot(int sheet, int of) {
        String seals = paper.seals().stream().map(Seal::shortForm).limit(1).collect(Collectors.joining());
        String right = "page " + sheet + " of " + of;
        String left = Shown.text(paper.jobId()) + " " + paper.day().shift() + "  revision " + paper.revision()
                + (seals.isEmpty() ? "" : "  seal " + seals);
        int room = Leaf.PAPER - right.length() - 2;
        int[] points = left.codePoints().limit(room).toArray();
        String cut = new String(points, 0, points.length);
        return cut + " ".repeat(Leaf.PAPER - Leaf.columns(cut) - right.length()) + right;
    }
}
