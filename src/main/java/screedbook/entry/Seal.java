package screedbook.entry;

/** The hash of a book's closing line; paper and file can be held against each other by its short form. */
public record Seal(String book, String sha256, int lines) {
    /** The first 16 hex digits in four groups, as it stands on the page. */
    public String shortForm() {
        return sha256.substring(0, 4) + " " + sha256.substring(4, 8) + " " + sha256.substring(8, 12) + " "
                + sha256.substring(12, 16);
    }
}
