package screedbook.diary;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import screedbook.entry.ListColumns;

/**
 * A plant's list as a table: a heading and rows under it. Each line is read by itself, so that one that is damaged
 * spoils no other; what cannot be read is told with its line.
 */
final class ListTable {
    /** Longer than any line of a list of loads; the record's own lines are no longer either. */
    static final int LONGEST = 64 * 1024;

    private static final char[] PARTED_BY = {',', ';', '\t'};
    private static final int CELLS_OF_A_HEADING = 3;
    private static final int LINES_OF_A_CELL = 8;
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final String file;
    private final List<Trouble> troubles = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private List<String> heading = List.of();
    private char parted = ',';

    /** One row: its line in the file, from 1, and its cells without the spaces around them. */
    record Row(int line, List<String> cells) {
        String cell(int at) {
            return at >= 0 && at < cells.size() ? cells.get(at) : "";
        }

        boolean blank() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    private ListTable(String file) {
        this.file = file;
    }

    /**
     * @param file the file's name, for what is told of it
     * @param columns how the list is read, so that a title above its heading is known for one
     */
    static ListTable of(String file, byte[] bytes, ListColumns columns) {
        ListTable table = new ListTable(file);
        table.read(bytes, columns);
        return table;
    }

    /** Its columns by name; two of one name and those without one are numbered. */
    List<String> heading() {
        return heading;
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    List<Trouble> troubles() {
        return List.copyOf(troubles);
    }

    /** Whether a comma parts whole numbers from decimals in it. */
    boolean partedBySemicolon() {
        return parted == ';';
    }

    private void read(byte[] bytes, ListColumns columns) {
        if (wide(bytes)) {
            trouble(1, "", "it is written in UTF-16", "the list saved as CSV in UTF-8");
            return;
        }
        List<String> lines = lines(bytes);
        parted = parted(lines);
        List<Row> all = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            i = row(lines, i, all);
        }
        all.removeIf(Row::blank);
        int head = heading(all, columns);
        if (head < 0) {
            trouble(0, "", "it holds no row", "a line with the names of its columns and a line for each load");
            return;
        }
        heading = named(all.get(head).cells());
        all.subList(0, head)
                .forEach(r -> trouble(r.line(), String.join(" ", r.cells()), "a line above the heading", ""));
        rows.addAll(all.subList(head + 1, all.size()));
    }

    private static boolean wide(byte[] bytes) {
        return bytes.length > 1
                && (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE
                        || bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF);
    }

    private List<String> lines(byte[] bytes) {
        int from = bytes.length >= 3 && Arrays.equals(Arrays.copyOf(bytes, 3), MARK) ? 3 : 0;
        boolean feeds = false;
        for (byte each : bytes) {
            feeds |= each == '\n';
        }
        byte end = (byte) (feeds ? '\n' : '\r');
        List<String> lines = new ArrayList<>();
        for (int at = from; at <= bytes.length; at++) {
            if (at == bytes.length || bytes[at] == end) {
                int to = at > from && bytes[at - 1] == '\r' ? at - 1 : at;
                if (at < bytes.length || to > from) {
                    lines.add(line(lines.size() + 1, Arrays.copyOfRange(bytes, from, to)));
                }
                from = at + 1;
            }
        }
        return lines;
    }

    private String line(int number, byte[] bytes) {
        if (bytes.length > LONGEST) {
            trouble(number, "", "a line of " + bytes.length + " bytes is not read", "at most " + LONGEST);
            return "";
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            String text = new String(bytes, StandardCharsets.UTF_8);
            trouble(number, text, "bytes that are no UTF-8", "the list saved in UTF-8");
            return text;
        }
    }

    /** What parts the cells of the first line that any of the three parts into a heading's worth. */
    private static char parted(List<String> lines) {
        for (String line : lines) {
            char best = ',';
            int most = 0;
            for (char each : PARTED_BY) {
                int cells = cells(line, each).map(List::size).orElse(0);
                best = cells > most ? each : best;
                most = Math.max(most, cells);
            }
            if (most >= CELLS_OF_A_HEADING) {
                return best;
            }
        }
        return ',';
    }

    /** Reads the row that begins on a line; gives the last line that it took. */
    private int row(List<String> lines, int at, List<Row> all) {
        String text = lines.get(at);
        if (text.isBlank() || text.matches("(?i)sep=.")) {
            return at;
        }
        Optional<List<String>> cells = cells(text, parted);
        if (cells.isPresent()) {
            all.add(new Row(at + 1, cells.get()));
            return at;
        }
        int width = all.stream().mapToInt(r -> r.cells().size()).max().orElse(CELLS_OF_A_HEADING);
        StringBuilder joined = new StringBuilder(text);
        for (int to = at + 1; to < Math.min(lines.size(), at + LINES_OF_A_CELL); to++) {
            joined.append('\n').append(lines.get(to));
            Optional<List<String>> whole = cells(joined.toString(), parted);
            if (whole.isPresent() && whole.get().size() == width) {
                all.add(new Row(at + 1, whole.get()));
                return to;
            }
        }
        trouble(at + 1, text, "a line that is no CSV", "cells parted by one sign, quotes closed");
        return at;
    }

    private static Optional<List<String>> cells(String text, char parted) {
        CSVFormat form = CSVFormat.RFC4180
                .builder()
                .setDelimiter(parted)
                .setIgnoreSurroundingSpaces(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), form)) {
            List<CSVRecord> records = parser.getRecords();
            return records.size() == 1
                    ? Optional.of(records.get(0).stream().map(ListTable::cell).toList())
                    : Optional.empty();
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    /** A spreadsheet keeps digits as text by writing them as a formula: {@code ="48217"}. */
    private static String cell(String text) {
        String t = text.strip();
        return t.matches("=\"[^\"]*\"") ? t.substring(2, t.length() - 1).strip() : t;
    }

    /** The row of column names: the one that has the columns that are known, else the first that could be one. */
    private static int heading(List<Row> all, ListColumns columns) {
        for (int i = 0; i < all.size(); i++) {
            List<String> named = named(all.get(i).cells());
            if (columns.numberColumn() != null
                    && named.contains(columns.numberColumn())
                    && columns.netColumn() != null
                    && named.contains(columns.netColumn())) {
                return i;
            }
        }
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).cells().stream().filter(c -> !c.isEmpty()).count() >= CELLS_OF_A_HEADING) {
                return i;
            }
        }
        return all.isEmpty() ? -1 : 0;
    }

    private static List<String> named(List<String> cells) {
        Map<String, Integer> seen = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (String cell : cells) {
            String name = cell.isEmpty() ? "column " + (names.size() + 1) : cell.replaceAll("\\s+", " ");
            int times = seen.merge(name, 1, Integer::sum);
            names.add(times == 1 ? name : name + " #" + times);
        }
        return List.copyOf(names);
    }

    private void trouble(int line, String excerpt, String said, String right) {
        troubles.add(new Trouble(file, line, excerpt, said, right));
    }
}
