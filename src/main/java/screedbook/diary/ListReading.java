package screedbook.diary;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantRows;
import screedbook.unit.Amount;

/** The rows of a plant's list turned into loads by its columns; what cannot be read is told and left out. */
final class ListReading {
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final Pattern DATE = Pattern.compile(
            "(\\d{1,4})[-/. ](\\d{1,2}|[A-Za-z]{3})[-/. ](\\d{2,4})(?=\\D|$)|(\\d{4})(\\d{2})(\\d{2})(?=\\D|$)");
    private static final Pattern HOUR = Pattern.compile(
            "(\\d{1,2}):?(\\d{2})(?::\\d{2}(?:[.,]\\d+)?)?\\s*([AaPp])?\\.?[Mm]?\\.?(?:Z|[+-]\\d{2}:?\\d{2})?");
    private static final Pattern WEIGHT =
            Pattern.compile("(-?\\d[\\d., ']*)\\s*(t|tn|ton|tons|tonne|tonnes|lb|lbs|kg)?", Pattern.CASE_INSENSITIVE);
    private static final int LONGEST_NUMBER = 40;

    private final String file;
    private final ListTable table;
    private final ListColumns columns;
    private final List<Trouble> troubles = new ArrayList<>();
    private final List<PlantRows.Row> rows = new ArrayList<>();

    private ListReading(String file, ListTable table, ListColumns columns) {
        this.file = file;
        this.table = table;
        this.columns = columns;
        this.troubles.addAll(table.troubles());
    }

    static ListReading of(String file, ListTable table, ListColumns columns) {
        ListReading reading = new ListReading(file, table, columns);
        reading.read();
        return reading;
    }

    List<PlantRows.Row> rows() {
        return List.copyOf(rows);
    }

    List<Trouble> troubles() {
        return List.copyOf(troubles);
    }

    private void read() {
        for (String named : named()) {
            if (!table.heading().contains(named)) {
                trouble(0, "", "no column is headed \"" + named + "\"", "one of " + String.join(", ", table.heading()));
            }
        }
        table.rows().forEach(this::row);
    }

    private List<String> named() {
        List<String> named = new ArrayList<>();
        for (String each : new String[] {
            columns.numberColumn(),
            columns.truckColumn(),
            columns.netColumn(),
            columns.loadedColumn(),
            columns.dateColumn(),
            columns.mixColumn()
        }) {
            if (each != null) {
                named.add(each);
            }
        }
        return named;
    }

    private String cell(ListTable.Row row, String column) {
        return column == null ? "" : row.cell(table.heading().indexOf(column));
    }

    private void row(ListTable.Row row) {
        String number = cell(row, columns.numberColumn());
        if (number.isEmpty()) {
            trouble(row, "no ticket number; it is compared with nothing", "");
            return;
        }
        if (number.length() > LONGEST_NUMBER) {
            trouble(row, "a ticket number of " + number.length() + " characters", "at most " + LONGEST_NUMBER);
            return;
        }
        if (row.cells().size() > table.heading().size()) {
            trouble(row, row.cells().size() + " cells", table.heading().size() + ", one under each column's name");
        }
        String loaded = cell(row, columns.loadedColumn());
        Matcher inside = DATE.matcher(loaded);
        boolean dated = inside.lookingAt();
        String before = dated ? inside.group() : "";
        String day = columns.dateColumn() == null ? before : cell(row, columns.dateColumn());
        String hour = dated ? loaded.substring(inside.end()).replaceFirst("^[\\sT,]+", "") : loaded;
        rows.add(new PlantRows.Row(
                row.line(),
                number.replaceFirst("^(\\d+)\\.0$", "$1"),
                text(cell(row, columns.truckColumn())),
                net(row),
                date(row, day),
                hour(row, hour),
                text(cell(row, columns.mixColumn()))));
    }

    private static String text(String cell) {
        return cell.isEmpty() ? null : cell;
    }

    private Amount net(ListTable.Row row) {
        String cell = cell(row, columns.netColumn());
        if (cell.isEmpty() || columns.weights() == null) {
            return null;
        }
        Matcher found = WEIGHT.matcher(cell);
        if (!found.matches() || found.group(2) != null && !unitFits(found.group(2))) {
            return not(
                    row,
                    "net \"" + cell + "\"",
                    "a weight in " + columns.weights().word() + " such as " + example());
        }
        Optional<BigDecimal> value = decimal(found.group(1).strip());
        if (value.isEmpty() || value.get().precision() > 12) {
            return not(
                    row,
                    "net \"" + cell + "\"",
                    "a weight in " + columns.weights().word() + " such as " + example());
        }
        return new Amount(value.get(), columns.weights().unit());
    }

    private <T> T not(ListTable.Row row, String said, String right) {
        trouble(row, said + " is not read", right);
        return null;
    }

