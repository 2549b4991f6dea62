package screedbook.entry;

import java.util.List;
import java.util.Map;

/**
 * A half-typed entry that survives another screen, a crash and a restart.
 *
 * @param of the entry that gets other values; null for a new one
 * @param typed the text of each blank that was touched, by its name without unit
 * @param at the blank that the cursor stands in
 * @param after how many lines its book had when it was kept; -1 when that is not known
 */
public record Draft(Kind kind, Source source, Ref of, Map<String, String> typed, String at, int after) {
    public Draft(Kind kind, Source source, Ref of, Map<String, String> typed, String at) {
        this(kind, source, of, typed, at, -1);
    }

    /** The same, kept when its book had so many lines. */
    public Draft after(int lines) {
        return new Draft(kind, source, of, typed, at, lines);
    }

    /** The kind of the line that it becomes. */
    public Kind becomes() {
        return of == null ? kind : Kind.AMEND;
    }

    /**
     * Whether it became a line since: its book, which has these lines by now, has one of its kind behind those that it
     * had then.
     */
    public boolean written(List<Written> lines) {
        return after >= 0
                && lines.stream().skip(after).anyMatch(each -> each instanceof Line line && line.kind() == becomes());
    }
}
