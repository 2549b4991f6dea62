package screedbook.season;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A query put to DuckDB over JDBC; its rows as plain texts, numbers without needless noughts. */
public final class DuckDb {
    private DuckDb() {}

    public static List<String> rows(String query) throws SQLException {
        try (Connection db = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = db.createStatement();
                ResultSet found = statement.executeQuery(query)) {
            List<String> rows = new ArrayList<>();
            int columns = found.getMetaData().getColumnCount();
            while (found.next()) {
                List<String> row = new ArrayList<>();
                for (int i = 1; i <= columns; i++) {
                    row.add(text(found.getObject(i)));
                }
                rows.add(String.join(",", row));
            }
            return rows;
        }
    }

    private static String text(Object value) {
        if (value instanceof BigDecimal number) {
            return plain(number);
        }
        return value == null ? "" : value.toString();
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** Lines of a table of ours in the same form: no quotation marks, numbers without needless noughts. */
    public static List<String> plain(String csv) {
        return csv.lines().skip(1).map(DuckDb::plainLine).toList();
    }

    private static String plainLine(String line) {
        return List.of(line.split(",", -1)).stream()
                .map(cell -> cell.startsWith("\"")
                        ? cell.substring(1, cell.length() - 1)
                        : cell.matches("-?[0-9]+(\\.[0-9]+)?") ? plain(new BigDecimal(cell)) : cell)
                .collect(Collectors.joining(","));
    }

    /** Puts a file of SQL to the engine and prints the rows: for the benchmark, a process of its own. */
    public static void main(String[] words) throws Exception {
        String query = Files.readString(Path.of(words[0]));
        StringBuilder out = new StringBuilder();
        rows(query).forEach(row -> out.append(row).append('\n'));
        System.out.print(out);
    }
}
