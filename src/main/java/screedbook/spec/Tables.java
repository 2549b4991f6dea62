package screedbook.spec;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The bands of planned thickness that rows of one clause and quantity make together: they leave no thickness out, take
 * none twice, and stand in its order. A gap of the printed table is a row of its own.
 */
final class Tables {
    /** What a word that no row names stands for. */
    private static final String OTHER = "another";

    private static final BigDecimal TEN = BigDecimal.TEN;
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** Told of the line of a row, what was seen there and what would be right. */
    interface Trouble {
        void at(int line, String seen, String right);
    }

    private final Trouble trouble;

    Tables(Trouble trouble) {
        this.trouble = trouble;
    }

    /** @param troubled lines that cannot be taken; a table with one of them is not looked at yet */
    void look(List<Row> rows, Set<Integer> troubled) {
        Map<List<Object>, List<Row>> tables = new LinkedHashMap<>();
        Set<String> broken = new LinkedHashSet<>();
        for (Row row : rows) {
            if (troubled.contains(row.line())) {
                broken.add(clause(row));
            } else if (row.when().band() != null && row.sort() != Row.Sort.LOWERS && row.quantity() != null) {
                tables.computeIfAbsent(List.of(row.quantity(), clause(row)), t -> new ArrayList<>())
                        .add(row);
            }
        }
        tables.values().stream()
                .filter(table -> !broken.contains(clause(table.get(0))))
                .forEach(this::table);
    }

    private static String clause(Row row) {
        return row.document() + " " + row.clause();
    }

    private void table(List<Row> table) {
        When.Band first = table.get(0).when().band();
        for (Row row : table) {
            When.Band band = row.when().band();
            if (band.unit() != first.unit() || band.rounding() != first.rounding()) {
                trouble.at(
                        row.line(),
                        "a band in " + band.unit().suffix() + ", "
                                + band.rounding().key() + ", where the table has "
                                + first.unit().suffix() + ", "
                                + first.rounding().key(),
                        "one unit and one rounding for all bands of a clause");
                return;
            }
        }
        order(table);
        covered(table);
    }

    /** Rows for the same case stand in the order of their bands, the thinnest or the thickest first. */
    private void order(List<Row> table) {
        Map<List<Object>, List<Row>> cases = new LinkedHashMap<>();
        for (Row row : table) {
            cases.computeIfAbsent(List.of(row.when().choices(), row.when().windows()), c -> new ArrayList<>())
                    .add(row);
        }
        for (List<Row> same : cases.values()) {
            int way = 0;
            for (int i = 1; i < same.size(); i++) {
                int step = start(same.get(i)).compareTo(start(same.get(i - 1)));
                if (way != 0 && step != 0 && Integer.signum(step) != way) {
                    trouble.at(
                            same.get(i).line(),
                            same.get(i).when().band().text() + " behind "
                                    + same.get(i - 1).when().band().text(),
                            "the bands of one clause in the order of thickness");
                    return;
                }
                way = way == 0 ? Integer.signum(step) : way;
            }
        }
    }

    private static BigDecimal start(Row row) {
        When.Edge from = row.when().band().from();
        return from == null ? BigDecimal.ZERO : from.at();
    }

    private void covered(List<Row> table) {
        Set<BigDecimal> gaps = new LinkedHashSet<>();
        Set<Set<Integer>> twice = new LinkedHashSet<>();
        Set<BigDecimal> places = places(table);
        for (Situation each : cases(table)) {
            if (table.stream().anyMatch(row -> somewhere(row, each))) {
                boolean gap = false;
                for (BigDecimal at : places) {
                    List<Row> hold = holding(table, each, at);
                    if (hold.isEmpty() && !gap && gaps.add(at)) {
                        gap(table, each, at);
                    }
                    gap = hold.isEmpty();
                    apart(table, each, at, hold, twice);
                }
            }
        }
    }

    private static boolean somewhere(Row row, Situation each) {
        return row.when().holds(each.thick(null)) != Said.NO;
    }

    private static List<Row> holding(List<Row> table, Situation each, BigDecimal at) {
        Situation here = each.thick(new Amount(at, unit(table)));
        return table.stream().filter(row -> row.when().holds(here) != Said.NO).toList();
    }

    private static Unit unit(List<Row> table) {
        return table.get(0).when().band().unit();
    }

    private void gap(List<Row> table, Situation each, BigDecimal at) {
        Row near = below(table, at);
        trouble.at(
                near.line(),
                "no row of " + clause(near) + " for " + near.quantity().word() + " at a thickness of "
                        + at(table, each, at),
                "a row for it; prints-nothing where the printed table has a gap, sets-no-limit where it means none");
    }

    private static String at(List<Row> table, Situation each, BigDecimal at) {
        return at.stripTrailingZeros().toPlainString() + " " + unit(table).suffix() + told(each, table);
    }

