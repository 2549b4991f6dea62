package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;

/** Places proposed for a joint, against every hundredth of a foot across the road tried one by one. */
class JointPlacesTest {
    private static final List<String> LINES = List.of("-24", "-12", "0", "12", "24");
    private static final int STEP = 100;

    /**
     * A rule from a sheet that was read: least and most inches.
     *
     * @param most 0 for none
     */
    private record Sheet(String name, int least, int most) {}

    private static final List<Sheet> SHEETS = List.of(
            // WSDOT 5-04.3(12)A2, text of 2023-2025: 2 to 6 in.
            new Sheet("wsdot-5-04", 2, 6),
            // FHWA FP-96 401.13: at least 6 in.
            new Sheet("joints-fp-96", 6, 0),
            // Kansas DOT 614.3, copy of c. 2017: 6 to 12 in.
            new Sheet("joints-kansas-614", 6, 12));

    private record Case(Sheet sheet, List<List<String>> edges) {}

    static Stream<Case> roads() {
        Random random = new Random(12);
        return IntStream.range(0, 60).mapToObj(i -> new Case(SHEETS.get(i % 3), List.of(edges(random), edges(random))));
    }

    private static List<String> edges(Random random) {
        TreeSet<Integer> places = new TreeSet<>(List.of(-24 * STEP, 24 * STEP));
        int joints = 1 + random.nextInt(3);
        while (places.size() < joints + 2) {
            boolean near = random.nextBoolean();
            int at =
                    near ? 12 * STEP * (random.nextInt(3) - 1) + random.nextInt(121) - 60 : random.nextInt(4400) - 2200;
            if (places.stream().allMatch(p -> Math.abs(p - at) >= 300)) {
                places.add(at);
            }
        }
        return places.stream()
                .map(p -> BigDecimal.valueOf(p, 2).toPlainString())
                .toList();
    }

    private static Job job(Case road) {
        return PlannedJob.plan().road(LINES, road.edges()).wheels("3.0", "3.0").job();
    }

