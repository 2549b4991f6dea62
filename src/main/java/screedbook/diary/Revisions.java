package screedbook.diary;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Blank;
import screedbook.entry.Fields;
import screedbook.entry.Moment;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.job.Revision;
import screedbook.unit.UnitSystem;

/** What was agreed, revision by revision: {@code job.jsonl}, each line a whole job with who accepted it, when and why. */
final class Revisions {
    private static final Map<Object, UnitSystem> SYSTEMS = Map.of("us", UnitSystem.US, "metric", UnitSystem.METRIC);

    private final Path folder;

    Revisions(Path folder) {
        this.folder = folder;
    }

    /** A revision with the plain values of its job. */
    private record Held(Revision revision, Map<String, Object> values) {
        Agreed agreed() {
            return revision.agreed();
        }
    }

    /** The system of units of the revision whose line has this hash, without reading the rest of the job. */
    Optional<UnitSystem> system(String sha256) {
        for (Path file : files()) {
            try {
                for (RawLine line : Chain.walk(Recovery.read(file), null).lines()) {
                    if (Chain.hash(line.bytes()).equals(sha256)
                            && Json.line(line.bytes()).get("agreed") instanceof Map<?, ?> agreed) {
                        return Optional.ofNullable(SYSTEMS.get(agreed.get("units")));
                    }
                }
            } catch (IOException | Json.NotJson e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    List<Agreed> all() {
        return held().stream().map(Held::agreed).toList();
    }

    /** Every revision with who accepted it, oldest first. */
    List<Revision> history() {
        return held().stream().map(Held::revision).toList();
    }

    /** Whether the newest revision says the same as these values; not when there is none. */
    boolean newestSays(Map<String, Object> values) {
        List<Held> held = held();
        return !held.isEmpty() && held.get(held.size() - 1).values().equals(values);
    }

    /** The number that the next revision gets. */
    int next() {
        List<Held> held = held();
        return held.isEmpty() ? 1 : held.get(held.size() - 1).agreed().revision() + 1;
    }

    /** The files of the revisions that are there, in order. */
    List<Path> files() {
        List<Path> files = new ArrayList<>();
        for (Optional<FileName> at = Optional.of(FileName.JOB);
                at.isPresent();
                at = at.get().next()) {
            Path file = folder.resolve(at.get().text());
            if (Files.isRegularFile(file)) {
                files.add(file);
            }
        }
        return files;
    }

    private List<Held> held() {
        List<Held> held = new ArrayList<>();
        for (Path file : files()) {
            try {
                for (RawLine line : Chain.walk(Recovery.read(file), null).lines()) {
                    revision(line.bytes()).ifPresent(held::add);
                }
            } catch (IOException e) {
                return held;
            }
        }
        return held;
    }

    @SuppressWarnings("unchecked")
    private static Optional<Held> revision(byte[] line) {
        try {
            Map<String, Object> values = Json.line(line);
            if (values.get("agreed") instanceof Map<?, ?> agreed && values.get("revision") instanceof BigDecimal n) {
                Map<String, Object> plain = (Map<String, Object>) agreed;
                return JobText.job(plain)
                        .map(job -> new Agreed(job, n.intValue(), Chain.hash(line)))
                        .map(held -> new Held(told(held, values), plain));
            }
            return Optional.empty();
        } catch (Json.NotJson e) {
            return Optional.empty();
        }
    }

    private static Revision told(Agreed agreed, Map<String, Object> values) {
        Said said = Fields.build(Said.class, values).value();
        return new Revision(agreed, said.who() == null ? "" : said.who(), said.keyed(), said.reason());
    }

    /** What a revision's line says beside the job. */
    record Said(
            @Blank("keyed") OffsetDateTime keyed,
            @Blank("who") String who,
            @Blank("reason") String reason) {}

    /**
     * Takes a job as agreed: a new line, or the revision that says the same already and is the newest.
     *
     * @throws IOException when it cannot be written; what was agreed before stands
     */
    Agreed accept(Map<String, Object> values, Job job, String who, OffsetDateTime when, String why) throws IOException {
        List<Held> held = held();
        if (!held.isEmpty() && held.get(held.size() - 1).values().equals(values)) {
            return held.get(held.size() - 1).agreed();
        }
        int revision = held.isEmpty() ? 1 : held.get(held.size() - 1).agreed().revision() + 1;
        Access access =
                LineFile.open(folder, FileName.JOB, Book.words(who, when), Chain.NOTHING_BEFORE, FileChannel::open);
        if (access instanceof Access.Opened opened) {
            try (LineFile file = opened.file()) {
                return new Agreed(job, revision, written(file, line(revision, values, job, who, when, why)));
            }
        }
        throw new IOException(
                access instanceof Appended.Refused refused
                        ? refused.sentence()
                        : "job.jsonl: "
                                + Book.heldBy(((Access.Taken) access).words()).text());
    }

    /**
     * Whether a job would fit in a line, looked at before anything is written.
     *
     * @throws IOException when it would not
     */
    void fits(Map<String, Object> values, Job job, String who, OffsetDateTime when, String why) throws IOException {
        Map<String, Object> line = line(next(), values, job, who, when, why);
        line.put("prev", Chain.NOTHING_BEFORE);
        whole(Json.write(line));
    }

    private static void whole(byte[] bytes) throws IOException {
        if (!Chain.looksWhole(bytes)) {
            throw new IOException("job.jsonl: a job of " + bytes.length + " bytes is longer than a line may be");
        }
    }

    private static Map<String, Object> line(
            int revision, Map<String, Object> values, Job job, String who, OffsetDateTime when, String why) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("format", 1);
        line.put("revision", revision);
        line.put("job", job.id());
        line.put("keyed", Moment.keyed(when));
        line.put("who", who);
        if (why != null) {
            line.put("reason", why);
        }
        line.put("agreed", values);
        return line;
    }

    private static String written(LineFile file, Map<String, Object> line) throws IOException {
        line.put("prev", file.head());
        byte[] bytes = Json.write(line);
        whole(bytes);
        if (file.append(bytes) instanceof Appended.Refused refused) {
            throw new IOException(refused.sentence());
        }
        return file.head();
    }
}
