package screedbook.diary;

import screedbook.job.Agreed;

/** What became of a job sheet that was to be written. */
public sealed interface Rewritten {
    /**
     * It is on the disk and accepted.
     *
     * @param said what the person has to know beside that; may be empty
     */
    record Done(Agreed agreed, String said) implements Rewritten {}

    /**
     * Nothing was written, or not all of it, as the sentence says.
     *
     * @param elsewhere whether somebody else wrote the files since they were read
     */
    record Not(String said, boolean elsewhere) implements Rewritten {}
}
