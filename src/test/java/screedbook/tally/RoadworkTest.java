package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Road;

/**
 * A paver is driven over a road of single feet, each with the figures that stand on its stake; its tickets are keyed with
 * those figures, some wrong and amended, some struck. What the road then tells is held against the feet driven over.
 */
class RoadworkTest {
    private static final int FEET = 900;

    /** The stakes along a road, foot by foot, and the job that has their equations. */
    private static final class Stakes {
        private final List<String> figures = new ArrayList<>();
        private final Job job;

        Stakes(Random random) {
            List<Map<String, Object>> equations = new ArrayList<>();
            List<int[]> runs = new ArrayList<>();
            int figure = 1000 + random.nextInt(200);
            int left = FEET;
            for (int i = random.nextInt(3); i > 0; i--) {
                int run = 100 + random.nextInt(200);
                runs.add(new int[] {figure, run});
                int ahead = figure + run + random.nextInt(-60, 120);
                equations.add(Map.of("back_sta", text(figure + run), "ahead_sta", text(ahead)));
                figure = ahead;
                left -= run;
            }
            runs.add(new int[] {figure, left});
            int stretch = 0;
            for (int[] run : runs) {
                for (int i = stretch == 0 ? 0 : 1; i <= run[1]; i++) {
                    figures.add(text(run[0] + i) + side(run[0] + i, stretch, runs));
                }
                stretch++;
            }
            this.job = job(random, equations);
        }

        private static String text(int figure) {
            return figure / 100 + "+" + String.format("%02d", figure % 100);
        }

        /** Figures that are there twice say which side they are on; those at an equation itself may be either. */
        private static String side(int figure, int stretch, List<int[]> runs) {
            for (int other = 0; other < runs.size(); other++) {
                int first = other == 0 ? Integer.MIN_VALUE : runs.get(other)[0];
                int last = other == runs.size() - 1 ? Integer.MAX_VALUE : runs.get(other)[0] + runs.get(other)[1];
                if (other != stretch && first <= figure && figure <= last) {
                    return other < stretch ? " ah" : " bk";
                }
            }
            return "";
        }

        private static Job job(Random random, List<Map<String, Object>> equations) {
            Map<String, Object> job = new LinkedHashMap<>();
            job.put("id", "test-job");
            job.put("zone", "America/Boise");
            job.put("units", "us");
            job.put("sheet", "practice");
            job.put("stationing", Map.of("direction", random.nextBoolean() ? "up" : "down", "equations", equations));
            List<Map<String, Object>> pulls = new ArrayList<>();
            for (String name : List.of("A", "B")) {
                for (int lift = 1; lift <= 2; lift++) {
                    Map<String, Object> pull = new HashMap<>();
                    pull.put("name", name);
                    pull.put("lift", BigDecimal.valueOf(lift));
                    pull.put("left_ft", new BigDecimal(name.equals("A") ? -12 : 0));
                    pull.put("right_ft", new BigDecimal(name.equals("A") ? 0 : 12));
                    if (random.nextInt(3) > 0) {
                        pull.put("direction", random.nextBoolean() ? "up" : "down");
                    }
                    pulls.add(pull);
                }
            }
            job.put("pulls", pulls);
            return Fields.build(Job.class, job).value().settled();
        }
    }

    /** What lies on every foot of one lane. */
    private static final class Lane {
        final List<List<Ref>> paved = feet();
        final List<List<Ref>> tacked = feet();
        final List<List<Ref>> faces = feet();
        final List<String> places = new ArrayList<>();

        private static List<List<Ref>> feet() {
            List<List<Ref>> feet = new ArrayList<>();
            for (int i = 0; i < FEET; i++) {
                feet.add(new ArrayList<>());
            }
            return feet;
        }

        static void over(List<List<Ref>> feet, int a, int b, Ref by) {
            for (int i = Math.min(a, b); i < Math.max(a, b); i++) {
                feet.get(i).add(by);
            }
        }
    }

    /** A shift being driven and keyed. */
    private static final class Drive {
        private final Random random;
        private final Stakes stakes;
        private final Shift shift;
        private final Map<String, Lane> lanes = new TreeMap<>();
        private final Map<String, Integer> at = new HashMap<>();
        private int minute;

