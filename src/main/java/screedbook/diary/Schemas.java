package screedbook.diary;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Aside;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.entry.Word;
import screedbook.unit.UnitSystem;

/**
 * The JSON Schema (draft 2020-12) of a kind's line, made from the same description that makes its form. Keys that are
 * not named are allowed, because a newer program may have written them.
 */
public final class Schemas {
    private static final String TIME = "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d{3})?([+-]\\d{2}:\\d{2})$";
    private static final String HASH = "^[0-9a-f]{64}$";
    private static final List<String> ALWAYS =
            List.of("n", "kind", "job", "shift", "book", "keyed", "who", "source", "prev");

    /** What the program prints as JSON. */
    private static final List<String> RESULTS = List.of("day", "findings", "limits", "season", "verify");

    private Schemas() {}

    /** The names of all that are shipped: a kind's for its line, then those of what is printed. */
    public static List<String> names() {
        List<String> names = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            names.add(kind.word());
        }
        names.addAll(RESULTS);
        return List.copyOf(names);
    }

    /** The text of a shipped schema; empty when there is none of the name. */
    public static Optional<byte[]> shipped(String name) {
        if (!names().contains(name)) {
            return Optional.empty();
        }
        try (InputStream in = Schemas.class.getResourceAsStream("/schema/" + name + ".json")) {
            return Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The schema's text, two blanks to a step, with LF at its end. */
    public static String of(Kind kind) {
        Map<String, Object> properties = new LinkedHashMap<>();
        header(kind, properties);
        fields(kind.type(), properties);
        fields(Aside.class, properties);
        properties.put("prev", pattern(HASH, "SHA-256 of the line before, without its LF"));
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "A line of kind " + kind.word() + ", format 1");
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put("required", ALWAYS);
        StringBuilder text = new StringBuilder();
        print(schema, "", text);
        return text.append('\n').toString();
    }

    private static void header(Kind kind, Map<String, Object> properties) {
        Map<String, Object> number = typed("integer");
        number.put("minimum", 1);
        properties.put("n", number);
        properties.put("kind", Map.of("const", kind.word()));
        for (String name : List.of("job", "shift", "book", "time", "keyed", "who", "source")) {
            Field field = Fields.of(LineText.Header.class).stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            properties.put(name, described(value(field.type(), null), field));
        }
    }

    private static void fields(Class<? extends Record> type, Map<String, Object> properties) {
        for (Field field : Fields.of(type)) {
            Set<String> keys = new LinkedHashSet<>();
            keys.add(field.key(UnitSystem.US));
            keys.add(field.key(UnitSystem.METRIC));
            Class<?> element = field.element().orElse(null);
            Map<String, Object> value = field.measure().isPresent() ? typed("number") : value(field.type(), element);
            keys.forEach(key -> properties.put(key, described(value, field)));
        }
    }

    private static Map<String, Object> described(Map<String, Object> value, Field field) {
        Map<String, Object> out = new LinkedHashMap<>(value);
        out.put("description", field.help().isEmpty() ? field.label() : field.label() + ": " + field.help());
        return out;
    }

    private static Map<String, Object> value(Class<?> type, Class<?> element) {
        if (type == List.class) {
            Map<String, Object> list = typed("array");
            list.put("items", value(element, null));
            return list;
        }
        if (type == Map.class) {
            return typed("object");
        }
        if (type == Integer.class) {
            return typed("integer");
        }
        if (type == BigDecimal.class) {
            return typed("number");
        }
        if (type.isEnum()) {
            return words(type);
        }
        if (type.isRecord() && type != Station.class && type != Ref.class) {
            Map<String, Object> properties = new LinkedHashMap<>();
            fields(type.asSubclass(Record.class), properties);
            Map<String, Object> object = typed("object");
            object.put("properties", properties);
            return object;
        }
        return text(type);
    }

    private static Map<String, Object> words(Class<?> type) {
        List<String> words = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            words.add(((Word) constant).word());
        }
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("enum", words);
        return out;
    }

    private static Map<String, Object> text(Class<?> type) {
        if (type == OffsetDateTime.class) {
            return pattern(TIME, null);
        }
        if (type == LocalDate.class) {
            return pattern("^\\d{4}-\\d{2}-\\d{2}$", null);
        }
        if (type == Station.class) {
            return pattern("^(-?\\d{1,6}\\+\\d{2,3}(\\.\\d{1,3})?|-?\\d{1,4}\\.\\d{1,4})( bk| ah)?$", null);
        }
        if (type == Ref.class) {
            return pattern("^.+/\\d+$", null);
        }
        return typed("string");
    }

    private static Map<String, Object> pattern(String pattern, String description) {
        Map<String, Object> text = typed("string");
        text.put("pattern", pattern);
        if (description != null) {
            text.put("description", description);
        }
        return text;
    }

    private static Map<String, Object> typed(String type) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("type", type);
        return out;
    }

    /** Objects over several lines, what is inside a list beside each other. */
    private static void print(Map<?, ?> object, String indent, StringBuilder text) {
        text.append("{\n");
        String separator = "";
        for (Map.Entry<?, ?> each : object.entrySet()) {
            text.append(separator)
                    .append(indent)
                    .append("  \"")
                    .append(each.getKey())
                    .append("\": ");
            boolean wide = each.getValue() instanceof Map<?, ?> inner
                    && inner.values().stream().anyMatch(Map.class::isInstance);
            if (wide) {
                print((Map<?, ?>) each.getValue(), indent + "  ", text);
            } else {
                text.append(plain(each.getValue()));
            }
            separator = ",\n";
        }
        text.append('\n').append(indent).append('}');
    }

    private static String plain(Object value) {
        byte[] wrapped = Json.write(Map.of("v", value));
        String text = new String(wrapped, StandardCharsets.UTF_8);
        return text.substring(5, text.length() - 1);
    }
}
