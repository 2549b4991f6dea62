package screedbook.season;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import screedbook.check.Sort;
import screedbook.tally.Figure;
import screedbook.tally.Section;
import screedbook.tally.Working;

/** What is worked out of a season's sums: findings for each 1,000 tons, shares outside, the part of the plan done. */
final class Derived {
    private static final String PLACED = "placed-tons";
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Map<String, List<Figure>> by = new HashMap<>();
    private final List<Figure> made = new ArrayList<>();

    private Derived(List<Section> sections) {
        sections.forEach(s -> s.figures()
                .forEach(
                        f -> by.computeIfAbsent(f.id(), id -> new ArrayList<>()).add(f)));
    }

    /**
     * The sections with what follows from them.
     *
     * @param plan planned tons by mix; empty sections when that is not known or not asked
     */
    static List<Section> with(List<Section> sections, List<Section> plan) {
        List<Section> all = new ArrayList<>(sections);
        add(all, new Derived(sections).rates());
        add(all, new Derived(sections).shares());
        add(all, new Derived(sections).plan(plan));
        return List.copyOf(all);
    }

    private static void add(List<Section> all, Section section) {
        if (!section.figures().isEmpty()) {
            all.add(section);
        }
    }

    private Section rates() {
        List<Figure> weights = by.getOrDefault(PLACED, List.of());
        // A finding has no unit: of a job that changed its units nobody can say to which tons it belongs.
        for (Figure placed : weights.size() == 1 ? weights : List.<Figure>of()) {
            for (Sort sort : Sort.values()) {
                String word = sort.text().replace(' ', '-');
                Figure found = one("found." + word);
                if (found != null && placed.value().signum() > 0) {
                    make(
                            "found-per-1000." + word,
                            sort.text() + " for each 1000 " + placed.text().replaceAll(".* ", ""),
                            found.value().multiply(THOUSAND).divide(placed.value(), 3, RoundingMode.HALF_UP),
                            "",
                            "findings x 1000 / tons placed");
                }
            }
        }
        return new Section("findings-rate", "Findings for each 1000 placed", List.copyOf(made));
    }

    private Section shares() {
        for (String where : List.of("paver", "plant")) {
            String head = where + "-temperature-outside.";
            by.keySet().stream().filter(id -> id.startsWith(head)).sorted().forEach(id -> {
                String mix = id.substring(head.length());
                Figure readings = one(where + "-temperature-readings." + mix);
                if (readings != null && readings.value().signum() > 0) {
                    make(
                            where + "-temperature-share-outside." + mix,
                            mix + " outside at the " + where,
                            one(id).value().multiply(HUNDRED).divide(readings.value(), 2, RoundingMode.HALF_UP),
                            "pct",
                            "loads outside / readings x 100");
                }
            });
        }
        return new Section("heat-share", "Share of the readings outside", List.copyOf(made));
    }

    private Section plan(List<Section> plan) {
        plan.stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().startsWith("plan-tons."))
                .forEach(this::planned);
        return new Section("against-plan", "Placed in these shifts against the plan", List.copyOf(made));
    }

    private void planned(Figure planned) {
        String mix = planned.id().substring("plan-tons.".length());
        BigDecimal placed = by.getOrDefault(PLACED + ".mix." + mix, List.of()).stream()
                .filter(f -> f.unit().equals(planned.unit()))
                .map(Figure::value)
                .findFirst()
                .orElse(BigDecimal.ZERO);
        made.add(planned);
        if (planned.value().signum() > 0) {
            make(
                    "plan-percent." + mix,
                    mix + " placed of the plan",
                    placed.multiply(HUNDRED).divide(planned.value(), 1, RoundingMode.HALF_UP),
                    "pct",
                    "tons placed / tons planned x 100");
        }
    }

    private Figure one(String id) {
        List<Figure> found = by.get(id);
        return found == null ? null : found.get(0);
    }

    private void make(String id, String label, BigDecimal value, String unit, String formula) {
        String shown = value.toPlainString() + (unit.isEmpty() ? "" : " %");
        Working working = new Working(formula, List.of(), List.of(), "the sums of these shifts");
        made.add(new Figure(id, label, shown, value, unit, working));
    }
}
