package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.job.Road;

/**
 * A paver is driven over a road of single feet, each with the figures that stand on its stake; its tickets are keyed with
 * those figures, some wrong and amended, some struck. What the road then tells is held against the feet driven over.
 */
class RoadworkTest {
    private static List<List<Ref>> feet(Cover cover, BigDecimal zero) {
        List<List<Ref>> feet = Drive.Lane.feet();
        for (Stretch each : cover.stretches()) {
            int a = each.low().subtract(zero).intValueExact();
            int b = each.high().subtract(zero).intValueExact();
            each.by().forEach(ref -> Drive.Lane.over(feet, a, b, ref));
            if (each.by().isEmpty()) {
                Drive.Lane.over(feet, a, b, new Ref("before", 1));
            }
        }
        return feet;
    }

    private static void same(String what, List<List<Ref>> told, List<List<Ref>> driven) {
        for (int foot = 0; foot < Stakes.FEET; foot++) {
            assertThat(told.get(foot))
                    .as("%s at foot %d", what, foot)
                    .containsExactlyInAnyOrderElementsOf(driven.get(foot));
        }
    }

    private static BigDecimal count(List<List<Ref>> feet, IntPredicate where) {
        int count = 0;
        for (int foot = 0; foot < Stakes.FEET; foot++) {
            count += where.test(foot) ? 1 : 0;
        }
        assertThat(feet).hasSize(Stakes.FEET);
        return BigDecimal.valueOf(count);
    }

    @RepeatedTest(300)
    void everyFootTellsWhatWasDrivenAndSprayedOverIt(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        Stakes stakes = new Stakes(random);
        Drive yesterday = new Drive(random, stakes, "2026-06-02-day").write();
        Drive today = new Drive(random, stakes, "2026-06-03-day").write();
        ToDate before = ToDate.of(yesterday.shift.read(), stakes.job);
        Roadwork road = Totals.of(today.shift.read(), stakes.job, before, today.shift.at("19:00"))
                .road();
        BigDecimal zero = Road.of(stakes.job).along(Station.of(stakes.figures.get(0)));
        Drive.Lane nothing = new Drive.Lane();

        Set<String> seen = new TreeSet<>();
        for (Roadwork.Lane lane : road.lanes()) {
            seen.add(lane.name());
            Drive.Lane driven = today.lanes.getOrDefault(lane.name(), nothing);
            if (lane.lift() == null) {
                continue;
            }
            same(lane.name() + " paved", feet(lane.paved(), zero), driven.paved);
            same(lane.name() + " tacked", feet(lane.tacked(), zero), driven.tacked);
            same(lane.name() + " faces", feet(lane.faces(), zero), driven.faces);
            assertThat(lane.places())
                    .extracting(
                            p -> p.kind() + " " + p.on().low().subtract(zero).intValueExact() + " "
                                    + p.on().by().get(0))
                    .containsExactlyInAnyOrderElementsOf(driven.places);
            assertThat(lane.paved().times(2).length())
                    .isEqualByComparingTo(
                            count(driven.paved, f -> driven.paved.get(f).size() > 1));
            assertThat(lane.bare().length())
                    .isEqualByComparingTo(count(
                            driven.paved,
                            f -> !driven.paved.get(f).isEmpty()
                                    && driven.tacked.get(f).isEmpty()));
            Drive.Lane older = yesterday.lanes.getOrDefault(lane.name(), nothing);
            assertThat(lane.before().length())
                    .isEqualByComparingTo(
                            count(older.paved, f -> !older.paved.get(f).isEmpty()));
            assertThat(lane.paved().and(lane.before()).length())
                    .isEqualByComparingTo(count(
                            older.paved,
                            f -> !older.paved.get(f).isEmpty()
                                    && !driven.paved.get(f).isEmpty()));
        }
        today.lanes.forEach((name, lane) -> {
            if (!flat(lane.paved).isEmpty()) {
                assertThat(seen).contains(name);
            }
        });
    }

    private static List<Ref> flat(List<List<Ref>> feet) {
        return feet.stream().flatMap(List::stream).toList();
    }

