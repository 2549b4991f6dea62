package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import screedbook.check.Cautions;
import screedbook.entry.HandOver;
import screedbook.entry.Note;
import screedbook.entry.Seal;
import screedbook.entry.Shown;
import screedbook.job.Job;
import screedbook.report.Sheets.Part;
import screedbook.report.Sheets.Turn;
import screedbook.spec.SpecSheet;

/**
 * The supervisor's page: one shift as plain text, 80 columns wide, what needs a decision first. The first sheet stands
 * by itself; the sheets behind it tell in full what had no room there. A form feed stands before each of these.
 */
public final class DayPage {
    /** So many writers sign on lines of their own. */
    private static final int SIGNING = 3;

    /** Of what needs a decision at least so many lines stand on the first sheet. */
    private static final int FEWEST = 6;

    private final DayPaper paper;
    private final Entries entries;
    private final Decisions decisions;
    private final Sheets sheets = new Sheets();
    private int rule;

    private DayPage(DayPaper paper) {
        this.paper = paper;
        this.entries = new Entries(paper);
        this.decisions = new Decisions(paper, entries);
    }

    /** The page; every line ends with a line feed. The same paper gives the same text for ever. */
    public static String text(DayPaper paper) {
        DayPage page = new DayPage(paper);
        page.write();
        return page.whole();
    }

    /** In the order in which a supervisor asks: what needs a decision, what it came to, what was looked at, what is left. */
    private void write() {
        sheets.add(this::heading);
        sheets.add(this::damages).or(Turn.DAMAGES, this::damaged);
        decide();
        sheets.add(leaf -> new Theirs(paper, leaf).reconciliation())
                .or(Turn.RECONCILIATION, briefly(Shortly::reconciliation));
        sheets.add(sums(Sums::tons)).or(Turn.TONS, briefly(Shortly::tons));
        if (!paper.day().closed()) {
            sheets.add(leaf -> new InBrief(paper, leaf).section("pace"));
            sheets.add(leaf -> new InBrief(paper, leaf).section("nearing"));
        }
        sheets.add(leaf -> new SpreadAndTack(paper, leaf).spread()).or(Turn.SPREAD, briefly(Shortly::spread));
        sheets.add(leaf -> new InBrief(paper, leaf).yield()).or(Turn.YIELD, briefly(Shortly::yield));
        sheets.add(leaf -> new InBrief(paper, leaf).depth()).or(Turn.DEPTH, briefly(Shortly::depth));
        sheets.add(leaf -> new SpreadAndTack(paper, leaf).tack()).or(Turn.TACK, briefly(Shortly::tack));
        sheets.add(leaf -> new Temperatures(paper, leaf).write()).or(Turn.TEMPERATURES, briefly(Shortly::temperatures));
        sheets.picture(leaf -> new Temperatures(paper, leaf).strip());
        sheets.picture(leaf -> new TonsByTheClock(paper, leaf).write());
        sheets.add(sums(Sums::weather)).or(Turn.WEATHER, briefly(Shortly::weather));
        looked();
        sheets.add(leaf -> new Kept(paper, entries, leaf).said()).or(Turn.ROOM, this::said);
        sheets.add(leaf -> new Kept(paper, entries, leaf).corrections())
                .or(Turn.CORRECTIONS, seen(ShortlySeen::corrections));
        sheets.add(leaf -> new Tested(paper, leaf).samples()).or(Turn.SAMPLES, seen(ShortlySeen::samples));
        sheets.add(sums(Sums::close));
        sheets.picture(leaf -> new RoadDrawn(paper, leaf).write());
        sheets.add(this::foot);
        sheets.spare(leaf -> Cautions.of(paper.day()).forEach(c -> leaf.say(0, c)));
        sheets.spare(
                leaf -> paper.sheet().map(SpecSheet::foot).orElse(List.of()).forEach(f -> leaf.say(0, f)));
    }

    /** What was looked at: mat, lots, density, checks, stops, crew. */
    private void looked() {
        sheets.add(leaf -> new OnSite(paper, leaf).mat()).or(Turn.MAT, seen(ShortlySeen::mat));
        sheets.add(leaf -> new Tested(paper, leaf).lots()).or(Turn.LOTS, seen(ShortlySeen::lots));
        sheets.add(leaf -> new Tested(paper, leaf).density()).or(Turn.DENSITY, seen(ShortlySeen::density));
        sheets.add(sums(Sums::checks)).or(Turn.CHECKS, briefly(Shortly::checks));
        sheets.add(leaf -> new OnSite(paper, leaf).stops()).or(Turn.STOPS, seen(ShortlySeen::stops));
        sheets.add(leaf -> new OnSite(paper, leaf).people())
                .or(Turn.ROOM, leaf -> leaf.say(0, "PEOPLE, MACHINES, INSTRUMENTS, SAFETY"));
    }

