package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import screedbook.check.CrossSection.Course;
import screedbook.check.CrossSection.Joint;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;

/**
 * Where else one joint may lie while all others stay: out of wheel paths and on a lane line for a riding surface, as
 * far from the joints below and above as is said, and so that the pulls beside it stay as wide as a paver lays.
 *
 * @param nearest the nearest place at either side, the nearer first; the joint's own place where that satisfies every
 *     rule; empty where no place does
 * @param both looked for where no place does
 */
public record JointPlaces(Joint joint, List<Amount> nearest, Optional<Both> both) {
    /**
     * A place that is open to a joint when one of the lift below moves too; then every rule is satisfied for both.
     *
     * @param at the joint's new place
     * @param other the joint below, where it is planned
     * @param places where that one could lie, the nearer first
     */
    public record Both(Amount at, Joint other, List<Amount> places) {
        public String text() {
            return at.text() + " with the joint of lift " + other.lift() + " moved from "
                    + new Amount(other.at(), at.unit()).text() + " to "
                    + String.join(" or ", places.stream().map(Amount::text).toList());
        }
    }

    /** The places for a joint of a planned road. */
    public static JointPlaces of(Job job, SpecSheet sheet, CrossSection road, Joint joint) {
        return new Search(job, sheet, road).places(joint);
    }

    /** Whether the joint satisfies every rule where it is planned. */
    public boolean holds() {
        return nearest.size() == 1 && nearest.get(0).value().compareTo(joint.at()) == 0;
    }

    /** The places of every joint of a planned road. */
    public static List<JointPlaces> all(Job job, SpecSheet sheet, CrossSection road) {
        Search search = new Search(job, sheet, road);
        return road.courses().stream()
                .flatMap(c -> c.joints().stream())
                .map(search::places)
                .toList();
    }

    /** {@code 0.5 ft or -0.5 ft}, or what else would have to move, or that there is none. */
    public String text() {
        return nearest.isEmpty()
                ? both.map(Both::text).orElse("no place, while the other joints stay")
                : String.join(" or ", nearest.stream().map(Amount::text).toList());
    }

    /** A road whose joints are looked at one after the other. */
    static final class Search {
        private final Job job;
        private final SpecSheet sheet;
        private final CrossSection road;

        Search(Job job, SpecSheet sheet, CrossSection road) {
            this.job = job;
            this.sheet = sheet;
            this.road = road;
        }

        JointPlaces places(Joint joint) {
            JointPlaces alone = alone(joint);
            return alone.nearest().isEmpty() ? new JointPlaces(joint, List.of(), both(joint)) : alone;
        }

        private JointPlaces alone(Joint joint) {
            Spans left = free(joint);
            Optional<BigDecimal> before = left.leftOf(joint.at());
            Optional<BigDecimal> behind = left.rightOf(joint.at());
            List<Amount> nearest = new ArrayList<>();
            before.map(road::amount).ifPresent(nearest::add);
            behind.filter(b -> before.isEmpty() || before.get().compareTo(b) != 0)
                    .map(road::amount)
                    .ifPresent(nearest::add);
            nearest.sort((a, b) -> distance(joint, a).compareTo(distance(joint, b)));
            return new JointPlaces(joint, List.copyOf(nearest), Optional.empty());
        }

        /** The nearest place that the joint's own lift leaves open and from which one joint below can move away. */
        private Optional<Both> both(Joint joint) {
            Course course = road.course(joint);
            Optional<Course> below = road.below(course);
            if (below.isEmpty()) {
                return Optional.empty();
            }
            Spans own = own(course, joint);
            return Stream.of(own.leftOf(joint.at()), own.rightOf(joint.at()))
                    .flatMap(Optional::stream)
                    .sorted(Comparator.comparing(at -> at.subtract(joint.at()).abs()))
                    .flatMap(at -> below.get().joints().stream().flatMap(other -> away(joint, at, other).stream()))
                    .findFirst();
        }

        /** The other joint moved so that both are right; a pair is only offered where nothing else stands against it. */
        private Optional<Both> away(Joint joint, BigDecimal at, Joint other) {
            CrossSection there = road.moved(joint, at);
            List<Amount> places = new Search(job, sheet, there).alone(other).nearest();
            Joint here = new Joint(joint.lift(), at, joint.left(), joint.right());
            List<Amount> right = places.stream()
                    .filter(p -> new Search(job, sheet, there.moved(other, p.value()))
                            .alone(here)
                            .holds())
                    .toList();
            return right.isEmpty() ? Optional.empty() : Optional.of(new Both(road.amount(at), other, right));
        }

        private static BigDecimal distance(Joint joint, Amount at) {
            return at.value().subtract(joint.at()).abs();
        }

        private Spans free(Joint joint) {
            Course course = road.course(joint);
            Spans left = own(course, joint);
            Spans below =
                    road.below(course).map(against(left, joint, course, true)).orElse(left);
            return road.above(course).map(against(below, joint, course, false)).orElse(below);
        }

        /** What the joint's own lift and the final striping leave open. */
        private Spans own(Course course, Joint joint) {
            Spans left = betweenNeighbours(course, joint);
            if (course.riding() && !road.lines().isEmpty()) {
                for (CrossSection.Strip path : road.paths()) {
                    left = left.without(path.from(), path.to());
                }
                left = left.onlyAt(
                        road.lines().stream().map(CrossSection.Line::at).toList());
            }
            return left;
        }

        /** The other joints and edges of the lift stay, and no pull beside the joint gets narrower than is usual. */
        private Spans betweenNeighbours(Course course, Joint joint) {
            BigDecimal least = Marks.usual(Quantity.WIDTH)
                    .all()
                    .get(0)
                    .low()
                    .to(road.unit())
                    .value();
            BigDecimal from = null;
            BigDecimal to = null;
            for (CrossSection.Laid pull : course.pulls()) {
                for (BigDecimal edge : List.of(pull.left(), pull.right())) {
                    int side = edge.compareTo(joint.at());
                    from = side < 0 && (from == null || edge.compareTo(from) > 0) ? edge : from;
                    to = side > 0 && (to == null || edge.compareTo(to) < 0) ? edge : to;
                }
            }
            return Spans.between(from.add(least), to.subtract(least));
        }

        private Function<Course, Spans> against(Spans all, Joint joint, Course course, boolean below) {
            return other -> {
                JointLaw law = JointLaw.of(job, sheet, (below ? course : other).lift());
                Optional<BigDecimal> least = law.least(road.unit());
                Spans left = all;
                if (least.isPresent()) {
                    for (Joint each : other.joints()) {
                        left = left.without(
                                each.at().subtract(least.get()), each.at().add(least.get()));
                    }
                }
                Map<Joint, Joint> pairs = below ? Pairs.of(course, other) : Pairs.of(other, course);
                Optional<Joint> partner = below ? Optional.ofNullable(pairs.get(joint)) : Pairs.upper(pairs, joint);
                Optional<BigDecimal> most = law.most(road.unit());
                return partner.isPresent() && most.isPresent()
                        ? left.within(
                                partner.get().at().subtract(most.get()),
                                partner.get().at().add(most.get()))
                        : left;
            };
        }
    }
}
