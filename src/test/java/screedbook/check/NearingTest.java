package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import screedbook.entry.Moment;

/**
 * When surface and air come to their limits at the pace of the last readings. The limits are those of the practice sheet
 * (common practice, no source): a riding surface of PG 70 with an aid is at least 35 by night, and by day none is set.
 */
class NearingTest {
    private static List<Nearing> near(Shift shift, String now) {
        return Nearing.of(shift.day(), shift.job(), shift.ground().sheet().orElseThrow(), shift.time(now));
    }

    private static Shift read(Shift shift, String clock, String degrees) {
        return shift.at(clock, "surface surface_degF=" + degrees + " place_sta=12+00 pull=B lift=2 base=asphalt");
    }

    private static Shift falling() {
        return read(read(read(Shift.bare(Map.of()), "21:00", "52"), "22:00", "48"), "23:00", "44");
    }

    /** 52, 48, 44 an hour apart fall 4 degrees an hour; from 44 at 23:00 to 35 are two hours and a quarter. */
    @Test
    void theSurfaceComesToItsLimitWhereTheLineMeetsIt() {
        Nearing surface = near(falling(), "23:10").get(0);

        assertThat(surface.what()).isEqualTo("surface");
        assertThat(surface.limit().text()).isEqualTo("35 °F");
        assertThat(Moment.clock(surface.at())).isEqualTo("01:15");
        assertThat(surface.working().put())
                .contains("the line falls by 4.0 °F an hour and is at 43.3 °F at 23:10")
                .anyMatch(l -> l.startsWith("limit at that time at least 35, practice"));
        assertThat(surface.working().entries()).hasSize(3);
    }

    @Test
    void anyFallingLineMeetsItsLimitWhereAnotherLibrarySaysSo() {
        Random random = new Random(41);
        for (int round = 0; round < 25; round++) {
            SimpleRegression theirs = new SimpleRegression();
            Shift shift = Shift.bare(Map.of());
            for (int i = 0; i < 5; i++) {
                int degrees = 60 - 4 * i + random.nextInt(3);
                theirs.addData(i * 30, degrees);
                read(shift, Moment.clock(shift.time("21:00").plusMinutes(30L * i)), String.valueOf(degrees));
            }
            double minutes = (35 - theirs.getIntercept()) / theirs.getSlope();

            Nearing surface = near(shift, "23:05").get(0);

            assertThat(surface.at()).isEqualTo(shift.time("21:00").plusSeconds(Math.round(minutes * 60)));
        }
    }

    @Test
    void withoutThreeReadingsThatFallNothingIsTold() {
        assertThat(near(read(read(Shift.bare(Map.of()), "22:00", "48"), "23:00", "44"), "23:10"))
                .isEmpty();
        assertThat(near(read(read(read(Shift.bare(Map.of()), "21:00", "44"), "22:00", "48"), "23:00", "52"), "23:10"))
                .isEmpty();
        assertThat(near(read(read(read(Shift.bare(Map.of()), "21:00", "44"), "22:00", "44"), "23:00", "44"), "23:10"))
                .isEmpty();
    }

    @Test
    void readingsThatJumpAboutTellNoPace() {
        Shift jumping = falling();
        read(jumping, "23:20", "60");
        read(jumping, "23:40", "40");
        read(jumping, "23:50", "58");

        assertThat(near(jumping, "23:55")).isEmpty();
    }

    @Test
    void readingsOfLongAgoTellNoPace() {
        assertThat(near(falling(), "05:30")).isEmpty();
    }

    /** From 06:00 on it is day, and by day no limit is set: a line that would only meet 35 after that says nothing. */
    @Test
    void whatIsMetOnlyWhenNoLimitHoldsIsNotTold() {
        Shift slow = read(read(read(Shift.bare(Map.of()), "21:00", "52"), "22:00", "51"), "23:00", "50");

        assertThat(near(slow, "23:10")).isEmpty();
    }

    /** By day nothing is set; at 20:00 night begins, and by then the line lies at 33, already below 35. */
    @Test
    void aLimitThatOnlyNightBringsIsMetWhenNightBegins() {
        Shift evening = read(read(read(Shift.bare(Map.of()), "19:31", "39"), "19:41", "37"), "19:51", "35");

        assertThat(near(evening, "19:52"))
                .extracting(n -> n.what() + " " + Moment.clock(n.at()))
                .containsExactly("surface 20:00");
    }

    @Test
    void whatLiesBelowAlreadyIsAFindingAndNoForetelling() {
        Shift below = read(read(read(Shift.bare(Map.of()), "21:00", "40"), "22:00", "36"), "23:00", "32");

        assertThat(near(below, "23:10")).isEmpty();
    }

    /** Ohio sets 50 for the air over this course (read): 58, 56, 54 an hour apart come to 50 two hours after the last. */
    @Test
    void theAirComesToItsLimitToo() {
        Shift ohio = read(Shift.bare(Map.of("sheet", "ohio-401-2010")), "19:50", "70");
        for (int i = 0; i < 3; i++) {
            ohio.at((20 + i) + ":00", "weather air_degF=" + (58 - 2 * i) + " humidity_pct=50 wind_mph=5 sky=clear");
        }

        assertThat(near(ohio, "22:05"))
                .extracting(n -> n.what() + " " + n.limit().text() + " " + Moment.clock(n.at()))
                .containsExactly("air 50 °F 00:00");
    }

    @Test
    void aClosedShiftNearsNothing() {
        assertThat(near(falling().at("23:20", "closing text=done"), "23:30")).isEmpty();
    }

    @Test
    void theSideSaysItInAFewCharacters() {
        Shift shift = falling();
        AtThisPace ahead =
                AtThisPace.of(shift.day(), shift.job(), shift.ground().sheet(), shift.totals(), shift.time("23:10"));

        assertThat(ahead.limits()).containsExactly("surface 35° 01:15");
        assertThat(ahead.work()).isEmpty();
        assertThat(ahead.sections().get(0).figures().get(0).text()).isEqualTo("about 01:15 at this pace");
    }

    /** 223.1 T in nine half hours after the first: 45 an hour; 600 are planned, so 377 more take past six. */
    @Test
    void workThatWouldOutlastTheLastLoadIsToldWithIt() {
        Map<String, Object> job = Map.of(
                "production", PlannedJob.object("plant_rate_ston", "60", "hours", "10"),
                "cutoff", PlannedJob.object("lanes_open", "05:00", "rolling_min", "30", "cooling_min", "60"),
                "haul", List.of(PlannedJob.object("plant", "Quarry", "minutes_min", "30", "loss_dF", "10")));
        Shift shift = Shift.bare(job);
        for (int i = 0; i < 10; i++) {
            shift.load(Moment.clock(shift.time("20:00").plusMinutes(30L * i)), String.valueOf(500 + i), "");
        }
        AtThisPace ahead =
                AtThisPace.of(shift.day(), shift.job(), shift.ground().sheet(), shift.totals(), shift.time("00:40"));

        assertThat(ahead.work()).hasSize(1).first().asString().startsWith("shift done 0");
        assertThat(ahead.lateLine()).contains("but last load 03:00");
    }
}
