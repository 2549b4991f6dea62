package screedbook.entry;

import java.util.Map;

/**
 * A half-typed entry that survives another screen, a crash and a restart.
 *
 * @param of the entry that gets other values; null for a new one
 * @param typed the text of each blank that was touched, by its name without unit
 * @param at the blank that the cursor stands in
 */
public record Draft(Kind kind, Source source, Ref of, Map<String, String> typed, String at) {}
