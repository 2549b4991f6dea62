package screedbook.diary;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of one diary file: its shift, its book, its revision (1 is the diary, 2 and up came after the close) and its
 * segment ('a' is the first file and is not written, 'b' and up follow a dead disk).
 *
 * <p>Names are lower case letters, digits and hyphens, so that no file system takes two of them for one, and none is a
 * device of Windows.
 */
record FileName(String shift, String book, int revision, char segment) {
    private static final Pattern SAFE = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,30}[a-z0-9])?");
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]");
    private static final Pattern SEGMENT_END = Pattern.compile(".*-[b-z]");
    private static final Pattern FORM =
            Pattern.compile("([a-z0-9-]{1,32})\\.([a-z0-9-]{1,32}?)(?:\\.r([1-9][0-9]?))?(?:-([b-z]))?\\.jsonl");

    FileName {
        if (!isSafe(shift)) {
            throw new IllegalArgumentException("not a safe name for a shift: " + shift);
        }
        if (!isBook(book)) {
            throw new IllegalArgumentException("not a safe name for a book: " + book);
        }
        if (revision < 1 || revision > 99 || segment < 'a' || segment > 'z') {
            throw new IllegalArgumentException("no such revision or segment: " + revision + ", " + segment);
        }
    }

    /** The first file of a shift in a book. */
    static FileName of(String shift, String book) {
        return new FileName(shift, book, 1, 'a');
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

    /** Reads a name back; empty when the text is not the name of a diary file. */
    static Optional<FileName> parse(String text) {
        Matcher found = FORM.matcher(text);
        if (!found.matches() || !isSafe(found.group(1)) || !isBook(found.group(2))) {
            return Optional.empty();
        }
        int revision = found.group(3) == null ? 1 : Integer.parseInt(found.group(3));
        char segment = found.group(4) == null ? 'a' : found.group(4).charAt(0);
        FileName name = new FileName(found.group(1), found.group(2), revision, segment);
        return name.text().equals(text) ? Optional.of(name) : Optional.empty();
    }

    /** The file name: {@code 2026-06-03-night.paver.jsonl}, {@code 2026-06-03-night.paver.r2-b.jsonl}. */
    String text() {
        return stem() + (segment == 'a' ? "" : "-" + segment) + ".jsonl";
    }

    /** The name of a helper that serves all segments of this file: {@code 2026-06-03-night.paver.lock}. */
    String helper(String kind) {
        return stem() + "." + kind;
    }

    /** The segment after this one; empty after "z". */
    Optional<FileName> next() {
        return segment == 'z'
                ? Optional.empty()
                : Optional.of(new FileName(shift, book, revision, (char) (segment + 1)));
    }

    private String stem() {
        return shift + "." + book + (revision == 1 ? "" : ".r" + revision);
    }
}
