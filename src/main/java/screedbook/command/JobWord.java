package screedbook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Parameters;
import screedbook.diary.Jobs;
import screedbook.diary.Preferences;
import screedbook.shelf.Shelf;

/** The folder of a job as it is typed. */
final class JobWord {
    @Parameters(paramLabel = "JOB", arity = "0..1", description = "the folder of a job; without it, this folder")
    private Path typed;

    /** What was typed; else this folder; else, where this folder holds no job, the one of the preferences. */
    Path folder() {
        Path here = Path.of(".");
        if (typed != null || isJob(here)) {
            return typed == null ? here : typed;
        }
        return Preferences.read(System.getenv()).value("job").map(Path::of).orElse(here);
    }

    /** @throws Stopped when it is not the folder of a job */
    Shelf shelf() throws Stopped {
        return shelf(folder());
    }

    /** @throws Stopped when it is not the folder of a job */
    static Shelf shelf(Path folder) throws Stopped {
        there(folder);
        if (!isJob(folder)) {
            throw Stopped.disk(
                    folder + " is not the folder of a job: it holds no job.json and no diary" + inside(folder));
        }
        return Shelf.at(folder);
    }

    /** @throws Stopped when there is no such folder, or it cannot be read */
    void there() throws Stopped {
        there(folder());
    }

    private static void there(Path folder) throws Stopped {
        if (!Files.isDirectory(folder)) {
            throw Stopped.disk("there is no folder " + folder + "; right would be the folder of a job");
        }
        Path diary = folder.resolve("diary");
        for (Path each : Files.isDirectory(diary) ? Stream.of(folder, diary).toList() : List.of(folder)) {
            if (!Files.isReadable(each) || !Files.isExecutable(each)) {
                throw Stopped.disk(Reason.permission(each));
            }
        }
    }

    /** A job that lies right in a folder that is none itself; deeper nobody looks on the way to a mistake. */
    private static String inside(Path folder) {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(JobWord::isJob)
                    .sorted()
                    .findFirst()
                    .map(job -> "; right would be one in it, such as " + job)
                    .orElse("; screedbook new " + folder + " makes one of it");
        } catch (IOException e) {
            return "";
        }
    }

    static boolean isJob(Path folder) {
        return Jobs.isJob(folder);
    }
}
