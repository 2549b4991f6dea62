package screedbook.season;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.NoWork;
import screedbook.entry.Ref;
import screedbook.shelf.ShiftFile;
import screedbook.tally.Due;
import screedbook.tally.Figure;
import screedbook.tally.Load;
import screedbook.tally.Section;
import screedbook.tally.Working;

/** What a shift adds to a season beside its totals: findings, loads outside their temperatures, checks, its state. */
final class Extras {
    private static final Map<String, String> HEAT = Map.of(
            "heat-at-paver", "paver-temperature-outside",
            "heat-at-plant", "plant-temperature-outside");

    private final ShiftFile file;
    private final List<Figure> figures = new ArrayList<>();

    private Extras(ShiftFile file) {
        this.file = file;
    }

    /** The shift's totals with these sections around them. */
    static List<Section> of(ShiftFile file) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Extras(file).state());
        sections.addAll(file.totals().sections());
        sections.add(new Extras(file).heat());
        sections.add(new Extras(file).checks());
        sections.add(new Extras(file).findings());
        return sections;
    }

    private Section state() {
        count("shifts", "shifts", 1);
        count("open-shifts", "of them not closed", file.day().closed() ? 0 : 1);
        count(
                "no-work",
                "of them without work",
                file.day().standing(NoWork.class).isEmpty() ? 0 : 1);
        return section("shifts", "Shifts");
    }

    /** Loads with a finding outside, mix by mix; a load is counted once however often it was looked at. */
    private Section heat() {
        Map<Ref, String> mixes = new LinkedHashMap<>();
        file.totals().loads().forEach(load -> mixes.put(load.ticket().ref(), named(load)));
        Map<String, Integer> outside = new TreeMap<>();
        file.totals().loads().forEach(load -> {
            if (load.ticket().entry().heat().paver() != null) {
                outside.putIfAbsent("paver-temperature-outside." + named(load), 0);
            }
            if (load.ticket().entry().heat().plant() != null) {
                outside.putIfAbsent("plant-temperature-outside." + named(load), 0);
            }
        });
        Set<String> seen = new HashSet<>();
        for (Finding each : file.findings()) {
            String head = HEAT.get(each.rule());
            boolean counts = head != null
                    && each.sort() == Sort.OUTSIDE
                    && mixes.containsKey(each.of().get(0));
            if (counts && seen.add(head + " " + each.of().get(0))) {
                outside.merge(head + "." + mixes.get(each.of().get(0)), 1, Integer::sum);
            }
        }
        outside.forEach((id, count) -> {
            String where = id.startsWith("paver") ? "paver" : "plant";
            count(id, id.substring(id.indexOf('.') + 1) + " loads outside at the " + where, count);
        });
        return section("heat-outside", "Loads outside their temperatures");
    }

    /** As the section of temperatures names it. */
    private static String named(Load load) {
        return load.mix() + (load.laid() ? "" : " not placed");
    }

    private Section checks() {
        for (Due due : file.totals().dues()) {
            count("check-asked." + due.id(), due.what() + " asked", due.asked());
            count("check-done." + due.id(), due.what() + " done", due.done());
        }
        return section("checks-counted", "Checks due and done");
    }

    private Section findings() {
        Map<String, Integer> rules = new TreeMap<>();
        for (Sort sort : Sort.values()) {
            List<Finding> of =
                    file.findings().stream().filter(f -> f.sort() == sort).toList();
            String word = sort.text().replace(' ', '-');
            count("found." + word, sort.text(), of.size());
            count("found-answered." + word, sort.text() + ", answered", (int)
                    of.stream().filter(Finding::answered).count());
        }
        file.findings().forEach(f -> rules.merge(f.rule(), 1, Integer::sum));
        rules.forEach((rule, count) -> count("found-rule." + rule, "of rule " + rule, count));
        return section("findings", "Findings");
    }

    private void count(String id, String label, int count) {
        Working working = new Working("counted one by one", List.of(), List.of(), "the shift as it stands");
        figures.add(new Figure(id, label, Integer.toString(count), BigDecimal.valueOf(count), "", working));
    }

    private Section section(String id, String heading) {
        return new Section(id, heading, List.copyOf(figures));
    }
}
