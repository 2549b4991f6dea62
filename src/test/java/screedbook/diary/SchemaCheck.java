package screedbook.diary;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Holds a value against a JSON Schema (draft 2020-12), for the keywords that the kinds' schemas have and no others. */
final class SchemaCheck {
    private static final Set<String> SAID = Set.of("$schema", "title", "description");

    private final List<String> wrong = new ArrayList<>();

    private SchemaCheck() {}

    /** What does not agree; empty when all does. */
    static List<String> wrong(String schema, byte[] line) throws Json.NotJson {
        SchemaCheck check = new SchemaCheck();
        check.value("", Json.file(schema.getBytes(StandardCharsets.UTF_8), new LinkedHashMap<>()), Json.line(line));
        return check.wrong;
    }

    private void value(String path, Map<?, ?> schema, Object value) {
        schema.forEach((keyword, says) -> {
            boolean holds = switch (keyword.toString()) {
                case "type" -> typed(says.toString(), value);
                case "const" -> says.equals(value);
                case "enum" -> ((List<?>) says).contains(value);
                case "pattern" ->
                    !(value instanceof String text)
                            || Pattern.compile(says.toString()).matcher(text).find();
                case "minimum" -> !(value instanceof BigDecimal n) || n.compareTo((BigDecimal) says) >= 0;
                case "required" ->
                    !(value instanceof Map<?, ?> map) || map.keySet().containsAll((List<?>) says);
                case "properties" -> properties(path, (Map<?, ?>) says, value);
                case "items" -> items(path, (Map<?, ?>) says, value);
                default -> {
                    if (!SAID.contains(keyword.toString())) {
                        throw new IllegalArgumentException("the check does not know " + keyword);
                    }
                    yield true;
                }
            };
            if (!holds) {
                wrong.add(path + " is " + value + " against " + keyword + " " + says);
            }
        });
    }

    private static boolean typed(String type, Object value) {
        return switch (type) {
            case "object" -> value instanceof Map;
            case "array" -> value instanceof List;
            case "string" -> value instanceof String;
            case "number" -> value instanceof BigDecimal;
            case "integer" ->
                value instanceof BigDecimal n && n.stripTrailingZeros().scale() <= 0;
            default -> throw new IllegalArgumentException("the check does not know the type " + type);
        };
    }

    private boolean properties(String path, Map<?, ?> schemas, Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> {
                if (schemas.get(key) instanceof Map<?, ?> schema) {
                    value(path + "/" + key, schema, inner);
                }
            });
        }
        return true;
    }

    private boolean items(String path, Map<?, ?> schema, Object value) {
        if (value instanceof List<?> list) {
            list.forEach(each -> value(path + "/*", schema, each));
        }
        return true;
    }
}
