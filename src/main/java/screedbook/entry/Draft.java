package screedbook.entry;

import java.util.Map;

/**
 * A half-typed entry that survives another screen, a crash and a restart.
 *
 * @param typed the text of each blank that was touched, by its name without unit
 * @param at the blank that the cursor stands in
 */
public record Draft(Kind kind, Source source, Map<String, String> typed, String at) {}
