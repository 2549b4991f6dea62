package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Load;
import screedbook.tally.Rhythm;
import screedbook.tally.Totals;
import screedbook.unit.Amount;

/** Rules about the heat of the mix and the age of a load. */
final class HeatRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "heat-at-paver",
                    Sort.OUTSIDE,
                    "The mix at the paver is as warm as the sheet says for its case.",
                    HeatRules::paver),
            new Rule(
                    "heat-at-plant",
                    Sort.OUTSIDE,
                    "The mix at the plant is as warm as the sheet says for its case.",
                    HeatRules::plant),
            new Rule("heat-due", Sort.MISSING, "A load whose turn it is has a mix temperature.", HeatRules::due),
            new Rule(
                    "heat-unusual",
                    Sort.LOOK_AGAIN,
                    "A mix temperature lies where mix temperatures lie.",
                    HeatRules::unusual),
            new Rule(
                    "heat-same-again", Sort.LOOK_AGAIN, "Temperatures differ from load to load.", HeatRules::sameAgain),
            new Rule(
                    "load-age",
                    Sort.OUTSIDE,
                    "A load is discharged within the job's time from loading.",
                    HeatRules::age));

    private HeatRules() {}

    /** One of the two places where the heat of a mix is read. */
    private record Place(
            String where,
            Quantity own,
            Quantity around,
            Function<Ticket.Heat, Amount> heat,
            Function<Mix, Amount> target) {}

    private static final Place PAVER = new Place(
            "at the paver", Quantity.PAVER_MIX, Quantity.PAVER_DIFFERENCE, Ticket.Heat::paver, Mix::targetPaver);
    private static final Place PLANT = new Place(
            "at the plant", Quantity.PLANT_MIX, Quantity.PLANT_DIFFERENCE, Ticket.Heat::plant, Mix::targetPlant);

    private static List<Mark> paver(Look look) {
        return heats(look, PAVER);
    }

    private static List<Mark> plant(Look look) {
        return heats(look, PLANT);
    }

    private static List<Mark> heats(Look look, Place place) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Amount heat = place.heat().apply(t.entry().heat());
            if (heat != null) {
                marks.addAll(heat(look, t, place, heat));
            }
        }
        return marks;
    }

    private static List<Mark> heat(Look look, Standing<Ticket> t, Place place, Amount heat) {
        return look.ofTicket(t)
                .map(c -> Marks.judged(
                        c.heat(place.own(), place.around(), place.target()),
                        List.of(t.ref()),
                        place::where,
                        heat,
                        () -> fate(t.entry())))
                .orElse(List.of());
    }

    /** What became of the load, where it was not simply placed. */
    private static String fate(Ticket ticket) {
        Ticket.End fate = Load.fate(ticket);
        return fate == Ticket.End.PLACED ? "" : ", " + fate.word().replace('-', ' ');
    }

    private static List<Mark> due(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Rhythm.Turn turn : look.totals().map(Totals::turns).orElse(List.of())) {
            Optional<Job> job = look.job(turn.ticket());
            if (turn.due() && !turn.done() && job.isPresent()) {
                marks.add(missing(turn, job.get().checks()));
            }
        }
        return marks;
    }

    private static Mark missing(Rhythm.Turn turn, Checks checks) {
        String where = checks.heatWhere() == Checks.HeatWhere.BOTH
                ? "at the plant and at the paver"
                : "at the " + checks.heatWhere().word();
        String mix = turn.ticket().entry().paper().mix();
        return new Mark(
                turn.ticket().ref(),
                Look.name(turn.ticket()) + ", load " + turn.place() + (mix == null ? "" : " of " + mix)
                        + ": temperature not noted " + where,
                "the first " + checks.firstLoads() + " loads of a mix, then one in " + checks.thenOneIn(),
                PlanRules.source(checks),
                "a temperature " + where + " on this load");
    }

    private static List<Mark> unusual(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            marks.addAll(unusual(t, "at the plant", t.entry().heat().plant()));
            marks.addAll(unusual(t, "at the paver", t.entry().heat().paver()));
        }
        return marks;
    }

    private static List<Mark> unusual(Standing<Ticket> t, String where, Amount heat) {
        List<Mark> marks = Marks.odd(Quantity.MIX, List.of(t.ref()), where, heat);
        if (marks.isEmpty()) {
            return marks;
        }
        List<String> asks = Slips.mix("", heat).stream().map(Guide.Offer::asks).toList();
        return marks.stream()
                .map(m -> asks.isEmpty() ? m : m.because(m.working() + " Meant: " + String.join(" or ", asks)))
                .toList();
    }

    private static List<Mark> sameAgain(Look look) {
        Optional<Asked> asked = Marks.asked(SpecSheet.usual(), Demand.SAME_HEAT_IN_A_ROW, Situation.UNKNOWN);
        List<Mark> marks = new ArrayList<>();
        asked.ifPresent(a -> {
            marks.addAll(runs(look, a, "at the plant", t -> t.heat().plant()));
            marks.addAll(runs(look, a, "at the paver", t -> t.heat().paver()));
        });
        return marks;
    }

    private static List<Mark> runs(Look look, Asked asked, String where, Function<Ticket, Amount> heat) {
        List<Mark> marks = new ArrayList<>();
        List<Standing<Ticket>> run = new ArrayList<>();
        Amount last = null;
        for (Standing<Ticket> t : look.tickets()) {
            Amount now = heat.apply(t.entry());
            if (now == null) {
                continue;
            }
            if (last == null || now.compareTo(last) != 0) {
                close(marks, run, asked, where, last);
                run.clear();
            }
            run.add(t);
            last = now;
        }
        close(marks, run, asked, where, last);
        return marks;
    }

    private static void close(List<Mark> marks, List<Standing<Ticket>> run, Asked asked, String where, Amount heat) {
        if (!run.isEmpty() && run.size() >= asked.count().intValue()) {
            marks.add(new Mark(
                    Look.refs(run),
                    run.size() + " temperatures " + where + " in a row are " + AmountText.text(heat),
                    Marks.told(asked),
                    asked.citation(),
                    "fewer than " + asked.count().toPlainString() + " equal ones in a row"));
        }
    }

    private static List<Mark> age(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            OffsetDateTime loaded = t.entry().times().loaded();
            OffsetDateTime laid = t.entry().times().discharged();
            Optional<Checks> checks = look.job(t).map(Job::checks);
            if (loaded != null && laid != null && checks.isPresent()) {
                Amount age = Look.minutes(loaded, laid);
                Amount most = checks.get().loadAge();
                if (age.compareTo(most) > 0) {
                    marks.add(new Mark(
                            t.ref(),
                            "loaded " + Look.clock(loaded) + ", discharged " + Look.clock(laid) + ": " + age.text(),
                            "at most " + most.text() + " from loading to discharge",
                            PlanRules.source(checks.get()),
                            most.text() + " or less"));
                }
            }
        }
        return marks;
    }
}
