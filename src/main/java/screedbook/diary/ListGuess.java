package screedbook.diary;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import screedbook.entry.ListColumns;

/** Which column of a plant's list may be which, by the words of its heading. */
final class ListGuess {
    private final List<String> heading;
    private final Set<String> taken = new HashSet<>();

    private ListGuess(List<String> heading) {
        this.heading = heading;
    }

    static ListColumns of(ListTable table) {
        ListGuess guess = new ListGuess(table.heading());
        String net = guess.column("net");
        String number = guess.column("ticket", "load no", "number", "no.", "load");
        String truck = guess.column("truck", "vehicle", "unit no");
        String loaded = guess.column("time", "loaded", "hour");
        String date = guess.column("date", "day");
        String mix = guess.column("mix", "product", "material", "design");
        return new ListColumns(
                number, truck, net, loaded, date, mix, weights(net, table), dates(date == null ? loaded : date, table));
    }

    private String column(String... words) {
        for (String word : words) {
            for (String head : heading) {
                if (head.toLowerCase(Locale.ROOT).contains(word) && taken.add(head)) {
                    return head;
                }
            }
        }
        return null;
    }

    /** By the unit in the heading; else by size: no load weighs a thousand tons, and none less than a thousand pounds. */
    private static ListColumns.Weights weights(String net, ListTable table) {
        if (net == null) {
            return null;
        }
        String head = net.toLowerCase(Locale.ROOT);
        if (head.contains("kg")) {
            return ListColumns.Weights.KG;
        }
        if (head.contains("lb") || head.contains("pound")) {
            return ListColumns.Weights.LB;
        }
        if (head.contains("tonne")) {
            return ListColumns.Weights.TONNES;
        }
        if (head.contains("ton")) {
            return ListColumns.Weights.TONS;
        }
        int at = table.heading().indexOf(net);
        boolean small = table.rows().stream()
                .map(row -> row.cell(at))
                .filter(cell -> !cell.isEmpty())
                .allMatch(cell -> cell.matches("-?\\d{1,3}([.,]\\d{1,2})?"));
        return small ? ListColumns.Weights.TONS : null;
    }

    /** By the first date that can be read in one order only. */
    private static ListColumns.Dates dates(String column, ListTable table) {
        int at = column == null ? -1 : table.heading().indexOf(column);
        return table.rows().stream()
                .map(row -> dates(row.cell(at)))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private static ListColumns.Dates dates(String cell) {
        String[] parts = cell.split("[-/. T]");
        if (parts.length < 3 || !parts[0].matches("\\d{1,4}") || !parts[1].matches("\\d{1,2}")) {
            return null;
        }
        if (parts[0].length() == 4) {
            return ListColumns.Dates.YMD;
        }
        if (Integer.parseInt(parts[0]) > 12) {
            return ListColumns.Dates.DMY;
        }
        return Integer.parseInt(parts[1]) > 12 ? ListColumns.Dates.MDY : null;
    }
}
