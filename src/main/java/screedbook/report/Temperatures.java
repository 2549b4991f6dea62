package screedbook.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import screedbook.check.Finding;
import screedbook.check.HeatLines;
import screedbook.check.Sort;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.picture.Dot;
import screedbook.picture.HeatStrip;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.HaulLoss;
import screedbook.tally.Load;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** Mix temperatures on the page: a table, and the loads at the paver along the shift. */
final class Temperatures {
    /** Lines of a strip that stands alone, and of each of several. */
    private static final int ALONE = 7;

    private static final int TOGETHER = 4;

    private final DayPaper paper;
    private final Totals totals;
    private final Leaf leaf;

    Temperatures(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.totals = paper.totals();
        this.leaf = leaf;
    }

    void write() {
        Set<String> mixes = new LinkedHashSet<>();
        totals.loads().forEach(l -> mixes.add(l.mix() + (l.laid() ? "" : " not placed")));
        List<List<String>> rows = new ArrayList<>();
        for (String mix : mixes) {
            row(rows, mix, "plant");
            row(rows, mix, "paver");
        }
        if (rows.isEmpty()) {
            return;
        }
        leaf.heading("MIX TEMPERATURES, " + (metric() ? "°C" : "°F"));
        leaf.table(List.of("mix", "readings", "least", "mean", "most"), rows);
        lost();
    }

    /** What loads lost on the way; of the shifts before with it, where there are any. */
    private void lost() {
        Unit degree = metric() ? Unit.DEG_C : Unit.DEG_F;
        for (HaulLoss loss : HaulLoss.of(totals, degree)) {
            String toDate = HaulLoss.toDate(totals, degree).stream()
                    .filter(l -> l.plant().equals(loss.plant()) && l.loads() > loss.loads())
                    .map(l -> "; to date " + l.brief())
                    .findFirst()
                    .orElse("");
            leaf.say(1, "lost on the way " + loss.name() + ": " + loss.brief() + toDate);
        }
    }

    private boolean metric() {
        return paper.job().map(j -> j.units() == Job.Units.METRIC).orElse(false);
    }

    private void row(List<List<String>> rows, String mix, String where) {
        String id = where + "-temperature";
        totals.figure(id + "-readings." + mix)
                .ifPresent(n -> rows.add(List.of(
                        mix + " at the " + where,
                        n.text(),
                        number(id + "-least." + mix),
                        number(id + "-mean." + mix),
                        number(id + "-most." + mix))));
    }

    /** The text of a figure without its unit. */
    private String number(String id) {
        return totals.figure(id)
                .map(Figure::text)
                .map(t -> t.substring(0, t.indexOf(' ')))
                .orElse("-");
    }

    /** Temperatures along the shift, at the plant over those at the paver over those of the mat. */
    void strip() {
        List<Load> laid = totals.loads().stream().filter(Load::laid).toList();
        List<HeatStrip> strips = new ArrayList<>();
        HeatLines plant = plant(laid);
        HeatLines paver = paver(laid);
        add(strips, "at the plant, by discharge" + said(plant), Dot.atThePlant(laid, outside("heat-at-plant")), plant);
        add(
                strips,
                "at the paver, each placed load" + said(paver),
                Dot.atThePaver(laid, outside("heat-at-paver")),
                paver);
        paper.job()
                .ifPresent(job -> add(
                        strips,
                        "mat: " + Dot.MAT_SIGNS,
                        Dot.ofTheMat(paper.day(), Measure.TEMPERATURE.unit(job.system()), outside("mat-behind-screed")),
                        HeatLines.mat(job)));
        if (strips.isEmpty()) {
            return;
        }
        leaf.heading("TEMPERATURES ALONG THE SHIFT");
        int height = strips.size() == 1 ? ALONE : TOGETHER * strips.size() + 1;
        HeatStrip.of(strips, Leaf.PAPER - 1, height).forEach(line -> leaf.drawn(" " + line));
    }

    private static void add(List<HeatStrip> strips, String name, List<Dot> dots, HeatLines lines) {
        if (dots.size() >= 2) {
            strips.add(new HeatStrip(name, dots, lines.low(), lines.high()));
        }
    }

    private static String said(HeatLines lines) {
        if (lines.high().isPresent()) {
            return lines.low().isPresent()
                    ? "; the lines are the limits, # is outside"
                    : "; the line is the most, # is outside";
        }
        return lines.low().isPresent() ? "; the line is the least, # is outside" : "";
    }

    private Set<Ref> outside(String rule) {
        Set<Ref> outside = new HashSet<>();
        for (Finding each : paper.findings()) {
            if (each.sort() == Sort.OUTSIDE
                    && each.rule().equals(rule)
                    && !each.of().isEmpty()) {
                outside.add(each.of().get(0));
            }
        }
        return outside;
    }

    private HeatLines plant(List<Load> laid) {
        return lines(laid, Ticket.Heat::plant, HeatLines::plant);
    }

    private HeatLines paver(List<Load> laid) {
        return lines(laid, Ticket.Heat::paver, HeatLines::paver);
    }

    /** Where one and the same holds for every load that was read. */
    private HeatLines lines(List<Load> laid, Function<Ticket.Heat, Amount> part, Limiting limiting) {
        if (paper.job().isEmpty() || paper.sheet().isEmpty()) {
            return HeatLines.NONE;
        }
        return HeatLines.common(laid.stream()
                .filter(l -> part.apply(l.ticket().entry().heat()) != null)
                .map(l -> limiting.of(paper.job().get(), paper.sheet().get(), l.ticket()))
                .toList());
    }

    /** The lines of a load at one of its two places. */
    private interface Limiting {
        HeatLines of(Job job, SpecSheet sheet, Standing<Ticket> load);
    }
}
