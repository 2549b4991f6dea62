package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.CrossSection.Course;
import screedbook.check.CrossSection.Joint;
import screedbook.job.Job;
import screedbook.spec.Asked;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about where the pulls of a plan meet. */
final class JointPlan {
    private static final String UNSAID = "common practice; the sheet has no row for it";

    static final List<PlanRule> ALL = List.of(
            new PlanRule(
                    "plan-joint-wheel-path",
                    Sort.OUTSIDE,
                    "A joint of a riding surface lies out of the wheel paths of the final lanes.",
                    JointPlan::wheelPath),
            new PlanRule(
                    "plan-joint-line",
                    Sort.OUTSIDE,
                    "A joint of a riding surface lies on a final lane line.",
                    JointPlan::line),
            new PlanRule(
                    "plan-joint-offset",
                    Sort.OUTSIDE,
                    "A joint lies as far from the one below it as is said.",
                    JointPlan::offset),
            new PlanRule(
                    "plan-joint-rule",
                    Sort.MISSING,
                    "Where a lift with joints lies on another one, it is said how far apart they are.",
                    JointPlan::unsaid),
            new PlanRule(
                    "plan-lines",
                    Sort.MISSING,
                    "Final lane lines are settled where pulls of a riding surface meet.",
                    JointPlan::lines),
            new PlanRule("plan-pulls-meet", Sort.LOOK_AGAIN, "Pulls beside each other meet.", JointPlan::meet));

    private JointPlan() {}

    private interface Each {
        Optional<Mark> mark(CrossSection road, Joint joint, JointLaw law);
    }

    /** Every joint of a riding surface whose lane lines are settled. */
    private static List<Mark> riding(Job job, SpecSheet sheet, Each each) {
        CrossSection road = CrossSection.of(job);
        List<Mark> marks = new ArrayList<>();
        if (road.lines().isEmpty()) {
            return marks;
        }
        for (Course course : road.courses()) {
            JointLaw law = JointLaw.of(job, sheet, course.lift());
            if (course.riding()) {
                course.joints().forEach(j -> each.mark(road, j, law).ifPresent(marks::add));
            }
        }
        return marks;
    }

    private static List<Mark> wheelPath(Job job, SpecSheet sheet) {
        return riding(
                job,
                sheet,
                (road, joint, law) -> road.path(joint.at()).map(path -> {
                    boolean sure =
                            road.settled() && law.paths().filter(Asked::sure).isPresent();
                    return new Mark(
                            sure ? null : Sort.LOOK_AGAIN,
                            List.of(),
                            joint.text(road.unit()) + " lies in the wheel path from " + hundredth(path.from()) + " to "
                                    + road.amount(path.to()).shown(2).text(),
                            law.paths().map(Marks::told).orElse("no joint of a riding surface in a wheel path"),
                            law.paths().map(Asked::citation).orElse(UNSAID),
                            inside(job, sheet, road, joint),
                            wheels(road));
                }));
    }

