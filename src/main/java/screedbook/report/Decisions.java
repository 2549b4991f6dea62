package screedbook.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Answer;
import screedbook.entry.Closing;
import screedbook.entry.Moment;
import screedbook.entry.Ref;
import screedbook.entry.Review;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.tally.Load;

/** The head of the page: what waits for the supervisor, and what was placed outside limits with its answers. */
final class Decisions {
    /** Findings of one rule that are told one by one, of the sorts that weigh most; more are told together. */
    private static final int SINGLY = 4;

    private static final Map<Sort, Integer> ORDER =
            Map.of(Sort.OUTSIDE, 0, Sort.DOES_NOT_ADD_UP, 1, Sort.LOOK_AGAIN, 2, Sort.MISSING, 3);

    private final DayPaper paper;
    private final Entries entries;
    private final Leaf leaf;

    Decisions(DayPaper paper, Entries entries, Leaf leaf) {
        this.paper = paper;
        this.entries = entries;
        this.leaf = leaf;
    }

    void write() {
        Leaf waits = new Leaf(Leaf.PAPER);
        Decisions asked = new Decisions(paper, entries, waits);
        asked.record();
        asked.unanswered();
        leaf.under(paper.whole() ? "NEEDS A DECISION FROM YOU" : "OPEN", waits, "nothing");
        List<Finding> placed = paper.findings().stream()
                .filter(f -> f.sort() == Sort.OUTSIDE && placed(f))
                .toList();
        Leaf outside = new Leaf(Leaf.PAPER);
        Decisions knew = new Decisions(paper, entries, outside);
        placed.stream().filter(Finding::answered).forEach(knew::whole);
        int open = (int) placed.stream().filter(f -> !f.answered()).count();
        if (open > 0) {
            outside.say(1, open + " without an answer; see above");
        }
        String heading = "PLACED OUTSIDE LIMITS" + (paper.whole() ? ": WHO KNEW, WHO ALLOWED" : ", ANSWERED");
        leaf.under(heading, outside, "nothing found");
    }

    /** Findings of the other sorts that were answered: nothing is left to decide, all stays to be seen. */
    List<Finding> answered() {
        return paper.findings().stream()
                .filter(f -> f.answered() && (f.sort() != Sort.OUTSIDE || !placed(f)))
                .toList();
    }

    void others() {
        if (!answered().isEmpty()) {
            leaf.heading("ALSO FOUND, AND ANSWERED");
            answered().forEach(this::whole);
        }
    }

    /** What the record itself leaves open, where no finding says it already. */
    private void record() {
        if (paper.agreed().isEmpty() || paper.sheet().isEmpty()) {
            String lost = paper.agreed().isEmpty() ? "job revision" : "limit sheet";
            unless(
                    "plan-not-found",
                    "plan not found: the " + lost
                            + " that was in force is not in the job's folder; nothing is judged by another");
        }
        paper.day().last(Closing.class).map(Standing::entry).ifPresent(this::disagreed);
        paper.day().last(Review.class).ifPresent(this::returned);
        int lines = paper.day().uncounted().size();
        if (lines > 0) {
            unless("line-not-read", Leaf.many(lines, "line") + " not read, in no total; see CORRECTIONS");
        }
        int left = paper.totals().left().size();
        if (left > 0) {
            leaf.say(1, Leaf.many(left, "entry", "entries") + " not counted, or not in full; see CORRECTIONS");
        }
        int adrift = paper.day().adrift().size();
        if (adrift > 0) {
            unless(
                    "adrift",
                    Leaf.many(adrift, "correction or answer", "corrections or answers")
                            + " to an entry that is not there");
        }
        if (!paper.day().closed()) {
            unless("no-close", "the shift is not closed; its last lines are not protected yet");
        }
    }

    private void unless(String rule, String text) {
        if (paper.findings().stream().noneMatch(f -> f.rule().equals(rule))) {
            leaf.say(1, text);
        }
    }

