package screedbook.job;

import java.time.OffsetDateTime;

/**
 * An accepted revision of a job with who accepted it, when and why.
 *
 * @param when when the machine wrote it; null when its line does not say so
 * @param why null when no reason was given
 */
public record Revision(Agreed agreed, String who, OffsetDateTime when, String why) {
    public int number() {
        return agreed.revision();
    }

    public Job job() {
        return agreed.job();
    }
}
