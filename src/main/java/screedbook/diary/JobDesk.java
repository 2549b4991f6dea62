package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Fields;
import screedbook.job.Agreed;
import screedbook.job.Job;

/** The files that a job is prepared in, read to be revised and written anew as a whole. */
final class JobDesk {
    private static final String DRAFT = "job.json.draft";

    private final Path folder;

    JobDesk(Path folder) {
        this.folder = folder;
    }

    private Path file(String name) {
        return folder.resolve(name);
    }

    /** The bytes of a file; null when it is not there. */
    private byte[] bytes(String name) throws IOException {
        try {
            return Folder.read(file(name));
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    JobSheet read() throws IOException {
        byte[] job = bytes("job.json");
        byte[] people = bytes("people.json");
        List<Trouble> unread = new ArrayList<>();
        Map<String, Object> values = values("job.json", job, unread);
        List<Map<String, Object>> contacts = contacts(values("people.json", people, unread));
        String stamp = stamp(job, people);
        return new JobSheet(
                values,
                contacts,
                stamp,
                job != null && JobPaper.commented(job),
                job != null,
                new Revisions(folder).history(),
                typed(stamp),
                List.copyOf(unread));
    }

    /** What was typed of these very files; what was typed of others is left where it is. */
    @SuppressWarnings("unchecked")
    private Map<String, Object> typed(String stamp) throws IOException {
        byte[] draft = bytes(DRAFT);
        Map<String, Object> kept = values(DRAFT, draft, new ArrayList<>());
        return stamp.equals(kept.get("stamp")) && kept.get("typed") instanceof Map<?, ?> typed
                ? (Map<String, Object>) typed
                : Map.of();
    }

    /** Keeps what is typed; it outlives the program, not a power cut. */
    void keep(String stamp, Map<String, Object> typed) throws IOException {
        Map<String, Object> draft = new LinkedHashMap<>();
        draft.put("stamp", stamp);
        draft.put("typed", typed);
        Folder.place(file(DRAFT), JobPaper.bytes("", draft));
    }

    void drop() throws IOException {
        Files.deleteIfExists(file(DRAFT));
    }

    private static String stamp(byte[] job, byte[] people) {
        return (job == null ? "none" : Chain.hash(job)) + " " + (people == null ? "none" : Chain.hash(people));
    }

    private static Map<String, Object> values(String file, byte[] bytes, List<Trouble> unread) {
        try {
            return bytes == null ? Map.of() : Json.file(JobText.withoutMark(bytes), new HashMap<>());
        } catch (Json.NotJson e) {
            String said = "character " + e.column() + ": " + e.getMessage();
            unread.add(new Trouble(file, e.line(), "", said, "JSON; comments may stand in it"));
            return Map.of();
        }
    }

    private static List<Map<String, Object>> contacts(Map<String, Object> people) {
        List<Map<String, Object>> contacts = new ArrayList<>();
        people.forEach((initials, reached) -> {
            Map<String, Object> contact = new LinkedHashMap<>();
            contact.put("initials", initials);
            if (reached instanceof Map<?, ?> map) {
                map.forEach((key, value) -> contact.put(key.toString(), value));
            }
            contacts.add(contact);
        });
        return contacts;
    }

    /**
     * Writes the job as revised and accepts it.
     *
     * @throws IOException when the disk refuses before anything was changed
     */
    Rewritten write(JobSheet sheet, String who, OffsetDateTime when, String why) throws IOException {
        byte[] old = bytes("job.json");
        byte[] oldPeople = bytes("people.json");
        if (!stamp(old, oldPeople).equals(sheet.stamp())) {
            return new Rewritten.Not("the files were changed by somebody else", true);
        }
        Map<String, Object> plain =
                Fields.plain(Fields.build(Job.class, sheet.values()).value());
        byte[] text = JobPaper.bytes(JobPaper.JOB_HEAD, plain);
        JobText.Found found = JobText.read("job.json", text);
        if (found.read().job().isEmpty() || !found.values().equals(plain)) {
            List<Trouble> troubles = found.read().troubles();
            String first = troubles.isEmpty()
                    ? "it would not read back the same"
                    : troubles.get(0).said();
            return new Rewritten.Not(first, false);
        }
        new Revisions(folder).fits(found.values(), found.read().job().get(), who, when, why);
        return written(found, text, old, people(sheet.contacts()), oldPeople, new Accepted(who, when, why));
    }

    private record Accepted(String who, OffsetDateTime when, String why) {}

    private static byte[] people(List<Map<String, Object>> contacts) {
        Map<String, Object> people = new LinkedHashMap<>();
        for (Map<String, Object> contact : contacts) {
            Map<String, Object> reached = new LinkedHashMap<>(contact);
            people.put(String.valueOf(reached.remove("initials")), reached);
        }
        return JobPaper.bytes(JobPaper.PEOPLE_HEAD, people);
    }

    private Rewritten written(
            JobText.Found found, byte[] text, byte[] old, byte[] people, byte[] oldPeople, Accepted by)
            throws IOException {
        Revisions revisions = new Revisions(folder);
        List<String> said = new ArrayList<>();
        boolean same = old != null && sameValues(old, found.values());
        if (old != null && !same && (JobPaper.commented(old) || !revisions.newestSays(plain(old)))) {
            said.add("the file before is kept as " + keep(old, revisions.next()));
        }
        if (!sameContacts(oldPeople, people)) {
            Folder.replace(file("people.json"), people, FileChannel::open);
        }
        if (!same) {
            Folder.replace(file("job.json"), text, FileChannel::open);
        }
        if (old == null) {
            JobFolder.make(folder);
        }
        try {
            Agreed agreed =
                    revisions.accept(found.values(), found.read().job().orElseThrow(), by.who(), by.when(), by.why());
            forget(said);
            return new Rewritten.Done(agreed, String.join("; ", said));
        } catch (IOException e) {
            said.add(0, "job.json is on disk, its revision is not: " + Folder.reason(e));
            return new Rewritten.Not(String.join("; ", said), false);
        }
    }

    /** What is written needs no draft any more; one that stays does no harm, for its stamp is of the files before. */
    private void forget(List<String> said) {
        try {
            drop();
        } catch (IOException e) {
            said.add(DRAFT + " could not be taken away: " + Folder.reason(e));
        }
    }

    private static Map<String, Object> plain(byte[] old) {
        return values("job.json", old, new ArrayList<>());
    }

    /** A job file that says the same already stays as it is, comments and all. */
    private static boolean sameValues(byte[] old, Map<String, Object> values) {
        return plain(old).equals(values);
    }

    private static boolean sameContacts(byte[] old, byte[] now) {
        return values("people.json", old, new ArrayList<>()).equals(values("people.json", now, new ArrayList<>()));
    }

    /** The old file beside the new one, under the first name that is free. */
    private String keep(byte[] old, int revision) throws IOException {
        String name = "job.json.before-" + revision;
        for (int i = 2; Files.exists(file(name)); i++) {
            name = "job.json.before-" + revision + "-" + i;
        }
        Folder.replace(file(name), old, FileChannel::open);
        return name;
    }
}
