package screedbook.report;

import screedbook.check.Finding;
import screedbook.entry.Answer;
import screedbook.entry.Moment;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;

/** One finding as a page tells it: by itself, and with all that was answered to it. */
final class OneFinding {
    private OneFinding() {}

    /** With its number on the page: {@code 4 OUT  21:38 ticket 48217 (paver/17): at the paver 264 °F; at least 270 °F}. */
    static String text(Numbered.Item item, Entries entries) {
        return item.number() + " " + text(item.finding(), entries);
    }

    /** The same without what it has in common with others of its rule. */
    static String under(Numbered.Item item, Entries entries) {
        Finding finding = item.finding();
        String of = finding.of().isEmpty() ? "" : entries.name(finding.of().get(0)) + ": ";
        return item.number() + " " + of + finding.seen();
    }

    static String text(Finding finding, Entries entries) {
        String of = finding.of().isEmpty() ? "" : entries.name(finding.of().get(0)) + ": ";
        return finding.sort().mark() + "  " + of + seen(finding);
    }

    /** What was seen, the limit and its clause. */
    static String seen(Finding finding) {
        return finding.seen() + (finding.limit().isEmpty() ? "" : "; " + finding.limit()) + clause(finding);
    }

    static String clause(Finding finding) {
        return finding.clause().isEmpty() ? "" : " (" + finding.clause() + ")";
    }

    /** What was written about it: what the ticket itself says of the load, then each answer. */
    static void answers(Finding finding, Entries entries, Leaf leaf) {
        finding.of().stream()
                .limit(1)
                .flatMap(of -> entries.find(of).stream())
                .filter(s -> s.entry() instanceof Ticket)
                .map(s -> ((Ticket) s.entry()).fate())
                .map(fate ->
                        Entries.phrases("", fate.reason(), "decided by", fate.decidedBy(), "told to", fate.toldTo()))
                .filter(said -> !said.isEmpty())
                .forEach(said -> leaf.say(5, "on the ticket: " + said));
        finding.answers().forEach(answer -> leaf.say(5, answer(answer)));
    }

    private static String answer(Standing<Answer> answer) {
        Answer a = answer.entry();
        String when = answer.time() == null ? Moment.clock(answer.line().keyed()) : Moment.clock(answer.time());
        String told = Entries.phrases("", a.text(), "decided by", a.decidedBy(), "told to", a.toldTo());
        return when + " " + answer.line().who() + (told.isEmpty() ? " answered" : ": " + told);
    }
}
