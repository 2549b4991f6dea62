package screedbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Standing;

/** Findings brought into groups of one rule and one mix or pull, and numbered in the order of the groups. */
final class Groups {
    /**
     * The value that a rule holds against a limit, by the beginning of its key in a line. An entry without it is not
     * judged by the rule; an empty one stands for every entry of the kind.
     */
    static final Map<String, String> JUDGED = Map.ofEntries(
            Map.entry("heat-at-paver", "paver_deg"),
            Map.entry("heat-at-plant", "plant_deg"),
            Map.entry("load-age", "loaded"),
            Map.entry("gross-legal", "gross_"),
            Map.entry("surface-temperature", "surface_deg"),
            Map.entry("air-temperature", "air_deg"),
            Map.entry("tack-rate", "from_sta"),
            Map.entry("tack-temperature", "material_deg"),
            Map.entry("tack-diluted", ""),
            Map.entry("profile-range", "hottest_deg"),
            Map.entry("stop-long", ""),
            Map.entry("straightedge-gap", "gap_"),
            Map.entry("depth-probed", "thickness_"),
            Map.entry("yield-check", ""),
            Map.entry("mat-behind-screed", "mat_deg"),
            Map.entry("rolling-ends-cold", "mat_deg"));

    /** Of mat temperatures only those are judged together that were taken at the same moment of the work. */
    private static final String TAKEN = "taken";

    private final Entries entries;
    private int number;

    Groups(Entries entries) {
        this.entries = entries;
    }

    /** The groups in the order of their first findings; numbers go on from those given before. */
    List<Group> of(List<Finding> findings) {
        Map<List<Object>, List<Finding>> by = new LinkedHashMap<>();
        findings.forEach(
                f -> by.computeIfAbsent(matter(f), m -> new ArrayList<>()).add(f));
        List<Group> groups = new ArrayList<>();
        for (List<Finding> each : by.values()) {
            List<Numbered.Item> items = new ArrayList<>();
            each.forEach(f -> items.add(new Numbered.Item(++number, f)));
            groups.add(new Group(List.copyOf(items), on(first(each.get(0))), among(each.get(0)), entries));
        }
        return List.copyOf(groups);
    }

    /** Checks of every kind come due under one rule; each that the job asks for is a matter of its own. */
    private List<Object> matter(Finding f) {
        return List.of(
                f.sort(),
                f.rule(),
                on(first(f)),
                f.beyond() == null ? 0 : f.beyond().signum(),
                f.rule().equals("check-overdue") ? f.limit() + f.clause() : "");
    }

    private Optional<Standing<?>> first(Finding finding) {
        return finding.of().stream().findFirst().flatMap(entries::find);
    }

    /** The mix of a load; of anything else the pull with its lift. */
    private static String on(Optional<Standing<?>> entry) {
        return entry.map(Groups::on).orElse("");
    }

    private static String on(Standing<?> entry) {
        Map<String, Object> values = Fields.plain((Record) entry.entry());
        if (entry.line().kind() == Kind.TICKET) {
            return Objects.toString(values.get("mix"), "");
        }
        Object pull = values.get("pull");
        Object lift = values.get("lift");
        return pull == null ? "" : pull + (lift == null ? "" : " lift " + lift);
    }

    /** How many entries of the same kind, mix or pull the rule judged; 0 where that is not told of the rule. */
    private int among(Finding finding) {
        String key = JUDGED.get(finding.rule());
        Optional<Standing<?>> one = first(finding);
        if (key == null || one.isEmpty()) {
            return 0;
        }
        Map<String, Object> like = Fields.plain((Record) one.get().entry());
        return (int) entries.ofKind(one.get().line().kind())
                .filter(s -> Entries.laid(s) == Entries.laid(one.get()) && on(s).equals(on(one.get())))
                .map(s -> Fields.plain((Record) s.entry()))
                .filter(values -> Objects.equals(values.get(TAKEN), like.get(TAKEN)))
                .filter(values -> key.isEmpty() || values.keySet().stream().anyMatch(k -> k.startsWith(key)))
                .count();
    }
}
