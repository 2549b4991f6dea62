package screedbook.entry;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * Records read as blanks: any record whose components carry a {@link Blank} turns into plain values (text, decimal
 * numbers, lists and maps, as a line holds them) and back.
 */
public final class Fields {
    private static final Map<Class<?>, List<Field>> SEEN = new ConcurrentHashMap<>();

    private static final Map<Class<?>, Boolean> GROUPS = new ConcurrentHashMap<>();

    private Fields() {}

    /** Whether a class is a record of blanks; a station or an amount is one value. */
    public static boolean areIn(Class<?> type) {
        return type.isRecord() && GROUPS.computeIfAbsent(type, Fields::hasBlank);
    }

    private static boolean hasBlank(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .anyMatch(component -> component.isAnnotationPresent(Blank.class));
    }

    /** The blanks of a record class in the order of its components, groups opened. */
    public static List<Field> of(Class<? extends Record> type) {
        return SEEN.computeIfAbsent(type, t -> List.copyOf(read(t, List.of())));
    }

    private static List<Field> read(Class<?> type, List<RecordComponent> before) {
        List<Field> fields = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            List<RecordComponent> path = new ArrayList<>(before);
            path.add(component);
            Blank blank = component.getAnnotation(Blank.class);
            if (blank != null) {
                fields.add(field(component, blank, path));
            } else if (component.getType().isRecord()) {
                fields.addAll(read(component.getType(), path));
            } else {
                throw new IllegalStateException(type.getSimpleName() + "." + component.getName() + " has no blank");
            }
        }
        return fields;
    }

    static Field field(RecordComponent component, Blank blank, List<RecordComponent> path) {
        Optional<Measure> measure = Arrays.stream(blank.measure()).findFirst();
        String name = snake(component.getName()) + (component.getType() == Station.class ? "_sta" : "");
        return new Field(
                name,
                blank.value(),
                component.getType(),
                measure,
                blank.pick(),
                blank.due(),
                blank.carry(),
                blank.width(),
                blank.help(),
                List.copyOf(path),
                element(component));
    }

    private static Optional<Class<?>> element(RecordComponent component) {
        if (component.getType() != List.class) {
            return Optional.empty();
        }
        return Optional.of((Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]);
    }

    static String snake(String camel) {
        return camel.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    /** The record as plain values under the keys of its line, in order; what was not observed is absent. */
    public static Map<String, Object> plain(Record record) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Field field : of(record.getClass())) {
            Object value = field.get(record);
            if (value != null) {
                String key = value instanceof Amount a
                        ? field.name() + "_" + a.unit().suffix()
                        : field.name();
                values.put(key, plainValue(value));
            }
        }
        return values;
    }

    private static Object plainValue(Object value) {
        if (value instanceof Amount a) {
            return a.value();
        }
        if (value instanceof Integer i) {
            return BigDecimal.valueOf(i);
        }
        if (value instanceof Word w) {
            return w.word();
        }
        if (value instanceof OffsetDateTime t) {
            return Moment.text(t);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Fields::plainValue).toList();
        }
        if (value instanceof Record r && !(value instanceof Station) && !(value instanceof Ref)) {
            return plain(r);
        }
        if (value instanceof BigDecimal || value instanceof Map) {
            return value;
        }
        return value.toString();
    }

    /**
     * A record made from plain values. Every value that cannot be read is a slip and absent in the record; a component
     * whose blank is always due and is absent is no slip here.
     */
    public static <R extends Record> Built<R> build(Class<R> type, Map<String, Object> values) {
        return RecordReading.of(type, values);
    }
}
