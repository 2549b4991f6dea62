package screedbook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Parameters;
import screedbook.diary.Jobs;

/** Folders of jobs, or folders that hold any number of them, as they are typed. */
final class PathsWord {
    @Parameters(
            paramLabel = "PATH",
            arity = "0..*",
            description = "folders of jobs, or folders that hold any number of them; without one, this folder")
    private List<Path> paths = new ArrayList<>();

    /**
     * Each job once, however often it was named: sums must not hold it twice.
     *
     * @throws Stopped when a folder is not there or holds no job
     */
    List<Path> jobs() throws Stopped, IOException {
        Map<Path, Path> jobs = new LinkedHashMap<>();
        for (Path path : paths.isEmpty() ? List.of(Path.of(".")) : paths) {
            if (!Files.isDirectory(path)) {
                throw Stopped.disk(
                        "there is no folder " + path + "; right would be the folder of a job, or one that holds jobs");
            }
            List<Path> found = Jobs.in(path);
            if (found.isEmpty()) {
                throw Stopped.disk("neither " + path
                        + " nor a folder in it is the folder of a job: there is no job.json and no diary");
            }
            for (Path job : found) {
                jobs.putIfAbsent(job.toRealPath(), job);
            }
        }
        return List.copyOf(jobs.values());
    }
}
