package screedbook.diary;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import screedbook.entry.ShiftId;

/**
 * The name of a file of chained lines: its stem ({@code 2026-06-03-night.paver}, {@code job}) and its segment ('a' is
 * the first file and is not written, 'b' and up follow a dead disk).
 *
 * <p>Names are lower case letters, digits, hyphens and dots, so that no file system takes two of them for one, and none
 * is a device of Windows.
 */
record FileName(String stem, char segment) {
    private static final Pattern SAFE = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,30}[a-z0-9])?");
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]");
    private static final Pattern SEGMENT_END = Pattern.compile(".*-[b-z]");
    private static final Pattern FORM =
            Pattern.compile("([a-z0-9-]{1,32})\\.([a-z0-9-]{1,32}?)(?:\\.r([1-9][0-9]?))?(?:-([b-z]))?\\.jsonl");

    /** The revisions of what was agreed. */
    static final FileName JOB = new FileName("job", 'a');

    /** What the name of a diary says; revision 1 is the diary, 2 and up came after the close. */
    record Diary(ShiftId shift, String book, int revision, FileName name) {}

    FileName {
        if (segment < 'a' || segment > 'z') {
            throw new IllegalArgumentException("no such segment: " + segment);
        }
    }

    /**
     * The first file of a shift in a book.
     *
     * @param revision 1 to 99
     * @throws IllegalArgumentException when the book has no safe name
     */
    static FileName of(ShiftId shift, String book, int revision) {
        if (!isBook(book)) {
            throw new IllegalArgumentException("not a safe name for a book: " + book);
        }
        if (revision < 1 || revision > 99) {
            throw new IllegalArgumentException("no such revision: " + revision);
        }
        return new FileName(shift + "." + book + (revision == 1 ? "" : ".r" + revision), 'a');
    }

    /** Whether the text can be part of a file name on every file system, as it is. */
    static boolean isSafe(String text) {
        return SAFE.matcher(text).matches() && !DEVICE.matcher(text).matches();
    }

    /** A safe name that does not end like a segment ("paver-b" could be the second file of "paver"). */
    static boolean isBook(String text) {
        return isSafe(text) && !SEGMENT_END.matcher(text).matches();
    }

    /** The safe name nearest to what was typed ("Paver 2" is "paver-2"); empty when nothing safe is left of it. */
    static Optional<String> slug(String typed) {
        String letters = Normalizer.normalize(typed, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String cut = letters.substring(0, Math.min(32 + (letters.startsWith("-") ? 1 : 0), letters.length()));
        return Optional.of(cut.replaceAll("^-|-$", "")).filter(FileName::isSafe);
    }

    /** Reads the name of a diary back; empty when the text is not one. */
    static Optional<Diary> diary(String text) {
        Matcher found = FORM.matcher(text);
        if (!found.matches() || !isBook(found.group(2))) {
            return Optional.empty();
        }
        int revision = found.group(3) == null ? 1 : Integer.parseInt(found.group(3));
        char segment = found.group(4) == null ? 'a' : found.group(4).charAt(0);
        return shift(found.group(1))
                .map(shift -> new Diary(
                        shift,
                        found.group(2),
                        revision,
                        new FileName(of(shift, found.group(2), revision).stem(), segment)))
                .filter(diary -> diary.name().text().equals(text));
    }

    private static Optional<ShiftId> shift(String text) {
        try {
            return Optional.of(ShiftId.of(text));
        } catch (IllegalArgumentException | DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The file name: {@code 2026-06-03-night.paver.jsonl}, {@code 2026-06-03-night.paver.r2-b.jsonl}. */
    String text() {
        return stem + (segment == 'a' ? "" : "-" + segment) + ".jsonl";
    }

    /** The name of a file beside the diary that serves all segments of this file: {@code 2026-06-03-night.paver.lock}. */
    String beside(String kind) {
        return stem + "." + kind;
    }

    /** The first file, or a later segment of it. */
    FileName at(char letter) {
        return new FileName(stem, letter);
    }

    /** The segment after this one; empty after "z". */
    Optional<FileName> next() {
        return segment == 'z' ? Optional.empty() : Optional.of(at((char) (segment + 1)));
    }
}
