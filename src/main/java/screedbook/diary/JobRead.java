package screedbook.diary;

import java.util.List;
import java.util.Optional;
import screedbook.job.Job;

/**
 * A job file as it was read.
 *
 * @param job settled; empty when there is any trouble
 * @param troubles all of them, by line
 */
public record JobRead(Optional<Job> job, List<Trouble> troubles) {}
