package screedbook.spec;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A sheet's file being read: a head of {@code #} lines, one line of column names, one line for each row. */
final class SheetReading {
    /** Every column, in the order in which the shipped sheets have them. */
    static final List<String> COLUMNS = List.of(
            "id",
            "does",
            "quantity",
            "low",
            "high",
            "unit",
            "rounding",
            "lowers",
            "by",
            "not_below",
            "count",
            "layer",
            "thickness_from",
            "thickness_to",
            "thickness_unit",
            "thickness_rounding",
            "nmas_mm",
            "grade",
            "polymer",
            "aid",
            "light",
            "thermal",
            "base",
            "tack_on",
            "tack_grade",
            "mix_type",
            "dates",
            "document",
            "edition",
            "clause",
            "known",
            "working");

    private static final Set<String> NEEDED =
            Set.of("id", "does", "quantity", "document", "edition", "clause", "known", "working");
    private static final CSVFormat FORM = CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .setCommentMarker('#')
            .get();

    private final String name;
    private final byte[] bytes;
    private final String file;
    private final List<SheetTrouble> troubles = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final boolean kept;

    /** @param kept whether it was in force once: then it is taken as long as its rows can be understood */
    SheetReading(String name, byte[] bytes, boolean kept) {
        this.name = name;
        this.bytes = bytes;
        this.kept = kept;
        this.file = name + ".csv";
    }

    Loaded loaded() {
        String text = text();
        List<CSVRecord> records = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        parse(text, records, lines);
        if (records.isEmpty()) {
            trouble(1, "no row stands here", "a line of column names and a line for each row");
            return new Loaded(Optional.empty(), troubles);
        }
        Map<String, Integer> heads = heads(records.get(0), lines.get(0));
        int width = records.get(0).size();
        for (int i = 1; i < records.size(); i++) {
            row(records.get(i), lines.get(i), heads, width);
        }
        together();
        if (!kept) {
            tables();
        }
        if (!troubles.isEmpty()) {
            return new Loaded(Optional.empty(), List.copyOf(troubles));
        }
        SpecSheet sheet = new SpecSheet(name, sha256(), foot(text), List.copyOf(rows));
        return new Loaded(Optional.of(sheet), List.of());
    }

    private String text() {
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.contains("\uFFFD")) {
            int line =
                    1 + (int) text.substring(0, text.indexOf('\uFFFD')).lines().count();
            trouble(Math.max(1, line - 1), "bytes that are no UTF-8", "text saved as UTF-8");
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private void parse(String text, List<CSVRecord> records, List<Integer> lines) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text), FORM)) {
            long before = 0;
            for (CSVRecord record : parser) {
                records.add(record);
                lines.add((int) Math.max(before + 1, parser.getCurrentLineNumber()));
                before = parser.getCurrentLineNumber();
            }
        } catch (IOException | UncheckedIOException e) {
            int after = lines.isEmpty() ? 1 : lines.get(lines.size() - 1) + 1;
            trouble(after, "a line that is no CSV (" + e.getMessage() + ")", "cells with commas, quotes closed");
        }
    }

    private Map<String, Integer> heads(CSVRecord record, int line) {
        Map<String, Integer> heads = new LinkedHashMap<>();
        for (int i = 0; i < record.size(); i++) {
            String head = record.get(i);
            if (!COLUMNS.contains(head)) {
                trouble(line, "a column named \"" + head + "\"", "one of " + String.join(", ", COLUMNS));
            } else if (heads.put(head, i) != null) {
                trouble(line, "the column " + head + " twice", "each column once");
            }
        }
        for (String needed : COLUMNS) {
            if (NEEDED.contains(needed) && !heads.containsKey(needed)) {
                trouble(line, "no column named " + needed, "it to be there");
                heads.put(needed, record.size());
            }
        }
        return heads;
    }

    private void row(CSVRecord record, int line, Map<String, Integer> heads, int width) {
        if (record.size() > width) {
            trouble(line, record.size() + " cells", width + ", one under each column name");
        }
        Cells cells = new Cells(record, heads, (seen, right) -> trouble(line, seen, right));
        rows.add(new RowReading(name, line, cells).row());
    }

    /** What can only be said of all rows: ids once, and what a row lowers is there. */
    private void together() {
        Set<String> ids = new HashSet<>();
        for (Row row : rows) {
            if (row.id() != null && !ids.add(row.id())) {
                trouble(row.line(), "the id " + row.id() + " a second time", "an id of its own");
            }
        }
        for (Row row : rows) {
            for (String id : row.of()) {
                boolean there = rows.stream()
                        .anyMatch(r -> id.equals(r.id())
                                && r.sort() == Row.Sort.LIMIT
                                && r.quantity() == row.quantity()
                                && r.low() != null);
                if (!there) {
                    trouble(
                            row.line(),
                            "lowers names " + id,
                            "the id of a limit row of the same quantity that has a low end");
                }
            }
        }
    }

    private void tables() {
        Set<Integer> troubled = new HashSet<>();
        troubles.forEach(each -> troubled.add(each.line()));
        new Tables(this::trouble).look(rows, troubled);
    }

    private void trouble(int line, String seen, String right) {
        troubles.add(new SheetTrouble(file, line, seen, right));
    }

    private static List<String> foot(String text) {
        return text.lines()
                .takeWhile(line -> line.startsWith("#"))
                .map(line -> line.substring(1).strip())
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private String sha256() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
