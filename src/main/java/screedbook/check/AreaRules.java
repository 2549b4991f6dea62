package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import screedbook.calc.Strip;
import screedbook.entry.Joint;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.tally.Cover;
import screedbook.tally.Roadwork.Lane;
import screedbook.tally.Run;
import screedbook.tally.Stretch;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about how much of a pull was covered: tack against mat, faces along joints, parts of its area. */
final class AreaRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "tacked-area",
                    Sort.OUTSIDE,
                    "The area that was tacked for a pull is the area that was paved of it, as near as the sheet says.",
                    AreaRules::area),
            new Rule(
                    "tack-face-length",
                    Sort.MISSING,
                    "Where faces of longitudinal joints are noted as tacked for a pull, they are along all that was"
                            + " paved of it.",
                    AreaRules::faces),
            new Rule(
                    "area-overlap",
                    Sort.DOES_NOT_ADD_UP,
                    "Parts of a pull that stand in place of its planned width do not lie over one another.",
                    AreaRules::parts));

    private AreaRules() {}

    private static List<Mark> area(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            for (Run run : look.totals().map(Totals::runs).orElse(List.of())) {
                List<Standing<Tack>> shots = shots(look, run);
                Optional<Amount> paved = run.area().filter(a -> a.value().signum() > 0);
                Optional<Amount> tacked = tacked(shots, job);
                if (paved.isPresent() && tacked.isPresent()) {
                    marks.addAll(area(look, run.name(), shots, tacked.get(), paved.get()));
                }
            }
        });
        return marks;
    }

    private static List<Mark> area(Look look, String name, List<Standing<Tack>> shots, Amount tacked, Amount paved) {
        BigDecimal share =
                tacked.value().movePointRight(2).divide(paved.to(tacked.unit()).value(), 1, RoundingMode.HALF_UP);
        String where = name + ": tacked " + tacked.shown(0).text() + ", paved "
                + paved.shown(0).text() + ", of the paved area tacked";
        return look.ofTack(shots.get(0))
                .map(c -> Marks.judged(
                        c.bounds(Quantity.TACKED_AREA), Look.refs(shots), where, new Amount(share, Unit.PERCENT), ""))
                .orElse(List.of());
    }

    /** The shots on surfaces of a pull; one that names no lift is of any. */
    private static List<Standing<Tack>> shots(Look look, Run run) {
        return look.tacks().stream()
                .filter(t -> {
                    Tack.Target on = t.entry().target();
                    return on.face() == null
                            && run.pull() != null
                            && run.pull().equals(on.pull())
                            && (on.lift() == null
                                    || run.lift() == null
                                    || on.lift().equals(run.lift()))
                            && on.from() != null
                            && on.to() != null;
                })
                .toList();
    }

    /** A stretch that was sprayed so wide. */
    private record Wide(Stretch on, Amount width) {}

    /** What the shots cover, ground that was sprayed again once and as wide as at its widest; empty without a width. */
    private static Optional<Amount> tacked(List<Standing<Tack>> shots, Job job) {
        Road road = Road.of(job);
        List<Wide> wide = new ArrayList<>();
        TreeSet<BigDecimal> cuts = new TreeSet<>();
        for (Standing<Tack> each : shots) {
            Tack.Target on = each.entry().target();
            Stretch stretch = RoadRules.stretch(road, on.from(), on.to(), each.ref());
            Optional<Amount> width = Optional.ofNullable(on.width())
                    .or(() -> job.pull(on.pull(), on.lift()).map(Job.Pull::width))
                    .filter(w -> on.area() == null && w.unit() == RoadRules.along(job));
            if (width.isEmpty()) {
                return Optional.empty();
            }
            wide.add(new Wide(stretch, width.get()));
            cuts.add(stretch.low());
            cuts.add(stretch.high());
        }
        Amount sum = null;
        BigDecimal from = null;
        for (BigDecimal to : cuts) {
            Amount piece = from == null ? null : piece(wide, from, to, job);
            sum = piece == null ? sum : sum == null ? piece : sum.plus(piece);
            from = to;
        }
        return Optional.ofNullable(sum);
    }

    private static Amount piece(List<Wide> wide, BigDecimal from, BigDecimal to, Job job) {
        return wide.stream()
                .filter(w -> w.on().low().compareTo(from) <= 0 && w.on().high().compareTo(to) >= 0)
                .map(Wide::width)
                .max(Amount::compareTo)
                .map(w -> Strip.area(w, new Amount(to.subtract(from), RoadRules.along(job))))
                .orElse(null);
    }

    private static List<Mark> faces(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            Map<Ref, Standing<Ticket>> loads = RoadRules.loads(look);
            for (Lane lane : look.road().lanes()) {
                if (lane.pull() != null
                        && !lane.faces().empty()
                        && !lane.paved().empty()) {
                    faces(look, job, lane, loads).ifPresent(marks::add);
                }
            }
        });
        return marks;
    }

    private static Optional<Mark> faces(Look look, Job job, Lane lane, Map<Ref, Standing<Ticket>> loads) {
        Road road = Road.of(job);
        Cover bare = lane.paved().minus(lane.faces()).minus(hot(look, lane, road));
        Amount length = new Amount(bare.length(), RoadRules.along(job));
        BigDecimal whole = lane.paved().length();
        Amount share = new Amount(bare.length().movePointRight(2).divide(whole, 1, RoundingMode.HALF_UP), Unit.PERCENT);
        List<Bound> bounds = Marks.usual(Quantity.UNTACKED).broken(share);
        if (bounds.isEmpty()) {
            return Optional.empty();
        }
        List<Stretch> on = bare.joined();
        Standing<Ticket> first = loads.get(on.get(0).by().get(0));
        return look.ofTicket(first)
                .flatMap(c -> c.asked(Demand.TACK_ON_EVERY_FACE))
                .map(asked -> new Mark(
                        asked.sure() ? null : Sort.LOOK_AGAIN,
                        on.get(0).by(),
                        lane.name() + ": " + length.text() + " of "
                                + new Amount(whole, RoadRules.along(job)).text()
                                + " paved without a tacked face of the longitudinal joint noted for it ("
                                + share.text() + ")",
                        Marks.told(asked) + ", " + bounds.get(0).full() + " without",
                        asked.citation(),
                        "a tack entry with the contact face, or a joint whose face is tacked, for the whole length",
                        "without: "
                                + String.join(
                                        ", ",
                                        on.stream()
                                                .map(s -> RoadRules.run(s, road))
                                                .toList())
                                + ". " + bounds.get(0).working()));
    }

    /** Along a hot joint there is no face to tack. */
    private static Cover hot(Look look, Lane lane, Road road) {
        List<Stretch> hot = new ArrayList<>();
        for (Standing<Joint> each : look.day().standing(Joint.class)) {
            Joint joint = each.entry();
            boolean here = Objects.equals(joint.pull(), lane.pull())
                    && (joint.lift() == null || Objects.equals(joint.lift(), lane.lift()));
            if (here && joint.heat() == Joint.Heat.HOT && joint.from() != null && joint.to() != null) {
                hot.add(RoadRules.stretch(road, joint.from(), joint.to(), each.ref()));
            }
        }
        return Cover.of(hot);
    }

    private static List<Mark> parts(Look look) {
        List<Mark> marks = new ArrayList<>();
        look.job().ifPresent(job -> {
            Road road = Road.of(job);
            for (Run run : look.totals().map(Totals::runs).orElse(List.of())) {
                for (Stretch on : run.own().times(2).joined()) {
                    Amount length = new Amount(on.length(), RoadRules.along(job));
                    marks.add(new Mark(
                            on.by(),
                            run.name() + ": parts lie over one another from " + RoadRules.run(on, road) + " ("
                                    + length.text() + "), both are in the area",
                            "each piece of a pull has one width",
                            "common practice",
                            "parts that end where the next begins, or one of them beside the pull"));
                }
            }
        });
        return marks;
    }
}
