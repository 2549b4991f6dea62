package screedbook.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.entry.Closing;
import screedbook.entry.Moment;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.tally.Figure;
import screedbook.tally.Load;
import screedbook.tally.Run;
import screedbook.tally.Shot;
import screedbook.tally.Tons;
import screedbook.tally.Totals;
import screedbook.unit.Amount;

/** What was placed and with what, each part of the page in a paragraph, for a first sheet that has no room for tables. */
final class Shortly {
    private final DayPaper paper;
    private final Totals totals;
    private final Leaf leaf;

    Shortly(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.totals = paper.totals();
        this.leaf = leaf;
    }

    private void say(String heading, List<String> said) {
        List<String> all = said.stream().filter(s -> !s.isEmpty()).toList();
        if (!all.isEmpty()) {
            leaf.say(0, heading + ": " + String.join("; ", all));
        }
    }

    void reconciliation() {
        Closing.Theirs theirs =
                paper.day().last(Closing.class).map(c -> c.entry().theirs()).orElse(null);
        if (theirs == null || theirs.their() == null && theirs.theirLoads() == null) {
            return;
        }
        Tons ours = totals.shift();
        String name = theirs.theirName() == null ? "the contractor" : theirs.theirName();
        String here = Leaf.many(ours.loads(), "load") + ", "
                + ours.received().shown(2).text();
        String there = (theirs.theirLoads() == null ? "- loads" : Leaf.many(theirs.theirLoads(), "load")) + ", "
                + (theirs.their() == null ? "-" : theirs.their().text());
        say(
                "RECONCILIATION",
                List.of(
                        here.equals(there) ? here + ", here and with " + name : "here " + here,
                        here.equals(there) ? "" : name + " " + there,
                        theirs.agreed() == null
                                ? ""
                                : "agreed: " + theirs.agreed().word().replace('-', ' ')));
    }

    void tons() {
        Tons all = totals.shift();
        List<Tons> mixes =
                totals.tons().stream().filter(t -> t.by() == Tons.By.MIX).toList();
        List<String> said = new ArrayList<>();
        String one = mixes.size() == 1 ? " of " + mixes.get(0).of() : "";
        boolean same =
                all.received().compareTo(all.placed()) == 0 && all.placed().compareTo(all.pay()) == 0;
        said.add(Leaf.many(all.loads(), "load") + one + ", " + two(all.received())
                + (same
                        ? " received, placed and for pay, "
                        : " received, " + bare(all.placed()) + " placed, " + bare(all.pay()) + " for pay, ")
                + Moment.clock(all.first()) + " to " + Moment.clock(all.last()));
        said.add(
                mixes.size() < 2
                        ? ""
                        : mixes.stream()
                                        .map(t -> t.of() + " " + bare(t.placed()))
                                        .collect(Collectors.joining(", ")) + " placed");
        said.add(fates());
        int wastes = paper.day().standing(Waste.class).size();
        said.add(wastes == 0 ? "" : Leaf.many(wastes, "entry", "entries") + " of waste");
        TreeSet<String> items = new TreeSet<>(totals.before().pay().keySet());
        totals.tons().stream().filter(t -> t.by() == Tons.By.PAY_ITEM).forEach(t -> items.add(t.of()));
        String toDate = items.stream()
                .flatMap(item -> totals.figure("pay-to-date." + item).stream().map(f -> item + " " + f.text()))
                .collect(Collectors.joining(", "));
        said.add(toDate.isEmpty() ? "" : "for pay to date as kept here " + toDate);
        say("LOADS AND TONS", said);
    }

    /** {@code rejected 3, part placed 1}. */
    private String fates() {
        Map<Ticket.End, Integer> fates = new EnumMap<>(Ticket.End.class);
        totals.loads().stream()
                .map(Load::fate)
                .filter(fate -> fate != Ticket.End.PLACED)
                .forEach(fate -> fates.merge(fate, 1, Integer::sum));
        return fates.entrySet().stream()
                .map(e -> e.getKey().word().replace('-', ' ') + " " + e.getValue())
                .collect(Collectors.joining(", "));
    }

    private static String two(Amount amount) {
        return amount.shown(2).text();
    }

    private static String bare(Amount amount) {
        return amount.shown(2).value().toPlainString();
    }

    void spread() {
        String unit = totals.runs().stream()
                .flatMap(r -> r.rate().stream())
                .map(r -> ", " + r.unit().symbol())
                .findFirst()
                .orElse("");
        say("SPREAD RATE" + unit, totals.runs().stream().map(Shortly::spread).toList());
    }

    private static String spread(Run run) {
        return run.name() + " " + run.rate().map(Shortly::bareRate).orElse("-")
                + run.target().map(Shortly::bareRate).map(t -> " of " + t).orElse("")
                + run.percent().map(p -> ", " + p.shown(1).text()).orElse("");
    }

