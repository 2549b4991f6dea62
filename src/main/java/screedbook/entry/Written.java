package screedbook.entry;

/** A line of a diary as it was read: ours, of a kind that this program does not know, or unreadable. */
public sealed interface Written permits Line, Foreign, Unreadable {
    /** The book that it stands in. */
    String book();

    /** Its place in the file, from 1. */
    int row();
}
