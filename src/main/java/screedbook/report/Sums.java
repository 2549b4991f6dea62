package screedbook.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import screedbook.entry.Closing;
import screedbook.entry.Moment;
import screedbook.entry.Number;
import screedbook.entry.PlantTotal;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.job.Job;
import screedbook.tally.Due;
import screedbook.tally.Figure;
import screedbook.tally.Load;
import screedbook.tally.PlantCount;
import screedbook.tally.Run;
import screedbook.tally.Shot;
import screedbook.tally.Tons;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The middle of the page: what the shift adds up to. */
final class Sums {
    private final DayPaper paper;
    private final Totals totals;
    private final Leaf leaf;

    Sums(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.totals = paper.totals();
        this.leaf = leaf;
    }

    /** Ours beside theirs: in one line where they are the same and agreed. */
    void reconciliation() {
        Closing.Theirs theirs =
                paper.day().last(Closing.class).map(c -> c.entry().theirs()).orElse(null);
        Tons ours = totals.shift();
        String kept = Leaf.many(ours.loads(), "load") + ", "
                + ours.received().shown(2).text();
        if (theirs == null || (theirs.their() == null && theirs.theirLoads() == null)) {
            leaf.say(0, "RECONCILIATION: received, as kept here: " + kept + "; the contractor's figures are not noted");
        } else if (same(theirs, ours)) {
            leaf.say(
                    0,
                    "RECONCILIATION: " + kept + ", here and with "
                            + (theirs.theirName() == null ? "the contractor" : theirs.theirName()) + "; agreed: yes"
                            + Entries.phrases(";", theirs.why()));
        } else {
            leaf.heading("RECONCILIATION");
            compared(theirs, ours);
        }
        plants();
    }

    private static boolean same(Closing.Theirs theirs, Tons ours) {
        return theirs.agreed() == Closing.Agreed.YES
                && theirs.theirLoads() != null
                && theirs.theirLoads() == ours.loads()
                && theirs.their() != null
                && theirs.their().unit() == ours.received().unit()
                && theirs.their().compareTo(ours.received()) == 0;
    }

    /** What was said at the close: the controlling item, whether the day is charged, and what comes next. */
    void close() {
        paper.day()
                .last(Closing.class)
                .map(Standing::entry)
                .map(c -> Entries.phrases(
                        "controlling item", c.controllingItem(),
                        "day charged:",
                                c.dayCharged() == null ? null : c.dayCharged().word(),
                        "", c.text()))
                .filter(said -> !said.isEmpty())
                .ifPresent(said -> leaf.say(0, "AT THE CLOSE: " + said));
    }

