package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.job.Road;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.tally.Load;
import screedbook.tally.Run;
import screedbook.tally.Share;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What the rules about tack find of tack that was paved over: broken, rained on, on the faces, under the whole mat. */
final class CoveredTack {
    private CoveredTack() {}

    static List<Mark> notBroken(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Placed.Covered each : look.placed().covered()) {
            OffsetDateTime broken = each.shot().entry().after().broken();
            OffsetDateTime paved = each.load().order();
            if (broken == null || before(paved, broken)) {
                String when = broken == null ? "not noted" : Look.clock(broken);
                marks.add(new Mark(
                        List.of(each.shot().ref(), each.load().ref()),
                        "tack" + TackRules.place(each.shot().entry()) + " broken: " + when + ", paved over "
                                + Look.clock(paved),
                        "tack is noted as broken before it is paved over",
                        "common practice",
                        "broken at " + Look.clock(paved) + " or earlier"));
            }
        }
        return marks;
    }

    static List<Mark> rained(Look look) {
        Set<Ref> repeated = new LinkedHashSet<>();
        look.tacks().stream()
                .map(t -> t.entry().after().again())
                .filter(Objects::nonNull)
                .forEach(repeated::add);
        List<Mark> marks = new ArrayList<>();
        for (Placed.Covered each : look.placed().covered()) {
            if (repeated.contains(each.shot().ref())) {
                continue;
            }
            look.weathers().stream()
                    .filter(w -> rain(w.entry()))
                    .filter(w -> before(each.shot().order(), w.order())
                            && before(w.order(), each.load().order()))
                    .findFirst()
                    .ifPresent(w -> marks.add(new Mark(
                            List.of(each.shot().ref(), w.ref(), each.load().ref()),
                            "tack" + TackRules.place(each.shot().entry()) + " of "
                                    + Look.clock(each.shot().order()) + ", "
                                    + w.entry().precipitation().word().replace('-', ' ') + " at "
                                    + Look.clock(w.order()) + ", paved over "
                                    + Look.clock(each.load().order()),
                            "tack on which rain fell is sprayed again",
                            "common practice",
                            "a second shot that names this one")));
        }
        return marks;
    }

    private static boolean rain(Weather weather) {
        return weather.precipitation() != null && weather.precipitation() != Weather.Precipitation.NONE;
    }

    static List<Mark> face(Look look) {
        Map<Placed.Where, Standing<Ticket>> pulls = new LinkedHashMap<>();
        for (Load load : look.laid()) {
            for (Share share : load.shares()) {
                if (share.pull() != null) {
                    pulls.putIfAbsent(new Placed.Where(share.pull(), share.lift()), load.ticket());
                }
            }
        }
        List<Mark> marks = new ArrayList<>();
        pulls.forEach((where, first) -> {
            boolean tacked = look.tacks().stream().map(Standing::entry).anyMatch(t -> facing(t, where))
                    || look.road()
                            .lane(where.pull(), where.lift())
                            .filter(lane -> !lane.faces().empty())
                            .isPresent();
            if (!tacked) {
                look.ofTicket(first)
                        .flatMap(c -> c.asked(Demand.TACK_ON_EVERY_FACE))
                        .ifPresent(a -> marks.add(Mark.asked(
                                a,
                                first.ref(),
                                "pull " + where.pull() + (where.lift() == null ? "" : " lift " + where.lift())
                                        + ": no contact face noted as tacked in this shift",
                                "a tack entry with the contact face")));
            }
        });
        return marks;
    }

    private static boolean facing(Tack tack, Placed.Where where) {
        Tack.Target t = tack.target();
        boolean pull = t.pull() == null || t.pull().equals(where.pull());
        boolean lift = t.lift() == null || where.lift() == null || t.lift().equals(where.lift());
        return t.face() != null && pull && lift;
    }

    static List<Mark> under(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Run run : look.totals().map(Totals::runs).orElse(List.of())) {
            List<Placed.Shot> shots = look.placed().shots(run.pull(), run.lift());
            if (!shots.isEmpty() && run.length().value().signum() > 0) {
                bare(look, run, shots).ifPresent(marks::add);
            }
        }
        return marks;
    }

    private static Optional<Mark> bare(Look look, Run run, List<Placed.Shot> shots) {
        List<Placed.Stretch> tacked = shots.stream()
                .map(Placed.Shot::on)
                .sorted(Comparator.comparing(Placed.Stretch::low))
                .toList();
        BigDecimal bare = BigDecimal.ZERO;
        for (Run.Piece piece : run.pieces()) {
            bare = bare.add(untacked(new Placed.Stretch(piece.low(), piece.high()), tacked));
        }
        BigDecimal length = run.length().value();
        Amount share = new Amount(
                bare.multiply(BigDecimal.valueOf(100)).divide(length, 1, RoundingMode.HALF_UP), Unit.PERCENT);
        Amount bareLength = new Amount(bare, run.length().unit());
        for (Bound bound : Marks.usual(Quantity.UNTACKED).broken(share)) {
            List<Ref> of = shots.stream().map(x -> x.tack().ref()).toList();
            return Optional.of(new Mark(
                    null,
                    of,
                    run.name() + ": " + bareLength.text() + " of "
                            + run.length().text() + " paved without tack noted for it in this shift (" + share.text()
                            + ")",
                    "tack under all that is paved, " + bound.full() + " without",
                    bound.clause(),
                    "tack entries for the whole length",
                    bound.working() + without(look, run)));
        }
        return Optional.empty();
    }

    /** Where, in the order of the road. */
    private static String without(Look look, Run run) {
        List<String> bare = look.road().lane(run.pull(), run.lift()).stream()
                .flatMap(lane -> lane.bare().joined().stream())
                .map(on -> RoadRules.run(on, Road.of(look.job().orElseThrow())))
                .toList();
        return bare.isEmpty() ? "" : " Without: " + String.join(", ", bare) + ".";
    }

    /** The length of a stretch that no shot covers; the shots by their lower ends. */
    private static BigDecimal untacked(Placed.Stretch paved, List<Placed.Stretch> tacked) {
        BigDecimal at = paved.low();
        BigDecimal bare = BigDecimal.ZERO;
        for (Placed.Stretch shot : tacked) {
            BigDecimal from = shot.low().min(paved.high());
            if (from.compareTo(at) > 0) {
                bare = bare.add(from.subtract(at));
            }
            at = at.max(shot.high().min(paved.high()));
        }
        return bare.add(paved.high().subtract(at).max(BigDecimal.ZERO));
    }

    private static boolean before(OffsetDateTime a, OffsetDateTime b) {
        return a.toInstant().isBefore(b.toInstant());
    }
}
