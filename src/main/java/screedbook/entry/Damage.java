package screedbook.entry;

/**
 * Something wrong with a file of the record, named by its line.
 *
 * @param row line from 1; 0 when it speaks of the whole file
 */
public record Damage(String file, int row, String said) {}
