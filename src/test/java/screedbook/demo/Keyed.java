package screedbook.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Built;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.unit.UnitSystem;

/** An entry of any kind from the words that stand in its line. */
final class Keyed {
    private Keyed() {}

    /** @param pairs key and value in turn, keys as in a line: {@code mat_degF}, {@code place_sta} */
    static Entry of(Kind kind, String... pairs) {
        Map<String, Object> plain = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            if (pairs[i + 1] != null) {
                plain.put(pairs[i], value(kind, pairs[i], pairs[i + 1]));
            }
        }
        Built<? extends Record> built = Fields.build(kind.type(), plain);
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new IllegalArgumentException(kind + " " + plain + ": " + built.slips() + built.unknown());
        }
        return (Entry) built.value();
    }

    private static Object value(Kind kind, String key, String text) {
        for (Field field : kind.fields()) {
            if (key.equals(field.key(UnitSystem.US)) || key.equals(field.key(UnitSystem.METRIC))) {
                boolean number = field.measure().isPresent()
                        || field.type() == BigDecimal.class
                        || field.type() == Integer.class;
                if (field.type() == List.class) {
                    return new ArrayList<>(List.of(text.split(", ")));
                }
                return number ? new BigDecimal(text) : text;
            }
        }
        throw new IllegalArgumentException(kind + " has no blank " + key);
    }
}
