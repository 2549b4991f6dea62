package screedbook.entry;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import screedbook.unit.Amount;
import screedbook.unit.UnitSystem;

/** One record, and the records inside it, being made from plain values. */
final class RecordReading {
    private final List<Built.Slip> slips = new ArrayList<>();
    private final List<String> unknown = new ArrayList<>();

    private RecordReading() {}

    static <R extends Record> Built<R> of(Class<R> type, Map<String, Object> values) {
        RecordReading reading = new RecordReading();
        R value = type.cast(reading.record(type, "", values));
        return new Built<>(value, List.copyOf(reading.slips), List.copyOf(reading.unknown));
    }

    private Object record(Class<?> type, String path, Map<String, Object> values) {
        Set<String> claimed = new HashSet<>();
        Object made = group(type, path, values, claimed);
        for (String key : values.keySet()) {
            if (!claimed.contains(key)) {
                unknown.add(path.isEmpty() ? key : path + key);
            }
        }
        return made;
    }

    private Object group(Class<?> type, String path, Map<String, Object> values, Set<String> claimed) {
        Shape shape = Shape.of(type);
        Object[] arguments = new Object[shape.types().length];
        for (int i = 0; i < arguments.length; i++) {
            Keyed field = shape.fields()[i];
            arguments[i] = field == null
                    ? group(shape.types()[i], path, values, claimed)
                    : component(field, path, values, claimed);
        }
        try {
            return shape.constructor().newInstance(arguments);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName(), e);
        }
    }

    private Object component(Keyed keyed, String path, Map<String, Object> values, Set<String> claimed) {
        Field field = keyed.field();
        if (field.measure().isPresent()) {
            return amount(keyed, path, values, claimed);
        }
        Object seen = values.get(field.name());
        if (seen == null && !values.containsKey(field.name())) {
            return null;
        }
        claimed.add(field.name());
        return value(field.type(), field.element().orElse(null), path + field.name(), seen);
    }

    /** A figure in one unit or the other; with both, nobody knows which was meant. */
    private Object amount(Keyed keyed, String path, Map<String, Object> values, Set<String> claimed) {
        Object found = null;
        for (UnitSystem system : UnitSystem.values()) {
            String key = keyed.keys()[system.ordinal()];
            if (values.containsKey(key) && claimed.add(key)) {
                if (found != null) {
                    return slip(path + key, values.get(key), "one figure only, " + keyed.keys()[0] + " is there");
                }
                found = values.get(key) instanceof BigDecimal number
                        ? new Amount(number, keyed.field().measure().get().unit(system))
                        : slip(path + key, values.get(key), "a number");
            }
        }
        return found;
    }

    private Object slip(String path, Object seen, String right) {
        slips.add(new Built.Slip(path, seen == null ? "null" : Shown.text(seen.toString()), right));
        return null;
    }

    private Object value(Class<?> type, Class<?> element, String path, Object seen) {
        if (type == List.class) {
            return list(element, path, seen);
        }
        if (type == Map.class) {
            return seen instanceof Map<?, ?> map
                    ? Collections.unmodifiableMap(new LinkedHashMap<>(map))
                    : slip(path, seen, "an object in braces");
        }
        if (type == Integer.class || type == BigDecimal.class) {
            return number(type, path, seen);
        }
        if (type.isRecord() && type != Station.class && type != Ref.class) {
            return nested(type, path, seen);
        }
        return seen instanceof String text ? text(type, path, text) : slip(path, seen, "text in quotation marks");
    }

    private Object list(Class<?> element, String path, Object seen) {
        if (!(seen instanceof List<?> list)) {
            return slip(path, seen, "a list in brackets");
        }
        List<Object> made = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            Object one = value(element, null, path + "[" + i + "]", list.get(i));
            if (one != null) {
                made.add(one);
            }
        }
        return List.copyOf(made);
    }

    @SuppressWarnings("unchecked")
    private Object nested(Class<?> type, String path, Object seen) {
        return seen instanceof Map
                ? record(type, path + ".", (Map<String, Object>) seen)
                : slip(path, seen, "an object in braces");
    }

    private Object number(Class<?> type, String path, Object seen) {
        if (!(seen instanceof BigDecimal number)) {
            return slip(path, seen, "a number");
        }
        if (type == BigDecimal.class) {
            return number;
        }
        try {
            return number.intValueExact();
        } catch (ArithmeticException e) {
            return slip(path, seen, "a whole number");
        }
    }

    private Object text(Class<?> type, String path, String text) {
        if (type == String.class) {
            return text;
        }
        if (type.isEnum()) {
            return word(type, path, text);
        }
        try {
            return parsed(type, text);
        } catch (RuntimeException e) {
            return slip(path, "\"" + text + "\"", right(type));
        }
    }

    private Object word(Class<?> type, String path, String text) {
        List<String> words = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            String word = ((Word) constant).word();
            if (word.equals(text)) {
                return constant;
            }
            words.add(word);
        }
        return slip(path, "\"" + text + "\"", "one of " + String.join(", ", words));
    }

    /**
     * How a record class is made, looked up once: its component types, the blank of each component (null for a group),
     * and its constructor.
     */
    private record Shape(Class<?>[] types, Keyed[] fields, Constructor<?> constructor) {
        private static final Map<Class<?>, Shape> SHAPES = new ConcurrentHashMap<>();

        static Shape of(Class<?> type) {
            return SHAPES.computeIfAbsent(type, Shape::read);
        }

        private static Shape read(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Class<?>[] types = new Class<?>[components.length];
            Keyed[] fields = new Keyed[components.length];
            for (int i = 0; i < components.length; i++) {
                RecordComponent component = components[i];
                types[i] = component.getType();
                Blank blank = component.getAnnotation(Blank.class);
                fields[i] = blank == null ? null : Keyed.of(Fields.field(component, blank, List.of(component)));
            }
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(types);
                constructor.setAccessible(true);
                return new Shape(types, fields, constructor);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(type.getName(), e);
            }
        }
    }

    /** A blank with its keys in each system of units. */
    private record Keyed(Field field, String[] keys) {
        static Keyed of(Field field) {
            UnitSystem[] systems = UnitSystem.values();
            String[] keys = new String[systems.length];
            for (UnitSystem system : systems) {
                keys[system.ordinal()] = field.key(system);
            }
            return new Keyed(field, keys);
        }
    }

    private static Object parsed(Class<?> type, String text) {
        if (type == OffsetDateTime.class) {
            return Moment.of(text);
        }
        if (type == LocalDate.class) {
            return LocalDate.parse(text);
        }
        if (type == LocalTime.class) {
            return LocalTime.parse(text);
        }
        if (type == ZoneId.class) {
            return ZoneId.of(text);
        }
        if (type == Station.class) {
            return Station.of(text);
        }
        if (type == Ref.class) {
            return Ref.of(text);
        }
        throw new IllegalStateException("no plain form of " + type);
    }

    private static String right(Class<?> type) {
        Map<Class<?>, String> rights = Map.of(
                OffsetDateTime.class, "a time such as 2026-06-03T21:32:00-06:00",
                LocalDate.class, "a date such as 2026-06-03",
                LocalTime.class, "a time such as 21:30",
                ZoneId.class, "a zone such as America/Denver",
                Station.class, "a station such as 12+50.5",
                Ref.class, "an entry such as paver/17");
        return rights.get(type);
    }
}