    @RepeatedTest(100)
    void everyStakeIsFoundAgainByItsDistance(RepetitionInfo round) {
        Stakes stakes = new Stakes(new Random(5000 + round.getCurrentRepetition()));
        Road road = Road.of(stakes.job);
        BigDecimal zero = road.along(Station.of(stakes.figures.get(0)));
        for (int foot = 0; foot <= Stakes.FEET; foot++) {
            BigDecimal along = zero.add(BigDecimal.valueOf(foot));
            assertThat(road.along(Station.of(stakes.figures.get(foot)))).isEqualByComparingTo(along);
            assertThat(road.along(road.station(along))).isEqualByComparingTo(along);
            assertThat(road.doubt(road.station(along))).isEmpty();
        }
    }

    @Test
    void lanesStandAsTheyLieAcrossTheRoadLiftByLift() {
        Shift shift = Shift.day();
        shift.ticket("08:00", "1001", "20.00", "pull", "B", "lift", "2", "from_sta", "12+00", "to_sta", "13+00");
        shift.ticket("08:10", "1002", "20.00", "pull", "A", "lift", "2", "from_sta", "12+00", "to_sta", "13+00");
        shift.key(Kind.DEPTH, "08:20", "thickness_in", "2.1", "place_sta", "12+40", "pull", "A", "lift", "1");
        Roadwork road = Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("09:00"))
                .road();

        assertThat(road.lanes()).extracting(Roadwork.Lane::name).containsExactly("A lift 1", "A lift 2", "B lift 2");
    }

    @Test
    void whatIsSampledProbedAndMarkedHasItsPlace() {
        Shift shift = Shift.day();
        String[] at = {"pull", "A", "lift", "2", "place_sta", "12+40"};
        shift.key(Kind.DEPTH, "08:00", "thickness_in", "2.1", "place_sta", "12+40", "pull", "A", "lift", "2");
        shift.key(Kind.SAMPLE, "08:01", with(at, "sample", "S1"));
        shift.key(Kind.CORE, "08:02", with(at, "core", "C1", "marked_at_sta", "12+90"));
        shift.key(Kind.STRAIGHTEDGE, "08:03", with(at, "gap_in", "0.1"));
        shift.key(
                Kind.PROFILE,
                "08:04",
                "from_sta",
                "12+00",
                "to_sta",
                "13+50",
                "pull",
                "A",
                "lift",
                "2",
                "hottest_degF",
                "290",
                "coldest_degF",
                "270");
        shift.key(Kind.DEPTH, "08:05", "thickness_in", "2.1", "place_sta", "12+40", "pull", "A", "lift", "2");
        shift.strike(6, "keyed twice");
        Roadwork road = Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("09:00"))
                .road();

        assertThat(road.lane("A", 2).orElseThrow().places())
                .extracting(
                        p -> p.what() + " " + p.kind() + " " + p.on().low() + " " + p.on().high() + " " + p.on().by())
                .containsExactly(
                        "PROBED DEPTH 1240 1240 [paver/1]",
                        "SAMPLED SAMPLE 1240 1240 [paver/2]",
                        "SAMPLED CORE 1240 1240 [paver/3]",
                        "MARKED CORE 1290 1290 [paver/3]",
                        "PROBED STRAIGHTEDGE 1240 1240 [paver/4]",
                        "PROBED PROFILE 1200 1350 [paver/5]");
    }

    private static String[] with(String[] pairs, String... more) {
        List<String> all = new ArrayList<>(List.of(pairs));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    /** A joint whose face is said to be tacked is as good as a shot on that face; one that says no is not. */
    @Test
    void aJointThatSaysSoHasItsFaceTacked() {
        Shift shift = Shift.day();
        String[] joint = {"run", "longitudinal", "pull", "B", "lift", "2", "from_sta", "12+00"};
        shift.key(Kind.JOINT, "08:00", with(joint, "to_sta", "14+00", "tacked", "yes"));
        shift.key(Kind.JOINT, "08:01", with(joint, "to_sta", "18+00", "tacked", "no"));
        Roadwork road = Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("09:00"))
                .road();

        assertThat(road.lane("B", 2).orElseThrow().faces().length()).isEqualByComparingTo("200");
    }
}
