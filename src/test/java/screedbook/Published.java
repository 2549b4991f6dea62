package screedbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The published figures that tests hold the program against: one table for each topic, each row with its source. */
public final class Published {
    private static final CSVFormat TABLE =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private Published() {}

    /** One row: its cells by column. Its text is its id, so that a report names it. */
    public record Row(Map<String, String> cells) {
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new AssertionError("no column " + column + " in the row " + this);
            }
            return cell;
        }

        public BigDecimal number(String column) {
            return new BigDecimal(text(column));
        }

        @Override
        public String toString() {
            return cells.get("id");
        }
    }

    /** All rows of a topic, in the order of the file; a row whose source was not read is refused. */
    public static List<Row> rows(String topic) {
        try (InputStream file = open(topic + ".csv")) {
            List<Row> rows = new ArrayList<>();
            for (CSVRecord line : TABLE.parse(new InputStreamReader(file, StandardCharsets.UTF_8))) {
                rows.add(sourced(new Row(line.toMap())));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of a table kept as it was printed; lines that begin with # tell its source. */
    public static List<String> lines(String name) {
        try (InputStream file = open(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) {
        InputStream file = Published.class.getResourceAsStream("/published/" + name);
        if (file == null) {
            throw new AssertionError("no such table: " + name);
        }
        return file;
    }

    private static Row sourced(Row row) {
        if (row.text("source").isBlank()
                || row.text("section").isBlank()
                || !row.text("known_by").equals("read")) {
            throw new AssertionError("a row needs a source that was read: " + row);
        }
        return row;
    }

    /** The rows of a topic that have a word in a column. */
    public static List<Row> rows(String topic, String column, String word) {
        return rows(topic).stream().filter(row -> row.text(column).equals(word)).toList();
    }
}
