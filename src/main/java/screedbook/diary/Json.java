package screedbook.diary;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import screedbook.entry.Shown;

/**
 * JSON (RFC 8259) read strictly into plain values and written from them: text, {@link BigDecimal}, lists, ordered maps,
 * and what else JSON knows. A repeated key, a second value, an exponent or a number of more than 12 digits is refused.
 */
final class Json {
    private static final int DEEPEST = 8;
    private static final int LONGEST_TEXT = 8 * 1024;
    private static final int LONGEST_NAME = 64;
    private static final int MOST_DIGITS = 12;

    private static final JsonFactory LINES = factory(Chain.LONGEST).build();
    private static final JsonFactory FILES =
            factory(1024 * 1024).enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();

    private Json() {}

    private static com.fasterxml.jackson.core.JsonFactoryBuilder factory(int longest) {
        StreamReadConstraints limits = StreamReadConstraints.builder()
                .maxNestingDepth(DEEPEST)
                .maxStringLength(LONGEST_TEXT)
                .maxNameLength(LONGEST_NAME)
                .maxNumberLength(40)
                .maxDocumentLength(longest)
                .build();
        com.fasterxml.jackson.core.JsonFactoryBuilder builder =
                (com.fasterxml.jackson.core.JsonFactoryBuilder) JsonFactory.builder();
        return builder.streamReadConstraints(limits)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .characterEscapes(new Escapes());
    }

    /** Text that is not what is asked for, with its place: line and column from 1. */
    static final class NotJson extends Exception {
        private static final long serialVersionUID = 1;
        private final int line;
        private final int column;

        NotJson(String said, int line, int column) {
            super(said);
            this.line = line;
            this.column = column;
        }

        int line() {
            return line;
        }

        int column() {
            return column;
        }
    }

    /** The object that a line of a diary holds. */
    static Map<String, Object> line(byte[] utf8) throws NotJson {
        return new Reading(null, Set.of()).read(LINES, utf8);
    }

    /**
     * The object that a file for people holds; it may have comments.
     *
     * @param places is filled with the line of every value by its path, such as {@code mixes[1].binder}
     */
    static Map<String, Object> file(byte[] utf8, Map<String, Integer> places) throws NotJson {
        return new Reading(places, Set.of()).read(FILES, utf8);
    }

    /** Of the object that a file for people holds, the values under these keys only; the others are passed over. */
    static Map<String, Object> some(byte[] utf8, Set<String> keys) throws NotJson {
        return new Reading(null, keys).read(FILES, utf8);
    }

