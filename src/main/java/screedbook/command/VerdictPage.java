package screedbook.command;

import screedbook.diary.FileRead;
import screedbook.diary.JobFolder;
import screedbook.diary.Verdict;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;

/** What was found when a record was looked at, file by file. */
final class VerdictPage {
    private final JobFolder folder;
    private final Verdict verdict;
    private final StringBuilder page = new StringBuilder();

    VerdictPage(JobFolder folder, Verdict verdict) {
        this.folder = folder;
        this.verdict = verdict;
    }

    String text() {
        say(Shown.text(folder.path().toString()));
        verdict.files().forEach(this::file);
        seals();
        if (!verdict.helpers().isEmpty()) {
            say("  beside the record and no part of it:");
            verdict.helpers().forEach(helper -> say("    " + Shown.text(helper)));
        }
        verdict.damages().forEach(damage -> say(Pages.text(damage)));
        say(sum());
        if (verdict.files().stream().anyMatch(VerdictPage::open)) {
            say("The last lines of a shift that is not closed are not protected yet.");
        }
        if (verdict.sound()) {
            say("Hashes find accidents and casual edits, not somebody who computes all of them anew: hold the");
            say("seals above against those on the printed pages.");
        }
        return page.toString();
    }

    private void file(FileRead file) {
        boolean diary = !file.file().startsWith("job");
        String state = diary ? file.closed() ? ", closed" : ", open" : "";
        say("  " + Shown.text(file.file()) + "  " + lines(file.lines()) + state);
        if (!file.damages().isEmpty() && !file.stands().isEmpty()) {
            say("    " + file.stands());
        }
        file.notes().forEach(note -> say("    " + Shown.text(note)));
    }

    private void seals() {
        for (ShiftId shift : folder.shifts()) {
            folder.shift(shift)
                    .books()
                    .forEach(book -> book.seal()
                            .ifPresent(
                                    seal -> say("  seal of " + shift + " " + seal.book() + "  " + seal.shortForm())));
        }
    }

    private String sum() {
        int lines = verdict.files().stream().mapToInt(FileRead::lines).sum();
        String looked = count(verdict.files().size(), "file") + ", " + lines(lines);
        return verdict.sound()
                ? "as it was written: " + looked
                : "not as it was written: " + count(verdict.damages().size(), "place") + " in " + looked;
    }

    private static boolean open(FileRead file) {
        return !file.closed() && !file.file().startsWith("job");
    }

    private static String lines(int count) {
        return count(count, "line");
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private void say(String line) {
        page.append(line).append('\n');
    }
}
