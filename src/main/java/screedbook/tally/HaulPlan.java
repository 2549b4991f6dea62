package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.calc.Haul;
import screedbook.calc.PaverSpeed;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.unit.Amount;

/** Trucks, spacing, paver speed and the last load of a plan, each with the sentence that leads to it. */
final class HaulPlan {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final String FORM = "mix delivery production form (industry worksheet)";

    private final Job job;
    private final Planning.Production made;
    private final Figures figures = new Figures();

    private HaulPlan(Job job) {
        this.job = job;
        this.made = job.planning().production();
    }

    static Section of(Job job) {
        HaulPlan plan = new HaulPlan(job);
        if (plan.made != null) {
            plan.haul();
            plan.paver();
        }
        if (job.planning().cutoff() != null) {
            plan.last();
        }
        return plan.figures.section("plan-haul", "Haul and paver");
    }

    private static Working working(String formula, List<String> put, String source) {
        return new Working(formula, List.copyOf(put), List.of(), source);
    }

    private static boolean positive(Amount amount) {
        return amount != null && amount.value().signum() > 0;
    }

    /** Label and minutes of the parts of a round that are settled, in the order of the round. */
    private static Map<String, Amount> parts(Planning.Cycle cycle) {
        Map<String, Amount> parts = new LinkedHashMap<>();
        parts.put("wait at the plant", cycle.queue());
        parts.put("load", cycle.load());
        parts.put("ticket and tarp", cycle.ticket());
        parts.put("haul", cycle.haul());
        parts.put("delay at the paver", cycle.delay());
        parts.put("dump", cycle.dump());
        parts.put("return", cycle.back());
        parts.values().removeIf(Objects::isNull);
        return parts;
    }

    private void haul() {
        if (positive(made.plantRate()) && made.hours() != null && made.hours().signum() > 0) {
            figures.amount(
                    "plan-shift-tons",
                    "tons in a shift",
                    shiftTons(),
                    0,
                    working(
                            "plant rate x hours",
                            List.of(made.plantRate().text() + " an hour x "
                                    + made.hours().toPlainString() + " h"),
                            source()));
        }
        if (positive(made.plantRate()) && positive(made.truckLoad())) {
            Amount spacing = Haul.spacing(made.plantRate(), made.truckLoad());
            figures.amount(
                    "plan-spacing",
                    "from truck to truck",
                    spacing,
                    1,
                    working(
                            "60 x truck load / plant rate",
                            List.of("60 x " + made.truckLoad().text() + " / "
                                    + made.plantRate().text() + " = "
                                    + spacing.shown(1).text()),
                            "common practice, no source"));
        }
        Map<String, Amount> parts = made.cycle() == null ? Map.of() : parts(made.cycle());
        if (!parts.isEmpty()) {
            Amount cycle = Haul.cycle(List.copyOf(parts.values()));
            figures.amount(
                    "plan-cycle",
                    "a truck's round",
                    cycle,
                    0,
                    working(
                            String.join(" + ", parts.keySet()),
                            parts.entrySet().stream()
                                    .map(p -> p.getKey() + " " + p.getValue().text())
                                    .toList(),
                            "parts as in Brock, Technical Paper T-135, Fig. F1; minutes from the job"));
            trucks(cycle);
        }
    }

    private Amount shiftTons() {
        return new Amount(
                made.plantRate().value().multiply(made.hours()),
                made.plantRate().unit());
    }

    private String source() {
        return made.source() == null ? "job, production" : made.source();
    }

    private void trucks(Amount cycle) {
        if (!positive(cycle) || !positive(made.plantRate()) || !positive(made.truckLoad())) {
            return;
        }
        if (made.hours() != null && made.hours().signum() > 0) {
            byRounds(cycle);
        }
        BigDecimal raw = Haul.byRate(made.plantRate(), made.truckLoad(), cycle);
        figures.count(
                "plan-trucks-by-rate",
                "trucks, by rate",
                Haul.whole(raw),
                working(
                        "plant rate x round / (60 x truck load), rounded up",
                        List.of(made.plantRate().text() + " x " + cycle.text() + " / (60 x "
                                + made.truckLoad().text() + ") = " + two(raw)),
                        "common practice, no source; always round up: Asphalt Handbook (NAPA), 6.2"));
    }

