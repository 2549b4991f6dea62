package screedbook.diary;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.job.Job;
import screedbook.job.JobReading;

/** A job file being read: JSON with comments, every trouble told with its line, not only the first. */
final class JobText {
    private final String file;
    private final String[] lines;
    private final Map<String, Integer> places = new HashMap<>();
    private final List<Trouble> troubles = new ArrayList<>();

    private JobText(String file, byte[] bytes) {
        this.file = file;
        this.lines = new String(bytes, StandardCharsets.UTF_8).split("\r?\n|\r", -1);
    }

    /** The plain values of a job file and what they come to. */
    record Found(Map<String, Object> values, JobRead read) {}

    static Found read(String file, byte[] bytes) {
        byte[] text = withoutMark(bytes);
        return new JobText(file, text).found(text);
    }

    /** What the values of an accepted revision come to; it was without trouble when it was accepted. */
    static Optional<Job> job(Map<String, Object> values) {
        return new JobText("job.jsonl", new byte[0]).settled(values);
    }

    static byte[] withoutMark(byte[] bytes) {
        boolean mark =
                bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
        return mark ? Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    }

    private Found found(byte[] bytes) {
        try {
            Map<String, Object> values = Json.file(bytes, places);
            Optional<Job> job = settled(values);
            return new Found(values, new JobRead(job, sorted()));
        } catch (Json.NotJson e) {
            add(e.line(), "character " + e.column() + ": " + e.getMessage(), "JSON; comments may stand in it");
            return new Found(Map.of(), new JobRead(Optional.empty(), sorted()));
        }
    }

    private List<Trouble> sorted() {
        return troubles.stream().sorted(Comparator.comparing(Trouble::line)).toList();
    }

    private Optional<Job> settled(Map<String, Object> values) {
        JobReading.Read read = JobReading.of(values);
        read.doubts().forEach(doubt -> at(doubt.path(), doubt.said(), doubt.right()));
        if (values.get("id") instanceof String id && !FileName.isSafe(id)) {
            at("id", "id is \"" + id + "\"", "lower case letters, digits and dashes, at most 32");
        }
        return troubles.isEmpty() ? read.job() : Optional.empty();
    }

    private void at(String path, String said, String right) {
        add(places.getOrDefault(path, path.isEmpty() ? 1 : 0), said, right);
    }

    private void add(int line, String said, String right) {
        String excerpt = line >= 1 && line <= lines.length ? lines[line - 1] : "";
        troubles.add(new Trouble(file, line, excerpt, said, right));
    }
}
