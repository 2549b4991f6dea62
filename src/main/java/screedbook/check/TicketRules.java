package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Closing;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Quantity;
import screedbook.tally.Load;
import screedbook.tally.Share;
import screedbook.tally.Tons;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about trucks, mixes, places and fates, and about the contractor's count of them. */
final class TicketRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "mix-not-planned",
                    Sort.LOOK_AGAIN,
                    "A load is of the mix with which its lift is planned.",
                    TicketRules::mix),
            new Rule("truck-not-listed", Sort.LOOK_AGAIN, "A truck is in the job's list.", TicketRules::truck),
            new Rule(
                    "truck-back-soon",
                    Sort.LOOK_AGAIN,
                    "A truck has time to drive between its discharge and its next loading.",
                    TicketRules::backSoon),
            new Rule("handwritten", Sort.MISSING, "A handwritten ticket says who weighed.", TicketRules::handwritten),
            new Rule(
                    "scale-certificate",
                    Sort.OUTSIDE,
                    "The plant's scale certificate holds on the day.",
                    TicketRules::certificate),
            new Rule(
                    "fate-reason",
                    Sort.MISSING,
                    "Of a load that was not placed it is noted why, who decided and who was told.",
                    TicketRules::reason),
            new Rule(
                    "part-not-known",
                    Sort.MISSING,
                    "Of a load placed in part it is noted how much was not placed and how that is known.",
                    TicketRules::partly),
            new Rule(
                    "void-with-place",
                    Sort.DOES_NOT_ADD_UP,
                    "A ticket that was void at the plant or another job's has no place on this road.",
                    TicketRules::voidPlaced),
            new Rule(
                    "place-not-noted",
                    Sort.MISSING,
                    "A placed load has a pull or another place.",
                    TicketRules::noPlace),
            new Rule("no-length", Sort.DOES_NOT_ADD_UP, "A placed load covers some length.", TicketRules::noLength),
            new Rule(
                    "their-count",
                    Sort.DOES_NOT_ADD_UP,
                    "The contractor's loads and tons are those kept here.",
                    TicketRules::theirs));

    private TicketRules() {}

    private static List<Mark> mix(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<Object, Optional<Mark>> planned = new HashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            Optional<Job> job = look.job(t);
            String mix = t.entry().paper().mix();
            if (mix != null && job.isPresent() && Load.fate(t.entry()) != Ticket.End.OTHER_JOB) {
                Ticket.Spot spot = t.entry().spot();
                planned.computeIfAbsent(
                                List.of(mix, Optional.ofNullable(spot.lift()), Optional.ofNullable(spot.pull())),
                                m -> planned(job.get(), mix, Cases.lift(job.get(), spot.lift(), spot.pull())))
                        .ifPresent(m -> marks.add(m.on(t.ref(), Look.name(t))));
            }
        }
        return marks;
    }

    /** What is said of a mix on a lift that is not planned so; empty where it is. */
    private static Optional<Mark> planned(Job job, String mix, Optional<Job.Lift> lift) {
        boolean known = job.mix(mix).isPresent();
        if (known && lift.map(l -> mix.equals(l.mix())).orElse(true)) {
            return Optional.empty();
        }
        String all = String.join(", ", job.mixes().stream().map(Mix::name).toList());
        return Optional.of(new Mark(
                List.of(),
                " is of " + mix + (known ? "" : ", which is not in the job"),
                lift.map(l -> "lift " + l.number() + " is planned with " + l.mix())
                        .orElse("the job's mixes"),
                "job, " + (lift.isPresent() ? "lifts" : "mixes"),
                lift.map(Job.Lift::mix).orElse(all)));
    }

    private static List<Mark> truck(Look look) {
        List<Mark> marks = new ArrayList<>();
        Set<String> said = new LinkedHashSet<>();
        for (Standing<Ticket> t : look.tickets()) {
            String truck = t.entry().paper().truck();
            boolean listed = look.truck(t).isPresent()
                    || look.job(t).map(j -> j.trucks().isEmpty()).orElse(true);
            if (truck != null && !listed && said.add(truck)) {
                marks.add(new Mark(
                        t.ref(),
                        "truck " + truck + " on " + Look.name(t) + " is not in the job's list",
                        "trucks are in the job's list",
                        "job, trucks",
                        "a truck of the list, or the list with this truck"));
            }
        }
        return marks;
    }

    private static List<Mark> backSoon(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, Standing<Ticket>> last = new HashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            String truck = t.entry().paper().truck();
            if (truck == null || t.entry().times().discharged() == null) {
                continue;
            }
            Standing<Ticket> before = last.put(truck, t);
            OffsetDateTime loaded = t.entry().times().loaded();
            if (before != null && loaded != null) {
                Amount turn = Look.minutes(before.entry().times().discharged(), loaded);
                for (Bound bound : Marks.usual(Quantity.TURN).broken(turn)) {
                    marks.add(turned(t, before, turn, bound));
                }
            }
        }
        return marks;
    }

    private static Mark turned(Standing<Ticket> t, Standing<Ticket> before, Amount turn, Bound bound) {
        return new Mark(
                null,
                List.of(t.ref(), before.ref()),
                "truck " + t.entry().paper().truck() + ": " + Look.name(before) + " discharged "
                        + Look.clock(before.entry().times().discharged()) + ", " + Look.name(t) + " loaded "
                        + Look.clock(t.entry().times().loaded()) + ", " + turn.text() + " between",
                bound.full() + " between",
                bound.clause(),
                bound.inside(),
                bound.working());
    }

    private static List<Mark> handwritten(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Paper paper = t.entry().paper();
            if (paper.kept() == Ticket.Kept.HANDWRITTEN && paper.weighedBy() == null) {
                marks.add(new Mark(
                        t.ref(),
                        Look.name(t) + " is handwritten, weighed by: not noted",
                        "a handwritten ticket says who weighed",
                        "common practice",
                        "the name of who weighed"));
            }
        }
        return marks;
    }

    private static List<Mark> certificate(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<Job.Plant, Instant> ends = new IdentityHashMap<>();
        Set<String> said = new LinkedHashSet<>();
        for (Standing<Ticket> t : look.tickets()) {
            Job.Plant plant = look.plant(t).filter(p -> p.scaleUntil() != null).orElse(null);
            if (plant != null) {
                ZoneId zone = look.job(t).orElseThrow().zone();
                Instant end = ends.computeIfAbsent(
                        plant,
                        p -> p.scaleUntil().plusDays(1).atStartOfDay(zone).toInstant());
                if (!t.order().toInstant().isBefore(end) && said.add(plant.name())) {
                    marks.add(certificate(
                            t, plant, t.order().atZoneSameInstant(zone).toLocalDate()));
                }
            }
        }
        return marks;
    }

    private static Mark certificate(Standing<Ticket> t, Job.Plant plant, LocalDate date) {
        return new Mark(
                t.ref(),
                Look.name(t) + " of " + date + ", scale certificate of plant " + plant.name() + " until "
                        + plant.scaleUntil(),
                "the certificate holds on the day",
                "job, plants",
                "a certificate until " + date + " or later");
    }

    private static List<Mark> reason(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Fate fate = t.entry().fate();
            Ticket.End end = Load.fate(t.entry());
            if (end == Ticket.End.REJECTED || end == Ticket.End.WASTE) {
                List<String> absent = new ArrayList<>();
                add(absent, fate.reason(), "reason");
                add(absent, fate.decidedBy(), "decided by");
                add(absent, fate.toldTo(), "told to");
                if (!absent.isEmpty()) {
                    marks.add(new Mark(
                            t.ref(),
                            Look.name(t) + " " + end.word() + ", not noted: " + String.join(", ", absent),
                            "why, who decided and who was told",
                            "common practice",
                            String.join(", ", absent) + " noted"));
                }
            }
        }
        return marks;
    }

    private static void add(List<String> absent, String noted, String label) {
        if (noted == null) {
            absent.add(label);
        }
    }

    private static List<Mark> partly(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Fate fate = t.entry().fate();
            if (Load.fate(t.entry()) == Ticket.End.PART_PLACED && (fate.returned() == null || fate.basis() == null)) {
                String absent = fate.returned() == null ? "how much was not placed" : "how that is known";
                marks.add(new Mark(
                        t.ref(),
                        Look.name(t) + " placed in part, not noted: " + absent,
                        "how much was not placed, by weigh-back or estimate",
                        "common practice",
                        absent + " noted"));
            }
        }
        return marks;
    }

    private static List<Mark> voidPlaced(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.End end = Load.fate(t.entry());
            Ticket.Spot spot = t.entry().spot();
            boolean elsewhere = end == Ticket.End.VOID_AT_PLANT || end == Ticket.End.OTHER_JOB;
            if (elsewhere && (spot.from() != null || spot.to() != null)) {
                Station at = spot.from() == null ? spot.to() : spot.from();
                marks.add(new Mark(
                        t.ref(),
                        Look.name(t) + " is " + end.word().replace('-', ' ') + " and has the place " + at,
                        "a ticket that is not this road's has no place on it",
                        "common practice",
                        "no place, or another fate"));
            }
        }
        return marks;
    }

    private static List<Mark> noPlace(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Load load : look.laid()) {
            Ticket.Spot spot = load.ticket().entry().spot();
            if (spot.pull() == null && spot.place() == null) {
                marks.add(new Mark(
                        load.ticket().ref(),
                        Look.name(load.ticket()) + " placed, where: not noted",
                        "a placed load has a pull or another place",
                        "common practice",
                        "a pull, or a place in words"));
            }
        }
        return marks;
    }

    private static List<Mark> noLength(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Placed.Laid each : look.placed().laid()) {
            Share share = each.share();
            if (share.from() != null && share.to() != null && each.on().length().signum() == 0) {
                marks.add(new Mark(
                        share.of(),
                        Look.name(each.load()) + " placed from " + share.from() + " to " + share.to(),
                        "a placed load covers some length",
                        "common practice",
                        "two stations that differ"));
            }
        }
        return marks;
    }

    private static List<Mark> theirs(Look look) {
        Optional<Standing<Closing>> closing = look.day().standing(Closing.class).stream()
                .filter(c -> c.entry().theirs().theirLoads() != null
                        || c.entry().theirs().their() != null)
                .reduce((first, second) -> second);
        Optional<Tons> ours = look.totals().map(Totals::shift);
        List<Mark> marks = new ArrayList<>();
        if (closing.isEmpty() || ours.isEmpty()) {
            return marks;
        }
        Closing.Theirs theirs = closing.get().entry().theirs();
        if (theirs.theirLoads() != null && theirs.theirLoads() != ours.get().loads()) {
            marks.add(count(
                    closing.get(),
                    Look.loads(theirs.theirLoads()),
                    Look.loads(ours.get().loads()),
                    ""));
        }
        Amount received = ours.get().received();
        if (theirs.their() != null && theirs.their().compareTo(received) != 0) {
            marks.add(count(closing.get(), theirs.their().text(), received.text(), ratio(theirs.their(), received)));
        }
        return marks;
    }

    private static Mark count(Standing<Closing> closing, String theirs, String ours, String working) {
        return new Mark(
                null,
                List.of(closing.ref()),
                "contractor's count " + theirs + ", kept here " + ours,
                "both counts of a shift are the same",
                "common practice",
                ours,
                working);
    }

    /** A ton of 2,000 lb is 0.907 of a tonne: a count in the other one is out by that ratio. */
    static String ratio(Amount theirs, Amount ours) {
        BigDecimal least = theirs.to(ours.unit()).value().min(ours.value());
        BigDecimal most = theirs.to(ours.unit()).value().max(ours.value());
        if (least.signum() <= 0) {
            return "";
        }
        Amount ratio = new Amount(most.divide(least, 4, RoundingMode.HALF_EVEN), Unit.TIMES);
        boolean near = Slips.usual(Quantity.TONNE_RATIO, ratio);
        return near ? "The two differ as a tonne and a ton of 2,000 lb do." : "";
    }
}
