package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** The seeds of random numbers that may not be told before their lot is full. */
public final class LotSeeds {
    private final Path diary;

    private LotSeeds(Path diary) {
        this.diary = diary;
    }

    public static LotSeeds in(JobFolder job) {
        return new LotSeeds(job.diary());
    }

    /**
     * Keeps the seed of a lot's random numbers beside the diaries until the record may tell it. The file is named by the
     * seed's SHA-256, so that it can be found from the line that tells that.
     */
    public void keep(String seed) throws IOException {
        Folder.replace(
                seedFile(Chain.hash(seed.getBytes(StandardCharsets.UTF_8))),
                seed.getBytes(StandardCharsets.UTF_8),
                FileChannel::open);
    }

    /** The seed of a SHA-256, where this folder keeps it and it is the same still. */
    public Optional<String> seed(String sha256) {
        return sha256.matches("[0-9a-f]{64}")
                ? JobFolder.bytes(seedFile(sha256))
                        .filter(bytes -> Chain.hash(bytes).equals(sha256))
                        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                : Optional.empty();
    }

    private Path seedFile(String sha256) {
        return diary.resolve(sha256.substring(0, 16) + ".seed");
    }
}
