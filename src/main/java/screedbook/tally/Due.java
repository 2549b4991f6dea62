package screedbook.tally;

/**
 * A check that the job asks for, and when.
 *
 * @param what as on the shift screen: {@code temperature}
 * @param when {@code NOW}, {@code in 3 loads}, {@code in 84 T}, {@code not yet}
 * @param now whether it is due or over
 * @param done how often it was done in this shift
 * @param asked how often it was due up to now
 */
public record Due(String id, String what, String when, boolean now, int done, int asked, Working working) {}
