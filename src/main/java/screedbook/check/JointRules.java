package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Joint;
import screedbook.entry.Standing;
import screedbook.entry.Straightedge;
import screedbook.entry.Told;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about joints as they were made, and about the gap under a straightedge. */
final class JointRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "joint-face-tacked",
                    Sort.OUTSIDE,
                    "The cold face of a joint is tacked where the sheet asks for it.",
                    JointRules::tacked),
            new Rule(
                    "joint-offset",
                    Sort.OUTSIDE,
                    "A joint lies as far from the one below it as the sheet says, else the job.",
                    JointRules::offset),
            new Rule(
                    "joint-from-line",
                    Sort.LOOK_AGAIN,
                    "A joint of a riding surface that is to lie on a lane line lies on it.",
                    JointRules::fromLine),
            new Rule(
                    "joint-notch",
                    Sort.OUTSIDE,
                    "The vertical edge of a notched wedge is as high as the sheet says of the lift.",
                    JointRules::notch),
            new Rule(
                    "joint-slope",
                    Sort.OUTSIDE,
                    "The wedge of a joint is as flat as the sheet says.",
                    JointRules::slope),
            new Rule(
                    "joint-overlap",
                    Sort.OUTSIDE,
                    "Hot mix overlaps the older mat as far as the sheet says.",
                    look -> shaped(look, Quantity.JOINT_OVERLAP, "overlap")),
            new Rule(
                    "joint-higher",
                    Sort.OUTSIDE,
                    "The newer side of a joint stands as high above the older one as the sheet says.",
                    look -> shaped(look, Quantity.JOINT_HIGHER, "new side higher by")),
            new Rule(
                    "straightedge-gap",
                    Sort.OUTSIDE,
                    "The gap under a straightedge is no wider than the sheet says.",
                    JointRules::gap),
            new Rule(
                    "straightedge-length",
                    Sort.LOOK_AGAIN,
                    "A straightedge is as long as the one that the sheet's limits speak of.",
                    JointRules::length));

    private static final Map<Straightedge.Laid, Quantity> GAPS = Map.of(
            Straightedge.Laid.ALONG,
            Quantity.STRAIGHTEDGE_ALONG,
            Straightedge.Laid.ACROSS,
            Quantity.STRAIGHTEDGE_ACROSS,
            Straightedge.Laid.OVER_JOINT,
            Quantity.STRAIGHTEDGE_OVER_JOINT);

    private JointRules() {}

    private static List<Standing<Joint>> joints(Look look) {
        return look.day().standing(Joint.class);
    }

    private static Optional<Case> of(Look look, Standing<Joint> j) {
        return look.ofMat(j, null, j.entry().lift(), j.entry().pull());
    }

    static boolean across(Joint joint) {
        return joint.run() == Joint.Run.TRANSVERSE;
    }

    private static String name(Joint j) {
        String where = Told.run(j.from(), j.to());
        if (across(j)) {
            where = j.from() == null ? null : j.from().text();
        }
        return "joint" + (where == null ? "" : " " + where);
    }

    private static List<Mark> tacked(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Joint> j : joints(look)) {
            Joint e = j.entry();
            Optional<Asked> asked = of(look, j).flatMap(c -> c.asked(Demand.TACK_ON_EVERY_FACE));
            if (e.heat() != Joint.Heat.HOT && e.tacked() != YesNo.YES && asked.isPresent()) {
                boolean no = e.tacked() == YesNo.NO;
                Sort sort = !no ? Sort.MISSING : asked.get().sure() ? null : Sort.LOOK_AGAIN;
                marks.add(new Mark(
                        sort,
                        List.of(j.ref()),
                        name(e) + ": face " + (no ? "not tacked" : "tacked or not: not noted"),
                        Marks.told(asked.get()),
                        asked.get().citation(),
                        "a tacked face",
                        ""));
            }
        }
        return marks;
    }

    /** What holds for the distance to the joint below; of the sheet, else of the job, and then along the road only. */
    static Bounds offset(Job job, SpecSheet sheet, Joint joint, Case at) {
        if (across(joint)) {
            return at.bounds(Quantity.JOINT_ACROSS_OFFSET);
        }
        return Cases.lift(job, joint.lift(), joint.pull())
                .map(lift -> JointLaw.of(job, sheet, lift).offset())
                .orElseGet(() -> at.bounds(Quantity.JOINT_OFFSET));
    }

    private static List<Mark> offset(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Joint> j : joints(look)) {
            Optional<Job> job = look.job(j);
            Optional<SpecSheet> sheet = look.sheet(j);
            Optional<Case> at = of(look, j);
            if (job.isPresent()
                    && sheet.isPresent()
                    && at.isPresent()
                    && j.entry().below() != null) {
                marks.addAll(Marks.judged(
                        offset(job.get(), sheet.get(), j.entry(), at.get()),
                        List.of(j.ref()),
                        name(j.entry()) + ": offset from the one below",
                        AmountText.size(j.entry().below()),
                        ""));
            }
        }
        return marks;
    }

    private static List<Mark> fromLine(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Joint> j : joints(look)) {
            Optional<Asked> asked =
                    across(j.entry()) ? Optional.empty() : of(look, j).flatMap(c -> c.asked(Demand.JOINT_ON_LINE));
            if (asked.isPresent() && j.entry().laneLine() != null) {
                Amount off = AmountText.size(j.entry().laneLine());
                Marks.odd(Quantity.JOINT_FROM_LINE, List.of(j.ref()), name(j.entry()) + ": from the lane line", off)
                        .stream()
                        .map(m -> new Mark(
                                Sort.LOOK_AGAIN,
                                m.of(),
                                m.seen(),
                                Marks.told(asked.get()),
                                asked.get().citation(),
                                m.inside(),
                                m.working()))
                        .forEach(marks::add);
            }
        }
        return marks;
    }

    /** The vertical edge in hundredths of the planned thickness; empty where one of them is not known. */
    static Optional<Amount> notch(Job job, Joint joint) {
        return Cases.lift(job, joint.lift(), joint.pull())
                .map(Job.Lift::thickness)
                .filter(t -> joint.notch() != null && t.value().signum() > 0)
                .map(t -> new Amount(
                        joint.notch()
                                .to(t.unit())
                                .value()
                                .multiply(BigDecimal.valueOf(100))
                                .divide(t.value(), 1, RoundingMode.HALF_UP),
                        Unit.PERCENT));
    }

    private static List<Mark> notch(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Joint> j : joints(look)) {
            Optional<Amount> of = look.job(j).flatMap(job -> notch(job, j.entry()));
            Optional<Case> at = of(look, j);
            if (of.isPresent() && at.isPresent()) {
                marks.addAll(Marks.judged(
                        at.get().bounds(Quantity.JOINT_NOTCH_OF_LIFT),
                        List.of(j.ref()),
                        name(j.entry()) + ": vertical edge "
                                + AmountText.text(j.entry().notch()) + ", of the lift",
                        of.get(),
                        ""));
            }
        }
        return marks;
    }

    /** Which limit a wedge has: along the road, or at a joint across it. */
    static Quantity slope(Joint joint) {
        return across(joint) ? Quantity.JOINT_ACROSS_SLOPE : Quantity.JOINT_WEDGE_SLOPE;
    }

    private static List<Mark> slope(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Joint> j : joints(look)) {
            of(look, j)
                    .ifPresent(c -> marks.addAll(Marks.judged(
                            c.bounds(slope(j.entry())),
                            List.of(j.ref()),
                            name(j.entry()) + ": wedge, across for one down",
                            j.entry().slope(),
                            "")));
        }
        return marks;
    }

    private static List<Mark> shaped(Look look, Quantity quantity, String what) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Joint> j : joints(look)) {
            Amount value = quantity == Quantity.JOINT_OVERLAP
                    ? j.entry().overlap()
                    : j.entry().higher();
            of(look, j)
                    .ifPresent(c -> marks.addAll(Marks.judged(
                            c.bounds(quantity), List.of(j.ref()), name(j.entry()) + ": " + what, value, "")));
        }
        return marks;
    }

    /** The limits of a gap; none where it was not noted how the edge lay. */
    static Bounds gaps(Case at, Straightedge edge) {
        return edge.laid() == null ? Bounds.NONE : at.bounds(GAPS.get(edge.laid()));
    }

    /** Whether an edge is as long as the one that the sheet speaks of; a sheet that names no length speaks of any. */
    static boolean asLong(Bounds length, Straightedge edge) {
        return length.noLimit() || edge.edgeLength() != null && length.of(edge.edgeLength()) == Verdict.INSIDE;
    }

    private static List<Mark> gap(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Straightedge> s : look.day().standing(Straightedge.class)) {
            Straightedge e = s.entry();
            look.ofMat(s, null, e.lift(), e.pull())
                    .filter(c -> asLong(c.bounds(Quantity.STRAIGHTEDGE_LENGTH), e))
                    .ifPresent(c -> marks.addAll(
                            Marks.judged(gaps(c, e), List.of(s.ref()), "gap " + word(e) + where(e), e.gap(), "")));
        }
        return marks;
    }

    private static String word(Straightedge e) {
        return e.laid() == null ? "" : e.laid().word().replace('-', ' ');
    }

    private static String where(Straightedge e) {
        return e.place() == null ? "" : " at " + e.place().text();
    }

    private static List<Mark> length(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Straightedge> s : look.day().standing(Straightedge.class)) {
            Straightedge e = s.entry();
            Optional<Bounds> length =
                    look.ofMat(s, null, e.lift(), e.pull()).map(c -> c.bounds(Quantity.STRAIGHTEDGE_LENGTH));
            if (e.gap() != null && length.isPresent() && !asLong(length.get(), e)) {
                Bound bound = length.get().all().get(0);
                String known = e.edgeLength() == null ? "not noted" : AmountText.text(e.edgeLength());
                marks.add(new Mark(
                        Sort.LOOK_AGAIN,
                        List.of(s.ref()),
                        "gap" + where(e) + " under an edge whose length is " + known,
                        "an edge of " + AmountText.text(bound.low()),
                        bound.clause(),
                        "a reading under an edge of " + AmountText.text(bound.low()),
                        bound.working()));
            }
        }
        return marks;
    }
}
