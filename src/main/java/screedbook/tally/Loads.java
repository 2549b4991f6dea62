package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Part;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The tickets of a day as loads, with parts and waste taken into account. */
final class Loads {
    /** How the reason begins where another entry counts in the place of this one. */
    static final String AGAIN = "the same ticket ";

    private final Unit unit;
    private final Amount zero;
    private final Map<Ref, List<Standing<Part>>> parts;
    private final Map<Ref, List<Standing<Waste>>> wastes;
    private final Map<Same, Ref> seen = new HashMap<>();
    private final Map<Numbered, String> reissued = new HashMap<>();
    private final List<Standing<Waste>> loose = new ArrayList<>();
    private final List<Load> loads = new ArrayList<>();
    private final List<Left> left = new ArrayList<>();

    /** The same paper keyed twice: plant, number, truck and net are equal. */
    private record Same(Numbered number, String truck, BigDecimal net) {}

    private record Numbered(String plant, String number) {}

    private Loads(Day day, Unit unit) {
        this.unit = unit;
        this.zero = new Amount(BigDecimal.ZERO, unit);
        this.parts = byTicket(day.standing(Part.class), Part::of);
        this.wastes = byTicket(day.standing(Waste.class), Waste::of);
    }

    static Loads of(Day day, Unit unit) {
        Loads made = new Loads(day, unit);
        List<Standing<Ticket>> tickets = day.standing(Ticket.class);
        tickets.forEach(made::reissue);
        tickets.forEach(made::add);
        made.unclaimed();
        return made;
    }

    /** In the order in which they were discharged. */
    List<Load> loads() {
        return List.copyOf(loads);
    }

    /** Waste that belongs to no ticket, in the job's unit. */
    List<Standing<Waste>> loose() {
        return List.copyOf(loose);
    }

    List<Left> left() {
        return List.copyOf(left);
    }

    private static <E extends Entry> Map<Ref, List<Standing<E>>> byTicket(
            List<Standing<E>> entries, Function<E, Ref> of) {
        Map<Ref, List<Standing<E>>> found = new HashMap<>();
        for (Standing<E> each : entries) {
            found.computeIfAbsent(of.apply(each.entry()), r -> new ArrayList<>())
                    .add(each);
        }
        return found;
    }

    private void reissue(Standing<Ticket> standing) {
        Ticket.Paper paper = standing.entry().paper();
        String old = standing.entry().fate().reissueOf();
        if (old != null && !old.equals(paper.number())) {
            reissued.put(new Numbered(paper.plant(), old), paper.number());
        }
    }

    private void add(Standing<Ticket> standing) {
        Ticket ticket = standing.entry();
        String why = why(standing);
        if (!why.isEmpty()) {
            left.add(new Left(standing.ref(), why));
        }
        Amount net = readable(ticket.weights().net()) ? ticket.weights().net() : zero;
        boolean again = why.startsWith(AGAIN);
        boolean came =
                !again && Load.fate(ticket) != Ticket.End.VOID_AT_PLANT && Load.fate(ticket) != Ticket.End.OTHER_JOB;
        Amount received = came ? net : zero;
        Amount placed = again ? zero : placed(ticket, net);
        boolean laid = !again && Load.laid(ticket);
        Amount pay = laid ? placed.minus(wasted(standing.ref())) : zero;
        List<Share> shares = laid ? shares(standing, pay) : List.of();
        loads.add(new Load(standing, received, placed, pay, shares, why));
    }

    /** Why the weight of a ticket cannot be counted, or not in full. */
    private String why(Standing<Ticket> standing) {
        Ticket ticket = standing.entry();
        Numbered numbered = new Numbered(ticket.paper().plant(), ticket.paper().number());
        String newer = numbered.number() == null ? null : reissued.get(numbered);
        if (newer != null) {
            return AGAIN + "was issued again as " + newer;
        }
        Amount net = ticket.weights().net();
        Ref first = net == null ? null : first(standing, numbered, net);
        if (first != null) {
            return AGAIN + "stands at " + first;
        }
        if (net == null) {
            return "net not noted";
        }
        if (!readable(net)) {
            return "net in " + net.unit().symbol() + ", this job counts " + unit.symbol();
        }
        return Load.fate(ticket) == Ticket.End.PART_PLACED ? unplaced(ticket) : "";
    }

