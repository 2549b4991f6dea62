package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import screedbook.check.Sort;
import screedbook.entry.Closing;
import screedbook.entry.Review;
import screedbook.entry.Standing;

/** The head of the page: what waits for the supervisor, what was placed outside limits with its answers, what else was found. */
final class Decisions {
    /** More findings of one rule than this stand under their limit, which is told once. */
    private static final int MANY = 5;

    private final DayPaper paper;
    private final Entries entries;
    private final Numbered found;

    Decisions(DayPaper paper, Entries entries) {
        this.paper = paper;
        this.entries = entries;
        this.found = Numbered.of(paper, entries);
    }

    /** What waits, each finding by itself. */
    void open(Leaf leaf) {
        waits(leaf, lines -> singly(found.open(), lines));
    }

    /** The same, one paragraph for each rule and mix or pull. */
    void openByRule(Leaf leaf) {
        waits(leaf, lines -> found.open().forEach(g -> lines.say(1, g.text())));
    }

    /** How many paragraphs these are. */
    int rules() {
        return found.open().size();
    }

    /** The same, without entries and clauses but for the first so many. */
    void openInShort(int first, Leaf leaf) {
        waits(leaf, lines -> {
            found.open().stream().limit(first).forEach(g -> lines.say(1, g.text()));
            found.open().stream().skip(first).forEach(g -> lines.say(1, g.shortText()));
        });
    }

    /** The same in so many lines at most: what there is no room for is told by its numbers. */
    void openInShort(Leaf leaf, int most) {
        waits(leaf, lines -> cut(found.open(), Group::shortText, lines, most));
    }

    private static void cut(List<Group> groups, Function<Group, String> text, Leaf lines, int most) {
        int used = lines.lines().size() + 2;
        List<Group> left = new ArrayList<>(groups);
        while (!left.isEmpty() && used + height(text.apply(left.get(0))) <= most) {
            String next = text.apply(left.remove(0));
            used += height(next);
            lines.say(1, next);
        }
        if (!left.isEmpty()) {
            int last = last(groups);
            int first = left.get(0).items().get(0).number();
            lines.say(1, "and " + Leaf.many(last - first + 1, "finding") + " more, " + span(first, last));
        }
    }

    private static int height(String text) {
        Leaf lines = new Leaf(Leaf.PAPER);
        lines.say(1, text);
        return lines.lines().size();
    }

    private static String span(int first, int last) {
        return first == last ? "number " + first : "numbers " + first + " to " + last;
    }

    private static int last(List<Group> groups) {
        List<Numbered.Item> items = groups.get(groups.size() - 1).items();
        return items.get(items.size() - 1).number();
    }

    private interface Writing {
        void to(Leaf lines);
    }

    private void waits(Leaf leaf, Writing findings) {
        Leaf waits = new Leaf(Leaf.PAPER);
        record(waits);
        findings.to(waits);
        leaf.under(paper.whole() ? "NEEDS A DECISION FROM YOU" : "OPEN", waits, "nothing");
    }

    boolean somePlaced() {
        return !found.placed().isEmpty();
    }

    /** Outside a limit and placed: each with who decided and who was told. */
    void placed(Leaf leaf) {
        placed(leaf, lines -> singly(found.placed(), lines));
    }

    /** The same, one paragraph for each rule and mix or pull. */
    void placedByRule(Leaf leaf) {
        placed(leaf, lines -> found.placed().forEach(g -> lines.say(1, g.text() + Entries.phrases(";", g.decided()))));
    }

    /** The same without entries, times and clauses. */
    void placedInShort(Leaf leaf) {
        leaf.heading(placedHeading());
        found.placed().forEach(g -> leaf.say(1, g.shortAndDecided()));
    }

    /** The same in so many lines at most. */
    void placedInShort(Leaf leaf, int most) {
        leaf.heading(placedHeading());
        cut(found.placed(), Group::shortAndDecided, leaf, most - 1);
    }

    /** The same by their numbers alone. */
    void placedByNumber(Leaf leaf) {
        byNumber(placedHeading(), found.placed(), leaf);
    }

    private void placed(Leaf leaf, Writing findings) {
        long open = found.open().stream()
                .flatMap(g -> g.items().stream())
                .filter(i -> i.finding().sort() == Sort.OUTSIDE)
                .count();
        if (found.placed().isEmpty()) {
            leaf.say(0, "PLACED OUTSIDE LIMITS: " + (open == 0 ? "nothing found" : open + " without an answer, above"));
            return;
        }
        leaf.heading(placedHeading());
        Leaf outside = new Leaf(Leaf.PAPER);
        findings.to(outside);
        outside.lines().forEach(leaf::drawn);
        if (open > 0) {
            leaf.say(1, open + " without an answer; see above");
        }
    }

