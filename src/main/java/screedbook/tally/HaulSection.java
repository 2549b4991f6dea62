package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import screedbook.calc.StraightLine;
import screedbook.entry.Ref;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The section that tells what loads lost on the way, in this shift and in all shifts of the job up to it. */
final class HaulSection {
    private static final String SOURCE = "least squares; common practice, no source";
    private static final String LINE = "b = (n Sxy - Sx Sy) / (n Sxx - Sx Sx), x minutes from loaded to discharged, y"
            + " temperature at the plant less that at the paver";

    private final Unit temperature;
    private final List<Load> loads;
    private final ToDate before;
    private final Figures figures = new Figures();

    private HaulSection(Job job, List<Load> loads, ToDate before) {
        this.temperature = Measure.TEMPERATURE.unit(job.system());
        this.loads = loads;
        this.before = before;
    }

    static Section of(Job job, List<Load> loads, ToDate before) {
        HaulSection made = new HaulSection(job, loads, before);
        Map<String, StraightLine> here = HaulLoss.lines(loads, made.temperature);
        Map<String, StraightLine> all = new TreeMap<>(before.haul());
        here.forEach((plant, line) -> all.merge(plant, line, StraightLine::plus));
        here.forEach((plant, line) -> made.told(plant, line, false));
        all.forEach((plant, line) -> {
            if (here.containsKey(plant) && before.haul().containsKey(plant)) {
                made.told(plant, line, true);
            }
        });
        return made.figures.section("haul", "Heat lost on the way");
    }

    private void told(String plant, StraightLine line, boolean toDate) {
        if (line.n() < HaulLoss.FEWEST) {
            return;
        }
        HaulLoss loss = new HaulLoss(plant, line, temperature.difference());
        List<String> put = new ArrayList<>();
        List<Ref> entries = new ArrayList<>();
        ways(plant, put, entries);
        if (toDate) {
            put.add("and " + (before.haul().get(plant).n()) + " loads of the shifts before");
        }
        put.add("n " + line.n() + ", Sx " + plain(line.x()) + ", Sy " + plain(line.y()) + ", Sxx " + plain(line.xx())
                + ", Sxy " + plain(line.xy()));
        String tail = (toDate ? "-to-date." : ".") + plant;
        String label = loss.name() + (toDate ? " to date" : "");
        figures.count(
                "haul-loads" + tail, "loads read at both ends, " + label, line.n(), working("count", put, entries));
        figures.amount(
                "haul-minutes" + tail,
                "haul and waiting, mean, " + label,
                loss.meanMinutes(),
                0,
                working("Sx / n", put, entries));
        figures.amount(
                "haul-loss" + tail,
                "heat lost on the way, mean, " + label,
                loss.meanLoss(),
                1,
                working("Sy / n", put, entries));
        loss.rate().ifPresent(rate -> rate(tail, label, loss, rate, working(LINE, put, entries)));
        figures.amount(
                "haul-loss-spread" + tail,
                "spread about that line, " + label,
                loss.spread().map(HaulSection::rounded),
                1,
                working("root of the sum of squares off the line / (n - 2)", put, entries));
    }

    private void rate(String tail, String label, HaulLoss loss, BigDecimal rate, Working working) {
        String text = rate.setScale(2, RoundingMode.HALF_UP).toPlainString() + " "
                + loss.degree().symbol() + "/min";
        figures.add(
                "haul-loss-rate" + tail,
                "heat lost a minute, " + label,
                text,
                rate.setScale(6, RoundingMode.HALF_UP),
                loss.degree().suffix() + "_min",
                working);
    }

    private static Amount rounded(Amount amount) {
        return amount.shown(6);
    }

    private void ways(String plant, List<String> put, List<Ref> entries) {
        for (Load load : loads) {
            if (HaulLoss.plant(load).equals(plant)) {
                HaulLoss.way(load, temperature).ifPresent(way -> {
                    put.add(load.ticket().ref() + " " + plain(way.minutes()) + " min, "
                            + way.loss().text());
                    entries.add(load.ticket().ref());
                });
            }
        }
    }

    private static Working working(String formula, List<String> put, List<Ref> entries) {
        return Figures.working(formula, put, entries, SOURCE);
    }

    private static String plain(BigDecimal figure) {
        BigDecimal shown = figure.scale() > 2 ? figure.setScale(2, RoundingMode.HALF_UP) : figure;
        BigDecimal bare = shown.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }
}
