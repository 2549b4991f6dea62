package screedbook.spec;

/**
 * One row of a sheet in words, for a reader.
 *
 * @param line of the sheet's file, from 1
 * @param of the quantity or the demand, as its word
 * @param figures what it limits to, or what it does instead: {@code at least 45 °F}
 * @param when the cases for which it holds; empty where it holds for all
 * @param citation document with edition, and clause
 * @param known {@code read} or {@code common practice}
 * @param says the row's own sentence
 */
public record Printed(
        int line, String id, String of, String figures, String when, String citation, String known, String says) {}
