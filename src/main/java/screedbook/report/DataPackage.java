package screedbook.report;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Aside;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.unit.Measure;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * What the columns of our tables hold, as a Frictionless Data Package (version 1) that lies beside them: type, unit and
 * meaning of every column, so that nobody has to guess.
 */
public final class DataPackage {
    /** The name of the file. */
    public static final String FILE = "datapackage.json";

    private static final String GUARD = "a text that a spreadsheet would run as a formula has an apostrophe before it";

    /** Columns that stand in every table of entries, and those of the tables of figures. */
    private static final Map<String, Column> KNOWN = known();

    private DataPackage() {}

    /** @param unit as it is written; empty where there is none */
    private record Column(String type, String unit, String description) {}

    private static Map<String, Column> known() {
        Map<String, Column> known = new LinkedHashMap<>();
        known.put("n", new Column("integer", "", "number of the line through all files of its book's shift"));
        known.put("line", new Column("integer", "", "line of the file"));
        known.put("job", text("as the lines name the job"));
        known.put("shift", text("date on which the shift began, and day, night or extra"));
        known.put("book", text("one laptop's part of the shift"));
        known.put("time", new Column("datetime", "", "when it happened; RFC 3339 with its offset"));
        known.put("keyed", new Column("datetime", "", "when the machine wrote it; RFC 3339 with its offset"));
        known.put("who", text("initials of the writer"));
        known.put("source", text("live, or from notes"));
        known.put("struck_by", text("the strike in force; empty when the entry counts"));
        known.put("amended_by", text("amendments in force"));
        known.put(
                "value", new Column("number", "", "the figure as a plain decimal; its unit stands in the column unit"));
        known.put("unit", text("suffix of the unit, such as ston; empty for a count"));
        known.put("shown", text("the figure as shown, with its unit"));
        known.put("figure", text("permanent word of the figure"));
        known.put(
                "part",
                text("shift, day, week, month, job, mix, pull or lift; record for what is not as it was written"));
        known.put("of", text("which of them"));
        known.put("from_date", new Column("date", "", "date of the first shift in it"));
        known.put("to_date", new Column("date", "", "date of the last shift in it"));
        known.put("day", new Column("date", "", "date on which the shifts began"));
        known.put("shifts", new Column("integer", "", "how many shifts"));
        known.put("loads", new Column("integer", "", "loads that came"));
        known.put("units", text("us or metric"));
        known.put("received", new Column("number", "ston or t", "net as printed"));
        known.put("placed", new Column("number", "ston or t", "net less what was not placed"));
        for (String where : List.of("paver", "plant")) {
            known.put(where + "_readings", new Column("integer", "", "readings at the " + where));
            for (String which : List.of("least", "mean", "most")) {
                known.put(where + "_" + which, new Column("number", "degF or degC", which + " at the " + where));
            }
        }
        return known;
    }

    private static Column text(String description) {
        return new Column("string", "", description);
    }

    /**
     * The package of tables that lie in one folder.
     *
     * @param name of the package: lower case letters, digits, hyphens, dots
     * @param tables their texts by file name; the first line of each names its columns
     */
    public static String text(String name, Map<String, String> tables) {
        return Json.object(json -> {
            json.text("profile", "tabular-data-package");
            json.text("name", name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-"));
            json.text("title", "The daily log of a paving job");
            json.list(
                    "resources",
                    List.copyOf(tables.entrySet()),
                    table -> resource(json, table.getKey(), heads(table.getValue())));
        });
    }

    private static List<String> heads(String table) {
        String line = table.lines().findFirst().orElse("");
        List<String> heads = new ArrayList<>();
        for (String cell : line.split(",")) {
            heads.add(Cells.plain(cell.replaceAll("^\"|\"$", "")));
        }
        return heads;
    }

    private static void resource(Json json, String file, List<String> heads) throws IOException {
        String stem = file.replaceFirst("\\.csv$", "");
        Map<String, Column> own = Kind.ofWord(stem).map(DataPackage::columns).orElse(Map.of());
        json.text("profile", "tabular-data-resource");
        json.text("name", stem);
        json.text("path", file);
        json.text("description", GUARD);
        json.text("format", "csv");
        json.text("mediatype", "text/csv");
        json.text("encoding", "utf-8");
        json.object("dialect", dialect -> {
            dialect.text("delimiter", ",");
            dialect.text("quoteChar", "\"");
            dialect.yes("doubleQuote", true);
            dialect.text("lineTerminator", "\r\n");
            dialect.yes("header", true);
        });
        json.object("schema", schema -> {
            schema.list(
                    "fields",
                    heads,
                    head -> field(schema, head, own.getOrDefault(head, KNOWN.getOrDefault(head, text("")))));
            schema.texts("missingValues", List.of(""));
        });
    }

    private static void field(Json json, String name, Column column) throws IOException {
        json.text("name", name);
        json.text("type", column.type());
        if (column.type().equals("datetime")) {
            json.text("format", "any");
        }
        if (!column.unit().isEmpty()) {
            json.text("unit", column.unit());
        }
        if (!column.description().isEmpty()) {
            json.text("description", column.description());
        }
    }

    /** The blanks of a kind under the keys of either system. */
    private static Map<String, Column> columns(Kind kind) {
        List<Field> fields = new ArrayList<>(kind.fields());
        fields.addAll(Fields.of(Aside.class));
        Map<String, Column> columns = new LinkedHashMap<>();
        for (Field field : fields) {
            for (UnitSystem system : UnitSystem.values()) {
                columns.put(field.key(system), column(field, system));
            }
        }
        return columns;
    }

    private static Column column(Field field, UnitSystem system) {
        String label = field.label() + (field.help().isEmpty() ? "" : "; " + field.help());
        Optional<Measure> measure = field.measure();
        Optional<Unit> unit = measure.map(m -> m.unit(system));
        if (unit.isPresent()) {
            return new Column("number", unit.get().symbol(), label);
        }
        Class<?> type = field.type();
        String word = type == Integer.class
                ? "integer"
                : type == BigDecimal.class
                        ? "number"
                        : type == OffsetDateTime.class ? "datetime" : type == LocalDate.class ? "date" : "string";
        return new Column(word, "", label);
    }
}