    /** The object in one line of UTF-8, with keys in the order of the map. */
    static byte[] write(Map<String, ?> object) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator out = LINES.createGenerator(bytes)) {
            value(out, object);
        } catch (IOException e) {
            throw new IllegalStateException("memory takes every byte", e);
        }
        return bytes.toByteArray();
    }

    private static void value(JsonGenerator out, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            out.writeStartObject();
            for (Map.Entry<?, ?> each : map.entrySet()) {
                out.writeFieldName(each.getKey().toString());
                value(out, each.getValue());
            }
            out.writeEndObject();
        } else if (value instanceof List<?> list) {
            out.writeStartArray();
            for (Object each : list) {
                value(out, each);
            }
            out.writeEndArray();
        } else if (value instanceof BigDecimal number) {
            out.writeNumber(number.toPlainString());
        } else if (value instanceof Integer number) {
            out.writeNumber(number);
        } else if (value instanceof Boolean truth) {
            out.writeBoolean(truth);
        } else if (value == null) {
            out.writeNull();
        } else {
            out.writeString(value.toString());
        }
    }

    /** One text being read. */
    private static final class Reading {
        private final Map<String, Integer> places;
        private final Set<String> wanted;

        /**
         * @param places is filled with the line of every value by its path; null when nobody asks
         * @param wanted the keys of the outermost object that are read; empty for all
         */
        Reading(Map<String, Integer> places, Set<String> wanted) {
            this.places = places;
            this.wanted = wanted;
        }

        Map<String, Object> read(JsonFactory factory, byte[] utf8) throws NotJson {
            String text = text(utf8);
            try (JsonParser in = factory.createParser(text)) {
                if (in.nextToken() != JsonToken.START_OBJECT) {
                    throw not(in, "it does not begin with an object in braces");
                }
                place(in, "");
                Map<String, Object> object = object(in, "");
                if (in.nextToken() != null) {
                    throw not(in, "something stands behind the object");
                }
                return object;
            } catch (JsonProcessingException e) {
                throw new NotJson(
                        Shown.text(e.getOriginalMessage()),
                        e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                        e.getLocation() == null ? 1 : e.getLocation().getColumnNr());
            } catch (IOException e) {
                throw new IllegalStateException("text in memory can be read", e);
            }
        }

        private void place(JsonParser in, String path) {
            if (places != null) {
                places.put(path, in.currentTokenLocation().getLineNr());
            }
        }

        private static String text(byte[] utf8) throws NotJson {
            if (isAscii(utf8)) {
                return new String(utf8, StandardCharsets.ISO_8859_1);
            }
            try {
                return StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(utf8))
                        .toString();
            } catch (CharacterCodingException e) {
                throw new NotJson("its bytes are not UTF-8", 1, 1);
            }
        }

        private static boolean isAscii(byte[] bytes) {
            for (byte each : bytes) {
                if (each < 0) {
                    return false;
                }
            }
            return true;
        }

        private Map<String, Object> object(JsonParser in, String path) throws IOException, NotJson {
            Map<String, Object> object = new LinkedHashMap<>();
            while (in.nextToken() != JsonToken.END_OBJECT) {
                String key = in.currentName();
                in.nextToken();
                if (path.isEmpty() && !wanted.isEmpty() && !wanted.contains(key)) {
                    in.skipChildren();
                } else {
                    object.put(key, value(in, path.isEmpty() ? key : path + "." + key));
                }
            }
            return object;
        }

        private List<Object> list(JsonParser in, String path) throws IOException, NotJson {
            List<Object> list = new ArrayList<>();
            while (in.nextToken() != JsonToken.END_ARRAY) {
                list.add(value(in, path + "[" + list.size() + "]"));
            }
            return list;
        }

        private Object value(JsonParser in, String path) throws IOException, NotJson {
            place(in, path);
            return switch (in.currentToken()) {
                case START_OBJECT -> object(in, path);
                case START_ARRAY -> list(in, path);
                case VALUE_STRING -> in.getText();
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(in, path);
                case VALUE_TRUE -> Boolean.TRUE;
                case VALUE_FALSE -> Boolean.FALSE;
                case VALUE_NULL -> null;
                default -> throw not(in, path + " holds no value");
            };
        }

        private static BigDecimal number(JsonParser in, String path) throws IOException, NotJson {
            String digits = in.getText();
            if (digits.indexOf('e') >= 0 || digits.indexOf('E') >= 0) {
                throw not(in, path + " is " + digits + "; a number is written without exponent");
            }
            if (digits.length() > MOST_DIGITS && count(digits) > MOST_DIGITS) {
                throw not(in, path + " is " + digits + "; a number has at most 12 digits");
            }
            return new BigDecimal(digits);
        }

        private static long count(String digits) {
            return digits.chars().filter(Character::isDigit).count();
        }

        private static NotJson not(JsonParser in, String said) {
            return new NotJson(
                    said,
                    in.currentTokenLocation().getLineNr(),
                    in.currentTokenLocation().getColumnNr());
        }
    }

    /** Every character that has no shape of its own, or can drive a terminal, is written as an escape. */
    private static final class Escapes extends CharacterEscapes {
        private static final long serialVersionUID = 1;
        private static final int[] ASCII = ascii();

        private static int[] ascii() {
            int[] escapes = standardAsciiEscapesForJSON();
            escapes[0x7F] = ESCAPE_STANDARD;
            return escapes;
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ASCII;
        }

        @Override
        public SerializableString getEscapeSequence(int c) {
            return Shown.hidden(c) ? new SerializedString(String.format("\\u%04x", c)) : null;
        }
    }
}
