package screedbook.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** As much of JSON Schema (2020-12) as the shipped schemas use; a word that it does not know is an error. */
public final class Schema {
    private static final List<String> SILENT = List.of("$schema", "$defs", "title", "description");

    private final Map<String, Object> root;

    private Schema(Map<String, Object> root) {
        this.root = root;
    }

    @SuppressWarnings("unchecked")
    public static Schema shipped(String name) throws IOException {
        try (InputStream in = Schema.class.getResourceAsStream("/schema/" + name)) {
            return new Schema((Map<String, Object>) parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        }
    }

    /** Everything in a text that the schema does not allow. */
    public List<String> wrongs(String json) throws IOException {
        List<String> wrongs = new ArrayList<>();
        check(root, parse(json), "$", wrongs);
        return wrongs;
    }

    @SuppressWarnings("unchecked")
    private void check(Map<String, Object> schema, Object value, String path, List<String> wrongs) {
        schema.forEach((word, says) -> {
            boolean fits = switch (word) {
                case "$ref" -> {
                    String name = ((String) says).substring("#/$defs/".length());
                    check(
                            (Map<String, Object>) ((Map<String, Object>) root.get("$defs")).get(name),
                            value,
                            path,
                            wrongs);
                    yield true;
                }
                case "type" -> typed((String) says, value);
                case "const" -> says.equals(value);
                case "enum" -> ((List<Object>) says).contains(value);
                case "pattern" ->
                    Pattern.compile((String) says).matcher((String) value).find();
                case "minimum" -> ((BigDecimal) value).compareTo((BigDecimal) says) >= 0;
                case "required" -> ((Map<String, Object>) value).keySet().containsAll((List<Object>) says);
                case "items" -> {
                    for (int i = 0; i < ((List<Object>) value).size(); i++) {
                        check((Map<String, Object>) says, ((List<Object>) value).get(i), path + "[" + i + "]", wrongs);
                    }
                    yield true;
                }
                case "properties" -> {
                    members(schema, (Map<String, Object>) value, path, wrongs);
                    yield true;
                }
                case "patternProperties", "additionalProperties" -> schema.containsKey("properties");
                default -> SILENT.contains(word);
            };
            if (!fits) {
                wrongs.add(path + " " + word + " " + says + " seen " + value);
            }
        });
    }

    @SuppressWarnings("unchecked")
    private void members(Map<String, Object> schema, Map<String, Object> value, String path, List<String> wrongs) {
        Map<String, Object> named = (Map<String, Object>) schema.get("properties");
        Map<String, Object> patterns = (Map<String, Object>) schema.getOrDefault("patternProperties", Map.of());
        value.forEach((key, each) -> {
            List<Object> found = new ArrayList<>();
            if (named.containsKey(key)) {
                found.add(named.get(key));
            }
            patterns.forEach((pattern, s) -> {
                if (Pattern.compile(pattern).matcher(key).find()) {
                    found.add(s);
                }
            });
            found.forEach(s -> check((Map<String, Object>) s, each, path + "." + key, wrongs));
            if (found.isEmpty() && Boolean.FALSE.equals(schema.get("additionalProperties"))) {
                wrongs.add(path + " has the unknown key " + key);
            }
        });
    }

    private static boolean typed(String type, Object value) {
        return switch (type) {
            case "string" -> value instanceof String;
            case "number" -> value instanceof BigDecimal;
            case "integer" ->
                value instanceof BigDecimal n && n.stripTrailingZeros().scale() <= 0;
            case "boolean" -> value instanceof Boolean;
            case "array" -> value instanceof List;
            case "object" -> value instanceof Map;
            default -> false;
        };
    }

    /** A JSON text as maps, lists, texts, decimals and booleans. */
    public static Object parse(String json) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            parser.nextToken();
            Object value = value(parser);
            if (parser.nextToken() != null) {
                throw new IOException("more behind the value");
            }
            return value;
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> map = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    parser.nextToken();
                    if (map.put(key, value(parser)) != null) {
                        throw new IOException("twice: " + key);
                    }
                }
                yield map;
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    list.add(value(parser));
                }
                yield list;
            }
            case VALUE_NUMBER_FLOAT, VALUE_NUMBER_INT -> parser.getDecimalValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> parser.getText();
        };
    }
}