        Drive(Random random, Stakes stakes, String id) {
            this.random = random;
            this.stakes = stakes;
            this.shift = new Shift(id, "paver");
        }

        private String clock() {
            minute += 2;
            return String.format("%02d:%02d", 7 + minute / 60, minute % 60);
        }

        private Ref next() {
            return new Ref("paver", shift.lines().size() + 1);
        }

        private Lane lane(String pull, int lift) {
            return lanes.computeIfAbsent(pull + " lift " + lift, n -> new Lane());
        }

        Drive write() {
            for (int i = random.nextInt(5, 40); i > 0; i--) {
                String pull = random.nextBoolean() ? "A" : "B";
                int lift = random.nextInt(1, 3);
                switch (random.nextInt(10)) {
                    case 0, 1 -> tack(pull, lift);
                    case 2 -> struck(pull, lift);
                    case 3 -> amended(pull, lift);
                    case 4 -> rejected(pull, lift);
                    case 5 -> shared(pull, lift);
                    case 6 -> probed(pull, lift);
                    default -> convoy(pull, lift);
                }
            }
            return this;
        }

        private boolean down(String pull, int lift) {
            Job.Pull planned = stakes.job.pull(pull, lift).orElseThrow();
            Job.Direction direction =
                    planned.direction() == null ? stakes.job.stationing().direction() : planned.direction();
            return direction == Job.Direction.DOWN;
        }

        /** Where the paver goes on: as a rule where it is, now and then somewhere else. */
        private int begins(String lane) {
            int somewhere = random.nextInt(FEET + 1);
            return random.nextInt(5) == 0 ? somewhere : at.getOrDefault(lane, somewhere);
        }

        private int onward(int from, String pull, int lift) {
            int by = random.nextInt(0, 90);
            return down(pull, lift) ? Math.max(0, from - by) : Math.min(FEET, from + by);
        }

        /** Loads one behind the other; all but the last may leave their end to the next one's start. */
        private void convoy(String pull, int lift) {
            String name = pull + " lift " + lift;
            int from = begins(name);
            int loads = random.nextInt(1, 5);
            for (int i = 1; i <= loads; i++) {
                int to = onward(from, pull, lift);
                Lane.over(lane(pull, lift).paved, from, to, next());
                ticket(pull, lift, from, i == loads || random.nextBoolean() ? to : -1);
                from = to;
            }
            at.put(name, from);
        }

        private void ticket(String pull, int lift, int from, int to, String... more) {
            List<String> pairs =
                    new ArrayList<>(List.of("pull", pull, "lift", "" + lift, "from_sta", stakes.figures.get(from)));
            if (to >= 0) {
                pairs.addAll(List.of("to_sta", stakes.figures.get(to)));
            }
            pairs.addAll(List.of(more));
            shift.ticket(clock(), "" + (1000 + shift.lines().size()), "20.00", pairs.toArray(String[]::new));
        }

        private void struck(String pull, int lift) {
            ticket(pull, lift, random.nextInt(FEET + 1), random.nextInt(FEET + 1));
            shift.strike(shift.lines().size(), "keyed twice");
        }

        /** Keyed with another end and perhaps in another pull, and put right afterwards. */
        private void amended(String pull, int lift) {
            int from = begins(pull + " lift " + lift);
            int to = onward(from, pull, lift);
            Lane.over(lane(pull, lift).paved, from, to, next());
            String keyed = random.nextBoolean() ? pull : pull.equals("A") ? "B" : "A";
            ticket(keyed, lift, from, random.nextInt(FEET + 1));
            int n = shift.lines().size();
            shift.amend(n, "to_sta", stakes.figures.get(to), "read again");
            if (!keyed.equals(pull)) {
                shift.amend(n, "pull", pull, "the other pull");
            }
            at.put(pull + " lift " + lift, to);
        }

