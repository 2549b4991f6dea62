package screedbook.check;

import java.util.Optional;
import screedbook.job.Agreed;
import screedbook.spec.SpecSheet;

/**
 * The job revision and the limit sheet that were in force from a line on; empty where they cannot be found by their
 * hash, and then nothing else takes their place.
 *
 * @param from the number of the opening or plan line in its book
 */
public record InForce(String book, int from, Optional<Agreed> agreed, Optional<SpecSheet> sheet) {}
