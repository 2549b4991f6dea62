package screedbook.diary;

import java.util.List;
import screedbook.entry.HeldBy;
import screedbook.entry.Refused;

/** What came of opening a book for writing. */
public sealed interface Opened {
    /**
     * The book can be written.
     *
     * @param said what was found and done on the way: bytes set aside, a file left as it was; empty when nothing
     */
    record Ready(Book book, List<String> said) implements Opened {}

    /** Somebody else writes in it. */
    record Held(HeldBy by) implements Opened {}

    /** It cannot be written. */
    record No(Refused refused) implements Opened {}
}
