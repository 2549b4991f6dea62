/**
 * One job's folder with everything its shifts are judged by, read together. Only the rooms that start something,
 * {@code command} and {@code term}, use it; it reads and never writes.
 */
package screedbook.shelf;