    private static String bareRate(Amount rate) {
        return rate.shown(1).value().toPlainString();
    }

    /** The checks of all pulls together, and how each pull came out last. */
    void yield() {
        List<Amount> percents = totals.yields().checks().stream()
                .flatMap(c -> c.yielded().percent().stream())
                .map(p -> p.shown(1))
                .sorted()
                .toList();
        int checks = totals.yields().checks().size();
        List<String> said = new ArrayList<>();
        said.add(checks == 0 ? "" : Leaf.many(checks, "check"));
        said.add(percents.isEmpty() ? "" : range(percents.get(0), percents.get(percents.size() - 1)) + " of planned");
        String last = totals.yields().ahead().stream()
                .filter(o -> totals.figure("yield-last." + o.run().name()).isPresent())
                .flatMap(o -> o
                        .lastPercent()
                        .map(p -> o.run().name() + " " + p.shown(1).text())
                        .stream())
                .collect(Collectors.joining(", "));
        said.add(last.isEmpty() ? "" : "last loads " + last);
        say("YIELD", said);
    }

    private static String range(Amount least, Amount most) {
        return least.equals(most) ? least.text() : least.value().toPlainString() + " to " + most.text();
    }

    void depth() {
        Map<String, List<Amount>> states = new LinkedHashMap<>();
        totals.yields()
                .depths()
                .forEach(p -> states.computeIfAbsent(p.stateText(), s -> new ArrayList<>())
                        .addAll(p.amounts()));
        List<String> said = new ArrayList<>();
        states.forEach((state, found) -> {
            List<Amount> sorted = found.stream().sorted().toList();
            said.add(state + " " + found.size() + ", " + range(sorted.get(0), sorted.get(sorted.size() - 1)));
        });
        say("THICKNESS AS PROBED", said);
    }

    void tack() {
        Map<String, Integer> shots = new LinkedHashMap<>();
        totals.shots().stream().map(Shot::name).forEach(name -> shots.merge(name, 1, Integer::sum));
        List<String> said = new ArrayList<>();
        int faces = 0;
        for (Map.Entry<String, Integer> each : shots.entrySet()) {
            String residual = totals.figure("tack-residual." + each.getKey())
                    .filter(f -> f.value() != null)
                    .map(Figure::text)
                    .orElse("");
            if (residual.isEmpty()) {
                faces += each.getValue();
            } else {
                said.add(each.getKey() + " " + text("tack-volume." + each.getKey()) + ", residual " + residual);
            }
        }
        said.add(faces == 0 ? "" : Leaf.many(faces, "shot") + " without a rate");
        say("TACK", said);
    }

    /** At the paver, of what was placed. */
    void temperatures() {
        List<String> mixes = totals.loads().stream()
                .filter(Load::laid)
                .map(Load::mix)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        List<String> said = new ArrayList<>();
        for (String mix : mixes) {
            totals.figure("paver-temperature-least." + mix)
                    .ifPresent(least -> said.add(mix + " " + range(least, "paver-temperature-most." + mix) + ", mean "
                            + text("paver-temperature-mean." + mix) + " in " + readings(mix)));
        }
        say("MIX AT THE PAVER", said);
    }

    private String readings(String mix) {
        return totals.figure("paver-temperature-readings." + mix)
                .map(f -> Leaf.many(f.value().intValue(), "reading"))
                .orElse("-");
    }

    /** {@code 257 to 290 °F}. */
    private String range(Figure least, String most) {
        String to = text(most);
        return least.text().equals(to) || least.value() == null
                ? to
                : least.value().toPlainString() + " to " + to;
    }

    private String text(String id) {
        return totals.figure(id).map(Figure::text).orElse("-");
    }

    void weather() {
        List<String> said = new ArrayList<>();
        for (String id : List.of("air", "surface", "wind")) {
            totals.figure(id + "-least").ifPresent(least -> said.add(id + " " + range(least, id + "-most")));
        }
        Stream.of("precipitation", "road", "engineer-call")
                .flatMap(id -> totals.figure(id).stream())
                .forEach(f -> said.add(f.label() + " " + f.text()));
        say("WEATHER AND SURFACE", said);
    }

    void checks() {
        List<String> lacking = totals.dues().stream()
                .filter(d -> d.done() < d.asked())
                .map(d -> d.what() + " " + d.done() + " of " + d.asked())
                .toList();
        long others = totals.dues().stream()
                .filter(d -> d.done() >= d.asked() && d.asked() + d.done() > 0)
                .count();
        String all = others == 0 ? "" : others + (lacking.isEmpty() ? "" : " other") + " kinds as asked";
        say(
                "CHECKS DUE AND DONE",
                List.of(lacking.isEmpty() ? "" : "NOT ALL DONE: " + String.join(", ", lacking), all));
    }
}
