package screedbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.tally.Figure;
import screedbook.tally.Outlook;
import screedbook.tally.Probed;
import screedbook.tally.Section;
import screedbook.tally.Yielded;
import screedbook.tally.Yields;
import screedbook.unit.Amount;

/** Parts of the page that are told in a paragraph: the figures of a section one after the other. */
final class InBrief {
    private final DayPaper paper;
    private final Leaf leaf;

    InBrief(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.leaf = leaf;
    }

    /** A section of the totals under its own heading; nothing where it has no figures. */
    void section(String id) {
        paper.totals().sections().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .ifPresent(this::section);
    }

    private void section(Section section) {
        String told = section.figures().stream().map(InBrief::told).collect(Collectors.joining("; "));
        leaf.say(0, section.heading().toUpperCase(Locale.ROOT) + ": " + told);
    }

    private static String told(Figure figure) {
        return figure.label() + " " + figure.text();
    }

    /** The yield checks of each pull together, then by itself what comes to no rate, leaves loads out or is marked. */
    void yield() {
        Yields yields = paper.totals().yields();
        Map<String, List<Yields.Check>> pulls = new LinkedHashMap<>();
        yields.checks()
                .forEach(c ->
                        pulls.computeIfAbsent(c.name(), n -> new ArrayList<>()).add(c));
        Map<String, String> ahead = new LinkedHashMap<>();
        yields.ahead().stream()
                .filter(o ->
                        paper.totals().figure("yield-last." + o.run().name()).isPresent())
                .forEach(o -> ahead.put(o.run().name(), ahead(o)));
        ahead.keySet().forEach(name -> pulls.putIfAbsent(name, List.of()));
        pulls.forEach((name, checks) -> leaf.say(
                0,
                "YIELD, " + name + ": "
                        + Stream.of(together(name, checks), ahead.getOrDefault(name, ""))
                                .filter(told -> !told.isEmpty())
                                .collect(Collectors.joining("; "))));
        yields.checks().stream().filter(this::byItself).forEach(c -> leaf.say(2, check(c)));
    }

    /** {@code 6 checks, 99.8 to 101.0 % of planned, together 220.0 lb/yd²}. */
    private String together(String name, List<Yields.Check> checks) {
        if (checks.isEmpty()) {
            return "";
        }
        List<Amount> percents = checks.stream()
                .flatMap(c -> c.yielded().percent().stream())
                .map(p -> p.shown(1))
                .sorted()
                .toList();
        String range = percents.isEmpty()
                ? ""
                : ", "
                        + (percents.get(0).equals(percents.get(percents.size() - 1))
                                ? ""
                                : percents.get(0).value().toPlainString() + " to ")
                        + percents.get(percents.size() - 1).text() + " of planned";
        return Leaf.many(checks.size(), "check")
                + range
                + paper.totals()
                        .figure("yield-checked." + name)
                        .map(f -> ", together " + f.text())
                        .orElse("");
    }

    private boolean byItself(Yields.Check check) {
        return !check.yielded().rate().known()
                || !check.yielded().without().isEmpty()
                || check.entry().entry().action() != null
                || paper.findings().stream()
                        .anyMatch(f ->
                                f.of().stream().limit(1).anyMatch(check.entry().ref()::equals));
    }

    private static String check(Yields.Check check) {
        Yielded y = check.yielded();
        return check.where() + ": " + y.rate().text(1)
                + y.percent().map(p -> ", " + p.shown(1).text()).orElse("")
                + (y.loads() == 0 ? "" : ", " + Leaf.many(y.loads(), "load"))
                + (y.without().isEmpty() ? "" : "; " + y.withoutText())
                + Entries.phrases(";", check.entry().entry().action());
    }

    private static String ahead(Outlook o) {
        return "last " + Leaf.many(o.loads(), "load")
                + o.last().map(r -> " " + r.shown(1).text()).orElse(" at no known rate")
                + o.lastPercent().map(p -> ", " + p.shown(1).text()).orElse("")
                + o.left()
                        .map(t -> "; " + o.ahead().text() + " to its end take "
                                + t.shown(0).text()
                                + o.planned()
                                        .map(p -> ", as planned " + p.shown(0).text())
                                        .orElse(""))
                        .orElse("");
    }

    /** How thick the mat was found: {@code B lift 2 compacted 3, 1.75 to 2.10 in, mean 1.95, planned 2.00}. */
    void depth() {
        List<String> told =
                paper.totals().yields().depths().stream().map(InBrief::probed).toList();
        if (!told.isEmpty()) {
            leaf.say(0, "THICKNESS AS PROBED: " + String.join("; ", told));
        }
    }

    private static String probed(Probed p) {
        List<Amount> found = p.amounts().stream().sorted().toList();
        Amount least = found.get(0);
        Amount most = found.get(found.size() - 1);
        boolean one = least.equals(most);
        int decimals = found.stream().mapToInt(a -> a.value().scale()).max().orElse(0);
        return p.name() + " " + p.stateText() + " " + p.probes().size() + ", "
                + (one ? "" : least.value().toPlainString() + " to ") + most.text()
                + (one ? "" : ", mean " + p.mean().shown(decimals).value().toPlainString())
                + p.planned().map(t -> ", planned " + t.value().toPlainString()).orElse("");
    }
}
