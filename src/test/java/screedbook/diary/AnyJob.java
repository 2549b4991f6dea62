package screedbook.diary;

import java.util.Map;
import screedbook.job.Job;

/** The reader of job files, fed with any bytes: a job, or every trouble with its line. */
public final class AnyJob {
    private AnyJob() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        JobText.Found found = JobText.read("job.json", bytes);
        if (found.read().job().isEmpty() == found.read().troubles().isEmpty()) {
            throw new AssertionError("neither a job nor a trouble, or both");
        }
        found.read().troubles().forEach(Trouble::text);
        found.read().job().ifPresent(job -> again(found.values(), job));
    }

    /** What is written of a job reads as the same job. */
    private static void again(Map<String, Object> values, Job job) {
        if (!JobText.job(values).map(job::equals).orElse(false)) {
            throw new AssertionError("its revision is another job");
        }
        byte[] written = JobPaper.bytes("", values);
        if (!JobText.read("job.json", written).read().job().map(job::equals).orElse(false)) {
            throw new AssertionError("written and read again it is another job");
        }
    }
}
