package screedbook.diary;

/**
 * What came of one file when a job was carried to another folder.
 *
 * @param name from the job's folder
 * @param said more about it; empty where the outcome says it all
 */
public record Carried(String name, Outcome outcome, String said) {
    /** What was done, or would be. */
    public enum Outcome {
        /** It was not there and is now. */
        NEW,
        /** It was the beginning of this one; the lines behind were taken over. */
        LONGER,
        SAME,
        /** It goes on where this one ends. */
        AHEAD,
        /** It says something else and stays as it is. */
        DIFFERS,
        /** Somebody writes in it there. */
        HELD,
        /** It is not carried. */
        LEFT,
        /** The disk refused. */
        TROUBLE
    }

    /** Whether somebody has to look. */
    public boolean open() {
        return outcome == Outcome.DIFFERS || outcome == Outcome.HELD;
    }
}
