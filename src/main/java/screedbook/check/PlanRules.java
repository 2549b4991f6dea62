package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import screedbook.entry.Note;
import screedbook.entry.Profile;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Load;
import screedbook.tally.Run;
import screedbook.tally.Share;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about what was agreed before paving, for what was laid of it. */
final class PlanRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "plan-not-found",
                    Sort.LOOK_AGAIN,
                    "The job and the limit sheet by which a book was kept are there.",
                    PlanRules::notFound),
            new Rule(
                    "lift-thickness",
                    Sort.OUTSIDE,
                    "A lift is planned as thick as the sheet says for its mix.",
                    PlanRules::thickness),
            new Rule(
                    "thickness-unusual",
                    Sort.LOOK_AGAIN,
                    "A planned thickness lies where lifts lie.",
                    PlanRules::oddThickness),
            new Rule("width-unusual", Sort.LOOK_AGAIN, "A pull is as wide as a paver lays.", PlanRules::oddWidth),
            new Rule(
                    "joint-place",
                    Sort.LOOK_AGAIN,
                    "A longitudinal joint of a riding surface lies out of the wheel paths.",
                    PlanRules::joint),
            new Rule(
                    "dates",
                    Sort.OUTSIDE,
                    "A layer is placed on dates on which the sheet has it placed.",
                    PlanRules::dates),
            new Rule(
                    "uncompacted-mat",
                    Sort.MISSING,
                    "Where the sheet asks for it, the uncompacted mat is looked at.",
                    PlanRules::uncompacted),
            new Rule(
                    "spread-rate",
                    Sort.LOOK_AGAIN,
                    "The spread rate of a pull is near the planned one.",
                    PlanRules::spread));

    private PlanRules() {}

    /** Where a rhythm or a time of the job comes from. */
    static String source(Checks checks) {
        return checks.source() == null ? "job, checks" : checks.source();
    }

    private static List<Mark> notFound(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (InForce each : look.ground().inForce()) {
            if (each.agreed().isEmpty() || each.sheet().isEmpty()) {
                String what = each.agreed().isEmpty() ? "the job revision" : "the limit sheet";
                marks.add(new Mark(
                        new Ref(each.book(), each.from()),
                        what + " named in this line is not found by its hash",
                        "a shift is judged by its own job and sheet, and by no other",
                        "record, format 1",
                        what + " in the job's folder, unchanged"));
            }
        }
        return marks;
    }

    /** The first share of each lift and mix that was laid, by lift. */
    private static Map<Job.Lift, Standing<Ticket>> lifts(Look look, Job job) {
        Map<Placed.Where, Standing<Ticket>> first = new LinkedHashMap<>();
        for (Load load : look.laid()) {
            for (Share share : load.shares()) {
                first.putIfAbsent(new Placed.Where(share.pull(), share.lift()), load.ticket());
            }
        }
        Map<Job.Lift, Standing<Ticket>> laid = new LinkedHashMap<>();
        first.forEach((where, ticket) ->
                Cases.lift(job, where.lift(), where.pull()).ifPresent(l -> laid.putIfAbsent(l, ticket)));
        return laid;
    }

    private static List<Mark> thickness(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job()
                .ifPresent(job -> lifts(look, job)
                        .forEach((lift, first) -> look.sheet(first).ifPresent(sheet -> {
                            Situation s = Cases.of(job, null, Optional.of(lift), first.order(), null);
                            marks.addAll(Marks.judged(
                                    Bounds.of(sheet, Quantity.LIFT, s),
                                    List.of(first.ref()),
                                    "lift " + lift.number() + " of " + lift.mix() + " is planned",
                                    lift.thickness(),
                                    ""));
                        })));
        return marks;
    }

    private static List<Mark> oddThickness(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            for (Job.Lift lift : job.lifts()) {
                String where = "lift " + lift.number() + " is planned";
                marks.addAll(meant(
                        Marks.odd(Quantity.THICKNESS, look.shift(), where, lift.thickness()),
                        () -> Slips.thickness("", lift.thickness())));
            }
        });
        return marks;
    }

    private static List<Mark> oddWidth(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            for (Job.Pull pull : job.pulls()) {
                if (pull.left() != null && pull.right() != null) {
                    String where = "pull " + pull.name() + " is planned";
                    marks.addAll(meant(
                            Marks.odd(Quantity.WIDTH, look.shift(), where, pull.width()),
                            () -> Slips.width("", pull.width())));
                }
            }
        });
        return marks;
    }

    /** The marks, with what may have been meant in their working. */
    static List<Mark> meant(List<Mark> marks, Supplier<Optional<Guide.Offer>> meant) {
        if (marks.isEmpty()) {
            return marks;
        }
        Optional<Guide.Offer> offer = meant.get();
        return marks.stream()
                .map(m -> offer.map(o -> m.because(m.working() + " Meant: " + o.asks()))
                        .orElse(m))
                .toList();
    }

    private static List<Mark> joint(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().filter(j -> !j.laneLines().isEmpty()).ifPresent(job -> {
            Map<Placed.Where, Standing<Ticket>> pulls = new LinkedHashMap<>();
            for (Load load : look.laid()) {
                for (Share share : load.shares()) {
                    pulls.putIfAbsent(new Placed.Where(share.pull(), share.lift()), load.ticket());
                }
            }
            pulls.forEach((where, first) -> job.pull(where.pull(), where.lift())
                    .ifPresent(pull -> marks.addAll(edges(look, job, pull, first))));
        });
        return marks;
    }

    private static List<Mark> edges(Look look, Job job, Job.Pull pull, Standing<Ticket> first) {
        Optional<SpecSheet> sheet = look.sheet(first);
        Situation s = Cases.of(job, null, job.lift(pull.lift()), first.order(), null);
        Optional<Asked> asked = sheet.flatMap(x -> Marks.asked(x, Demand.JOINT_OUT_OF_WHEEL_PATHS, s));
        List<Mark> marks = new ArrayList<>();
        if (asked.isEmpty() || pull.left() == null || pull.right() == null) {
            return marks;
        }
        for (Amount edge : List.of(pull.left(), pull.right())) {
            boolean joint = job.pulls().stream().anyMatch(other -> meets(other, pull, edge));
            if (joint
                    && job.laneLines().stream().noneMatch(line -> line.offset().compareTo(edge) == 0)) {
                marks.add(offLine(job, pull, edge, first, asked.get()));
            }
        }
        return marks;
    }

    /** Whether another pull of the lift has its edge at the same offset. */
    private static boolean meets(Job.Pull other, Job.Pull pull, Amount edge) {
        return !other.equals(pull)
                && pull.lift().equals(other.lift())
                && other.left() != null
                && other.right() != null
                && (other.left().compareTo(edge) == 0 || other.right().compareTo(edge) == 0);
    }

    private static Mark offLine(Job job, Job.Pull pull, Amount edge, Standing<Ticket> first, Asked asked) {
        BigDecimal nearest = job.laneLines().stream()
                .map(l -> l.offset().minus(edge).value().abs())
                .min(BigDecimal::compareTo)
                .orElseThrow();
        return new Mark(
                first.ref(),
                "the joint of pull " + pull.name() + " at " + edge.text() + " is "
                        + new Amount(nearest, edge.unit()).text() + " from the nearest final lane line",
                Marks.told(asked),
                asked.citation(),
                "a joint on a lane line; the job does not say where the wheel paths are");
    }

    private static List<Mark> dates(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job()
                .ifPresent(job -> lifts(look, job).forEach((lift, first) -> {
                    look.ofTicket(first)
                            .flatMap(c -> c.asked(Demand.NOT_ON_THESE_DATES))
                            .ifPresent(asked -> marks.add(Mark.asked(
                                    asked,
                                    first.ref(),
                                    "lift " + lift.number() + " was placed on " + date(job, first),
                                    "a date on which the clause has it placed")));
                }));
        return marks;
    }

    private static LocalDate date(Job job, Standing<Ticket> load) {
        return load.order().atZoneSameInstant(job.zone()).toLocalDate();
    }

    private static List<Mark> uncompacted(Look look) {
        List<Load> laid = look.laid();
        boolean seen = !look.day().standing(Profile.class).isEmpty();
        if (laid.isEmpty() || seen || noted(look, "uncompacted mat")) {
            return List.of();
        }
        Standing<Ticket> first = laid.get(0).ticket();
        return look.ofTicket(first)
                .flatMap(c -> c.asked(Demand.UNCOMPACTED_MAT_LOOKED_AT))
                .map(asked -> List.of(Mark.asked(
                        asked,
                        first.ref(),
                        Look.loads(laid.size()) + " placed, no thermal profile and no note tagged uncompacted mat",
                        "a thermal profile or a note tagged uncompacted mat in each sublot")))
                .orElse(List.of());
    }

    private static boolean noted(Look look, String tag) {
        return look.day().standing(Note.class).stream()
                .map(n -> n.entry().tags())
                .anyMatch(tags -> tags != null
                        && tags.stream()
                                .anyMatch(
                                        t -> t.strip().toLowerCase(Locale.ROOT).equals(tag)));
    }

    private static List<Mark> spread(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Run run : look.totals().map(Totals::runs).orElse(List.of())) {
            if (run.percent().isPresent() && run.entries().size() >= 3) {
                Amount percent =
                        new Amount(run.percent().get().value().setScale(0, RoundingMode.HALF_UP), Unit.PERCENT);
                spread(look, run, percent)
                        .forEach(m -> marks.add(m.because(m.working()
                                + " Waste, a short length, a thick base or another width can be behind it. "
                                + String.join("; ", run.put()))));
            }
        }
        return marks;
    }

    /** By the sheet's own limits where it has them, else by the usual range; a run is no average of five trucks. */
    private static List<Mark> spread(Look look, Run run, Amount percent) {
        String where = run.name() + ": spread rate, of the planned,";
        Optional<Bounds> own = look.tickets().stream()
                .filter(ticket -> run.entries().contains(ticket.ref()))
                .findFirst()
                .flatMap(look::ofTicket)
                .map(c -> c.bounds(Quantity.SPREAD))
                .filter(bounds -> !bounds.noLimit());
        return own.isEmpty()
                ? Marks.odd(Quantity.SPREAD, run.entries(), where, percent)
                : Marks.judged(own.get(), run.entries(), where, percent, "").stream()
                        .map(m -> m.as(Sort.LOOK_AGAIN))
                        .toList();
    }
}
