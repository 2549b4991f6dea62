package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.unit.Unit;

/**
 * What several shifts come to: every figure of their sections, carried by what it is. Figures of different units never
 * meet. A section or a figure that a shift brings for the first time is taken up by itself.
 */
public final class Accrued {
    private static final String SOURCE = "the totals of the shifts, each with its working";
    private static final int DIGITS = 6;

    private final Map<String, String> headings = new LinkedHashMap<>();
    private final Map<String, Map<Key, Cell>> cells = new LinkedHashMap<>();
    private int shifts;

    /** A figure in a unit, carried in one way. */
    private record Key(String id, String unit, Together carry) {}

    /** A figure on its way. */
    private static final class Cell {
        private final Together carry;
        private String label;
        private BigDecimal value;
        private BigDecimal most;
        private BigDecimal over = BigDecimal.ZERO;
        private int decimals;
        private int shifts;

        Cell(Together carry) {
            this.carry = carry;
        }
    }

    /** Takes up a shift. */
    public void add(List<Section> sections) {
        Map<String, BigDecimal> values = new HashMap<>();
        sections.forEach(s -> s.figures().forEach(f -> values.put(f.id(), f.value())));
        shifts++;
        for (Section section : sections) {
            headings.putIfAbsent(section.id(), section.heading());
            Map<Key, Cell> into = cells.computeIfAbsent(section.id(), s -> new LinkedHashMap<>());
            for (Figure figure : section.figures()) {
                Together carry = Together.of(figure, id -> values.get(id) != null);
                if (carry != Together.NOTHING) {
                    Cell cell = into.computeIfAbsent(new Key(figure.id(), figure.unit(), carry), k -> new Cell(carry));
                    take(cell, figure, values);
                }
            }
        }
    }

    private static void take(Cell cell, Figure figure, Map<String, BigDecimal> values) {
        BigDecimal value = figure.value();
        BigDecimal before = cell.value;
        cell.label = figure.label();
        cell.shifts++;
        cell.decimals = Math.max(cell.decimals, decimals(figure));
        switch (cell.carry) {
            case SUM -> cell.value = Together.none(before).add(value);
            case LEAST -> cell.value = before == null ? value : before.min(value);
            case MOST -> cell.value = before == null ? value : before.max(value);
            case NEWEST -> cell.value = value;
            case RANGE -> {
                cell.value = before == null ? value : before.min(value);
                cell.most = cell.most == null ? value : cell.most.max(value);
            }
            default -> {
                BigDecimal over = Together.none(values.get(Together.over(figure.id())));
                BigDecimal whole = figure.whole() == null ? value.multiply(over) : figure.whole();
                cell.value = Together.none(before).add(whole);
                cell.over = cell.over.add(over);
            }
        }
    }

    /** Decimals as the shift shows them. */
    private static int decimals(Figure figure) {
        String number = figure.text().split(" ", 2)[0];
        int dot = number.indexOf('.');
        return dot < 0 ? 0 : number.length() - dot - 1;
    }

    /** How many shifts were taken up. */
    public int shifts() {
        return shifts;
    }

    /** Every figure, in the order in which they came. */
    public List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        cells.forEach((id, figures) -> {
            List<Figure> made = new ArrayList<>();
            figures.forEach((key, cell) -> made(key, cell, made));
            if (!made.isEmpty()) {
                sections.add(new Section(id, headings.get(id), List.copyOf(made)));
            }
        });
        return List.copyOf(sections);
    }

    private static void made(Key key, Cell cell, List<Figure> to) {
        switch (cell.carry) {
            case WEIGHED -> {
                if (cell.over.signum() != 0) {
                    BigDecimal mean = cell.value.divide(cell.over, DIGITS, RoundingMode.HALF_UP);
                    String over = Together.over(key.id());
                    to.add(figure(key.id(), cell.label, mean, key.unit(), cell, "weighed by " + over));
                }
            }
            case RANGE -> {
                String head = Together.head(key.id());
                String tail = key.id().substring(head.length());
                to.add(figure(head + "-least" + tail, cell.label + " least", cell.value, key.unit(), cell, "least of"));
                to.add(figure(head + "-most" + tail, cell.label + " most", cell.most, key.unit(), cell, "greatest of"));
            }
            default -> to.add(figure(key.id(), cell.label, cell.value, key.unit(), cell, formula(cell.carry)));
        }
    }

    private static String formula(Together carry) {
        return switch (carry) {
            case SUM -> "sum over";
            case LEAST -> "least of";
            case MOST -> "greatest of";
            default -> "the newest of";
        };
    }

    private static Figure figure(String id, String label, BigDecimal value, String unit, Cell cell, String formula) {
        String text = value.setScale(cell.decimals, RoundingMode.HALF_UP).toPlainString();
        String of = formula + (cell.shifts == 1 ? ", 1 shift" : ", " + cell.shifts + " shifts");
        return new Figure(
                id,
                label,
                unit.isEmpty() ? text : text + " " + Unit.symbol(unit),
                value,
                unit,
                new Working(of, List.of(), List.of(), SOURCE));
    }
}
