package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Part;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.tally.Load;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about weights: those of one ticket between themselves, and against the truck. */
final class WeightRules {
    static final List<Rule> ALL = List.of(
            new Rule("net-not-noted", Sort.MISSING, "A load that came has a net weight.", WeightRules::noNet),
            new Rule(
                    "net-against-scale",
                    Sort.DOES_NOT_ADD_UP,
                    "The printed net is the printed gross less the printed tare.",
                    WeightRules::netAgainstScale),
            new Rule(
                    "net-against-batches",
                    Sort.DOES_NOT_ADD_UP,
                    "The printed net is the batches times the weight of one.",
                    WeightRules::netAgainstBatches),
            new Rule(
                    "tare-above-gross",
                    Sort.DOES_NOT_ADD_UP,
                    "A loaded truck weighs more than an empty one.",
                    WeightRules::tareAboveGross),
            new Rule("net-unusual", Sort.LOOK_AGAIN, "A load weighs what loads weigh.", WeightRules::oddNet),
            new Rule(
                    "scale-unusual",
                    Sort.LOOK_AGAIN,
                    "Gross and tare are in the unit of a truck scale.",
                    WeightRules::oddScale),
            new Rule("tare-unusual", Sort.LOOK_AGAIN, "A truck weighs empty what trucks weigh.", WeightRules::oddTare),
            new Rule(
                    "tare-moved",
                    Sort.LOOK_AGAIN,
                    "The tare of a truck stays near its usual one.",
                    WeightRules::tareMoved),
            new Rule(
                    "same-weights-again",
                    Sort.LOOK_AGAIN,
                    "Two loads of a truck in a row differ in gross or tare.",
                    WeightRules::sameAgain),
            new Rule(
                    "gross-legal",
                    Sort.OUTSIDE,
                    "A loaded truck weighs at most its legal gross weight.",
                    WeightRules::legalGross),
            new Rule(
                    "parts-against-net",
                    Sort.DOES_NOT_ADD_UP,
                    "Parts and waste of a load come to at most what was placed of it.",
                    WeightRules::parts),
            new Rule(
                    "part-of-nothing",
                    Sort.LOOK_AGAIN,
                    "A part or waste belongs to a ticket that is here.",
                    WeightRules::loose));

    private WeightRules() {}

