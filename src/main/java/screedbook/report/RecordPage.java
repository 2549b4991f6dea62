package screedbook.report;

import java.util.List;
import screedbook.entry.Damage;
import screedbook.entry.Shown;

/** What was found when a record was looked at, as plain text. */
public final class RecordPage {
    private final RecordPaper paper;
    private final StringBuilder page = new StringBuilder();

    private RecordPage(RecordPaper paper) {
        this.paper = paper;
    }

    /** The pages; behind those of many jobs stands which of them are not as they were written. */
    public static String text(List<RecordPaper> papers) {
        StringBuilder pages = new StringBuilder();
        papers.forEach(paper -> pages.append(text(paper)));
        return papers.size() < 2
                ? pages.toString()
                : pages.append(together(papers)).toString();
    }

    private static String together(List<RecordPaper> papers) {
        List<RecordPaper> others =
                papers.stream().filter(paper -> !paper.sound()).toList();
        StringBuilder said = new StringBuilder();
        said.append("of ").append(papers.size()).append(" jobs ").append(papers.size() - others.size());
        said.append(papers.size() - others.size() == 1 ? " is as it was written" : " are as they were written");
        said.append(others.isEmpty() ? "\n" : ", not so:\n");
        others.forEach(
                paper -> said.append("  ").append(Shown.text(paper.folder())).append('\n'));
        return said.toString();
    }

    /** The page; every line ends with a line feed. */
    public static String text(RecordPaper paper) {
        return new RecordPage(paper).write();
    }

    private String write() {
        say(paper.folder());
        paper.files().forEach(this::file);
        paper.seals().forEach(this::seal);
        if (!paper.beside().isEmpty()) {
            say("  beside the record and no part of it:");
            paper.beside().forEach(this::beside);
        }
        paper.damages().forEach(damage -> say(text(damage)));
        say(sum());
        if (paper.open()) {
            say("The last lines of a shift that is not closed are not protected yet.");
        }
        if (paper.sound()) {
            say("Hashes find accidents and casual edits, not somebody who computes all of them anew: hold the");
            say("seals above against those on the printed pages.");
        }
        return page.toString();
    }

    private void file(RecordPaper.Looked file) {
        String state = file.closed() ? ", closed" : ", open";
        say("  " + file.name() + "  " + Leaf.many(file.lines(), "line") + (file.diary() ? state : ""));
        if (!file.damages().isEmpty() && !file.stands().isEmpty()) {
            say("    " + file.stands());
        }
        file.notes().forEach(note -> say("    " + note));
    }

    private void seal(RecordPaper.Sealed sealed) {
        say("  seal of " + sealed.shift() + " " + sealed.seal().book() + "  "
                + sealed.seal().shortForm());
        if (sealed.expected() && sealed.signed().isEmpty()) {
            say("    not signed");
        }
        for (RecordPaper.Signed each : sealed.signed()) {
            say("    signed by " + each.who() + " at " + each.time() + " with the key " + each.key()
                    + (each.named() ? "" : ", which the job does not name for " + each.who()));
        }
    }

    private void beside(RecordPaper.Beside file) {
        say("    " + file.file());
        if (!file.said().isEmpty()) {
            say("      " + file.said());
        }
    }

    private String sum() {
        String looked = Leaf.many(paper.files().size(), "file") + ", " + Leaf.many(paper.lines(), "line");
        return paper.sound()
                ? "as it was written: " + looked
                : "not as it was written: " + Leaf.many(paper.damages().size(), "place") + " in " + looked;
    }

    private static String text(Damage damage) {
        return damage.file() + (damage.row() == 0 ? "" : ":" + damage.row()) + ": " + damage.said();
    }

    private void say(String line) {
        page.append(Shown.text(line)).append('\n');
    }
}
