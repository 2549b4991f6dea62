package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stations as text and as distances. */
class StationTest {
    /** J. Mahun, Open Access surveying, curves chapter A, Stationing, sec. 2 (read): 8+35.67 is 835.67 ft. */
    @Test
    void thePublishedStationIsItsDistance() {
        assertThat(Station.of("8+35.67").distance()).isEqualTo("835.67");
        assertThat(Station.at(new BigDecimal("835.67"), StationBase.FT_100)).hasToString("8+35.67");
    }

    /**
     * J. Mahun, the same, metric (read): 1256.02 m is 1+256.02 where a station is 1000 m and 12+56.02 where it is 100 m.
     * The page prints 12,56.02 and 12+26.02 for the second, which are misprints.
     */
    @ParameterizedTest
    @CsvSource({"M_1000, 1+256.02", "M_100, 12+56.02"})
    void thePublishedMetricDistanceIsAStationOfEitherBase(StationBase base, String station) {
        assertThat(Station.at(new BigDecimal("1256.02"), base)).hasToString(station);
        assertThat(Station.of(station).distance()).isEqualTo("1256.02");
    }

    @ParameterizedTest
    @CsvSource({
        "FT_100, 0, 0+00",
        "FT_100, 5, 0+05",
        "FT_100, 100, 1+00",
        "FT_100, 1E+3, 10+00",
        "FT_100, 1203.50, 12+03.50",
        "FT_100, -25, -0+25",
        "FT_100, 1203.4567, 12+03.457",
        "FT_100, 99.9996, 1+00.000",
        "M_1000, 999.999, 0+999.999",
        "M_1000, 12, 0+012"
    })
    void aDistanceIsWrittenAsAStation(StationBase base, BigDecimal distance, String station) {
        assertThat(Station.at(distance, base)).hasToString(station);
    }

    /** A mile is 5280 ft (NIST Handbook 44 Appendix C): 12.35 miles are 65,208 ft. */
    @ParameterizedTest
    @CsvSource({"12.35, 65208", "0.5, 2640", "10.0, 52800", "-0.25, -1320", "0.0001, 0.528"})
    void aMilepostIsSoManyFeet(String post, BigDecimal feet) {
        assertThat(Station.of(post).distance()).isEqualTo(feet);
        assertThat(Station.at(feet, StationBase.MILEPOSTS)).hasToString(post);
        assertThat(Station.of(post).digits()).isZero();
    }

    @Test
    void anyDistanceIsWrittenAsAMilepostToThreeInches() {
        Random random = new Random(5280);
        for (int i = 0; i < 500; i++) {
            BigDecimal feet = BigDecimal.valueOf(random.nextInt(4_000_000) - 100_000, 1);
            Station post = Station.at(feet, StationBase.MILEPOSTS);
            assertThat(post.distance().subtract(feet).abs()).isLessThanOrEqualTo(new BigDecimal("0.264"));
            assertThat(Station.of(post.text())).isEqualTo(post);
        }
    }

    @ParameterizedTest
    @EnumSource(value = StationBase.class, names = "MILEPOSTS", mode = EnumSource.Mode.EXCLUDE)
    void aStationMadeFromADistanceHasThatDistance(StationBase base) {
        Random random = new Random(20260603);
        for (int i = 0; i < 500; i++) {
            BigDecimal distance = BigDecimal.valueOf(random.nextInt(90_000_000) - 10_000_000, random.nextInt(4));
            assertThat(Station.at(distance, base).distance()).isEqualByComparingTo(distance);
        }
    }

    @Test
    void theSideOfAnEquationStandsBehindTheFigures() {
        assertThat(Station.of("119+75 bk").side()).contains("bk");
        assertThat(Station.of("119+75 ah").side()).contains("ah");
        assertThat(Station.of("119+75").side()).isEmpty();
        assertThat(Station.of("119+75 ah").distance()).isEqualTo("11975");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "1250", "12+5", "12+50.", "12+50 up", "12+50ah", "+50", " 12+50", "12+50.1234", "1234567+00"
            })
    void whatIsNoStationIsRefusedWithWhatWouldBeRight(String text) {
        assertThatThrownBy(() -> Station.of(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"" + text + "\" is no station; right would be 12+50.5");
    }
}
