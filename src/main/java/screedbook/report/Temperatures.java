package screedbook.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import screedbook.check.Cases;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Ref;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.picture.Dot;
import screedbook.picture.HeatStrip;
import screedbook.spec.Limit;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.HaulLoss;
import screedbook.tally.Load;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Mix temperatures on the page: a table, and the loads at the paver along the shift. */
final class Temperatures {
    private static final int STRIP = 6;

    /** The rule whose findings are drawn with a sign of their own. */
    private static final String AT_THE_PAVER = "heat-at-paver";

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
        strip();
        lost();
    }

    /** What loads lost on the way; of the shifts before with it, where there are any. */
    private void lost() {
        Unit degree = metric() ? Unit.DEG_C : Unit.DEG_F;
        HaulLoss.of(totals, degree).forEach(l -> leaf.say(1, "lost on the way " + l.name() + ": " + l.text()));
        HaulLoss.toDate(totals, degree).stream()
                .filter(l -> totals.before().haul().containsKey(l.plant()))
                .forEach(l -> leaf.say(1, "to date " + l.name() + ": " + l.text()));
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

    private void strip() {
        List<Load> laid = totals.loads().stream().filter(Load::laid).toList();
        List<Dot> dots = Dot.atThePaver(laid, outside());
        if (dots.size() < 2) {
            return;
        }
        leaf.blank();
        Optional<BigDecimal> limit = limit(laid);
        leaf.say(
                1, "at the paver, each placed load" + (limit.isEmpty() ? "" : "; the line is the least, # is outside"));
        HeatStrip.of(dots, limit, Leaf.PAPER - 1, STRIP).forEach(line -> leaf.drawn(" " + line));
    }

    private Set<Ref> outside() {
        Set<Ref> outside = new HashSet<>();
        for (Finding each : paper.findings()) {
            if (each.sort() == Sort.OUTSIDE
                    && each.seen().startsWith("at the paver")
                    && !each.of().isEmpty()) {
                outside.add(each.of().get(0));
            }
        }
        return outside;
    }

    /** The least at the paver, where one and the same holds for every load that was read. */
    private Optional<BigDecimal> limit(List<Load> laid) {
        if (paper.job().isEmpty() || paper.sheet().isEmpty()) {
            return Optional.empty();
        }
        Set<BigDecimal> limits = new TreeSet<>();
        boolean open = false;
        for (Load load : laid) {
            if (load.ticket().entry().heat().paver() != null) {
                Optional<Amount> least = least(paper.job().get(), paper.sheet().get(), load);
                open |= least.isEmpty();
                least.ifPresent(l -> limits.add(l.value()));
            }
        }
        return open || limits.size() != 1
                ? Optional.empty()
                : Optional.of(limits.iterator().next());
    }

    /** The sheet's own least, or the one that lies under the mix's target, whichever is higher. */
    private static Optional<Amount> least(Job job, SpecSheet sheet, Load load) {
        Ticket ticket = load.ticket().entry();
        Situation situation = Cases.of(job, ticket, load.ticket().time());
        List<Amount> lows = new ArrayList<>();
        lows(sheet, Quantity.PAVER_MIX, situation).forEach(lows::add);
        job.mix(load.mix())
                .map(Job.Mix::targetPaver)
                .ifPresent(target -> lows(sheet, Quantity.PAVER_DIFFERENCE, situation)
                        .forEach(low -> lows.add(new Amount(target.value().add(low.value()), target.unit()))));
        return lows.stream()
                .filter(low -> low.unit() == ticket.heat().paver().unit())
                .max(Amount::compareTo);
    }

    private static Stream<Amount> lows(SpecSheet sheet, Quantity quantity, Situation situation) {
        return sheet.ruling(quantity, situation).inForce().stream()
                .map(Limit::low)
                .filter(Objects::nonNull);
    }
}
