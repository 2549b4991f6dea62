package screedbook.entry;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import screedbook.unit.Measure;
import screedbook.unit.UnitSystem;

/**
 * One blank of a kind, read off the record's component.
 *
 * @param name the key of a line without its unit: {@code net}, {@code from_sta}
 * @param path the components that lead to the value from the kind's record, outermost first
 * @param element for lists, the class of an element
 */
public record Field(
        String name,
        String label,
        Class<?> type,
        Optional<Measure> measure,
        Blank.Pick pick,
        Blank.Due due,
        boolean carry,
        int width,
        String help,
        List<RecordComponent> path,
        Optional<Class<?>> element) {

    /** The key in a line of a job with the given units: {@code net_ston} or {@code net_t}. */
    public String key(UnitSystem system) {
        return measure.map(m -> name + "_" + m.unit(system).suffix()).orElse(name);
    }

    /** The words that may stand here, when they are fixed; else empty. */
    public List<String> words() {
        Class<?> of = element.orElse(type);
        if (!of.isEnum()) {
            return List.of();
        }
        return Arrays.stream(of.getEnumConstants()).map(c -> ((Word) c).word()).toList();
    }

    /** The value in a record of the kind; null when not observed. */
    public Object get(Record record) {
        Object at = record;
        for (RecordComponent step : path) {
            if (at == null) {
                return null;
            }
            try {
                at = step.getAccessor().invoke(at);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(step + " of " + record.getClass(), e);
            }
        }
        return at;
    }
}