    private boolean unitFits(String unit) {
        String u = unit.toLowerCase(Locale.ROOT);
        return switch (columns.weights()) {
            case TONS -> List.of("t", "tn", "ton", "tons").contains(u);
            case TONNES -> List.of("t", "tonne", "tonnes").contains(u);
            case LB -> u.startsWith("lb");
            case KG -> u.equals("kg");
        };
    }

    private String example() {
        return whole() ? "43,920" : "21.96";
    }

    /** Pounds and kilograms are printed whole: a sign before three digits groups them. */
    private boolean whole() {
        return columns.weights() == ListColumns.Weights.LB || columns.weights() == ListColumns.Weights.KG;
    }

    private Optional<BigDecimal> decimal(String text) {
        String bare = text.replaceAll("[ ']", "");
        char point = point(bare);
        String digits = point == 0 ? bare : bare.substring(0, bare.lastIndexOf(point));
        String after = point == 0 ? "" : bare.substring(bare.lastIndexOf(point) + 1);
        boolean grouped = digits.matches("-?\\d{1,3}([.,]\\d{3})+");
        if (!after.matches("\\d*") || !grouped && !digits.matches("-?\\d+")) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(digits.replaceAll("[.,]", "") + (after.isEmpty() ? "" : "." + after)));
    }

    /** The sign before the decimals; 0 where there are none. */
    private char point(String bare) {
        int dot = bare.lastIndexOf('.');
        int comma = bare.lastIndexOf(',');
        int last = Math.max(dot, comma);
        if (last < 0) {
            return 0;
        }
        boolean both = dot >= 0 && comma >= 0;
        boolean once = bare.indexOf(bare.charAt(last)) == last;
        boolean three = bare.length() - last - 1 == 3;
        if (!once || !both && three && whole()) {
            return 0;
        }
        return bare.charAt(last);
    }

    private LocalDate date(ListTable.Row row, String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        Matcher found = DATE.matcher(cell);
        if (!found.lookingAt()) {
            return not(row, "date \"" + cell + "\"", "a date such as 2026-06-03");
        }
        try {
            return date(found)
                    .orElseGet(() ->
                            not(row, "date \"" + cell + "\", whose order is not settled,", "ymd, mdy or dmy settled"));
        } catch (DateTimeException e) {
            return not(
                    row,
                    "date \"" + cell + "\"",
                    "a date that exists, written " + order(found).orElseThrow().word());
        }
    }

    private Optional<ListColumns.Dates> order(Matcher found) {
        if (found.group(4) != null || found.group(1).length() == 4) {
            return Optional.of(ListColumns.Dates.YMD);
        }
        return Character.isLetter(found.group(2).charAt(0))
                ? Optional.of(ListColumns.Dates.DMY)
                : Optional.ofNullable(columns.dates());
    }

    private Optional<LocalDate> date(Matcher found) {
        return order(found).map(order -> {
            if (found.group(4) != null) {
                return LocalDate.of(number(found, 4), number(found, 5), number(found, 6));
            }
            int middle = month(found.group(2));
            return switch (order) {
                case YMD -> LocalDate.of(year(found.group(1)), middle, number(found, 3));
                case MDY -> LocalDate.of(year(found.group(3)), number(found, 1), middle);
                case DMY -> LocalDate.of(year(found.group(3)), middle, number(found, 1));
            };
        });
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }

    private static int month(String text) {
        if (Character.isDigit(text.charAt(0))) {
            return Integer.parseInt(text);
        }
        int at = MONTHS.indexOf(text.toLowerCase(Locale.ROOT));
        return at < 0 || at % 3 != 0 ? 0 : at / 3 + 1;
    }

    private static int year(String text) {
        return text.length() <= 2 ? 2000 + Integer.parseInt(text) : Integer.parseInt(text);
    }

    private LocalTime hour(ListTable.Row row, String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        Matcher found = HOUR.matcher(cell);
        if (!found.matches()) {
            return not(row, "hour \"" + cell + "\"", "an hour such as 21:32 or 9:32 PM");
        }
        int hour = number(found, 1);
        if (found.group(3) != null) {
            boolean half = hour >= 1 && hour <= 12;
            hour = !half ? 24 : hour % 12 + (found.group(3).equalsIgnoreCase("p") ? 12 : 0);
        }
        int minute = number(found, 2);
        return hour < 24 && minute < 60
                ? LocalTime.of(hour, minute)
                : not(row, "hour \"" + cell + "\"", "an hour such as 21:32 or 9:32 PM");
    }

    private void trouble(ListTable.Row row, String said, String right) {
        trouble(row.line(), String.join(table.partedBySemicolon() ? ";" : ",", row.cells()), said, right);
    }

    private void trouble(int line, String excerpt, String said, String right) {
        troubles.add(new Trouble(file, line, excerpt, said, right));
    }
}