        /** A load of which a part went into another pull, each with its own stations; now and then the part is struck. */
        private void shared(String pull, int lift) {
            int from = begins(pull + " lift " + lift);
            int to = onward(from, pull, lift);
            Lane.over(lane(pull, lift).paved, from, to, next());
            Ref ticket = next();
            ticket(pull, lift, from, to);
            at.put(pull + " lift " + lift, to);
            String other = pull.equals("A") ? "B" : "A";
            int a = random.nextInt(FEET + 1);
            int b = random.nextInt(FEET + 1);
            boolean struck = random.nextInt(4) == 0;
            if (!struck) {
                Lane.over(lane(other, lift).paved, a, b, next());
            }
            shift.key(
                    Kind.PART,
                    null,
                    "of",
                    ticket.toString(),
                    "share_ston",
                    "4.00",
                    "pull",
                    other,
                    "lift",
                    "" + lift,
                    "from_sta",
                    stakes.figures.get(a),
                    "to_sta",
                    stakes.figures.get(b));
            if (struck) {
                shift.strike(shift.lines().size(), "keyed for another load");
            }
        }

        private void probed(String pull, int lift) {
            int foot = random.nextInt(FEET + 1);
            Kind kind = random.nextBoolean() ? Kind.DEPTH : Kind.SAMPLE;
            boolean struck = random.nextInt(4) == 0;
            if (!struck) {
                lane(pull, lift).places.add(kind + " " + foot + " " + next());
            }
            shift.key(kind, clock(), "pull", pull, "lift", "" + lift, "place_sta", stakes.figures.get(foot));
            if (struck) {
                shift.strike(shift.lines().size(), "keyed twice");
            }
        }

        private void rejected(String pull, int lift) {
            ticket(pull, lift, random.nextInt(FEET + 1), random.nextInt(FEET + 1), "fate", "rejected");
        }

        private void tack(String pull, int lift) {
            int from = random.nextInt(FEET + 1);
            int to = random.nextInt(FEET + 1);
            List<String> pairs = new ArrayList<>(
                    List.of("pull", pull, "from_sta", stakes.figures.get(from), "to_sta", stakes.figures.get(to)));
            boolean everyLift = random.nextInt(4) == 0;
            boolean face = random.nextInt(4) == 0;
            boolean struck = random.nextInt(5) == 0;
            if (!everyLift) {
                pairs.addAll(List.of("lift", "" + lift));
            }
            if (face) {
                pairs.addAll(List.of("face", "longitudinal-joint"));
            }
            if (!struck) {
                for (int each = 1; each <= 2; each++) {
                    if (everyLift || each == lift) {
                        Lane lane = lane(pull, each);
                        Lane.over(face ? lane.faces : lane.tacked, from, to, next());
                    }
                }
            }
            shift.key(Kind.TACK, clock(), pairs.toArray(String[]::new));
            if (struck) {
                shift.strike(shift.lines().size(), "another job's");
            }
        }
    }

    private static List<List<Ref>> feet(Cover cover, BigDecimal zero) {
        List<List<Ref>> feet = Lane.feet();
        for (Stretch each : cover.stretches()) {
            int a = each.low().subtract(zero).intValueExact();
            int b = each.high().subtract(zero).intValueExact();
            each.by().forEach(ref -> Lane.over(feet, a, b, ref));
            if (each.by().isEmpty()) {
                Lane.over(feet, a, b, new Ref("before", 1));
            }
        }
        return feet;
    }

    private static void same(String what, List<List<Ref>> told, List<List<Ref>> driven) {
        for (int foot = 0; foot < FEET; foot++) {
            assertThat(told.get(foot))
                    .as("%s at foot %d", what, foot)
                    .containsExactlyInAnyOrderElementsOf(driven.get(foot));
        }
    }

    private static BigDecimal count(List<List<Ref>> feet, IntPredicate where) {
        int count = 0;
        for (int foot = 0; foot < FEET; foot++) {
            count += where.test(foot) ? 1 : 0;
        }
        assertThat(feet).hasSize(FEET);
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
        Lane nothing = new Lane();

        Set<String> seen = new TreeSet<>();
        for (Roadwork.Lane lane : road.lanes()) {
            seen.add(lane.name());
            Lane driven = today.lanes.getOrDefault(lane.name(), nothing);
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
            Lane older = yesterday.lanes.getOrDefault(lane.name(), nothing);
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
        for (int foot = 0; foot <= FEET; foot++) {
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
