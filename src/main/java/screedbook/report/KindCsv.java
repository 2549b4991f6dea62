package screedbook.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import screedbook.entry.Aside;
import screedbook.entry.Day;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.unit.UnitSystem;

/**
 * The entries of one kind as comma-separated values, one entry a line as it stands after corrections; struck entries
 * stay in and say what struck them. Units stand in the heads.
 */
public final class KindCsv {
    private static final List<String> HEADS =
            List.of("n", "job", "shift", "book", "time", "keyed", "who", "source", "struck_by", "amended_by");

    private KindCsv() {}

    /** A file of every kind by its name, {@code ticket.csv}; a kind without entries has its head alone. */
    public static Map<String, String> files(List<Day> days, UnitSystem system) {
        Map<String, String> files = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            files.put(kind.word() + ".csv", text(kind, days, system));
        }
        return files;
    }

    /** The entries of a kind of these days. */
    public static String text(Kind kind, List<Day> days, UnitSystem system) {
        List<Standing<?>> entries = days.stream()
                .flatMap(d -> d.all().stream())
                .filter(s -> s.entry().kind() == kind)
                .collect(Collectors.toList());
        List<Map<String, Object>> plain = entries.stream().map(KindCsv::plain).toList();
        Set<String> columns = columns(kind, plain, system);
        Cells cells = new Cells();
        HEADS.forEach(cells::text);
        columns.forEach(cells::text);
        cells.end();
        for (int i = 0; i < entries.size(); i++) {
            header(cells, entries.get(i));
            Map<String, Object> row = plain.get(i);
            columns.forEach(column -> cell(cells, row.get(column)));
            cells.end();
        }
        return cells.lines();
    }

    private static Map<String, Object> plain(Standing<?> standing) {
        Map<String, Object> values = new LinkedHashMap<>(Fields.plain((Record) standing.entry()));
        values.putAll(Fields.plain(standing.aside()));
        return values;
    }

    /** The keys of the kind in their order; a measured one in the job's unit, then in any other that occurs. */
    private static Set<String> columns(Kind kind, List<Map<String, Object>> rows, UnitSystem system) {
        List<Field> fields = new ArrayList<>(kind.fields());
        fields.addAll(Fields.of(Aside.class));
        Set<String> columns = new LinkedHashSet<>();
        for (Field field : fields) {
            String tail =
                    field.measure().map(m -> "_" + m.unit(system).suffix()).orElse("");
            columns.add(field.name() + tail);
        }
        rows.forEach(row -> columns.addAll(row.keySet()));
        return columns;
    }

    private static void header(Cells cells, Standing<?> standing) {
        Line line = standing.line();
        cells.number(line.n())
                .text(line.job())
                .text(line.shift().toString())
                .text(line.book())
                .text(standing.time() == null ? null : Moment.text(standing.time()))
                .text(Moment.keyed(line.keyed()))
                .text(line.who())
                .text(line.source() == null ? null : line.source().word())
                .text(standing.struck() ? standing.struckBy().ref().toString() : null)
                .text(
                        standing.amendedBy().isEmpty()
                                ? null
                                : standing.amendedBy().stream()
                                        .map(Line::ref)
                                        .map(Ref::toString)
                                        .collect(Collectors.joining(" ")));
    }

    private static void cell(Cells cells, Object value) {
        if (value instanceof BigDecimal number) {
            cells.number(number);
        } else {
            cells.text(value == null ? null : told(value));
        }
    }

    /** A list or an object in one cell: {@code initials=RK name=R. Kell; initials=JD}. */
    private static String told(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(KindCsv::told).collect(Collectors.joining("; "));
        }
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(e -> e.getKey() + "=" + told(e.getValue()))
                    .collect(Collectors.joining(" "));
        }
        return value instanceof BigDecimal number ? number.toPlainString() : String.valueOf(value);
    }
}
