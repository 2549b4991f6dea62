package screedbook.desk;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import screedbook.check.Finding;
import screedbook.check.PlanFindings;
import screedbook.entry.Blank;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.StationBase;
import screedbook.job.Contact;
import screedbook.job.Job;
import screedbook.job.JobReading;
import screedbook.unit.UnitSystem;

/**
 * The job sheet on the desk: what was read, and what it says now. Nothing of it is on the disk before it is written.
 *
 * @param values as {@code job.json} holds them, with the contacts under a key of their own
 * @param half forms that were left half typed, by the path to what they speak of
 * @param doubts everything that is missing or wrong, all of it
 * @param job what the values come to; empty when there is any doubt
 * @param findings what the limit sheet says of the plan; none while there is any doubt
 */
record Sheet(
        Msg.JobSheet read,
        Map<String, Object> values,
        Map<List<Object>, Form> half,
        List<JobReading.Doubt> doubts,
        Optional<Job> job,
        List<Finding> findings) {
    /** The key of the contacts; no key of a job is named so. */
    static final String PHONES = "phones";

    /** The key of what is half typed, in a sheet that is kept through a crash. */
    private static final String HALF = "half typed";

    private static final Pattern PLACE = Pattern.compile("[a-z_]+\\[\\d+\\](\\.[a-z_]+\\[\\d+\\])*");

    /** All that is prepared at the desk: the job's own keys, and the contacts beside them. */
    private record Paper(
            Job job,

            @Blank(value = "phones and addresses", help = "kept apart from the record")
            List<Contact> phones) {}

    static Sheet of(Msg.JobSheet read) {
        Map<String, Object> values = new LinkedHashMap<>(read.offered().isEmpty() ? read.values() : read.offered());
        if (!read.contacts().isEmpty()) {
            values.putIfAbsent(PHONES, read.contacts());
        }
        Object half = values.remove(HALF);
        Sheet sheet = of(read, values, Map.of());
        return half == null ? sheet : sheet.half(HalfParts.of(sheet, half));
    }

    private static Sheet of(Msg.JobSheet read, Map<String, Object> values, Map<List<Object>, Form> half) {
        JobReading.Read job = JobReading.of(job(values));
        List<JobReading.Doubt> doubts = new ArrayList<>(job.doubts());
        doubts.addAll(phones(contacts(values)));
        Optional<Job> settled = doubts.isEmpty() ? job.job() : Optional.empty();
        List<Finding> findings = settled.filter(j -> read.sheets().containsKey(j.sheet()))
                .map(j -> PlanFindings.of(j, read.sheets().get(j.sheet())).stream()
                        .sorted(Comparator.comparing(Finding::sort))
                        .toList())
                .orElse(List.of());
        return new Sheet(read, values, half, List.copyOf(doubts), settled, findings);
    }

    private static List<JobReading.Doubt> phones(List<Map<String, Object>> contacts) {
        List<JobReading.Doubt> doubts = new ArrayList<>();
        Set<Object> seen = new LinkedHashSet<>();
        for (int i = 0; i < contacts.size(); i++) {
            Object initials = contacts.get(i).get("initials");
            String path = PHONES + "[" + i + "]";
            if (initials == null) {
                doubts.add(new JobReading.Doubt(path, path + " has no initials", "initials as under people"));
            } else if (!seen.add(initials)) {
                doubts.add(new JobReading.Doubt(path, "phones has " + initials + " twice", "one entry for each"));
            }
        }
        return doubts;
    }

    private static Map<String, Object> job(Map<String, Object> values) {
        Map<String, Object> job = new LinkedHashMap<>(values);
        job.remove(PHONES);
        return job;
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> contacts(Map<String, Object> values) {
        return (List<Map<String, Object>>) values.getOrDefault(PHONES, List.of());
    }

    /** What is to be written: the files as they were read, with the values as they are now. */
    Msg.JobSheet toWrite() {
        return new Msg.JobSheet(
                job(values),
                contacts(values),
                read.stamp(),
                read.commented(),
                read.there(),
                read.revisions(),
                read.unread(),
                read.sheets(),
                read.offered());
    }

    /** What is typed outlives a crash, half-typed forms with it. */
    Effect keep() {
        if (!touched()) {
            return new Effect.DropJobSheet();
        }
        Map<String, Object> kept = new LinkedHashMap<>(values);
        if (!half.isEmpty()) {
            kept.put(HALF, HalfParts.plain(half));
        }
        return new Effect.KeepJobSheet(read.stamp(), kept);
    }

    /** The parts that say something else than what was read, and those half typed. */
    List<String> edited() {
        Map<String, Object> before = new LinkedHashMap<>(read.values());
        before.put(PHONES, read.contacts());
        Set<String> keys = new LinkedHashSet<>(values.keySet());
        keys.addAll(before.keySet());
        Set<String> edited = new LinkedHashSet<>();
        for (String key : keys) {
            if (!Objects.equals(values.getOrDefault(key, List.of()), before.getOrDefault(key, List.of()))) {
                edited.add(key);
            }
        }
        half.keySet().forEach(path -> edited.add(path.isEmpty() ? "the job" : named(path)));
        return List.copyOf(edited);
    }

    /** What is half typed, by what it is called. */
    String halfNamed() {
        return String.join(
                ", ",
                half.keySet().stream()
                        .map(p -> p.isEmpty() ? "the job" : named(p))
                        .toList());
    }

    boolean touched() {
        return !edited().isEmpty();
    }

    UnitSystem system() {
        return "metric".equals(values.get("units")) ? UnitSystem.METRIC : UnitSystem.US;
    }

    StationBase base() {
        Object stationing = values.get("stationing");
        Object word = stationing instanceof Map<?, ?> map ? map.get("base") : null;
        for (StationBase base : StationBase.values()) {
            if (base.word().equals(word)) {
                return base;
            }
        }
        return system() == UnitSystem.METRIC ? StationBase.M_1000 : StationBase.FT_100;
    }

    /** The rows of the sheet: the job's own blanks first, then every part. */
    static List<Field> parts() {
        return Fields.of(Paper.class).stream().filter(Sheet::nested).toList();
    }

    /** Whether a blank holds a record or a list of records, so that it is opened and not typed. */
    static boolean nested(Field field) {
        return Fields.areIn(field.element().orElse(field.type()));
    }

    static boolean list(Field field) {
        return field.element().isPresent();
    }

    /** The blanks of what a path leads to; of the sheet itself those that are typed. */
    static List<Field> blanks(List<Object> path) {
        List<Field> fields = Fields.of(type(path));
        return path.isEmpty() ? fields.stream().filter(f -> !nested(f)).toList() : fields;
    }

    /** The record class of what a path leads to, of an item where it leads to a list. */
    static Class<? extends Record> type(List<Object> path) {
        Class<? extends Record> type = Paper.class;
        for (Object step : path) {
            if (step instanceof String name) {
                Field field = field(type, name);
                type = field.element().orElse(field.type()).asSubclass(Record.class);
            }
        }
        return type;
    }

    private static Field field(Class<? extends Record> type, String name) {
        return Fields.of(type).stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The blank that a path ends in, or whose item it leads to; empty for the sheet itself. */
    static Optional<Field> field(List<Object> path) {
        for (int i = path.size() - 1; i >= 0; i--) {
            if (path.get(i) instanceof String name) {
                return Optional.of(field(type(path.subList(0, i)), name));
            }
        }
        return Optional.empty();
    }

    static List<Object> step(List<Object> path, Object next) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(next);
        return List.copyOf(longer);
    }

    /** {@code mixes[1].binder}. */
    static String text(List<Object> path) {
        StringBuilder text = new StringBuilder();
        for (Object step : path) {
            text.append(step instanceof Integer ? "[" + step + "]" : (text.length() == 0 ? "" : ".") + step);
        }
        return text.toString();
    }

    /** {@code mixes[12.5-70A].binder}: items by what they are called, not by their place. */
    String named(List<Object> path) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < path.size(); i++) {
            if (path.get(i) instanceof Integer) {
                text.append('[').append(name(path.subList(0, i + 1))).append(']');
            } else {
                text.append(i == 0 ? "" : ".").append(path.get(i));
            }
        }
        return text.toString();
    }

    /** What an item is called: the first of its values; before it has any, its place. */
    String name(List<Object> path) {
        Object last = path.get(path.size() - 1);
        return record(path).values().stream()
                .filter(v -> !(v instanceof Map) && !(v instanceof List))
                .map(Sheet::typed)
                .findFirst()
                .orElse(last instanceof Integer i ? (at(path) == null ? "new" : "no. " + (i + 1)) : "?");
    }

    /** What is missing or wrong in a sentence, with items by what they are called. */
    String told(JobReading.Doubt doubt) {
        Matcher place = PLACE.matcher(doubt.said());
        StringBuilder said = new StringBuilder();
        while (place.find()) {
            place.appendReplacement(said, Matcher.quoteReplacement(named(path(place.group()))));
        }
        return place.appendTail(said).toString();
    }

    /** The path that {@link #text} gives; the empty one for the sheet itself. */
    static List<Object> path(String text) {
        List<Object> path = new ArrayList<>();
        for (String step : text.isEmpty() ? new String[0] : text.split("[.\\[\\]]+")) {
            path.add(step.matches("\\d+") ? (Object) Integer.valueOf(step) : step);
        }
        return path;
    }

    /** What stands at a path; null when nothing does. */
    Object at(List<Object> path) {
        Object at = values;
        for (Object step : path) {
            if (at instanceof Map<?, ?> map && step instanceof String) {
                at = map.get(step);
            } else if (at instanceof List<?> list && step instanceof Integer i && i < list.size()) {
                at = list.get(i);
            } else {
                return null;
            }
        }
        return at;
    }

    /** The record at a path; empty when there is none. */
    @SuppressWarnings("unchecked")
    Map<String, Object> record(List<Object> path) {
        return at(path) instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
    }

    List<?> list(List<Object> path) {
        return at(path) instanceof List<?> list ? list : List.of();
    }

    /** With another value at a path; null takes it out. */
    @SuppressWarnings("unchecked")
    Sheet with(List<Object> path, Object value) {
        return of(read, (Map<String, Object>) changed(values, path, value), half);
    }

    @SuppressWarnings("unchecked")
    private static Object changed(Object at, List<Object> path, Object value) {
        if (path.isEmpty()) {
            return value;
        }
        List<Object> rest = path.subList(1, path.size());
        if (path.get(0) instanceof String key) {
            Map<String, Object> map =
                    at instanceof Map<?, ?> m ? new LinkedHashMap<>((Map<String, Object>) m) : new LinkedHashMap<>();
            Object inner = changed(map.get(key), rest, value);
            if (inner == null) {
                map.remove(key);
            } else {
                map.put(key, inner);
            }
            return map;
        }
        int index = (Integer) path.get(0);
        List<Object> list = at instanceof List<?> l ? new ArrayList<>(l) : new ArrayList<>();
        Object inner = changed(index < list.size() ? list.get(index) : null, rest, value);
        if (inner == null) {
            list.remove(index);
        } else if (index < list.size()) {
            list.set(index, inner);
        } else {
            list.add(inner);
        }
        return list;
    }

    /** With a form left half typed, or without it. */
    Sheet half(List<Object> path, Form form) {
        Map<List<Object>, Form> forms = new LinkedHashMap<>(half);
        if (form == null) {
            forms.remove(path);
        } else {
            forms.put(path, form);
        }
        return half(forms);
    }

    private Sheet half(Map<List<Object>, Form> forms) {
        return new Sheet(read, values, forms, doubts, job, findings);
    }

    /** Doubts about a part of the sheet; those of the job's own blanks for the empty path. */
    List<JobReading.Doubt> doubts(List<Object> path) {
        String text = text(path);
        return doubts.stream()
                .filter(d -> path.isEmpty() ? own(d.path()) : under(d.path(), text))
                .toList();
    }

    private static boolean own(String path) {
        return parts().stream().noneMatch(f -> under(path, f.name()));
    }

    private static boolean under(String path, String part) {
        return path.equals(part) || path.startsWith(part + "[") || path.startsWith(part + ".");
    }

    /** A value of a job file as people type it. */
    static String typed(Object value) {
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        if (value instanceof List<?> list) {
            return String.join(", ", list.stream().map(Sheet::typed).toList());
        }
        return value == null ? "" : value.toString();
    }
}
