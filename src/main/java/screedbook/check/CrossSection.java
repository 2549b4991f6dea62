package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * A road cut across as it is planned: final lanes with their wheel paths, and the joints of each lift. Places are
 * offsets from the reference line in feet or metres, left negative.
 *
 * @param lanes strips between two neighbouring lane lines, left to right
 * @param paths wheel paths; a strip between lines that is too narrow to hold its two is a shoulder and has none
 * @param pathSource where width and place of the wheel paths come from
 * @param settled whether the job has settled the wheel paths; else they are from memory
 * @param courses lifts that have pulls, the lowest first
 */
public record CrossSection(
        Unit unit,
        List<Line> lines,
        List<Strip> lanes,
        List<Strip> paths,
        String pathSource,
        boolean settled,
        List<Course> courses) {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** A line of the final striping. */
    public record Line(String name, BigDecimal at) {}

    /** From one offset to another. */
    public record Strip(BigDecimal from, BigDecimal to) {
        /** Whether a place lies between the ends; the ends themselves lie beside the strip. */
        public boolean holds(BigDecimal at) {
            return from.compareTo(at) < 0 && at.compareTo(to) < 0;
        }
    }

    /** One lift: its pulls, left to right, and the joints where two of them meet. */
    public record Course(Job.Lift lift, List<Laid> pulls, List<Joint> joints) {
        Course moved(Joint joint, BigDecimal to) {
            List<Laid> laid = pulls.stream()
                    .map(p -> new Laid(p.name(), moved(p.left(), joint, to), moved(p.right(), joint, to)))
                    .toList();
            List<Joint> all = joints.stream()
                    .map(j -> new Joint(j.lift(), moved(j.at(), joint, to), j.left(), j.right()))
                    .toList();
            return new Course(lift, laid, all);
        }

        private static BigDecimal moved(BigDecimal at, Joint joint, BigDecimal to) {
            return at.compareTo(joint.at()) == 0 ? to : at;
        }

        boolean riding() {
            return lift.layer() == Job.Layer.RIDING_SURFACE;
        }
    }

    /** A pull across the road. */
    public record Laid(String name, BigDecimal left, BigDecimal right) {}

    /** Where two pulls of a lift meet. */
    public record Joint(int lift, BigDecimal at, String left, String right) {
        String text(Unit unit) {
            return "the joint of lift " + lift + " between pulls " + left + " and " + right + " at "
                    + new Amount(at, unit).text();
        }
    }

    /** The planned road of a job; lists are empty where nothing is settled. */
    public static CrossSection of(Job job) {
        Unit unit = Measure.WIDTH.unit(job.system());
        Planning.WheelPaths wheels = job.planning().paths();
        List<Line> lines = job.laneLines().stream()
                .map(l -> new Line(
                        l.name() == null ? "" : l.name(), l.offset().to(unit).value()))
                .sorted(Comparator.comparing(Line::at))
                .toList();
        List<Strip> lanes = lanes(lines);
        List<Strip> paths = lanes.stream()
                .flatMap(lane -> paths(
                        lane,
                        wheels.offset().to(unit).value(),
                        wheels.width().to(unit).value()))
                .toList();
        String source = wheels.source() == null ? "job, wheel paths" : wheels.source();
        return new CrossSection(
                unit, lines, lanes, paths, source, job.planning().wheelPaths() != null, courses(job, unit));
    }

    private static List<Strip> lanes(List<Line> lines) {
        List<Strip> lanes = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i - 1).at().compareTo(lines.get(i).at()) < 0) {
                lanes.add(new Strip(lines.get(i - 1).at(), lines.get(i).at()));
            }
        }
        return List.copyOf(lanes);
    }

    private static Stream<Strip> paths(Strip lane, BigDecimal offset, BigDecimal width) {
        BigDecimal middle = lane.from().add(lane.to()).divide(TWO);
        BigDecimal half = width.divide(TWO);
        BigDecimal inner = offset.subtract(half);
        BigDecimal outer = offset.add(half);
        return middle.add(outer).compareTo(lane.to()) > 0
                ? Stream.empty()
                : Stream.of(
                        new Strip(middle.subtract(outer), middle.subtract(inner)),
                        new Strip(middle.add(inner), middle.add(outer)));
    }

    private static List<Course> courses(Job job, Unit unit) {
        return job.lifts().stream()
                .sorted(Comparator.comparing(Job.Lift::number))
                .map(lift -> course(job, lift, unit))
                .filter(course -> !course.pulls().isEmpty())
                .toList();
    }

    private static Course course(Job job, Job.Lift lift, Unit unit) {
        List<Laid> pulls = job.pulls().stream()
                .filter(p -> p.lift().equals(lift.number()) && p.left() != null && p.right() != null)
                .map(p -> new Laid(
                        p.name(), p.left().to(unit).value(), p.right().to(unit).value()))
                .sorted(Comparator.comparing(Laid::left).thenComparing(Laid::right))
                .toList();
        TreeMap<BigDecimal, Joint> joints = new TreeMap<>();
        for (Laid left : pulls) {
            pulls.stream()
                    .filter(right -> right.left().compareTo(left.right()) == 0)
                    .forEach(right -> joints.putIfAbsent(
                            left.right(), new Joint(lift.number(), left.right(), left.name(), right.name())));
        }
        return new Course(lift, pulls, List.copyOf(joints.values()));
    }

    /** The wheel path in which a place lies. */
    public Optional<Strip> path(BigDecimal at) {
        return paths.stream().filter(p -> p.holds(at)).findFirst();
    }

    public boolean onLine(BigDecimal at) {
        return lines.stream().anyMatch(l -> l.at().compareTo(at) == 0);
    }

    /** The course next below another one. */
    Optional<Course> below(Course course) {
        int at = courses.indexOf(course);
        return at < 1 ? Optional.empty() : Optional.of(courses.get(at - 1));
    }

    /** The course next above another one. */
    Optional<Course> above(Course course) {
        int at = courses.indexOf(course);
        return at < 0 || at + 1 >= courses.size() ? Optional.empty() : Optional.of(courses.get(at + 1));
    }

    Course course(Joint joint) {
        return courses.stream()
                .filter(c -> c.lift().number() == joint.lift())
                .findFirst()
                .orElseThrow();
    }

    /** The same road with one joint at another place. */
    CrossSection moved(Joint joint, BigDecimal to) {
        List<Course> moved = courses.stream()
                .map(c -> c.lift().number() == joint.lift() ? c.moved(joint, to) : c)
                .toList();
        return new CrossSection(unit, lines, lanes, paths, pathSource, settled, moved);
    }

    Amount amount(BigDecimal at) {
        return new Amount(at, unit);
    }
}
