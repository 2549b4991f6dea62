package screedbook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.entry.Fields;
import screedbook.entry.Station;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Lengths along a road with station equations. */
class RoadTest {
    private static final Road PLAIN = road("us");
    private static final Road OVERLAP = road("us", "120+00", "119+50");
    private static final Road GAP = road("us", "120+00", "121+00");

    /** A road of a job in either system; pairs of back and ahead. */
    private static Road road(String units, String... equations) {
        List<Map<String, Object>> list = new ArrayList<>();
        IntStream.range(0, equations.length / 2)
                .forEach(i -> list.add(Map.of("back_sta", equations[2 * i], "ahead_sta", equations[2 * i + 1])));
        Map<String, Object> job = Map.of("units", units, "stationing", Map.of("equations", list));
        return Road.of(Fields.build(Job.class, job).value().settled());
    }

    private static Station at(String text) {
        return Station.of(text);
    }

    private static String length(Road road, String from, String to) {
        return road.length(at(from), at(to)).text();
    }

    /** NICET highway construction inspection, practice text (read): from 46+19 to 86+00; the difference is computed. */
    @Test
    void thePublishedRunIs3981Feet() {
        assertThat(PLAIN.length(at("46+19"), at("86+00"))).isEqualTo(Amount.of("3981", Unit.FOOT));
    }

    @Test
    @DisplayName("row 59: paving toward lower stations has the same length")
    void aLengthIsNeverNegative() {
        assertThat(length(PLAIN, "86+00", "46+19")).isEqualTo("3981 ft");
        assertThat(length(OVERLAP, "119+00", "121+00")).isEqualTo(length(OVERLAP, "121+00", "119+00"));
        assertThat(length(PLAIN, "12+50", "12+50")).isEqualTo("0 ft");
    }

    @Test
    @DisplayName("row 60: back 120+00 = ahead 119+50 makes a run across it 50 ft longer than its figures")
    void aRunAcrossAnOverlapIsLongerThanItsFigures() {
        assertThat(length(OVERLAP, "119+00", "121+00")).isEqualTo("250 ft");
        assertThat(length(OVERLAP, "120+00 bk", "119+50 ah")).isEqualTo("0 ft");
        assertThat(length(OVERLAP, "119+75 bk", "119+75 ah")).isEqualTo("50 ft");
        assertThat(length(OVERLAP, "119+75 ah", "120+25")).isEqualTo("50 ft");
        assertThat(length(OVERLAP, "119+00", "119+75")).isEqualTo("75 ft");
        assertThat(length(OVERLAP, "122+00", "123+00")).isEqualTo("100 ft");
    }

    @ParameterizedTest(name = "row 60: {0} doubtful: {1}")
    @CsvSource({
        "119+49.9, false",
        "119+50, true",
        "119+75, true",
        "120+00, true",
        "120+00.1, false",
        "119+75 bk, false",
        "119+75 ah, false"
    })
    void aStationThatIsThereTwiceNeedsItsSide(String station, boolean doubtful) {
        assertThat(OVERLAP.doubt(at(station)).isPresent()).isEqualTo(doubtful);
    }

    @Test
    void theDoubtSaysWhatWouldBeRight() {
        assertThat(OVERLAP.doubt(at("119+75")))
                .contains("119+75 is there twice; right would be 119+75 bk or 119+75 ah");
        assertThat(GAP.doubt(at("120+50")).orElseThrow()).startsWith("120+50 is in the gap of an equation");
        assertThat(PLAIN.doubt(at("120+50"))).isEmpty();
    }

    @Test
    @DisplayName("row 60: back 120+00 = ahead 121+00 makes a run across it 100 ft shorter than its figures")
    void aRunAcrossAGapIsShorterThanItsFigures() {
        assertThat(length(GAP, "119+00", "122+00")).isEqualTo("200 ft");
        assertThat(length(GAP, "120+00", "121+00")).isEqualTo("0 ft");
        assertThat(length(GAP, "119+00", "120+50")).isEqualTo("100 ft");
        assertThat(length(GAP, "120+50", "122+00")).isEqualTo("100 ft");
        assertThat(GAP.doubt(at("120+00"))).isEmpty();
        assertThat(GAP.doubt(at("121+00"))).isEmpty();
    }

    /**
     * Station equations as a surveying instrument's manual (GPS500, p. 21) has them (read): back 0+450.725 = ahead
     * 0+550.725 is a gap of 100.000, the reverse an overlap; the distance across is the difference less (ahead - back).
     */
    @Test
    void thePublishedEquationIsAGapAndItsReverseAnOverlap() {
        assertThat(length(road("metric", "0+450.725", "0+550.725"), "0+400.000", "0+600.000"))
                .isEqualTo("100.000 m");
        Road reverse = road("metric", "0+550.725", "0+450.725");
        assertThat(length(reverse, "0+400.000", "0+600.000")).isEqualTo("300.000 m");
        assertThat(reverse.doubt(at("0+500.000"))).isPresent();
    }

    @Test
    void equationsOneBehindTheOtherAddUpAlsoWhereTheFiguresBeginAnew() {
        Road two = road("us", "120+00", "119+50", "130+00", "10+00");
        assertThat(length(two, "119+00", "125+00")).isEqualTo("650 ft");
        assertThat(length(two, "129+00", "11+00 ah")).isEqualTo("200 ft");
        assertThat(length(two, "119+00", "11+00 ah")).isEqualTo("1250 ft");
        assertThat(two.doubt(at("125+00"))).isPresent();
        assertThat(two.doubt(at("9+00"))).isEmpty();
    }

    @Test
    void anEquationThatChangesNothingLeavesNoDoubt() {
        assertThat(road("us", "120+00", "120+00").doubt(at("120+00"))).isEmpty();
    }

    @Test
    void aRunIsKnownWhenBothEndsAre() {
        assertThat(PLAIN.run(at("12+03"), at("13+53"))).contains(Amount.of("150", Unit.FOOT));
        assertThat(PLAIN.run(null, at("13+53"))).isEmpty();
        assertThat(PLAIN.run(at("12+03"), null)).isEmpty();
    }

    /** Posts are seldom a mile apart: where 12.50 back is 12.60 ahead a tenth of a mile (528 ft) is jumped over. */
    @Test
    @DisplayName("row 64: a road by mileposts is measured in feet, through its equations")
    void aRoadByMilepostsIsMeasuredInFeet() {
        Map<String, Object> even = Map.of("units", "us", "stationing", Map.of("base", "mileposts"));
        assertThat(Road.of(Fields.build(Job.class, even).value().settled()).length(at("12.35"), at("12.40")))
                .isEqualTo(Amount.of("264", Unit.FOOT));

        Map<String, Object> jump = Map.of(
                "units",
                "us",
                "stationing",
                Map.of("base", "mileposts", "equations", List.of(Map.of("back_sta", "12.50", "ahead_sta", "12.60"))));
        Road road = Road.of(Fields.build(Job.class, jump).value().settled());
        assertThat(road.length(at("12.45"), at("12.65")).value()).isEqualByComparingTo("528");
        assertThat(road.station(road.along(at("12.65")))).isEqualTo(at("12.65"));
        assertThat(road.doubt(at("12.55"))).isPresent();
    }

    @Test
    @DisplayName("row 64: a metric road is measured in metres")
    void aMetricRoadIsInMetres() {
        assertThat(road("metric").length(at("1+000"), at("1+250.5"))).isEqualTo(Amount.of("250.5", Unit.METRE));
    }
}
