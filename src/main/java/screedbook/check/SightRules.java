package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Truck;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Load;
import screedbook.tally.WeighedAgain;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about loads to look at twice: trucks that were not seen, rounds shorter than planned, equal weights. */
final class SightRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "truck-not-on-job",
                    Sort.LOOK_AGAIN,
                    "Where trucks are noted as they come onto the job, a truck with a ticket was noted.",
                    SightRules::notOnJob),
            new Rule(
                    "truck-left",
                    Sort.LOOK_AGAIN,
                    "A truck that left the job brings no load until it is noted again.",
                    SightRules::left),
            new Rule(
                    "truck-not-seen",
                    Sort.LOOK_AGAIN,
                    "Where trucks are noted as they are seen, a truck with a ticket was seen.",
                    SightRules::notSeen),
            new Rule(
                    "round-short",
                    Sort.LOOK_AGAIN,
                    "A truck's round takes about as long as the job plans it.",
                    SightRules::roundShort),
            new Rule(
                    "net-same-again",
                    Sort.LOOK_AGAIN,
                    "Loads of a truck in a row differ in net.",
                    SightRules::netSameAgain),
            new Rule(
                    "weighed-again",
                    Sort.LOOK_AGAIN,
                    "A load that is weighed again on another scale weighs what its ticket prints.",
                    SightRules::weighedAgain));

    private SightRules() {}

    /** The tickets that came for this job, by their trucks. */
    private static Map<String, List<Standing<Ticket>>> byTruck(Look look) {
        Map<String, List<Standing<Ticket>>> trucks = new LinkedHashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.End fate = Load.fate(t.entry());
            String truck = t.entry().paper().truck();
            if (truck != null && fate != Ticket.End.VOID_AT_PLANT && fate != Ticket.End.OTHER_JOB) {
                trucks.computeIfAbsent(truck, n -> new ArrayList<>()).add(t);
            }
        }
        return trucks;
    }

    private static Set<String> noted(Look look, Truck.Step... steps) {
        Set<String> noted = new HashSet<>();
        for (Standing<Truck> each : look.day().standing(Truck.class)) {
            if (each.entry().truck() != null && List.of(steps).contains(step(each))) {
                noted.add(each.entry().truck());
            }
        }
        return noted;
    }

    /** A truck of which nobody noted what it does was seen. */
    private static Truck.Step step(Standing<Truck> each) {
        return Objects.requireNonNullElse(each.entry().step(), Truck.Step.SEEN);
    }

    private static List<Mark> notOnJob(Look look) {
        Set<String> on = noted(look, Truck.Step.ON_JOB);
        return on.isEmpty() ? List.of() : absent(look, on, "came onto the job", "onto the job");
    }

    private static List<Mark> notSeen(Look look) {
        Set<String> seen = noted(look, Truck.Step.SEEN);
        boolean listed = !noted(look, Truck.Step.ON_JOB).isEmpty();
        boolean watched = look.day().standing(Truck.class).stream()
                .anyMatch(t -> step(t) == Truck.Step.SEEN && t.entry().gross() == null);
        return !watched || listed ? List.of() : absent(look, seen, "was seen", "as seen");
    }

    private static List<Mark> absent(Look look, Set<String> noted, String did, String as) {
        List<Mark> marks = new ArrayList<>();
        byTruck(look).forEach((truck, tickets) -> {
            if (!noted.contains(truck)) {
                marks.add(new Mark(
                        Look.refs(tickets),
                        "truck " + truck + ", " + Look.name(tickets.get(0))
                                + (tickets.size() == 1 ? "" : " and " + Look.loads(tickets.size() - 1) + " more")
                                + ": not noted that it " + did,
                        "trucks are noted " + as + " in this shift",
                        "common practice",
                        "an entry of the truck"));
            }
        });
        return marks;
    }

    private static List<Mark> left(Look look) {
        List<Mark> marks = new ArrayList<>();
        List<Standing<Truck>> noted = look.day().standing(Truck.class);
        byTruck(look).forEach((truck, tickets) -> {
            for (Standing<Ticket> t : tickets) {
                OffsetDateTime loaded = t.entry().times().loaded();
                Optional<Standing<Truck>> last = loaded == null
                        ? Optional.empty()
                        : noted.stream()
                                .filter(n -> truck.equals(n.entry().truck())
                                        && !n.order().isAfter(loaded))
                                .reduce((first, second) -> second);
                last.filter(n -> step(n) == Truck.Step.OFF_JOB)
                        .ifPresent(n -> marks.add(new Mark(
                                List.of(t.ref(), n.ref()),
                                "truck " + truck + " left the job " + Look.clock(n.order()) + ", " + Look.name(t)
                                        + " loaded " + Look.clock(loaded),
                                "a truck that left brings no load until it is noted again",
                                "common practice",
                                "an entry that the truck came back, or loaded before it left")));
            }
        });
        return marks;
    }

    private static List<Mark> roundShort(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, Standing<Ticket>> last = new HashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            String truck = t.entry().paper().truck();
            Optional<Amount> planned = look.job(t).flatMap(SightRules::planned);
            if (truck == null || planned.isEmpty()) {
                continue;
            }
            Standing<Ticket> before = last.put(truck, t);
            Optional<Round> round = before == null ? Optional.empty() : Round.of(before, t);
            round.ifPresent(r -> marks.addAll(shorter(before, t, r, planned.get())));
        }
        return marks;
    }

    /** From one point of a truck's round to the same one of the next. */
    private record Round(String what, OffsetDateTime from, OffsetDateTime to) {
        static Optional<Round> of(Standing<Ticket> before, Standing<Ticket> t) {
            Ticket.Times a = before.entry().times();
            Ticket.Times b = t.entry().times();
            return Stream.of(
                            new Round("loaded", a.loaded(), b.loaded()),
                            new Round("discharged", a.discharged(), b.discharged()))
                    .filter(r -> r.from != null && r.to != null)
                    .findFirst();
        }

        long minutes() {
            return Duration.between(from, to).toMinutes();
        }
    }

    /** The job's own round; empty where it plans none. */
    static Optional<Amount> planned(Job job) {
        return Optional.ofNullable(job.planning())
                .map(Planning::production)
                .map(Planning.Production::cycle)
                .map(c -> Stream.of(c.queue(), c.load(), c.ticket(), c.haul(), c.delay(), c.dump(), c.back())
                        .filter(Objects::nonNull)
                        .reduce(new Amount(BigDecimal.ZERO, Unit.MINUTE), Amount::plus))
                .filter(sum -> sum.value().signum() > 0);
    }

    private static List<Mark> shorter(Standing<Ticket> before, Standing<Ticket> t, Round round, Amount planned) {
        BigDecimal minutes = BigDecimal.valueOf(round.minutes());
        Amount share =
                new Amount(minutes.movePointRight(2).divide(planned.value(), 0, RoundingMode.HALF_EVEN), Unit.PERCENT);
        List<Mark> marks = new ArrayList<>();
        for (Bound bound : Marks.usual(Quantity.ROUND).broken(share)) {
            BigDecimal least = planned.value().multiply(bound.low().value()).movePointLeft(2);
            marks.add(new Mark(
                    null,
                    List.of(t.ref(), before.ref()),
                    "truck " + t.entry().paper().truck() + ": " + Look.name(before) + " and " + Look.name(t) + " "
                            + round.what() + " " + Look.clock(round.from()) + " and " + Look.clock(round.to()) + ", "
                            + round.minutes() + " min, " + share.text() + " of the planned round of " + planned.text(),
                    bound.full() + " of the planned round",
                    bound.clause(),
                    least.setScale(0, RoundingMode.CEILING) + " min or more",
                    bound.working()));
        }
        return marks;
    }

    private static List<Mark> netSameAgain(Look look) {
        Optional<Asked> asked = Marks.asked(SpecSheet.usual(), Demand.SAME_NET_IN_A_ROW, Situation.UNKNOWN);
        List<Mark> marks = new ArrayList<>();
        asked.ifPresent(a -> byTruck(look).forEach((truck, tickets) -> {
            List<Standing<Ticket>> run = new ArrayList<>();
            for (Standing<Ticket> t : tickets) {
                Amount net = t.entry().weights().net();
                if (net != null
                        && !run.isEmpty()
                        && net.compareTo(run.get(0).entry().weights().net()) != 0) {
                    equal(marks, truck, run, a);
                    run.clear();
                }
                if (net != null) {
                    run.add(t);
                }
            }
            equal(marks, truck, run, a);
        }));
        return marks;
    }

    private static List<Mark> weighedAgain(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            for (WeighedAgain each : WeighedAgain.of(look.day(), job)) {
                String where = "truck " + each.weighed().entry().truck() + ", " + Look.name(each.ticket()) + ": "
                        + each.what() + " " + AmountText.text(each.found().shown(0)) + " on another scale, printed "
                        + AmountText.text(each.printed().shown(0)) + ", " + each.difference() + ":";
                each.percent()
                        .ifPresent(percent -> Marks.odd(
                                        Quantity.WEIGHED_AGAIN,
                                        List.of(
                                                each.weighed().ref(),
                                                each.ticket().ref()),
                                        where,
                                        percent)
                                .forEach(marks::add));
            }
        });
        return marks;
    }

    private static void equal(List<Mark> marks, String truck, List<Standing<Ticket>> run, Asked asked) {
        if (!run.isEmpty() && run.size() >= asked.count().intValue()) {
            marks.add(new Mark(
                    Look.refs(run),
                    "truck " + truck + ": " + run.size() + " loads in a row of "
                            + run.get(0).entry().weights().net().text(),
                    Marks.told(asked),
                    asked.citation(),
                    "fewer than " + asked.count().toPlainString() + " equal ones in a row"));
        }
    }
}