    private void returned(Standing<Review> review) {
        if (review.entry().says() == Review.Says.RETURNED) {
            leaf.say(
                    1,
                    "returned by " + review.line().who()
                            + Entries.phrases(":", review.entry().text()));
        }
    }

    private void disagreed(Closing closing) {
        if (closing.theirs() != null && closing.theirs().agreed() == Closing.Agreed.NO) {
            String name = closing.theirs().theirName();
            leaf.say(
                    1,
                    "figures not agreed by " + (name == null ? "the contractor's representative" : name)
                            + Entries.phrases(":", closing.theirs().why()));
        }
    }

    private void unanswered() {
        groups(paper.findings().stream()
                .filter(f -> !f.answered() && (f.sort() != Sort.OUTSIDE || placed(f)))
                .sorted(Comparator.comparing((Finding f) -> ORDER.get(f.sort())))
                .toList());
    }

    /** Whether a finding speaks of something that stayed: anything but a load that was not placed. */
    private boolean placed(Finding finding) {
        return finding.of().isEmpty()
                || entries.find(finding.of().get(0))
                        .map(s -> !(s.entry() instanceof Ticket t) || Load.laid(t))
                        .orElse(true);
    }

    private void groups(List<Finding> findings) {
        Map<String, List<Finding>> rules = new LinkedHashMap<>();
        findings.forEach(
                f -> rules.computeIfAbsent(matter(f), r -> new ArrayList<>()).add(f));
        rules.values().forEach(list -> {
            boolean heavy = ORDER.get(list.get(0).sort()) < 2;
            if (list.size() <= (heavy ? SINGLY : 1)) {
                list.forEach(f -> leaf.say(1, text(f)));
            } else {
                together(list);
            }
        });
    }

    /** Checks of every kind come due under one rule; each that the job asks for is a matter of its own. */
    private static String matter(Finding f) {
        return f.sort() + f.rule() + (f.rule().equals("check-overdue") ? f.limit() + f.clause() : "");
    }

    private void together(List<Finding> findings) {
        Finding first = findings.get(0);
        String of = findings.stream()
                .flatMap(f -> f.of().stream().limit(1))
                .map(Ref::toString)
                .collect(Collectors.joining(", "));
        leaf.say(
                1,
                first.sort().mark() + "  " + findings.size() + " findings of one rule, the first: " + seen(first)
                        + "; entries " + of);
    }

    private String text(Finding finding) {
        String of = finding.of().isEmpty() ? "" : entries.name(finding.of().get(0)) + ": ";
        return finding.sort().mark() + "  " + of + seen(finding);
    }

    private static String seen(Finding finding) {
        String limit = finding.limit().isEmpty() ? "" : "; " + finding.limit();
        String clause = finding.clause().isEmpty() ? "" : " (" + finding.clause() + ")";
        return finding.seen() + limit + clause;
    }

    /** A finding with all that was answered to it. */
    void whole(Finding finding) {
        leaf.say(1, text(finding));
        if (!finding.of().isEmpty()) {
            entries.find(finding.of().get(0))
                    .filter(s -> s.entry() instanceof Ticket)
                    .ifPresent(s -> {
                        Ticket.Fate fate = ((Ticket) s.entry()).fate();
                        String said = Entries.phrases(
                                "", fate.reason(), "decided by", fate.decidedBy(), "told to", fate.toldTo());
                        if (!said.isEmpty()) {
                            leaf.say(5, "on the ticket: " + said);
                        }
                    });
        }
        finding.answers().forEach(this::answer);
    }

    private void answer(Standing<Answer> answer) {
        Answer a = answer.entry();
        String when = answer.time() == null ? Moment.clock(answer.line().keyed()) : Moment.clock(answer.time());
        String told = Entries.phrases("", a.text(), "decided by", a.decidedBy(), "told to", a.toldTo());
        leaf.say(5, when + " " + answer.line().who() + (told.isEmpty() ? " answered" : ": " + told));
    }
}