    private void byRounds(Amount cycle) {
        Amount tons = shiftTons();
        Optional<Haul.Rounds> rounds = Haul.byRounds(tons, made.hours(), made.truckLoad(), cycle);
        String id = "plan-trucks-by-rounds";
        String label = "trucks, by whole rounds";
        if (rounds.isEmpty()) {
            figures.text(
                    id,
                    label,
                    "no truck comes round in the shift",
                    working("rounds = time / round, rounded down", List.of(cycle.text()), FORM));
            return;
        }
        Haul.Rounds r = rounds.get();
        figures.count(
                id,
                label,
                r.trucks(),
                working(
                        "trips = tons / truck load; rounds = time / round, rounded down; trucks = trips / rounds, rounded"
                                + " up",
                        List.of(
                                tons.text() + " / " + made.truckLoad().text() + " = " + r.trips() + " trips",
                                "60 x " + made.hours().toPlainString() + " h / " + cycle.text() + " = " + r.loads()
                                        + " rounds",
                                r.trips() + " / " + r.loads() + " = " + r.trucks() + " trucks"),
                        FORM));
    }

    private static String two(BigDecimal value) {
        return value.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    /** For each lift and each width in which it is laid. */
    private void paver() {
        Set<String> told = new LinkedHashSet<>();
        for (Job.Lift lift : job.lifts()) {
            for (Job.Pull pull : job.pulls()) {
                boolean laid =
                        pull.lift().equals(lift.number()) && positive(pull.width()) && positive(lift.thickness());
                String what = "lift " + lift.number() + " " + pull.width().text();
                if (laid && told.add(what)) {
                    job.mix(lift.mix()).ifPresent(mix -> paver(what, lift, pull.width(), UnitWeight.of(mix)));
                }
            }
        }
    }

    private void paver(String what, Job.Lift lift, Amount width, UnitWeight weight) {
        String mat = width.text() + " x " + lift.thickness().text() + " x "
                + weight.weight().text();
        boolean metric = job.units() == Job.Units.METRIC;
        if (positive(made.plantRate())) {
            figures.amount(
                    "plan-paver-speed." + what,
                    "paver speed, " + what,
                    PaverSpeed.of(made.plantRate(), width, lift.thickness(), weight.weight()),
                    1,
                    working(
                            "speed = plant rate" + (metric ? "" : " x 2000")
                                    + " / (60 x width x thickness x unit weight)",
                            List.of(made.plantRate().text() + " an hour, mat " + mat),
                            "NAVEDTRA 14080, estimates for asphalt plants; " + weight.source()));
        }
        if (positive(made.paverSpeed())) {
            figures.amount(
                    "plan-paver-takes." + what,
                    "at " + made.paverSpeed().text() + " " + what + " takes an hour",
                    PaverSpeed.tonsAnHour(made.paverSpeed(), width, lift.thickness(), weight.weight()),
                    0,
                    working(
                            "speed x width x thickness x unit weight x 60" + (metric ? "" : " / 2000"),
                            List.of(made.paverSpeed().text() + ", mat " + mat),
                            "NAVEDTRA 14080, estimates for asphalt plants; " + weight.source()));
        }
    }

    /** The latest time of loading, by what the mat has to be rolled and cool before, for each way from a plant. */
    private void last() {
        for (LastLoad load : LastLoad.planned(job)) {
            figures.text(
                    "plan-last-load." + load.name(),
                    "last load leaves " + load.way() + ", " + load.what(),
                    load.leaves().format(CLOCK),
                    load.working());
        }
    }
}
