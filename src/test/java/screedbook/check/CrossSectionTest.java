package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lanes, wheel paths and joints of a planned road. Where the wheel paths lie is own arithmetic with settled figures. */
class CrossSectionTest {
    private static CrossSection lane(String width) {
        return CrossSection.of(PlannedJob.plan()
                .road(List.of("0", width), List.of(List.of("0", width)))
                .wheels("3.28", "2.87")
                .job());
    }

    /** The middle of the lane less and plus 2.87, each half of 3.28 to both sides. */
    @ParameterizedTest
    @CsvSource({"10, 0.49, 3.77, 6.23, 9.51", "11, 0.99, 4.27, 6.73, 10.01", "12, 1.49, 4.77, 7.23, 10.51"})
    void aLaneHasTwoWheelPathsAboutItsMiddle(String width, BigDecimal a, BigDecimal b, BigDecimal c, BigDecimal d) {
        List<CrossSection.Strip> paths = lane(width).paths();

        assertThat(paths).hasSize(2);
        assertThat(paths.get(0).from()).isEqualByComparingTo(a);
        assertThat(paths.get(0).to()).isEqualByComparingTo(b);
        assertThat(paths.get(1).from()).isEqualByComparingTo(c);
        assertThat(paths.get(1).to()).isEqualByComparingTo(d);
    }

    @Test
    void aStripTooNarrowForTwoWheelPathsIsAShoulderAndHasNone() {
        assertThat(lane("9").paths()).isEmpty();
        assertThat(lane("9").lanes()).hasSize(1);
    }

    @Test
    void wheelPathsThatNobodySettledSayThatTheyAreFromMemory() {
        CrossSection road = CrossSection.of(Shift.job(Map.of()));

        assertThat(road.settled()).isFalse();
        assertThat(road.pathSource()).contains("from memory");
    }

    @Test
    void theEndOfAWheelPathLiesBesideIt() {
        CrossSection road = lane("12");

        assertThat(road.path(new BigDecimal("1.49"))).isEmpty();
        assertThat(road.path(new BigDecimal("1.50"))).isPresent();
        assertThat(road.path(new BigDecimal("4.77"))).isEmpty();
    }

    @Test
    void pullsMeetInJointsAndTheOuterEdgesAreNone() {
        CrossSection road = CrossSection.of(PlannedJob.plan()
                .road(List.of("-12", "0", "12"), List.of(List.of("-12", "-1", "12"), List.of("-12", "0", "12")))
                .job());

        assertThat(road.courses()).hasSize(2);
        assertThat(road.courses().get(0).joints())
                .containsExactly(new CrossSection.Joint(1, new BigDecimal("-1"), "A", "B"));
        assertThat(road.courses().get(1).joints())
                .containsExactly(new CrossSection.Joint(2, new BigDecimal("0"), "A", "B"));
    }
}
