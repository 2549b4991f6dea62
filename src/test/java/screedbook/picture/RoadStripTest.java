package screedbook.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import screedbook.entry.Day;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.tally.Cover;
import screedbook.tally.Jobs;
import screedbook.tally.Roadwork;
import screedbook.tally.Shift;
import screedbook.tally.Stretch;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;

/** The road drawn by pull and station. */
class RoadStripTest {
    private final Shift shift = Shift.day();

    private Roadwork work() {
        return Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("19:00"))
                .road();
    }

    private RoadStrip strip() {
        return RoadStrip.of(work(), Jobs.us(), List.of());
    }

    private static String drawn(List<String> lines) {
        return String.join("\n", lines.stream().map(String::stripTrailing).toList());
    }

    private RoadStripTest load(String pull, String from, String to) {
        int n = shift.lines().size();
        shift.ticket(
                String.format("%02d:%02d", 8 + n / 60, n % 60),
                "" + (1001 + n),
                "20.00",
                "mix",
                "12.5-70A",
                "pull",
                pull,
                "lift",
                "2",
                "from_sta",
                from,
                "to_sta",
                to);
        return this;
    }

    private RoadStripTest tack(String pull, String from, String to) {
        shift.key(Kind.TACK, "07:30", "surface", "milled", "pull", pull, "lift", "2", "from_sta", from, "to_sta", to);
        return this;
    }

    private RoadStripTest place(Kind kind, String station, String... more) {
        List<String> pairs = new ArrayList<>(List.of("pull", "A", "lift", "2", "place_sta", station));
        pairs.addAll(List.of(more));
        shift.key(kind, "12:00", pairs.toArray(String[]::new));
        return this;
    }

    @Test
    void aNightIsDrawnByPullAndStation() {
        tack("A", "12+00", "30+00").tack("A", "32+00", "40+00").tack("B", "12+00", "20+00");
        load("A", "12+00", "22+00").load("A", "22+00", "34+00").load("A", "33+00", "36+00");
        load("B", "12+00", "17+50");
        place(Kind.DEPTH, "15+20", "thickness_in", "2.1").place(Kind.GAUGE, "15+40", "first_reading_lb_ft3", "140");
        place(Kind.CORE, "25+00", "core", "C1", "marked_at_sta", "26+10").place(Kind.SAMPLE, "31+00", "sample", "S1");
        RoadStrip strip = strip();

        assertThat(drawn(strip.window(0, 0, 79, 20))).isEqualTo("""
                A lift 2 > ==================--=#==....
                              D         Co    S
                              G
                B lift 2 > ======..
                           --------+---------+---------
                                 20+00     30+00
                """.stripTrailing());
        assertThat(strip.legend(79))
                .containsExactly(
                        "= paved on tack   - paved, no tack noted   . tacked   # paved twice   D depth",
                        "G density   C core   o core marked here, cut elsewhere   S sample",
                        "a column is 100 ft");
        assertThat(strip.span(0, 79)).isEqualTo("12+00 to 40+00");
    }

    @Test
    void aWindowGoesAlongTheRoadAndAcrossIt() {
        load("A", "12+00", "42+00").load("B", "12+00", "22+00");
        RoadStrip strip = strip();

        assertThat(drawn(strip.window(10, 1, 21, 3))).isEqualTo("""
                B lift 2 >
                           --------+-
                         22+00
                """.stripTrailing());
        assertThat(strip.span(10, 21)).isEqualTo("22+00 to 32+00 of 12+00 to 42+00");
    }

    @Test
    void onPaperAPieceOfRoadWhereNothingIsIsLeftOut() {
        load("A", "12+00", "22+00").load("B", "1012+00", "1022+00");
        List<List<String>> pieces = strip().pieces(79);

        assertThat(pieces).hasSize(2);
        assertThat(pieces.get(1).get(1)).startsWith("B lift 2 > ").contains("==========".replace('=', '-'));
        assertThat(pieces).allSatisfy(piece -> assertThat(piece).allMatch(line -> line.length() <= 79));
    }

    @Test
    void onPaperAColumnIsTwiceAsLongWhereThatSavesAPiece() {
        load("A", "12+00", "112+00");

        assertThat(strip().pieces(79)).hasSize(2);
        RoadStrip fitted = RoadStrip.fitted(work(), Jobs.us(), List.of(), 79);
        assertThat(fitted.pieces(79)).hasSize(1);
        assertThat(fitted.legend(79)).contains("- paved, no tack noted   a column is 200 ft");
    }

    @Test
    void aRoadPavedTowardLowerStationsHasItsSignAtTheName() {
        load("A", "22+00", "12+00");
        Job job = Jobs.us();
        Job.Pull pull = job.pull("A", 2).orElseThrow();
        assertThat(pull.direction()).isEqualTo(Job.Direction.UP);

        assertThat(strip().window(0, 0, 79, 9).get(0)).startsWith("A lift 2 > ");
        Job down = Fields.build(
                        Job.class,
                        Map.of("units", "us", "stationing", Map.of("direction", "down"), "zone", "America/Boise"))
                .value()
                .settled();
        assertThat(RoadStrip.of(work(), down, List.of()).window(0, 0, 79, 9).get(0))
                .startsWith("A lift 2 < ");
    }

    @Test
    void whereTheFiguresJumpStandsACaret() {
        Job job = Fields.build(
                        Job.class,
                        Map.of(
                                "units",
                                "us",
                                "zone",
                                "America/Boise",
                                "stationing",
                                Map.of("equations", List.of(Map.of("back_sta", "15+00", "ahead_sta", "40+00")))))
                .value()
                .settled();
        load("A", "12+00", "45+00");
        Roadwork work =
                Totals.of(shift.read(), job, ToDate.NONE, shift.at("19:00")).road();

        assertThat(drawn(RoadStrip.of(work, job, List.of()).window(0, 0, 79, 9)))
                .isEqualTo("""
                A lift 2 > --------
                           ---^----
                         12+00
                """.stripTrailing());
    }

    /** Two loads of 20 T in sublots of 30 T: the first sublot ends in the middle of the second load, at 13+50. */
    @Test
    void aSublotEndsWhereItsLastTonLies() {
        Job job = lots("30");
        load("A", "12+00", "13+00").load("A", "13+00", "14+00").load("A", "14+00", "15+00");
        Day day = shift.read();

        assertThat(LotEnd.of(day, job, ToDate.NONE))
                .extracting(e -> e.pull() + " " + e.lift() + " "
                        + e.at().stripTrailingZeros().toPlainString())
                .containsExactly("A 2 1350", "A 2 1500");
        RoadStrip strip = RoadStrip.of(
                Totals.of(day, job, ToDate.NONE, shift.at("19:00")).road(), job, LotEnd.of(day, job, ToDate.NONE));
        assertThat(strip.window(0, 0, 79, 9).get(1).strip()).isEqualTo("||");
        assertThat(strip.legend(79)).first().asString().contains("| a sublot ends");
    }

    private static Job lots(String sublot) {
        return Fields.build(
                        Job.class,
                        Map.of(
                                "units",
                                "us",
                                "zone",
                                "America/Boise",
                                "lots",
                                Map.of("lot_ston", new BigDecimal(90), "sublot_ston", new BigDecimal(sublot))))
                .value()
                .settled();
    }

    /** Every kind that has a pull, a lift and a place in the mat, but those that cover ground or lie under it. */
    @Test
    void everyKindThatIsLookedAtInPlaceHasALetter() {
        List<Kind> covering =
                List.of(Kind.TICKET, Kind.PART, Kind.TACK, Kind.AREA, Kind.YIELD, Kind.ROLLING, Kind.SURFACE);
        int kinds = 0;
        for (Kind kind : Kind.values()) {
            List<String> names = kind.fields().stream().map(Field::name).toList();
            boolean placed = names.contains("pull")
                    && names.contains("lift")
                    && names.stream().anyMatch(n -> n.endsWith("_sta"));
            if (placed && !covering.contains(kind)) {
                kinds++;
                Shift one = Shift.day();
                String at = names.contains("place_sta") ? "place_sta" : "from_sta";
                one.key(kind, "08:00", "pull", "A", "lift", "2", at, "15+20");
                RoadStrip strip = RoadStrip.of(
                        Totals.of(one.read(), Jobs.us(), ToDate.NONE, one.at("19:00"))
                                .road(),
                        Jobs.us(),
                        List.of());
                assertThat(strip.empty()).as(kind.word()).isFalse();
                assertThat(strip.legend(79).get(0)).as(kind.word()).matches("[A-Z] [a-z].*");
            }
        }
        assertThat(kinds).isGreaterThanOrEqualTo(10);
    }

    private static Cover random(Random random) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            int a = random.nextInt(3000);
            int b = a + random.nextInt(900);
            stretches.add(new Stretch(BigDecimal.valueOf(a), BigDecimal.valueOf(b), List.of(new Ref("paver", i))));
        }
        return Cover.of(stretches);
    }

    private static int times(Cover cover, int foot) {
        return (int) cover.stretches().stream()
                .filter(s -> s.low().intValue() <= foot && foot < s.high().intValue())
                .count();
    }

    /** A sign stands where ten feet of its hundred are so, counted foot by foot. */
    @RepeatedTest(60)
    void theSignOfAColumnIsThatOfItsFeet(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        Cover tacked = random(random);
        Cover paved = random(random);
        Cover before = random(random);
        Roadwork.Lane lane = new Roadwork.Lane("A", 2, tacked, Cover.NONE, paved, before, List.of());
        RoadStrip strip = RoadStrip.of(new Roadwork(List.of(lane)), Jobs.us(), List.of());
        if (strip.empty()) {
            assertThat(paved.empty() && tacked.empty()).isTrue();
            return;
        }
        String row = strip.window(0, 0, 400, 9).get(0).substring(strip.margin());
        int first = first(paved, tacked);
        for (int column = 0; column < strip.columns(); column++) {
            int[] feet = new int[5];
            for (int foot = first + 100 * column; foot < first + 100 * column + 100; foot++) {
                boolean laid = times(paved, foot) > 0;
                feet[0] += times(paved, foot) > 1 || laid && times(before, foot) > 0 ? 1 : 0;
                feet[1] += laid && times(tacked, foot) == 0 ? 1 : 0;
                feet[2] += laid ? 1 : 0;
                feet[3] += times(tacked, foot) > 0 ? 1 : 0;
                feet[4] += times(before, foot) > 0 ? 1 : 0;
            }
            int sign = 0;
            while (sign < 5 && feet[sign] < 10) {
                sign++;
            }
            assertThat(row.charAt(column)).as("column %d", column).isEqualTo("#-=.~ ".charAt(sign));
        }
    }

    private static int first(Cover paved, Cover tacked) {
        int low = Integer.MAX_VALUE;
        for (Cover each : List.of(paved, tacked)) {
            low = each.empty()
                    ? low
                    : Math.min(low, each.stretches().get(0).low().intValue());
        }
        return low / 100 * 100;
    }

    @RepeatedTest(40)
    void noWindowIsWiderOrHigherThanAsked(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        Roadwork.Lane a = new Roadwork.Lane("A", 2, random(random), Cover.NONE, random(random), Cover.NONE, List.of());
        Roadwork.Lane b =
                new Roadwork.Lane("shoulder right", null, Cover.NONE, Cover.NONE, random(random), a.paved(), List.of());
        RoadStrip strip = RoadStrip.of(new Roadwork(List.of(a, b)), Jobs.us(), List.of());
        for (int i = 0; i < 50; i++) {
            int width = random.nextInt(120);
            int height = random.nextInt(12);
            List<String> lines = strip.window(random.nextInt(strip.columns() + 2), random.nextInt(4), width, height);
            assertThat(lines).hasSizeLessThanOrEqualTo(height).allMatch(line -> line.length() <= width);
            assertThat(strip.legend(Math.max(40, width))).allMatch(line -> line.length() <= Math.max(40, width));
        }
    }

    @Test
    void aShiftWithoutStationsHasNoStrip() {
        shift.ticket("08:00", "1001", "20.00", "pull", "A", "lift", "2");

        assertThat(strip().empty()).isTrue();
        assertThat(strip().window(0, 0, 79, 20)).isEmpty();
        assertThat(strip().pieces(79)).isEmpty();
    }

    @Test
    void oneStationThatNobodyCanMeanMakesTheColumnsLonger() {
        load("A", "12+00", "22+00").load("B", "999999+00", "999999+50");

        assertThat(strip().columns()).isBetween(1000, 5001);
        assertThat(strip().legend(79)).last().asString().endsWith("a column is 100000 ft");
    }

    @Test
    void aMetricColumnIs25Metres() {
        Shift metric = Shift.day();
        metric.ticket(
                "08:00",
                "1001",
                "20.00",
                "paver_degC",
                "150",
                "pull",
                "A",
                "lift",
                "1",
                "from_sta",
                "1+000",
                "to_sta",
                "1+100");
        RoadStrip strip = RoadStrip.of(
                Totals.of(metric.read(), Jobs.metric(), ToDate.NONE, metric.at("19:00"))
                        .road(),
                Jobs.metric(),
                List.of());

        assertThat(strip.columns()).isEqualTo(4);
        assertThat(strip.legend(79)).last().asString().endsWith("a column is 25 m");
        assertThat(strip.column(Station.of("1+060"))).isEqualTo(2);
    }
}
