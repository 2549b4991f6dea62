package screedbook.entry;

/**
 * The disk's word that something was not written; whoever asked still has it.
 *
 * @param said what happened, in a sentence
 * @param again whether the same place may be tried again; else the record has to go on in another folder
 */
public record Refused(String said, boolean again) {}
