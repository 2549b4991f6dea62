package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.MadeArchive;
import screedbook.season.DuckDb;

/** Tables and what lies beside them, read by DuckDB with no type but those that are told (Data Package 1, Frictionless). */
class DataPackageTest {
    private static final Map<String, String> TYPES = Map.of(
            "integer", "BIGINT", "number", "DECIMAL(24,9)", "date", "DATE", "datetime", "VARCHAR", "string", "VARCHAR");

    @TempDir
    Path folder;

    private static JsonNode resources(Path folder) throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve("datapackage.json").toFile())
                .get("resources");
    }

    /** The table as DuckDB reads it when it is told the types. */
    private static String from(Path folder, JsonNode resource) {
        List<String> columns = new ArrayList<>();
        for (JsonNode field : resource.get("schema").get("fields")) {
            columns.add("'" + field.get("name").asText() + "': '"
                    + TYPES.get(field.get("type").asText()) + "'");
        }
        return "read_csv('" + folder.resolve(resource.get("path").asText()) + "', header = true, auto_detect = false, "
                + "delim = ',', quote = '\"', escape = '\"', columns = {" + String.join(", ", columns) + "})";
    }

    private static String rows(Path folder, String name, String select) throws Exception {
        for (JsonNode resource : resources(folder)) {
            if (resource.get("name").asText().equals(name)) {
                return String.join(";", DuckDb.rows("SELECT " + select + " FROM " + from(folder, resource)));
            }
        }
        throw new AssertionError("no table " + name);
    }

    @Test
    void everyColumnOfEveryTableIsToldAndHoldsWhatIsTold() throws Exception {
        assertThat(Said.by("csv", "demo-logs/harrow-bend", "--to", folder).exit())
                .isZero();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".csv")))
                    .containsExactlyInAnyOrderElementsOf(resources(folder).findValuesAsText("path"));
        }
        for (JsonNode resource : resources(folder)) {
            List<String> names = new ArrayList<>();
            resource.get("schema")
                    .get("fields")
                    .forEach(f -> names.add("\"" + f.get("name").asText() + "\""));
            Path table = folder.resolve(resource.get("path").asText());
            assertThat(Files.readAllLines(table).get(0)).isEqualTo(String.join(",", names));
            DuckDb.rows("SELECT * FROM " + from(folder, resource));
        }
        // As jq adds up the same shift in the README; nothing is taken back in it.
        assertThat(rows(folder, "ticket", "sum(net_ston) FILTER (shift = '2026-05-12-day')"))
                .isEqualTo("1918.68");
    }

    @Test
    void unitsAndMeaningsAreTold() throws Exception {
        Said.by("csv", "demo-logs/harrow-bend", "--to", folder);
        JsonNode ticket = null;
        for (JsonNode each : resources(folder)) {
            ticket = each.get("name").asText().equals("ticket") ? each : ticket;
        }
        Map<String, String> told = new HashMap<>();
        ticket.get("schema")
                .get("fields")
                .forEach(f -> told.put(
                        f.get("name").asText(),
                        f.get("type").asText() + " " + f.path("unit").asText()));

        assertThat(told).containsEntry("net_ston", "number T").containsEntry("paver_degF", "number \u00b0F");
        assertThat(told)
                .containsEntry("n", "integer ")
                .containsEntry("lift", "integer ")
                .containsEntry("time", "datetime ");
    }

    @Test
    void textThatLooksLikeAFormulaStaysTextAndAccentsStay() throws Exception {
        MadeArchive.make(folder.resolve("made"), 1, 1, 400);
        Path tables = folder.resolve("tables");
        Said.by("csv", folder.resolve("made/made-01"), "--to", tables);

        assertThat(rows(tables, "note", "count(*) FILTER (\"text\" = '''=SUM(A1:A9)') > 0"))
                .isEqualTo("true");
        assertThat(rows(tables, "note", "count(*) FILTER (\"text\" = 'b\u00e9ton repris \u00e0 14 h') > 0"))
                .isEqualTo("true");
    }

    @Test
    void aSeasonWrittenIntoAFolderHasItsDatesAsDates() throws Exception {
        Said said = Said.by("season", "demo-logs", "--format", "csv", "--out", folder);
        assertThat(said.exit()).isZero();
        assertThat(said.out()).isEmpty();
        assertThat(Files.readString(folder.resolve("season.csv")))
                .isEqualTo(Said.by("season", "demo-logs", "--format", "csv").out());
        assertThat(rows(folder, "season", "count(*) FILTER (from_date = DATE '2026-05-12') > 0"))
                .isEqualTo("true");
        assertThat(rows(folder, "season", "sum(\"value\") FILTER (part = 'job' AND figure = 'loads')"))
                .isEqualTo(rows(folder, "season", "sum(\"value\") FILTER (part = 'day' AND figure = 'loads')"));

        assertThat(Said.by("season", "demo-logs", "--loads", "--out", folder).exit())
                .isZero();
        assertThat(rows(folder, "loads", "sum(loads)"))
                .isEqualTo(
                        DuckDb.plain(Said.by("season", "demo-logs", "--loads").out()).stream()
                                .map(line -> line.split(",")[4])
                                .collect(Collectors.summingInt(Integer::parseInt))
                                .toString());
        assertThat(Said.by("season", "demo-logs", "--out", folder).exit()).isEqualTo(2);
    }
}