    private static String hundredth(BigDecimal at) {
        return at.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    private static String wheels(CrossSection road) {
        String source = "Width and place of the wheel paths: " + road.pathSource() + ".";
        return road.settled() ? source : source + " Nobody has settled them for this job.";
    }

    private static List<Mark> line(Job job, SpecSheet sheet) {
        return riding(job, sheet, (road, joint, law) -> {
            if (road.onLine(joint.at())) {
                return Optional.empty();
            }
            boolean sure = law.line().filter(Asked::sure).isPresent();
            CrossSection.Line near = road.lines().stream()
                    .min(Comparator.comparing(l -> l.at().subtract(joint.at()).abs()))
                    .orElseThrow();
            Amount off = JointLaw.between(road.unit(), near.at(), joint.at());
            return Optional.of(new Mark(
                    sure ? null : Sort.LOOK_AGAIN,
                    List.of(),
                    joint.text(road.unit()) + " is " + off.text() + " from the nearest final lane line",
                    law.line().map(Marks::told).orElse("a joint of a riding surface on a final lane line"),
                    law.line().map(Asked::citation).orElse(UNSAID),
                    inside(job, sheet, road, joint),
                    ""));
        });
    }

    /** Where the joint would satisfy every rule while the others stay. */
    private static String inside(Job job, SpecSheet sheet, CrossSection road, Joint joint) {
        return "this joint at " + JointPlaces.of(job, sheet, road, joint).text();
    }

    private interface Above {
        void look(CrossSection road, Course upper, Course lower, JointLaw law);
    }

    /** Every lift with joints that lies on another one with joints. */
    private static void stacked(Job job, SpecSheet sheet, Above above) {
        CrossSection road = CrossSection.of(job);
        for (Course course : road.courses()) {
            road.below(course)
                    .filter(b -> !b.joints().isEmpty() && !course.joints().isEmpty())
                    .ifPresent(b -> above.look(road, course, b, JointLaw.of(job, sheet, course.lift())));
        }
    }

    private static List<Mark> offset(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        stacked(job, sheet, (road, upper, lower, law) -> {
            Map<Joint, Joint> pairs = Pairs.of(upper, lower);
            for (Joint joint : upper.joints()) {
                Joint near = Pairs.nearest(lower.joints(), joint).orElseThrow();
                Joint pair = pairs.get(joint);
                for (Bound bound : law.offset().all()) {
                    if (low(bound)
                            .filter(b -> outside(b, road.unit(), joint, near))
                            .isPresent()) {
                        marks.add(apart(job, sheet, road, bound, joint, near));
                    } else if (pair != null
                            && high(bound)
                                    .filter(b -> outside(b, road.unit(), joint, pair))
                                    .isPresent()) {
                        marks.add(apart(job, sheet, road, bound, joint, pair));
                    }
                }
            }
        });
        return marks;
    }

    private static Optional<Bound> low(Bound b) {
        return b.low() == null
                ? Optional.empty()
                : Optional.of(new Bound(b.low(), null, b.sure(), b.clause(), b.rounding(), b.working()));
    }

    private static Optional<Bound> high(Bound b) {
        return b.high() == null
                ? Optional.empty()
                : Optional.of(new Bound(null, b.high(), b.sure(), b.clause(), b.rounding(), b.working()));
    }

    private static boolean outside(Bound bound, Unit unit, Joint joint, Joint other) {
        return bound.outside(JointLaw.between(unit, joint.at(), other.at()));
    }

    private static Mark apart(Job job, SpecSheet sheet, CrossSection road, Bound bound, Joint joint, Joint other) {
        Amount apart = JointLaw.between(road.unit(), joint.at(), other.at()).to(bound.unit());
        return new Mark(
                bound.sure() ? null : Sort.LOOK_AGAIN,
                List.of(),
                joint.text(road.unit()) + " is " + tenth(apart) + " from the one of lift " + other.lift() + " below it",
                bound.full(),
                bound.clause(),
                apart(job, sheet, road, joint) + below(job, sheet, road, other),
                bound.working());
    }

    /** What the upper one could do; nothing where it may stay and only the other has to move. */
    private static String apart(Job job, SpecSheet sheet, CrossSection road, Joint joint) {
        boolean stays = JointPlaces.of(job, sheet, road, joint)
                .both()
                .filter(b -> b.at().value().compareTo(joint.at()) == 0)
                .isPresent();
        return stays ? "" : inside(job, sheet, road, joint) + "; or ";
    }

    private static String below(Job job, SpecSheet sheet, CrossSection road, Joint other) {
        return "the joint of lift " + other.lift() + " at "
                + JointPlaces.of(job, sheet, road, other).text();
    }

    private static String tenth(Amount amount) {
        return (amount.value().stripTrailingZeros().scale() <= 1
                        ? new Amount(amount.value().setScale(1, RoundingMode.UNNECESSARY), amount.unit())
                        : amount.shown(2))
                .text();
    }

    private static List<Mark> unsaid(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        stacked(job, sheet, (road, upper, lower, law) -> {
            if (law.offset().noLimit()) {
                Joint joint = upper.joints().get(0);
                Joint near = Pairs.nearest(lower.joints(), joint).orElseThrow();
                Amount apart = JointLaw.between(road.unit(), joint.at(), near.at());
                marks.add(new Mark(
                        List.of(),
                        joint.text(road.unit()) + " is " + apart.text() + " from the one of lift " + near.lift()
                                + " below it, and nothing says how far it may be",
                        "how far joints of two lifts are apart is settled before paving",
                        "no limit set in " + sheet.name(),
                        "the contract's own figures as joint_rule in the job"));
            }
        });
        return marks;
    }

    private static List<Mark> lines(Job job, SpecSheet sheet) {
        CrossSection road = CrossSection.of(job);
        boolean open = road.lines().isEmpty()
                && road.courses().stream()
                        .anyMatch(c -> c.riding() && !c.joints().isEmpty());
        return open
                ? List.of(new Mark(
                        List.of(),
                        "pulls of the riding surface meet, and the job has no final lane lines",
                        "joints are looked at against the final lane lines",
                        "job, lane_lines",
                        "the final striping under lane_lines"))
                : List.of();
    }

    private static List<Mark> meet(Job job, SpecSheet sheet) {
        CrossSection road = CrossSection.of(job);
        List<Mark> marks = new ArrayList<>();
        for (Course course : road.courses()) {
            for (int i = 1; i < course.pulls().size(); i++) {
                CrossSection.Laid left = course.pulls().get(i - 1);
                CrossSection.Laid right = course.pulls().get(i);
                boolean same =
                        left.left().compareTo(right.left()) == 0 && left.right().compareTo(right.right()) == 0;
                int gap = right.left().compareTo(left.right());
                if (!same && gap != 0) {
                    marks.add(new Mark(
                            List.of(),
                            "lift " + course.lift().number() + ": pull " + left.name() + " ends at "
                                    + road.amount(left.right()).text() + ", pull " + right.name() + " begins at "
                                    + road.amount(right.left()).text(),
                            "pulls beside each other meet in one joint",
                            "job, pulls",
                            "one figure for both"));
                }
            }
        }
        return marks;
    }
}