    /** What the plants told, and how their own lists lie beside the record. */
    private void plants() {
        for (PlantCount count : PlantCount.all(
                paper.day(), totals.loads(), totals.shift().received().unit())) {
            PlantTotal told = count.told().entry();
            leaf.say(
                    1,
                    count.name() + " until " + Moment.clock(count.told().order()) + ": the plant "
                            + dash(told.loads()) + " loads, "
                            + (told.tons() == null ? "-" : told.tons().text()) + "; here "
                            + count.mine().size() + " loads, " + two(count.tons()) + " "
                            + count.tons().unit().symbol());
        }
        totals.sections().stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().startsWith("plant-list."))
                .forEach(f -> leaf.say(1, f.label() + ": " + f.text()));
    }

    private void compared(Closing.Theirs theirs, Tons ours) {
        Amount their = theirs.their();
        boolean same = their != null && their.unit() == ours.received().unit();
        leaf.table(
                List.of("", "loads", "received " + ours.received().unit().symbol()),
                List.of(
                        List.of("as kept here", Integer.toString(ours.loads()), two(ours.received())),
                        List.of(
                                "theirs" + (theirs.theirName() == null ? "" : ", " + theirs.theirName()),
                                dash(theirs.theirLoads()),
                                their == null ? "-" : same ? two(their) : their.text()),
                        List.of(
                                "difference",
                                theirs.theirLoads() == null
                                        ? "-"
                                        : Integer.toString(ours.loads() - theirs.theirLoads()),
                                same ? two(ours.received().minus(their)) : "-")));
        if (theirs.agreed() != null) {
            leaf.say(1, "agreed: " + theirs.agreed().word().replace('-', ' ') + Entries.phrases(";", theirs.why()));
        }
    }

    void tons() {
        String unit = totals.shift().received().unit().symbol();
        leaf.heading("LOADS AND TONS, " + unit);
        List<List<String>> rows = new ArrayList<>();
        of(Tons.By.MIX).forEach(t -> rows.add(row(t, t.of())));
        if (rows.isEmpty()) {
            leaf.say(1, "no load");
        } else {
            if (rows.size() > 1) {
                rows.add(row(totals.shift(), "all"));
            }
            leaf.table(List.of("mix", "loads", "received", "placed", "for pay", "first", "last", unit + "/h"), rows);
        }
        totals.loads().stream().filter(l -> l.fate() != Ticket.End.PLACED).forEach(this::fate);
        paper.day().standing(Waste.class).forEach(this::waste);
        paper.day().standing(Number.class).forEach(this::number);
        pay(unit);
    }

    private List<Tons> of(Tons.By by) {
        return totals.tons().stream().filter(t -> t.by() == by).toList();
    }

    private static List<String> row(Tons tons, String name) {
        return List.of(
                name,
                Integer.toString(tons.loads()),
                two(tons.received()),
                two(tons.placed()),
                two(tons.pay()),
                Moment.clock(tons.first()),
                Moment.clock(tons.last()),
                tons.perHour()
                        .map(r -> r.setScale(0, RoundingMode.HALF_UP).toPlainString())
                        .orElse("-"));
    }

    private void fate(Load load) {
        Ticket.Fate fate = load.ticket().entry().fate();
        Amount net = load.ticket().entry().weights().net();
        String number = load.ticket().entry().paper().number();
        leaf.say(
                1,
                Moment.clock(load.ticket().time()) + " ticket " + (number == null ? "without a number" : number) + " "
                        + load.fate().word().replace('-', ' ')
                        + (net == null ? ", net not noted" : ", net " + net.text())
                        + (fate.returned() == null
                                ? ""
                                : ", not placed " + fate.returned().text())
                        + semicolon(Entries.phrases(
                                "known by",
                                fate.basis(),
                                "",
                                fate.reason(),
                                "decided by",
                                fate.decidedBy(),
                                "told to",
                                fate.toldTo())));
    }

    private static String semicolon(String said) {
        return said.isEmpty() ? "" : "; " + said;
    }

    private void waste(Standing<Waste> waste) {
        Waste w = waste.entry();
        leaf.say(
                1,
                Moment.clock(waste.time()) + " waste" + (w.of() == null ? " of the shift" : " of " + w.of()) + " "
                        + (w.weight() == null ? "weight not noted" : w.weight().text())
                        + semicolon(Entries.phrases("", w.reason(), "known by", w.basis(), "went to", w.wentWhere())));
    }

    private void number(Standing<Number> number) {
        Number n = number.entry();
        String what = n.what() == null ? "not said" : n.what().word().replace('-', ' ');
        leaf.say(1, "number " + n.number() + " is " + what + semicolon(Entries.phrases("said by", n.saidBy())));
    }

    private void pay(String unit) {
        TreeSet<String> items = new TreeSet<>(totals.before().pay().keySet());
        of(Tons.By.PAY_ITEM).forEach(t -> items.add(t.of()));
        if (items.isEmpty()) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (String item : items) {
            rows.add(List.of(
                    item,
                    value("pay-previous." + item, 2),
                    value("pay-this-shift." + item, 2),
                    value("pay-to-date." + item, 2)));
        }
        leaf.table(List.of("for pay as kept here, " + unit, "previous", "this shift", "to date"), rows);
        leaf.say(
                1,
                "the pay office decides; previous: "
                        + Leaf.many(totals.before().shifts().size(), "closed shift")
                        + (totals.before().uncounted() == 0
                                ? ""
                                : ", " + Leaf.many(totals.before().uncounted(), "entry", "entries")
                                        + " of them not counted"));
    }

    void spread() {
        if (totals.runs().isEmpty()) {
            return;
        }
        leaf.heading("SPREAD RATE, averages over each pull; the thickness is worked out from them");
        Run any = totals.runs().get(0);
        Unit heavy = any.laid().unit();
        boolean metric = heavy == Unit.TONNE;
        List<List<String>> rows = totals.runs().stream()
                .map(r -> List.of(
                        r.pieces().size() == 1
                                ? r.name() + " " + r.pieces().get(0).text()
                                : r.name(),
                        two(r.laid()),
                        shown(r.length(), metric ? 1 : 0),
                        shown(r.area(), 0),
                        shown(r.rate(), 1),
                        shown(r.target(), 1),
                        shown(r.percent(), 1),
                        shown(r.thickness(), metric ? 0 : 2)))
                .toList();
        leaf.table(
                metric
                        ? List.of("pull", "laid t", "m", "m²", "kg/m²", "of", "%", "mm")
                        : List.of("pull", "laid T", "ft", "yd²", "lb/yd²", "of", "%", "in"),
                rows);
        for (Run run : totals.runs()) {
            String where = run.pieces().stream().map(Run.Piece::text).collect(Collectors.joining(", "));
            String rest = run.elsewhere().value().signum() == 0
                    ? ""
                    : "; " + run.elsewhere().shown(2).text() + " at no known place, not in the rate";
            if (run.pieces().size() != 1 || !rest.isEmpty()) {
                leaf.say(1, run.name() + ": " + (where.isEmpty() ? "stations not known" : where) + rest);
            }
            if (!run.parts().isEmpty()) {
                leaf.say(
                        1,
                        run.name() + ": the area has " + Leaf.many(run.parts().size(), "part")
                                + " of its own; average width "
                                + totals.figure("average-width." + run.name())
                                        .map(Figure::text)
                                        .orElse("-"));
            }
        }
    }

    void tack() {
        if (totals.shots().isEmpty()) {
            return;
        }
        leaf.heading("TACK");
        List<String> names = totals.shots().stream().map(Shot::name).distinct().toList();
        boolean metric = paper.job().map(j -> j.units() == Job.Units.METRIC).orElse(false);
        List<List<String>> rows = names.stream()
                .filter(n -> !face(n))
                .map(n -> List.of(
                        n,
                        value("tack-shots." + n, 0),
                        value("tack-volume." + n, 1),
                        value("tack-volume-at-base." + n, 1),
                        value("tack-area." + n, 0),
                        value("tack-applied." + n, 3),
                        value("tack-residual." + n, 3)))
                .toList();
        if (!rows.isEmpty()) {
            leaf.table(
                    metric
                            ? List.of("on", "shots", "L", "at 15 °C", "m²", "L/m² applied", "residual")
                            : List.of("on", "shots", "gal", "at 60 °F", "yd²", "gal/yd² applied", "residual"),
                    rows);
        }
        faces(names, metric);
        totals.sections().stream()
                .filter(s -> s.id().equals("tack"))
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.value() == null || f.label().contains(","))
                .forEach(f -> leaf.say(1, f.label() + ": " + f.text()));
    }

    /** Whether all shots of a name are of contact faces without a width; such a shot is counted and has no rate. */
    private boolean face(String name) {
        return totals.shots().stream()
                .filter(s -> s.name().equals(name))
                .allMatch(s ->
                        s.tack().entry().target().face() != null && !s.area().known());
    }

    private void faces(List<String> names, boolean metric) {
        List<String> told = names.stream()
                .filter(this::face)
                .map(n -> n + " " + value("tack-shots." + n, 0)
                        + totals.figure("tack-volume." + n)
                                .filter(f -> f.value() != null)
                                .map(f -> ", " + value("tack-volume." + n, 1) + (metric ? " L" : " gal"))
                                .orElse(""))
                .toList();
        if (!told.isEmpty()) {
            leaf.say(1, "shots of contact faces: " + String.join("; ", told));
        }
    }

    void weather() {
        List<String> said = new ArrayList<>();
        for (String id : List.of("air", "humidity", "wind", "surface")) {
            totals.figure(id + "-least").ifPresent(least -> {
                Figure most = totals.figure(id + "-most").orElseThrow();
                Figure count = totals.figure(id + "-readings").orElseThrow();
                String label = least.label().substring(0, least.label().length() - " least".length());
                String range = least.text().equals(most.text())
                        ? least.text()
                        : least.value().toPlainString() + " to " + most.text();
                said.add(label + " " + range + " in " + Leaf.many(count.value().intValue(), "reading"));
            });
        }
        for (String id : List.of("sky", "precipitation", "road", "engineer-call")) {
            totals.figure(id).ifPresent(f -> said.add(f.label() + " " + f.text()));
        }
        leaf.say(0, "WEATHER AND SURFACE: " + (said.isEmpty() ? "not noted" : String.join("; ", said)));
    }

    void checks() {
        if (totals.dues().isEmpty()) {
            return;
        }
        if (paper.day().closed()) {
            leaf.say(0, "CHECKS DUE AND DONE: " + done());
            return;
        }
        leaf.heading("CHECKS DUE AND DONE");
        List<List<String>> rows = totals.dues().stream().map(Sums::due).toList();
        leaf.table(List.of("check", "done", "asked", "next"), rows);
    }

    /** What is lacking first; the others with how often they were done. */
    private String done() {
        List<String> lacking = totals.dues().stream()
                .filter(d -> d.done() < d.asked())
                .map(d -> d.what() + " " + d.done() + " of " + d.asked())
                .toList();
        List<String> others = totals.dues().stream()
                .filter(d -> d.done() >= d.asked() && d.asked() + d.done() > 0)
                .map(d -> d.what() + " " + d.done())
                .toList();
        String all = others.isEmpty() ? "" : "as asked: " + String.join(", ", others);
        String lacks = lacking.isEmpty() ? "" : "NOT ALL DONE: " + String.join(", ", lacking);
        return lacks.isEmpty() && all.isEmpty()
                ? "nothing was due"
                : lacks + (lacks.isEmpty() || all.isEmpty() ? "" : "; ") + all;
    }

    private static List<String> due(Due due) {
        return List.of(due.what(), Integer.toString(due.done()), Integer.toString(due.asked()), due.when());
    }

    /** A figure's value to so many decimals; a dash where it was not worked out. */
    private String value(String id, int decimals) {
        return totals.figure(id)
                .map(Figure::value)
                .map(v -> v.setScale(decimals, RoundingMode.HALF_UP).toPlainString())
                .orElse("-");
    }

    private static String dash(Integer count) {
        return count == null ? "-" : count.toString();
    }

    private static String two(Amount amount) {
        return shown(amount, 2);
    }

    private static String shown(Optional<Amount> amount, int decimals) {
        return amount.map(a -> shown(a, decimals)).orElse("-");
    }

    static String shown(Amount amount, int decimals) {
        BigDecimal value = amount.value().setScale(decimals, RoundingMode.HALF_UP);
        return value.toPlainString();
    }
}
