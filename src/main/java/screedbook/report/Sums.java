package screedbook.report;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import screedbook.entry.Closing;
import screedbook.entry.Moment;
import screedbook.entry.Number;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.tally.Due;
import screedbook.tally.Figure;
import screedbook.tally.Load;
import screedbook.tally.Tons;
import screedbook.tally.Totals;
import screedbook.unit.Amount;

/** What the shift adds up to: loads and tons, weather, checks, and what was said at the close. */
final class Sums {
    private final DayPaper paper;
    private final Totals totals;
    private final Leaf leaf;

    Sums(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.totals = paper.totals();
        this.leaf = leaf;
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
                Rounded.two(tons.received()),
                Rounded.two(tons.placed()),
                Rounded.two(tons.pay()),
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
                    Rounded.value(totals, "pay-previous." + item, 2),
                    Rounded.value(totals, "pay-this-shift." + item, 2),
                    Rounded.value(totals, "pay-to-date." + item, 2)));
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
}