    private static List<Mark> noNet(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.End fate = Load.fate(t.entry());
            boolean came = fate != Ticket.End.VOID_AT_PLANT && fate != Ticket.End.OTHER_JOB;
            if (came && t.entry().weights().net() == null) {
                marks.add(new Mark(
                        t.ref(),
                        Look.name(t) + ": net not noted",
                        "a load that came has a net weight",
                        "common practice",
                        "the net as the ticket prints it"));
            }
        }
        return marks;
    }

    private static List<Mark> netAgainstScale(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            Optional<Amount> apart = Weighing.apart(w);
            if (apart.isPresent() && w.tare().compareTo(w.gross()) <= 0) {
                Amount net = Weighing.net(w).orElseThrow();
                apart(
                                t,
                                apart.get(),
                                "gross " + AmountText.text(w.gross()) + " less tare " + AmountText.text(w.tare())
                                        + " is "
                                        + net.text() + ", printed net "
                                        + w.net().text(),
                                net)
                        .ifPresent(marks::add);
            }
        }
        return marks;
    }

    private static List<Mark> netAgainstBatches(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            if (w.batches() != null && w.batch() != null && w.net() != null) {
                Amount all = new Amount(
                        w.batch().value().multiply(BigDecimal.valueOf(w.batches())),
                        w.batch().unit());
                Amount apart = AmountText.size(all.minus(w.net())).shown(0);
                Amount net = AmountText.told(all, w.net().unit(), 3);
                apart(
                                t,
                                apart,
                                w.batches() + " batches of " + AmountText.text(w.batch()) + " are " + net.text()
                                        + ", printed net " + w.net().text(),
                                net)
                        .ifPresent(marks::add);
            }
        }
        return marks;
    }

    private static Optional<Mark> apart(Standing<Ticket> t, Amount apart, String seen, Amount net) {
        for (Bound bound : Marks.usual(Quantity.NET_DIFFERENCE).broken(apart)) {
            return Optional.of(new Mark(
                    null,
                    List.of(t.ref()),
                    seen + ": " + AmountText.text(apart) + " apart",
                    bound.full(apart.unit()) + " apart",
                    bound.clause(),
                    "a net of " + net.text(),
                    bound.working()));
        }
        return Optional.empty();
    }

    private static List<Mark> tareAboveGross(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            boolean scale = w.gross() != null && w.tare() != null && w.tare().compareTo(w.gross()) >= 0;
            boolean came = Load.fate(t.entry()) != Ticket.End.VOID_AT_PLANT;
            boolean net = came && w.net() != null && w.net().value().signum() <= 0;
            if (scale || net) {
                String seen = scale
                        ? "gross " + AmountText.text(w.gross()) + ", tare " + AmountText.text(w.tare())
                        : "net " + w.net().text();
                marks.add(PlanRules.meant(
                                List.of(new Mark(
                                        t.ref(),
                                        seen,
                                        "a load has weight",
                                        "common practice",
                                        "gross above tare, net above 0")),
                                () -> Slips.swapped(w))
                        .get(0));
            }
        }
        return marks;
    }

    private static List<Mark> oddNet(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Amount net = t.entry().weights().net();
            if (net != null && net.value().signum() > 0) {
                marks.addAll(
                        PlanRules.meant(Marks.odd(Quantity.NET, List.of(t.ref()), "net", net), () -> Slips.net(net)));
            }
        }
        return marks;
    }

    private static List<Mark> oddScale(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            Slips.scale("gross", w.gross()).ifPresent(o -> marks.add(scale(t, "gross", w.gross(), o)));
            Slips.scale("tare", w.tare()).ifPresent(o -> marks.add(scale(t, "tare", w.tare(), o)));
        }
        return marks;
    }

    private static Mark scale(Standing<Ticket> t, String which, Amount weight, Guide.Offer offer) {
        return new Mark(
                        t.ref(),
                        which + " " + AmountText.text(weight),
                        "a truck scale shows " + weight.unit().symbol(),
                        "usual range weights",
                        "a weight in " + weight.unit().symbol())
                .because("Meant: " + offer.asks());
    }

    private static List<Mark> oddTare(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            boolean known = look.truck(t).map(truck -> truck.tare() != null).orElse(false);
            if (w.tare() != null && !known && Slips.scale("tare", w.tare()).isEmpty()) {
                marks.addAll(Marks.odd(Quantity.TARE, List.of(t.ref()), "tare", w.tare()));
            }
        }
        return marks;
    }

    private static List<Mark> tareMoved(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            Optional<Amount> usual = look.truck(t).map(Job.Truck::tare);
            Optional<Amount> seen = w.tare() == null ? Weighing.impliedTare(w) : Optional.of(w.tare());
            if (usual.isPresent() && seen.isPresent()) {
                marks.addAll(moved(t, usual.get(), seen.get(), w.tare() == null));
            }
        }
        return marks;
    }

    private static List<Mark> moved(Standing<Ticket> t, Amount usual, Amount seen, boolean implied) {
        List<Mark> marks = new ArrayList<>();
        Amount by = AmountText.size(seen.minus(usual));
        for (Bound bound : Marks.usual(Quantity.TARE_DIFFERENCE).broken(by)) {
            Amount most = bound.high().to(usual.unit()).shown(0);
            marks.add(new Mark(
                    null,
                    List.of(t.ref()),
                    "truck " + t.entry().paper().truck() + (implied ? ": the weights come to a tare of " : ": tare ")
                            + AmountText.text(seen) + ", usually " + AmountText.text(usual),
                    bound.full(usual.unit()) + " from the usual tare",
                    bound.clause(),
                    AmountText.plain(usual.minus(most)) + " to " + AmountText.text(usual.plus(most)),
                    bound.working()));
        }
        return marks;
    }

    private static List<Mark> sameAgain(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, Standing<Ticket>> last = new HashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Weights w = t.entry().weights();
            String truck = t.entry().paper().truck();
            if (truck == null || w.gross() == null || w.tare() == null) {
                continue;
            }
            Standing<Ticket> before = last.put(truck, t);
            if (before != null && same(before.entry().weights(), w)) {
                marks.add(new Mark(
                        List.of(t.ref(), before.ref()),
                        "truck " + truck + ": gross " + AmountText.text(w.gross()) + " and tare "
                                + AmountText.text(w.tare()) + " as on " + Look.name(before),
                        "two loads of a truck in a row differ in gross or tare",
                        "common practice",
                        "another gross or another tare"));
            }
        }
        return marks;
    }

    private static boolean same(Ticket.Weights a, Ticket.Weights b) {
        return a.gross().compareTo(b.gross()) == 0 && a.tare().compareTo(b.tare()) == 0;
    }

    private static List<Mark> legalGross(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Amount gross = t.entry().weights().gross();
            Optional<Job.Truck> truck = gross == null ? Optional.empty() : look.truck(t);
            boolean known = truck.map(Job.Truck::legalGross).isPresent();
            if (known && gross.compareTo(truck.get().legalGross()) > 0) {
                Bounds legal = new Bounds(Weighing.legalGross(truck).stream().toList(), List.of());
                marks.addAll(Marks.judged(legal, List.of(t.ref()), "gross", gross, ""));
            } else if (!known && gross != null && Slips.hasLegalGross(gross)) {
                marks.addAll(Marks.odd(Quantity.GROSS, List.of(t.ref()), "gross", gross));
            }
        }
        return marks;
    }

    /** Weight and entries that were taken off a ticket. */
    private static final class Taken {
        private final List<Ref> of = new ArrayList<>();
        private final List<String> put = new ArrayList<>();
        private Amount sum;

        void add(Standing<?> entry, String what, Amount weight) {
            of.add(entry.ref());
            put.add(what + " " + weight.text());
            sum = sum == null ? weight : sum.plus(weight);
        }
    }

    private static List<Mark> parts(Look look) {
        Map<Ref, Taken> taken = new HashMap<>();
        for (Standing<Part> p : look.day().standing(Part.class)) {
            take(taken, p, p.entry().of(), "part", p.entry().share());
        }
        for (Standing<Waste> w : look.day().standing(Waste.class)) {
            take(taken, w, w.entry().of(), "waste", w.entry().weight());
        }
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Amount returned = t.entry().fate().returned();
            if (mass(returned) && Load.fate(t.entry()) == Ticket.End.PART_PLACED) {
                taken.computeIfAbsent(t.ref(), r -> new Taken()).add(t, "not placed", returned);
            }
            Taken of = taken.get(t.ref());
            Amount net = t.entry().weights().net();
            if (of != null && mass(net) && of.sum.compareTo(net) > 0) {
                marks.add(over(t, net, of));
            }
        }
        return marks;
    }

    private static void take(Map<Ref, Taken> taken, Standing<?> entry, Ref of, String what, Amount weight) {
        if (of != null && mass(weight)) {
            taken.computeIfAbsent(of, r -> new Taken()).add(entry, what, weight);
        }
    }

    private static boolean mass(Amount weight) {
        return weight != null && weight.unit().dimension() == Unit.Dimension.MASS;
    }

    private static Mark over(Standing<Ticket> t, Amount net, Taken taken) {
        List<Ref> of = new ArrayList<>(List.of(t.ref()));
        taken.of.stream().filter(r -> !r.equals(t.ref())).forEach(of::add);
        return new Mark(
                of,
                Look.name(t) + " net " + net.text() + ", " + String.join(", ", taken.put),
                "parts, waste and what was not placed come to at most the net",
                "common practice",
                net.text() + " or less together");
    }

    private static List<Mark> loose(Look look) {
        Map<Ref, Standing<Ticket>> tickets = new HashMap<>();
        look.tickets().forEach(t -> tickets.put(t.ref(), t));
        List<Mark> marks = new ArrayList<>();
        for (Standing<Part> p : look.day().standing(Part.class)) {
            Ref of = p.entry().of();
            if (of == null || !tickets.containsKey(of)) {
                marks.add(loose(p, "part", of));
            }
        }
        for (Standing<Waste> w : look.day().standing(Waste.class)) {
            Ref of = w.entry().of();
            if (of != null && !tickets.containsKey(of)) {
                marks.add(loose(w, "waste", of));
            }
        }
        return marks;
    }

    private static Mark loose(Standing<?> entry, String what, Ref of) {
        return new Mark(
                entry.ref(),
                what + " of " + (of == null ? "no ticket" : of + ", which is no ticket that counts"),
                "a part or waste belongs to a ticket that is here",
                "record, format 1",
                "the entry of a ticket that is not struck");
    }
}