    private Ref first(Standing<Ticket> standing, Numbered numbered, Amount net) {
        if (numbered.number() == null || numbered.number().contains("?")) {
            return null;
        }
        String truck = standing.entry().paper().truck();
        Same same = new Same(numbered, truck, net.value().stripTrailingZeros());
        return seen.putIfAbsent(same, standing.ref());
    }

    private String unplaced(Ticket ticket) {
        Amount returned = ticket.fate().returned();
        if (returned == null) {
            return "part placed, and how much was not placed is not noted";
        }
        if (!readable(returned)) {
            return "not placed in " + returned.unit().symbol() + ", this job counts " + unit.symbol();
        }
        return "";
    }

    private Amount placed(Ticket ticket, Amount net) {
        return switch (Load.fate(ticket)) {
            case PLACED -> net;
            case PART_PLACED ->
                unplaced(ticket).isEmpty() ? net.minus(ticket.fate().returned()) : zero;
            default -> zero;
        };
    }

    private Amount wasted(Ref ticket) {
        Amount sum = zero;
        for (Standing<Waste> waste : wastes.getOrDefault(ticket, List.of())) {
            Amount weight = waste.entry().weight();
            sum = readable(weight) ? sum.plus(weight) : sum;
        }
        return sum;
    }

    private List<Share> shares(Standing<Ticket> ticket, Amount pay) {
        Ticket.Spot spot = ticket.entry().spot();
        if (parts.isEmpty()) {
            return List.of(
                    new Share(ticket.ref(), spot.pull(), spot.lift(), spot.from(), spot.to(), spot.place(), pay));
        }
        List<Share> others = new ArrayList<>();
        Amount rest = pay;
        for (Standing<Part> part : parts.getOrDefault(ticket.ref(), List.of())) {
            Part p = part.entry();
            if (readable(p.share())) {
                Integer lift = p.lift() == null ? spot.lift() : p.lift();
                others.add(new Share(part.ref(), p.pull(), lift, p.from(), p.to(), p.place(), p.share()));
                rest = rest.minus(p.share());
            }
        }
        List<Share> all = new ArrayList<>();
        all.add(new Share(ticket.ref(), spot.pull(), spot.lift(), spot.from(), spot.to(), spot.place(), rest));
        all.addAll(others);
        return List.copyOf(all);
    }

    /** Parts and waste that went into no load, and waste of the shift. */
    private void unclaimed() {
        Set<Ref> laid = new HashSet<>();
        loads.stream().filter(Load::laid).forEach(l -> laid.add(l.ticket().ref()));
        parts.forEach((of, list) -> list.forEach(p -> claim(p, of, p.entry().share(), laid)));
        wastes.forEach((of, list) -> list.forEach(w -> {
            if (of == null && readable(w.entry().weight())) {
                loose.add(w);
            } else {
                claim(w, of, w.entry().weight(), laid);
            }
        }));
        loose.sort(Comparator.comparing(w -> w.ref().toString()));
        left.sort(Comparator.comparing((Left l) -> l.of().book()).thenComparing(l -> l.of().n()));
    }

    private void claim(Standing<?> entry, Ref of, Amount weight, Set<Ref> laid) {
        if (!readable(weight)) {
            String seen = weight == null
                    ? "weight not noted"
                    : "weight in " + weight.unit().symbol();
            left.add(new Left(entry.ref(), seen + ", this job counts " + unit.symbol()));
        } else if (!laid.contains(of)) {
            left.add(
                    new Left(entry.ref(), "of " + Objects.toString(of, "no ticket") + ", of which nothing was placed"));
        }
    }

    private boolean readable(Amount weight) {
        return weight != null && weight.unit() == unit;
    }
}