    private void apart(List<Row> table, Situation each, BigDecimal at, List<Row> hold, Set<Set<Integer>> twice) {
        for (int i = 1; i < hold.size(); i++) {
            Row one = hold.get(i - 1);
            Row other = hold.get(i);
            if (clash(one, other) && twice.add(Set.of(one.line(), other.line()))) {
                trouble.at(
                        other.line(),
                        other.when().band().text() + " beside "
                                + one.when().band().text() + " of line " + one.line() + ": both hold at "
                                + at(table, each, at),
                        "bands of one clause that do not overlap");
            }
        }
    }

    /** Two rows that speak of the same end, or of which one says that there is no limit. */
    private static boolean clash(Row one, Row other) {
        boolean silent = one.sort().silent() || other.sort().silent();
        return silent || one.low() != null && other.low() != null || one.high() != null && other.high() != null;
    }

    /** The row whose band begins nearest under a place, else the first. */
    private static Row below(List<Row> table, BigDecimal at) {
        Row near = null;
        for (Row row : table) {
            if (start(row).compareTo(at) <= 0 && (near == null || start(row).compareTo(start(near)) > 0)) {
                near = row;
            }
        }
        return near == null ? table.get(0) : near;
    }

    private static String told(Situation each, List<Row> table) {
        StringBuilder told = new StringBuilder();
        for (When.Column column : columns(table)) {
            told.append(", ").append(column.label).append(' ').append(column.of.apply(each));
        }
        return each.date() == null
                ? told.toString()
                : told + ", on " + each.date().toString().substring(5);
    }

    /** Both sides of every end, and half a printed step and a tenth of one away from it. */
    private static Set<BigDecimal> places(List<Row> table) {
        int decimals = table.stream()
                .mapToInt(row -> row.when().band().decimals())
                .max()
                .orElseThrow();
        BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
        Set<BigDecimal> places = new TreeSet<>();
        for (Row row : table) {
            for (When.Edge edge : row.when().band().edges()) {
                for (BigDecimal off : List.of(
                        BigDecimal.ZERO,
                        step.divide(TEN),
                        step.divide(TWO),
                        step.divide(TWO).add(step.divide(TEN)))) {
                    places.add(edge.at().add(off));
                    places.add(edge.at().subtract(off));
                }
            }
        }
        places.add(((TreeSet<BigDecimal>) places).last().multiply(TEN));
        places.add(step.divide(TEN));
        places.removeIf(place -> place.signum() <= 0);
        return places;
    }

    private static Set<When.Column> columns(List<Row> table) {
        Set<When.Column> columns = new TreeSet<>();
        table.forEach(row -> row.when().choices().forEach(choice -> columns.add(choice.column())));
        return columns;
    }

    /** Every case that the rows of a table tell apart. */
    private static List<Situation> cases(List<Row> table) {
        List<Map<When.Column, String>> cases = List.of(Map.of());
        for (When.Column column : columns(table)) {
            List<Map<When.Column, String>> more = new ArrayList<>();
            for (Map<When.Column, String> each : cases) {
                for (String word : words(table, column)) {
                    Map<When.Column, String> one = new EnumMap<>(When.Column.class);
                    one.putAll(each);
                    one.put(column, word);
                    more.add(one);
                }
            }
            cases = more;
        }
        List<Situation> situations = new ArrayList<>();
        for (Map<When.Column, String> each : cases) {
            for (LocalDate date : dates(table)) {
                situations.add(situation(each, date));
            }
        }
        return situations;
    }

    private static Set<String> words(List<Row> table, When.Column column) {
        Set<String> words = new LinkedHashSet<>(column.words);
        for (Row row : table) {
            for (When.Choice choice : row.when().choices()) {
                if (choice.column() == column) {
                    words.addAll(choice.sure());
                    words.addAll(choice.unsaid());
                    words.addAll(choice.not());
                }
            }
        }
        if (column.words.isEmpty() && !column.number) {
            words.add(OTHER);
        }
        return words;
    }

    /** Days about the ends of every window; none where the table has no dates. */
    private static List<LocalDate> dates(List<Row> table) {
        Set<LocalDate> dates = new LinkedHashSet<>();
        for (Row row : table) {
            for (When.Window window : row.when().windows()) {
                for (LocalDate end :
                        List.of(window.from().atYear(2028), window.to().atYear(2028))) {
                    dates.addAll(List.of(end.minusDays(1), end, end.plusDays(1)));
                }
            }
        }
        return dates.isEmpty() ? Collections.singletonList(null) : List.copyOf(dates);
    }

    private static Situation situation(Map<When.Column, String> is, LocalDate date) {
        String nmas = is.get(When.Column.NMAS);
        String grade = is.get(When.Column.GRADE);
        return new Situation(
                is.get(When.Column.LAYER),
                null,
                nmas == null ? null : new BigDecimal(nmas),
                grade == null ? null : Integer.valueOf(grade),
                is.get(When.Column.POLYMER),
                is.get(When.Column.AID),
                is.get(When.Column.LIGHT),
                is.get(When.Column.THERMAL),
                is.get(When.Column.BASE),
                is.get(When.Column.TACK_ON),
                is.get(When.Column.TACK_GRADE),
                date,
                is.get(When.Column.MIX_TYPE));
    }
}
