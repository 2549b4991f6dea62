package screedbook.desk;

import java.util.Optional;
import screedbook.job.Job;

/**
 * Where the desk stands: what does not change from key to key.
 *
 * @param folder the name of the job's folder, for the heading when the job cannot be read
 * @param book the name of this laptop's book
 * @param who initials of the person at the keys; empty until somebody is chosen
 */
public record Setting(Optional<Job> job, String folder, String book, String who, Look look, boolean monoOnly) {
    Setting by(String initials) {
        return new Setting(job, folder, book, initials, look, monoOnly);
    }

    Setting of(Optional<Job> other) {
        return new Setting(other, folder, book, who, look, monoOnly);
    }

    /** The next look; without colour there is one only. */
    Setting nextLook() {
        Look next = monoOnly ? Look.MONO : Look.values()[(look.ordinal() + 1) % Look.values().length];
        return new Setting(job, folder, book, who, next, monoOnly);
    }
}
