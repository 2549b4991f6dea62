/**
 * The commands other than the desk: words in, a page and an exit code out. What may go wrong is said in a sentence on
 * the error output.
 */
package screedbook.command;