    /** The findings: each by itself, by rule, and by their numbers where there are very many. */
    private void decide() {
        Part open = sheets.add(decisions::open).or(Turn.OPEN, decisions::openByRule);
        for (int rules = decisions.rules() - 1; rules >= 0; rules--) {
            int first = rules;
            open.or(Turn.OPEN_IN_SHORT, leaf -> decisions.openInShort(first, leaf));
        }
        for (int most = Sheets.LINES / 2; most >= FEWEST; most--) {
            int lines = most;
            Turn turn = most >= 2 * FEWEST ? Turn.OPEN_CUT : Turn.OPEN_CUT_AGAIN;
            open.or(turn, leaf -> decisions.openInShort(leaf, lines));
        }
        Part placed = sheets.add(decisions::placed);
        if (decisions.somePlaced()) {
            shorten(placed);
        }
        sheets.add(decisions::notPlaced).or(Turn.NOT_PLACED, decisions::notPlacedByNumber);
        sheets.add(decisions::also).or(Turn.ALSO, decisions::alsoByNumber);
    }

    private void shorten(Part placed) {
        placed.or(Turn.PLACED, decisions::placedByRule).or(Turn.PLACED_IN_SHORT, decisions::placedInShort);
        for (int most = Sheets.LINES / 4; most >= FEWEST; most--) {
            int lines = most;
            placed.or(Turn.PLACED_CUT, leaf -> decisions.placedInShort(leaf, lines));
        }
        placed.or(Turn.PLACED_BY_NUMBER, decisions::placedByNumber);
    }

    private Consumer<Leaf> sums(Consumer<Sums> part) {
        return leaf -> part.accept(new Sums(paper, leaf));
    }

    private Consumer<Leaf> briefly(Consumer<Shortly> part) {
        return leaf -> part.accept(new Shortly(paper, leaf));
    }

    private Consumer<Leaf> seen(Consumer<ShortlySeen> part) {
        return leaf -> part.accept(new ShortlySeen(paper, leaf));
    }

    private void said(Leaf leaf) {
        int notes = paper.day().standing(Note.class).size()
                + paper.day().standing(HandOver.class).size();
        leaf.say(0, "SAID AND SEEN: " + Leaf.many(notes, "entry", "entries"));
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
        rule = leaf.lines().size();
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

    private void damaged(Leaf leaf) {
        leaf.say(
                0,
                "FILES NOT AS THEY WERE WRITTEN: " + Leaf.many(paper.damages().size(), "place"));
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
        if (paper.day().closed()) {
            leaf.blank();
            signatures(leaf);
        }
    }

    /** Lines for the pen. */
    private void signatures(Leaf leaf) {
        List<String> writers = entries.signers();
        if (writers.size() > SIGNING) {
            leaf.drawn(signature("kept by those named above"));
        } else {
            writers.forEach(w -> leaf.drawn(signature("kept by " + w)));
        }
        leaf.drawn(signature(paper.whole() ? "read by" : "for the contractor"));
    }

    private static String signature(String who) {
        String name = cut(Shown.text(who), 32);
        return name + " " + "_".repeat(59 - Leaf.columns(name)) + " date " + "_".repeat(14);
    }

    private static String cut(String text, int most) {
        int[] points = text.codePoints().limit(Math.max(0, most)).toArray();
        return new String(points, 0, points.length);
    }

    /** Each sheet with its number; those behind the first begin with what tells where they belong. */
    private String whole() {
        List<List<String>> all = sheets.sheets();
        List<String> out = new ArrayList<>();
        for (int sheet = 1; sheet <= all.size(); sheet++) {
            List<String> lines = new ArrayList<>(all.get(sheet - 1));
            String more = sheet == 1 && all.size() > 1 ? " [2] is told in full on sheet 2, and so on " : "";
            String number = ruled(more, "sheet " + sheet + " of " + all.size());
            if (sheet == 1) {
                lines.set(rule, number);
            } else {
                out.add("\f" + belongs());
                out.add(number);
            }
            out.addAll(lines);
        }
        return String.join("\n", out) + "\n";
    }

    private static String ruled(String begin, String end) {
        return "==" + begin + "=".repeat(Leaf.PAPER - begin.length() - end.length() - 6) + " " + end + " ==";
    }

    /** Job, shift and seal in one line, of the job's name as much as there is room for. */
    private String belongs() {
        String seal = paper.seals().stream()
                .map(Seal::shortForm)
                .findFirst()
                .map(s -> "seal " + s)
                .orElse("not sealed");
        String rest = " " + paper.day().shift() + (paper.whole() ? "  page revision " : "  copy, revision ")
                + paper.revision() + "  " + seal;
        return cut(Shown.text(paper.jobId()), Leaf.PAPER - rest.length()) + rest;
    }
}
