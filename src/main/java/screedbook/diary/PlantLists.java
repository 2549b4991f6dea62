package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import screedbook.entry.Day;
import screedbook.entry.Fields;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantList;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The plants' own lists in a job's folder: each a copy as it came, put there once and never changed. */
public final class PlantLists {
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]{0,120}\\.csv");

    private final Path folder;

    private PlantLists(Path folder) {
        this.folder = folder;
    }

    public static PlantLists in(JobFolder job) {
        return new PlantLists(job.path().resolve("plant"));
    }

    /**
     * Keeps a list as it came and gives the entry that tells of it.
     *
     * @param plant whose list it is; null where nobody said
     * @param counts the unit in which the job counts loads
     * @throws IOException when the disk refuses
     */
    public PlantList keep(ShiftId shift, String plant, ListFile list, ListColumns columns, Unit counts)
            throws IOException {
        PlantRows rows = list.rows(plant, columns);
        Amount tons = rows.tons().map(sum -> sum.to(counts).shown(2)).orElse(null);
        String name = copy(shift, plant, list);
        return new PlantList(
                plant, name, list.sha256(), list.count(columns), rows.rows().size(), tons, columns);
    }

    /** The copy's name: as many digits of its hash as it takes for the name to be free, or its own. */
    private String copy(ShiftId shift, String plant, ListFile list) throws IOException {
        String of = Optional.ofNullable(plant).flatMap(FileName::slug).orElse("plant");
        for (int digits = 8; ; digits *= 2) {
            String name = shift + "." + of + "." + list.sha256().substring(0, digits) + ".csv";
            Path file = folder.resolve(name);
            if (!Files.exists(file)) {
                Folder.replace(file, list.bytes(), FileChannel::open);
                return name;
            }
            if (same(file, list.sha256()) || digits == 64) {
                return name;
            }
        }
    }

    private static boolean same(Path file, String sha256) throws IOException {
        return Chain.hash(Files.readAllBytes(file)).equals(sha256);
    }

    /**
     * Keeps in the job how a plant's list is read, so that it is not asked again.
     *
     * @return what was done, for the person; empty when the job says so already
     * @throws IOException when the disk refuses
     */
    public static String settle(JobFolder job, String plant, ListColumns columns, String who, OffsetDateTime when)
            throws IOException {
        JobSheet sheet = job.jobSheet();
        Optional<Map<String, Object>> values = settled(sheet.values(), plant, Fields.plain(columns));
        if (values.isEmpty()) {
            return plant + " is no plant of the job: how its list is read is asked again next time";
        }
        if (values.get().equals(sheet.values())) {
            return "";
        }
        JobSheet revised = new JobSheet(
                values.get(),
                sheet.contacts(),
                sheet.stamp(),
                sheet.commented(),
                sheet.there(),
                sheet.revisions(),
                Map.of(),
                List.of());
        Rewritten rewritten = job.rewrite(revised, who, when, "how the list of plant " + plant + " is read");
        return rewritten instanceof Rewritten.Done done
                ? "the job keeps its columns: revision " + done.agreed().revision()
                        + (done.said().isEmpty() ? "" : "; " + done.said())
                : "its columns could not be kept in the job: " + ((Rewritten.Not) rewritten).said();
    }

    private static Optional<Map<String, Object>> settled(
            Map<String, Object> job, String plant, Map<String, Object> columns) {
        List<Object> plants = new ArrayList<>();
        boolean found = false;
        for (Object each : job.get("plants") instanceof List<?> list ? list : List.of()) {
            Map<Object, Object> values =
                    each instanceof Map<?, ?> map ? new LinkedHashMap<>(map) : new LinkedHashMap<>();
            boolean its = plant != null && plant.equals(values.get("name"));
            if (its) {
                Fields.of(ListColumns.class).forEach(field -> values.remove(field.name()));
                values.putAll(columns);
            }
            found |= its;
            plants.add(each instanceof Map ? values : each);
        }
        Map<String, Object> changed = new LinkedHashMap<>(job);
        changed.put("plants", plants);
        return found ? Optional.of(changed) : Optional.empty();
    }

    /** The lists that a day's lines name, by the line; one that is not there or not the same is told as such. */
    public Map<Ref, PlantRows> of(Day day) {
        Map<Ref, PlantRows> lists = new HashMap<>();
        for (Standing<PlantList> each : day.every(PlantList.class)) {
            lists.put(each.ref(), rows(each.entry()));
        }
        return lists;
    }

    private PlantRows rows(PlantList entry) {
        Optional<String> gone = gone(entry);
        if (gone.isPresent()) {
            return PlantRows.gone(entry.plant(), entry.listFile(), gone.get());
        }
        try {
            byte[] bytes = Files.readAllBytes(folder.resolve(entry.listFile()));
            return ListFile.of(entry.listFile(), bytes).rows(entry.plant(), entry.columns());
        } catch (IOException e) {
            return PlantRows.gone(entry.plant(), entry.listFile(), "it cannot be read: " + Folder.reason(e));
        }
    }

    /** Why a line's list cannot be compared; empty when its copy is as it came. */
    Optional<String> gone(PlantList entry) {
        String name = entry.listFile();
        if (name == null || !NAME.matcher(name).matches()) {
            return Optional.of("the line names no file");
        }
        Path file = folder.resolve(name);
        if (!Files.isRegularFile(file)) {
            return Optional.of("it is not there");
        }
        try {
            return entry.listSha256() != null && same(file, entry.listSha256())
                    ? Optional.empty()
                    : Optional.of("it is not what was brought in: its hash is another");
        } catch (IOException e) {
            return Optional.of("it cannot be read: " + Folder.reason(e));
        }
    }

    /** The names under {@code plant/}, sorted. */
    List<String> names() {
        try {
            return Folder.names(folder);
        } catch (IOException e) {
            return List.of();
        }
    }
}
