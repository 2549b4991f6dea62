package screedbook.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import screedbook.entry.Field;
import screedbook.entry.Station;
import screedbook.entry.Typed;
import screedbook.entry.Word;
import screedbook.unit.Amount;

/**
 * A form of the job sheet read as values.
 *
 * @param plain values under the keys of a job file, of the blanks that hold some
 * @param shown the reading of a blank where it is not what was typed
 * @param troubles sentences for blanks that cannot be read, by name
 */
record Filled(Map<String, Object> plain, Map<String, String> shown, Map<String, String> troubles) {
    static Filled of(Form form, Sheet sheet) {
        Filled filled = new Filled(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
        for (Input input : form.inputs()) {
            if (!Sheet.nested(input.field()) && !input.text().isBlank()) {
                filled.input(input, sheet);
            }
        }
        return filled;
    }

    private void input(Input input, Sheet sheet) {
        Field field = input.field();
        String text = input.text().strip();
        if (field.type() != List.class) {
            put(input, one(field.type(), field, text, sheet), text);
            return;
        }
        List<Object> values = new ArrayList<>();
        for (String part : text.split("\\s*,\\s*")) {
            Typed<?> typed = one(field.element().orElseThrow(), field, part, sheet);
            if (!typed.read()) {
                troubles.put(input.name(), typed.trouble());
            } else if (typed.value() != null) {
                values.add(typed.value());
            }
        }
        plain.put(input.name(), List.copyOf(values));
    }

    private static Typed<?> one(Class<?> type, Field field, String text, Sheet sheet) {
        if (type == Amount.class || type == BigDecimal.class) {
            return Typed.decimal(text);
        }
        if (type == Integer.class) {
            return as(Typed.whole(text), BigDecimal::valueOf);
        }
        if (type == Station.class) {
            return as(Typed.station(text, sheet.base()), Station::text);
        }
        if (type == LocalDate.class) {
            return as(Typed.date(text), LocalDate::toString);
        }
        if (type == LocalTime.class) {
            return as(Typed.hour(text), LocalTime::toString);
        }
        if (type == ZoneId.class) {
            return as(Typed.zone(text), ZoneId::getId);
        }
        if (type.isEnum()) {
            return as(
                    Typed.word(text, List.of(type.getEnumConstants()), c -> ((Word) c).word()), c -> ((Word) c).word());
        }
        return new Typed<>(SheetPicks.match(sheet, field, text), "", List.of());
    }

    private static <T> Typed<Object> as(Typed<T> typed, Function<T, Object> plain) {
        Object value = typed.value() == null ? null : plain.apply(typed.value());
        return new Typed<>(value, typed.trouble(), List.of());
    }

    private void put(Input input, Typed<?> typed, String text) {
        if (!typed.read()) {
            troubles.put(input.name(), typed.trouble());
        } else if (typed.value() != null) {
            plain.put(input.name(), typed.value());
            String said = Sheet.typed(typed.value());
            if (!said.equalsIgnoreCase(text.toLowerCase(Locale.ROOT))) {
                shown.put(input.name(), said);
            }
        }
    }

    boolean readable() {
        return troubles.isEmpty();
    }
}
