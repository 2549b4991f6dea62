package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import screedbook.tally.Figure;
import screedbook.tally.Outlook;
import screedbook.tally.Probed;
import screedbook.tally.Section;
import screedbook.tally.Yielded;
import screedbook.tally.Yields;

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

    /** Each yield check in a line, then what each pull takes to its end, where the job asks for it. */
    void yield() {
        Yields yields = paper.totals().yields();
        List<String> lines = new ArrayList<>();
        yields.checks().forEach(c -> lines.add(check(c)));
        yields.ahead().stream()
                .filter(o ->
                        paper.totals().figure("yield-last." + o.run().name()).isPresent())
                .forEach(o -> lines.add(ahead(o)));
        if (!lines.isEmpty()) {
            leaf.say(0, "YIELD CHECKS");
            lines.forEach(l -> leaf.say(1, l));
        }
    }

    private static String check(Yields.Check check) {
        Yielded y = check.yielded();
        return check.where() + ": " + y.rate().text(1)
                + y.percent().map(p -> ", " + p.shown(1).text() + " of planned").orElse("")
                + (y.loads() == 0 ? "" : ", " + Leaf.many(y.loads(), "load"))
                + (y.without().isEmpty() ? "" : "; " + y.withoutText())
                + Entries.phrases(";", check.entry().entry().action());
    }

    private static String ahead(Outlook o) {
        return o.run().name() + ": last " + Leaf.many(o.loads(), "load")
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
        String least = p.amounts().stream()
                .min(screedbook.unit.Amount::compareTo)
                .orElseThrow()
                .value()
                .toPlainString();
        String most = p.amounts().stream()
                .max(screedbook.unit.Amount::compareTo)
                .orElseThrow()
                .text();
        return p.name() + " " + p.stateText() + " " + p.probes().size() + ", " + least + " to " + most + ", mean "
                + p.mean().value().toPlainString()
                + p.planned().map(t -> ", planned " + t.value().toPlainString()).orElse("");
    }
}
