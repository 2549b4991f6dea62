package screedbook.diary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The folders of jobs below a place on the disk. */
public final class Jobs {
    /** An archive of agencies, districts and years is not nested deeper than this. */
    private static final int DEEPEST = 8;

    private Jobs() {}

    /** Whether a folder holds a job: its file, its accepted revisions or its diaries. */
    public static boolean isJob(Path folder) {
        return Stream.of("job.json", "job.jsonl", "diary").anyMatch(name -> Files.exists(folder.resolve(name)));
    }

    /**
     * The job in a folder, or every job below it in the order of names. Links are not followed, and what is left of a
     * copy that was cut short is no job.
     *
     * @throws IOException when a folder on the way cannot be read
     */
    public static List<Path> in(Path folder) throws IOException {
        List<Path> jobs = new ArrayList<>();
        add(folder, DEEPEST, jobs);
        return List.copyOf(jobs);
    }

    private static void add(Path folder, int deeper, List<Path> jobs) throws IOException {
        if (isJob(folder)) {
            jobs.add(folder);
            return;
        }
        if (deeper == 0) {
            return;
        }
        List<Path> inside;
        try (Stream<Path> found = Files.list(folder)) {
            inside = found.filter(each -> Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS))
                    .filter(each -> !Archive.isUnfinished(each))
                    .sorted()
                    .toList();
        }
        for (Path each : inside) {
            add(each, deeper - 1, jobs);
        }
    }
}
