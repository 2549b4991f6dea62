package screedbook.calc;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The table that leads from a quality index to a percent within limits: FHWA Technical Advisory T 5080.12 (1989), Table 1B.
 * Rows 57 to 73 stand as they are printed. The other rows from 50 to 99 were not read; they are worked out by the formula
 * of {@link PercentWithin.Way#BETA} with the first number of tests of their column and rounded to the hundredth, and row
 * 100 is the first hundredth at which that formula gives 100.00.
 */
public final class QualityTable {
    private static final int FIRST = 50;
    private static final int LAST = 100;
    private static final List<Integer> COLUMNS = new ArrayList<>();
    private static final Map<Integer, List<BigDecimal>> PRINTED = new HashMap<>();
    private static final Map<Cell, BigDecimal> CELLS = new HashMap<>();

    private record Cell(int percent, int column) {}

    private QualityTable() {}

    static {
        for (List<String> row : rows("percent-within")) {
            if (COLUMNS.isEmpty()) {
                row.stream().skip(1).map(Integer::valueOf).forEach(COLUMNS::add);
            } else {
                PRINTED.put(
                        Integer.valueOf(row.get(0)),
                        row.stream().skip(1).map(BigDecimal::new).toList());
            }
        }
    }

    /** The lines of one of the tables of quality, cut into cells; lines that begin with # tell its source. */
    static List<List<String>> rows(String name) {
        try (InputStream in = QualityTable.class.getResourceAsStream("/quality/" + name + ".csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> Arrays.asList(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The percent of the row with the next higher Q; empty where no row has one. */
    static Optional<BigDecimal> percent(BigDecimal q, int n) {
        BigDecimal size = q.abs();
        for (int percent = FIRST; percent <= LAST; percent++) {
            if (q(percent, n).compareTo(size) >= 0) {
                return Optional.of(BigDecimal.valueOf(q.signum() < 0 ? 100 - percent : percent));
            }
        }
        return Optional.empty();
    }

    /**
     * The quality index of a row.
     *
     * @param percent 50 to 100
     * @param n tests, from 3
     */
    public static synchronized BigDecimal q(int percent, int n) {
        int column = 0;
        while (column + 1 < COLUMNS.size() && COLUMNS.get(column + 1) <= n) {
            column++;
        }
        return CELLS.computeIfAbsent(new Cell(percent, column), QualityTable::cell);
    }

    private static BigDecimal cell(Cell cell) {
        List<BigDecimal> printed = PRINTED.get(cell.percent());
        if (printed != null) {
            return printed.get(cell.column());
        }
        int n = COLUMNS.get(cell.column());
        return cell.percent() == LAST
                ? BigDecimal.valueOf(PercentWithin.inverse(99.995, n)).setScale(2, RoundingMode.CEILING)
                : BigDecimal.valueOf(PercentWithin.inverse(cell.percent(), n)).setScale(2, RoundingMode.HALF_UP);
    }
}
