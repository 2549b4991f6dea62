package screedbook.diary;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.entry.Word;
import screedbook.unit.UnitSystem;

/** Values for every blank of a record, made from what the blank says of itself. */
final class Samples {
    private Samples() {}

    static Map<String, Object> full(Class<? extends Record> type, UnitSystem system) {
        Map<String, Object> values = new LinkedHashMap<>();
        int seed = 1;
        for (Field field : Fields.of(type)) {
            values.put(field.key(system), value(field, field.type(), system, seed++));
        }
        return values;
    }

    private static Object value(Field field, Class<?> type, UnitSystem system, int seed) {
        if (field.measure().isPresent()) {
            return new BigDecimal(seed + ".50");
        }
        if (type == List.class) {
            Class<?> element = field.element().orElseThrow();
            return List.of(plain(element, system, seed), plain(element, system, seed + 1));
        }
        return plain(type, system, seed);
    }

    private static Object plain(Class<?> type, UnitSystem system, int seed) {
        if (type == Integer.class || type == BigDecimal.class) {
            return BigDecimal.valueOf(seed);
        }
        if (type == OffsetDateTime.class) {
            return "2026-06-03T21:%02d:00-06:00".formatted(seed % 60);
        }
        if (type == LocalDate.class) {
            return "2026-06-%02d".formatted(1 + seed % 28);
        }
        if (type == Station.class) {
            return seed + "+50.5";
        }
        if (type == Ref.class) {
            return "paver/" + seed;
        }
        if (type == Map.class) {
            return Map.of("net_ston", new BigDecimal("22.30"));
        }
        if (type.isEnum()) {
            Object[] words = type.getEnumConstants();
            return ((Word) words[seed % words.length]).word();
        }
        return type.isRecord() ? full(type.asSubclass(Record.class), system) : "text " + seed;
    }
}