    @ParameterizedTest
    @MethodSource("roads")
    void theProposedPlacesAreTheNearestOfAllThatWereTried(Case road) {
        Job job = job(road);
        SpecSheet sheet = SpecSheet.shipped(road.sheet().name()).orElseThrow();
        CrossSection section = CrossSection.of(job);
        for (CrossSection.Course course : section.courses()) {
            for (CrossSection.Joint joint : course.joints()) {
                JointPlaces proposed = JointPlaces.of(job, sheet, section, joint);

                assertThat(hundredths(proposed.nearest()))
                        .as(joint + " " + road)
                        .containsExactlyInAnyOrderElementsOf(tried(road, joint));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("roads")
    void twoJointsMovedTogetherSatisfyEveryRuleBoth(Case road) {
        Job job = job(road);
        SpecSheet sheet = SpecSheet.shipped(road.sheet().name()).orElseThrow();
        for (JointPlaces each : JointPlaces.all(job, sheet, CrossSection.of(job))) {
            each.both()
                    .ifPresent(both -> both.places().forEach(place -> {
                        int at = hundredth(both.at());
                        int other = hundredth(place);
                        Case there = moved(moved(road, each.joint(), both.at()), both.other(), place);

                        assertThat(each.nearest()).isEmpty();
                        assertThat(holds(there, each.joint().lift(), at, at))
                                .as(each + " " + road)
                                .isTrue();
                        assertThat(holds(there, both.other().lift(), other, other))
                                .as(each + " " + road)
                                .isTrue();
                    }));
        }
    }

    private static int hundredth(Amount place) {
        return place.value().movePointRight(2).intValueExact();
    }

    private static Case moved(Case road, CrossSection.Joint joint, Amount to) {
        List<List<String>> edges = new ArrayList<>(road.edges());
        edges.set(
                joint.lift() - 1,
                edges.get(joint.lift() - 1).stream()
                        .map(e -> new BigDecimal(e).compareTo(joint.at()) == 0
                                ? to.value().toPlainString()
                                : e)
                        .toList());
        return new Case(road.sheet(), List.copyOf(edges));
    }

    private static List<Integer> hundredths(List<Amount> places) {
        return places.stream()
                .map(a -> a.value().movePointRight(2).intValueExact())
                .toList();
    }

    /** The nearest place at either side that holds, by trying; the own place alone where it holds. */
    private static List<Integer> tried(Case road, CrossSection.Joint joint) {
        int own = joint.at().movePointRight(2).intValueExact();
        List<Integer> good = new ArrayList<>();
        for (int at = -24 * STEP; at <= 24 * STEP; at++) {
            if (holds(road, joint.lift(), own, at)) {
                good.add(at);
            }
        }
        TreeSet<Integer> all = new TreeSet<>(good);
        TreeSet<Integer> near = new TreeSet<>();
        if (all.floor(own) != null) {
            near.add(all.floor(own));
        }
        if (all.ceiling(own) != null) {
            near.add(all.ceiling(own));
        }
        return List.copyOf(near);
    }

    private static List<Integer> places(Case road, int lift) {
        return road.edges().get(lift - 1).stream()
                .map(e -> new BigDecimal(e).movePointRight(2).intValueExact())
                .toList();
    }

    /** Everything that is asked, written down a second time in whole hundredths of a foot. */
    private static boolean holds(Case road, int lift, int own, int at) {
        List<Integer> edges = places(road, lift);
        int index = edges.indexOf(own);
        boolean room = at - edges.get(index - 1) >= STEP && edges.get(index + 1) - at >= STEP;
        boolean riding = lift == 2;
        boolean place = !riding || !inPath(at) && LINES.contains(String.valueOf(at / STEP)) && at % STEP == 0;
        List<Integer> others = places(road, 3 - lift);
        List<Integer> joints = others.subList(1, others.size() - 1);
        boolean far = joints.stream()
                .allMatch(j -> 12 * Math.abs(j - at) >= road.sheet().least() * STEP);
        Integer partner = partner(road, lift, own);
        boolean near = road.sheet().most() == 0
                || partner == null
                || 12 * Math.abs(partner - at) <= road.sheet().most() * STEP;
        return room && place && far && near;
    }

    /** Paths 3 ft wide, 3 ft beside the middle of each 12 ft lane: 1.5 to 4.5 and 7.5 to 10.5 from its left line. */
    private static boolean inPath(int at) {
        int inLane = Math.floorMod(at, 12 * STEP);
        return inLane > 150 && inLane < 450 || inLane > 750 && inLane < 1050;
    }

    /** By order where both lifts have as many joints, else each other's nearest, the left one of two as near. */
    private static Integer partner(Case road, int lift, int own) {
        List<Integer> upper = places(road, 2).subList(1, places(road, 2).size() - 1);
        List<Integer> lower = places(road, 1).subList(1, places(road, 1).size() - 1);
        for (int i = 0; i < upper.size(); i++) {
            int u = upper.get(i);
            Integer l = upper.size() == lower.size() ? lower.get(i) : nearest(lower, u);
            boolean pair = upper.size() == lower.size() || nearest(upper, l) == u;
            if (pair && own == (lift == 2 ? u : l)) {
                return lift == 2 ? l : Integer.valueOf(u);
            }
        }
        return null;
    }

    private static int nearest(List<Integer> of, int to) {
        int best = of.get(0);
        for (int each : of) {
            best = Math.abs(each - to) < Math.abs(best - to) ? each : best;
        }
        return best;
    }

    @Test
    void theRoadsThatAreTriedHoldPlansWithAndWithoutAPlace() {
        List<Integer> found = roads().flatMap(road -> {
                    CrossSection section = CrossSection.of(job(road));
                    SpecSheet sheet = SpecSheet.shipped(road.sheet().name()).orElseThrow();
                    return section.courses().stream()
                            .flatMap(c -> c.joints().stream())
                            .map(j -> JointPlaces.of(job(road), sheet, section, j)
                                    .nearest()
                                    .size());
                })
                .toList();

        assertThat(found).contains(0, 1, 2);
        assertThat(roads().flatMap(road -> JointPlaces.all(
                                job(road),
                                SpecSheet.shipped(road.sheet().name()).orElseThrow(),
                                CrossSection.of(job(road)))
                        .stream()
                        .filter(p -> p.nearest().isEmpty())
                        .map(p -> p.both().isPresent())))
                .contains(true, false);
    }
}
