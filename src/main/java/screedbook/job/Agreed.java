package screedbook.job;

/**
 * A job as it was in force: the revision, its number and the hash of its line in {@code job.jsonl}.
 *
 * @param sha256 hex of the exact bytes of the revision's line
 */
public record Agreed(Job job, int revision, String sha256) {}
