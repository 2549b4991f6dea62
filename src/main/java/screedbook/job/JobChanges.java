package screedbook.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import screedbook.entry.Fields;
import screedbook.entry.Told;

/** What differs between two jobs, told by the names of things and not by their places in a list. */
public final class JobChanges {
    private final List<Change> changes = new ArrayList<>();

    private JobChanges() {}

    /**
     * One difference.
     *
     * @param path such as {@code mixes[12.5-70A].target_plant_degF}
     * @param before empty when it was not there
     * @param after empty when it is not there any more
     */
    public record Change(String path, String before, String after) {
        public String text() {
            if (before.isEmpty()) {
                return path + "  new: " + after;
            }
            return after.isEmpty() ? path + "  taken out: " + before : path + "  " + before + " -> " + after;
        }
    }

    /** Every difference, in the order of the job's parts; empty when both say the same. */
    public static List<Change> between(Job before, Job after) {
        JobChanges changes = new JobChanges();
        changes.maps("", Fields.plain(before), Fields.plain(after));
        return List.copyOf(changes.changes);
    }

    private void maps(String path, Map<?, ?> before, Map<?, ?> after) {
        Set<Object> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        for (Object key : keys) {
            String here = path.isEmpty() ? key.toString() : path + "." + key;
            values(here, before.get(key), after.get(key));
        }
    }

    private void values(String path, Object before, Object after) {
        if (Objects.equals(before, after)) {
            return;
        }
        if (before instanceof Map<?, ?> b && after instanceof Map<?, ?> a) {
            maps(path, b, a);
        } else if (records(before) && records(after) && !(empty(before) && empty(after))) {
            lists(path, (List<?>) before, (List<?>) after);
        } else if (!told(before).equals(told(after))) {
            changes.add(new Change(path, told(before), told(after)));
        }
    }

    /** A list of records, or what may be one: nothing, or an empty list. */
    private static boolean records(Object value) {
        return value == null || value instanceof List<?> list && list.stream().allMatch(Map.class::isInstance);
    }

    private static boolean empty(Object value) {
        return value == null || ((List<?>) value).isEmpty();
    }

    private void lists(String path, List<?> before, List<?> after) {
        List<?> b = before == null ? List.of() : before;
        List<?> a = after == null ? List.of() : after;
        int parts = parts(b, a);
        Map<String, Object> old = named(b, parts);
        Map<String, Object> now = named(a, parts);
        Set<String> names = new LinkedHashSet<>(old.keySet());
        names.addAll(now.keySet());
        names.forEach(name -> values(path + "[" + name + "]", old.get(name), now.get(name)));
        order(path, old.keySet(), now.keySet());
    }

    /** The same things in another order. */
    private void order(String path, Set<String> before, Set<String> after) {
        List<String> old = before.stream().filter(after::contains).toList();
        List<String> now = after.stream().filter(before::contains).toList();
        if (!old.equals(now)) {
            changes.add(new Change(path + " in order", String.join(", ", old), String.join(", ", now)));
        }
    }

    private static Map<String, Object> named(List<?> list, int parts) {
        Map<String, Object> named = new LinkedHashMap<>();
        for (Object each : list) {
            String name = name((Map<?, ?>) each, parts);
            String free = name;
            for (int i = 2; named.containsKey(free); i++) {
                free = name + " #" + i;
            }
            named.put(free, each);
        }
        return named;
    }

    /** How many values of an item name it: as few as tell every one from the others, at most three. */
    private static int parts(List<?> before, List<?> after) {
        for (int parts = 1; parts < 3; parts++) {
            if (apart(before, parts) && apart(after, parts)) {
                return parts;
            }
        }
        return apart(before, 3) && apart(after, 3) ? 3 : 1;
    }

    private static boolean apart(List<?> list, int parts) {
        Set<String> names = new LinkedHashSet<>();
        return list.stream().allMatch(each -> names.add(name((Map<?, ?>) each, parts)));
    }

    private static String name(Map<?, ?> item, int parts) {
        return String.join(
                " ",
                item.entrySet().stream()
                        .filter(e -> !(e.getValue() instanceof Map) && !(e.getValue() instanceof List))
                        .limit(parts)
                        .map(e -> parts > 1 && e.getValue() instanceof BigDecimal
                                ? e.getKey() + " " + told(e.getValue())
                                : told(e.getValue()))
                        .toList());
    }

    private static String told(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Map<?, ?> map) {
            List<String> pairs = new ArrayList<>();
            map.forEach((k, v) -> pairs.add(k + " " + told(v)));
            return String.join(", ", pairs);
        }
        if (value instanceof List<?> list) {
            return String.join("; ", list.stream().map(JobChanges::told).toList());
        }
        return Told.value(value);
    }
}