    private String placedHeading() {
        return "PLACED OUTSIDE LIMITS" + (paper.whole() ? ": DECIDED BY, TOLD TO" : ", ANSWERED");
    }

    void also(Leaf leaf) {
        under("ALSO FOUND, AND ANSWERED", found.also(), leaf);
    }

    void alsoByNumber(Leaf leaf) {
        byNumber("ALSO FOUND, AND ANSWERED", found.also(), leaf);
    }

    void notPlaced(Leaf leaf) {
        under("OUTSIDE LIMITS AND NOT PLACED", found.notPlaced(), leaf);
    }

    void notPlacedByNumber(Leaf leaf) {
        byNumber("OUTSIDE LIMITS AND NOT PLACED", found.notPlaced(), leaf);
    }

    private void under(String heading, List<Group> groups, Leaf leaf) {
        if (!groups.isEmpty()) {
            leaf.heading(heading);
            singly(groups, leaf);
        }
    }

    private static void byNumber(String heading, List<Group> groups, Leaf leaf) {
        if (!groups.isEmpty()) {
            leaf.say(0, heading + ": " + numbers(groups));
        }
    }

    /** {@code 3 findings, numbers 9 to 11}. */
    private static String numbers(List<Group> groups) {
        int first = groups.get(0).items().get(0).number();
        int last = last(groups);
        return Leaf.many(last - first + 1, "finding") + ", " + span(first, last);
    }

    private void singly(List<Group> groups, Leaf leaf) {
        for (Group group : groups) {
            if (group.items().size() > MANY && group.alike()) {
                leaf.say(1, group.limit());
                group.items().forEach(item -> item(item, OneFinding.under(item, entries), 2, leaf));
            } else {
                group.items().forEach(item -> item(item, OneFinding.text(item, entries), 1, leaf));
            }
        }
    }

    private void item(Numbered.Item item, String text, int indent, Leaf leaf) {
        leaf.say(indent, text);
        OneFinding.answers(item.finding(), entries, leaf);
    }

    /** What the record itself leaves open, where no finding says it already. */
    private void record(Leaf leaf) {
        if (paper.agreed().isEmpty() || paper.sheet().isEmpty()) {
            String lost = paper.agreed().isEmpty() ? "job revision" : "limit sheet";
            unless(
                    leaf,
                    "plan-not-found",
                    "plan not found: the " + lost
                            + " that was in force is not in the job's folder; nothing is judged by another");
        }
        paper.day().last(Closing.class).map(Standing::entry).ifPresent(c -> disagreed(c, leaf));
        paper.day().last(Review.class).ifPresent(r -> returned(r, leaf));
        int lines = paper.day().uncounted().size();
        if (lines > 0) {
            unless(leaf, "line-not-read", Leaf.many(lines, "line") + " not read, in no total; see CORRECTIONS");
        }
        int left = paper.totals().left().size();
        if (left > 0) {
            leaf.say(1, Leaf.many(left, "entry", "entries") + " not counted, or not in full; see CORRECTIONS");
        }
        int adrift = paper.day().adrift().size();
        if (adrift > 0) {
            unless(
                    leaf,
                    "adrift",
                    Leaf.many(adrift, "correction or answer", "corrections or answers")
                            + " to an entry that is not there");
        }
        if (!paper.day().closed()) {
            String state = paper.day().closedInPart().orElse("not closed");
            unless(leaf, "no-close", "the shift is " + state + "; its last lines are not protected yet");
        }
    }

    private void unless(Leaf leaf, String rule, String text) {
        if (paper.findings().stream().noneMatch(f -> f.rule().equals(rule))) {
            leaf.say(1, text);
        }
    }

    private static void returned(Standing<Review> review, Leaf leaf) {
        if (review.entry().says() == Review.Says.RETURNED) {
            leaf.say(
                    1,
                    "returned by " + review.line().who()
                            + Entries.phrases(":", review.entry().text()));
        }
    }

    private static void disagreed(Closing closing, Leaf leaf) {
        if (closing.theirs() != null && closing.theirs().agreed() == Closing.Agreed.NO) {
            String name = closing.theirs().theirName();
            leaf.say(
                    1,
                    "figures not agreed by " + (name == null ? "the contractor's representative" : name)
                            + Entries.phrases(":", closing.theirs().why()));
        }
    }
}
