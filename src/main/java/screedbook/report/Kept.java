package screedbook.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Amend;
import screedbook.entry.Closing;
import screedbook.entry.Fields;
import screedbook.entry.Foreign;
import screedbook.entry.HandOver;
import screedbook.entry.Moment;
import screedbook.entry.NoWork;
import screedbook.entry.Note;
import screedbook.entry.Ref;
import screedbook.entry.Review;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Strike;
import screedbook.entry.Told;
import screedbook.entry.Unreadable;
import screedbook.entry.Written;
import screedbook.tally.Left;

/** The end of the page: corrections, late lines, lines not counted, and what was said and seen. */
final class Kept {
    private final DayPaper paper;
    private final Entries entries;
    private final Leaf leaf;

    Kept(DayPaper paper, Entries entries, Leaf leaf) {
        this.paper = paper;
        this.entries = entries;
        this.leaf = leaf;
    }

    void noWork() {
        for (Standing<NoWork> each : paper.day().standing(NoWork.class)) {
            NoWork n = each.entry();
            String why = n.why() == null ? "not said" : n.why().word().replace('-', ' ');
            leaf.say(
                    0, "no work: " + why + Entries.phrases("; said by", n.saidBy()) + Entries.phrases(";", n.detail()));
        }
    }

    void said() {
        List<Standing<Note>> notes = paper.day().standing(Note.class);
        List<Standing<HandOver>> overs = paper.day().standing(HandOver.class);
        if (notes.isEmpty() && overs.isEmpty()) {
            return;
        }
        leaf.heading("SAID AND SEEN");
        for (Standing<Note> each : notes) {
            Note n = each.entry();
            String tags = n.tags() == null || n.tags().isEmpty() ? "" : String.join(", ", n.tags()) + ": ";
            leaf.say(
                    1,
                    clock(each) + " " + tags
                            + Entries.phrases(
                                    "",
                                    n.text(),
                                    "from",
                                    n.fromWhom(),
                                    "answer:",
                                    n.answer(),
                                    "mat",
                                    n.mat() == null ? null : n.mat().text(),
                                    "at",
                                    n.place() == null ? null : n.place().text(),
                                    "pull",
                                    n.pull()));
        }
        for (Standing<HandOver> each : overs) {
            leaf.say(
                    1,
                    (clock(each) + " handed over "
                                    + Entries.phrases(
                                            "to",
                                            each.entry().nextWho(),
                                            "",
                                            each.entry().text()))
                            .strip());
        }
    }

    private static String clock(Standing<?> each) {
        return Moment.clock(each.time() == null ? each.line().keyed() : each.time());
    }

    void corrections() {
        Leaf lines = new Leaf(Leaf.PAPER);
        new Kept(paper, entries, lines).corrected();
        leaf.under("CORRECTIONS, LATE LINES, LINES NOT COUNTED", lines, "none");
    }

    private void corrected() {
        Map<Ref, Map<String, Object>> values = new HashMap<>();
        for (Standing<?> each : paper.day().all()) {
            if (each.entry() instanceof Strike strike) {
                struck(each, strike);
            } else if (each.entry() instanceof Amend amend) {
                amended(each, amend, values);
            }
        }
        paper.day().late().stream()
                .filter(s -> !(s.entry() instanceof Closing) && !(s.entry() instanceof Review))
                .forEach(s -> leaf.say(1, "after the close: " + stamp(s) + " " + s.ref() + " " + Told.line(s.entry())));
        int notes = (int) paper.day().all().stream()
                .filter(s -> s.line().source() == Source.NOTES)
                .count();
        if (notes > 0) {
            leaf.say(1, Leaf.many(notes, "entry", "entries") + " keyed from notes, not as it happened");
        }
        for (Left left : paper.totals().left()) {
            leaf.say(1, "not counted: " + entries.name(left.of()) + ": " + left.why());
        }
        paper.day().uncounted().forEach(this::unread);
        paper.day().adrift().forEach(l -> leaf.say(1, "to no entry: " + l.ref() + " " + Told.line(l.entry())));
    }

    private static String stamp(Standing<?> standing) {
        return standing.line().who() + " "
                + Moment.keyed(standing.line().keyed()).substring(0, 16).replace('T', ' ');
    }

    private void struck(Standing<?> line, Strike strike) {
        String told = entries.find(strike.of())
                .map(s -> ": " + Told.line(s.line().entry()))
                .orElse("");
        leaf.say(1, stamp(line) + " struck " + strike.of() + why(strike.reason()) + off(line) + told);
    }

    private static String why(String reason) {
        return reason == null ? "" : " (" + reason + ")";
    }

    private static String off(Standing<?> line) {
        return line.struck() ? ", taken back" : "";
    }

    private void amended(Standing<?> line, Amend amend, Map<Ref, Map<String, Object>> values) {
        if (amend.set() == null) {
            return;
        }
        Map<String, Object> now = values.computeIfAbsent(amend.of(), this::plain);
        amend.set().forEach((key, value) -> {
            leaf.say(
                    1,
                    stamp(line) + " amended " + amend.of() + " " + key + ": was " + text(now.get(key)) + ", now "
                            + text(value) + why(amend.reason()) + off(line));
            if (!line.struck()) {
                now.put(key, value);
            }
        });
    }

    private Map<String, Object> plain(Ref of) {
        return entries.find(of)
                .map(s -> new HashMap<>(Fields.plain((Record) s.line().entry())))
                .orElseGet(HashMap::new);
    }

    private static String text(Object value) {
        return value == null ? "not noted" : value.toString();
    }

    private void unread(Written written) {
        String why = written instanceof Unreadable u
                ? u.reason()
                : "of the kind " + ((Foreign) written).kind() + ", which this program does not know";
        leaf.say(1, "not read: " + written.book() + " line " + written.row() + ": " + why);
    }

    void reviews() {
        for (Standing<Review> each : paper.day().standing(Review.class)) {
            Review r = each.entry();
            leaf.say(
                    0,
                    "review " + stamp(each) + ": "
                            + Entries.phrases(
                                    "",
                                    r.says() == null ? null : r.says().word(),
                                    "",
                                    r.text(),
                                    "arithmetic checked:",
                                    r.checked() == null ? null : r.checked().word()));
        }
    }
}
