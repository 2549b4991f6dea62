package screedbook.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.check.Sort;
import screedbook.tally.Figure;
import screedbook.unit.Unit;

/** One line of a season's tables: what parts come to together. Weights of different units stand side by side. */
final class SeasonRow {
    static final List<String> HEADS =
            List.of("", "shifts", "loads", "placed", "for pay", "out", "miss.", "look", "adds?", "late");

    private static final List<String> IDS = Stream.of(
                    Stream.of("loads", "placed-tons", "pay-tons"),
                    Stream.of(Sort.values()).map(sort -> "found." + sort.text().replace(' ', '-')),
                    Stream.of("late-lines"))
            .flatMap(ids -> ids)
            .toList();

    private final Map<String, Map<String, BigDecimal>> sums = new LinkedHashMap<>();
    private int shifts;

    static SeasonRow of(SeasonPart part) {
        SeasonRow row = new SeasonRow();
        row.add(part);
        return row;
    }

    void add(SeasonPart part) {
        shifts += part.shifts();
        part.sections().stream()
                .flatMap(section -> section.figures().stream())
                .filter(figure -> IDS.contains(figure.id()))
                .forEach(this::add);
    }

    private void add(Figure figure) {
        sums.computeIfAbsent(figure.id(), id -> new TreeMap<>()).merge(figure.unit(), figure.value(), BigDecimal::add);
    }

    /** The units of its weights: one, but for a job that changed them. */
    String units() {
        return String.join(
                " and ",
                sums.getOrDefault("placed-tons", Map.of()).keySet().stream()
                        .map(Unit::symbol)
                        .toList());
    }

    /** @param units whether each weight has its unit behind it */
    List<String> cells(String name, boolean units) {
        List<String> cells = new ArrayList<>(List.of(name, Integer.toString(shifts)));
        for (String id : IDS) {
            cells.add(sums.getOrDefault(id, Map.of()).entrySet().stream()
                    .map(sum -> shown(sum.getKey(), sum.getValue(), units))
                    .collect(Collectors.joining(" + ")));
        }
        return cells;
    }

    private static String shown(String unit, BigDecimal value, boolean units) {
        return unit.isEmpty()
                ? value.toPlainString()
                : value.setScale(2, RoundingMode.HALF_UP).toPlainString() + (units ? " " + Unit.symbol(unit) : "");
    }
}
