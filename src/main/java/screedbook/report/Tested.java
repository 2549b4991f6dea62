package screedbook.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** The part of the page that tells of lots, densities and samples; nothing where there are none. */
final class Tested {
    private final DayPaper paper;
    private final Leaf leaf;

    Tested(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.leaf = leaf;
    }

    private List<Figure> figures(String section) {
        return paper.totals().sections().stream()
                .filter(s -> s.id().equals(section))
                .map(Section::figures)
                .findFirst()
                .orElse(List.of());
    }

    /** How the lots filled. */
    void lots() {
        List<Figure> lots = figures("lots");
        if (!lots.isEmpty()) {
            leaf.heading("LOTS");
            lots.forEach(this::lot);
        }
    }

    /** A sublot stands under its lot, which is not named again. */
    private void lot(Figure figure) {
        boolean sublot = figure.id().startsWith("sublot");
        String label = sublot ? figure.label().substring(figure.label().lastIndexOf(", ") + 2) : figure.label();
        leaf.say(sublot ? 3 : 1, label + ": " + figure.text());
    }

    /** Each core, the gauge readings in one line, then what the lots come to. */
    void density() {
        List<Figure> all = new ArrayList<>(figures("density"));
        all.addAll(figures("quality"));
        if (all.isEmpty()) {
            return;
        }
        leaf.heading("DENSITY, % of the theoretical maximum");
        all.stream().filter(f -> f.id().startsWith("core-density.")).forEach(this::say);
        List<Figure> readings =
                all.stream().filter(f -> f.id().startsWith("gauge-density.")).toList();
        if (!readings.isEmpty()) {
            leaf.say(1, readings(readings));
        }
        all.stream()
                .filter(f -> !f.id().startsWith("core-density.") && !f.id().startsWith("gauge-density."))
                .forEach(this::say);
    }

    private void say(Figure figure) {
        leaf.say(1, figure.label() + ": " + figure.text());
    }

    private static String readings(List<Figure> readings) {
        List<BigDecimal> known = readings.stream()
                .filter(f -> f.value() != null)
                .map(Figure::value)
                .sorted()
                .toList();
        String count = readings.size() + (readings.size() == 1 ? " gauge reading" : " gauge readings");
        if (known.isEmpty()) {
            return count + ": " + readings.get(0).text();
        }
        String least = one(known.get(0));
        String most = one(known.get(known.size() - 1));
        String range = least.equals(most) ? least : least + " to " + most;
        int lacking = readings.size() - known.size();
        return count + ": " + range + (lacking == 0 ? "" : "; " + lacking + " not worked out");
    }

    private static String one(BigDecimal value) {
        return value.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** Open ones first. */
    void samples() {
        List<Figure> samples = figures("samples");
        if (!samples.isEmpty()) {
            leaf.heading("SAMPLES");
            samples.forEach(this::say);
        }
    }
}
