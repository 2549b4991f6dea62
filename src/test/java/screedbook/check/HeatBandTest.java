package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/**
 * The window of target discharge temperatures. Expected figures follow from the practice sheet (common practice, no
 * source): at the plant at most 325 within 25 of the target, at the paver at least 260, 270 or 280.
 */
class HeatBandTest {
    private static final SpecSheet PRACTICE = SpecSheet.shipped("practice").orElseThrow();

    private static HeatBand band(String grade, String loss) {
        Job job = PlannedJob.plan()
                .mix(grade, "19", "fine", "in", "2.5")
                .haul(loss)
                .job();
        return HeatBand.all(job, PRACTICE).get(0);
    }

    @ParameterizedTest
    @CsvSource({"64, 285, 15", "70, 295, 5", "76, 305, -5"})
    void theTargetIsAtMost300AndTheLeastOneAndTheGreatestLossFollowFromTheGrade(
            String grade, BigDecimal least, BigDecimal most) {
        HeatBand band = band(grade, "0");

        assertThat(band.ceiling().orElseThrow().at()).isEqualByComparingTo("300");
        assertThat(band.floor().orElseThrow().at()).isEqualByComparingTo(least);
        assertThat(band.mostLoss().orElseThrow().value()).isEqualByComparingTo(most);
    }

    static Stream<Arguments> gradesAndLosses() {
        return Stream.of(64, 70, 76)
                .flatMap(grade ->
                        Stream.iterate(0, loss -> loss <= 30, loss -> loss + 1).map(loss -> Arguments.of(grade, loss)));
    }

    /** Every tenth of a degree from 200 to 400: a load 25 over stays inside at the plant, one 25 under at the paver. */
    @ParameterizedTest
    @MethodSource("gradesAndLosses")
    void theWindowIsTheSetOfTargetsThatHoldBothLimitsTriedOneByOne(int grade, int loss) {
        BigDecimal paver = BigDecimal.valueOf(grade == 64 ? 260 : grade == 70 ? 270 : 280);
        BigDecimal tolerance = BigDecimal.valueOf(25);
        List<BigDecimal> good = Stream.iterate(new BigDecimal("200.0"), t -> t.add(new BigDecimal("0.1")))
                .limit(2001)
                .filter(t -> t.add(tolerance).compareTo(BigDecimal.valueOf(325)) <= 0)
                .filter(t ->
                        t.subtract(tolerance).subtract(BigDecimal.valueOf(loss)).compareTo(paver) >= 0)
                .toList();

        HeatBand band = band(String.valueOf(grade), String.valueOf(loss));

        assertThat(band.empty()).isEqualTo(good.isEmpty());
        if (!good.isEmpty()) {
            assertThat(band.floor().orElseThrow().at()).isEqualByComparingTo(good.get(0));
            assertThat(band.ceiling().orElseThrow().at()).isEqualByComparingTo(good.get(good.size() - 1));
        }
    }

    @Test
    void anEmptyWindowSaysWhatWouldOpenItAndNeverAnotherGrade() {
        Finding found = PlannedJob.plan()
                .mix("70", "19", "fine", "in", "2.5")
                .haul("12")
                .findings("practice", "plan-heat-window")
                .get(0);

        assertThat(found.sort()).isEqualTo(Sort.OUTSIDE);
        assertThat(found.seen())
                .isEqualTo("M on lift 1 from Quarry: the target has to be at least 307 and at most 300 °F");
        assertThat(found.limit()).isEqualTo("at least 270 °F at the paver, at most 325 °F at the plant");
        assertThat(found.inside())
                .contains(
                        "a loss of at most 5 °F on the way: a shorter haul, insulated bodies or trucks that lose less")
                .contains("within 21.5 °F of the target")
                .contains("warm mix")
                .doesNotContain("PG")
                .doesNotContain("grade");
        assertThat(found.working()).contains("270 at the paver + 25 tolerance + 12 loss = 307");
    }

    @Test
    void whereNotEvenAHaulWithoutLossHasATargetNoShorterHaulIsOffered() {
        assertThat(band("76", "0").opens().get(0))
                .isEqualTo(
                        "nothing on the way, since even without any loss the limits are 5 °F too near to each other");
    }

    /** What is offered is tried: the loss that is said to open a window opens it, and a tenth more does not. */
    @Test
    void theLossThatIsOfferedOpensTheWindowAndATenthMoreDoesNot() {
        String most = band("64", "40").mostLoss().orElseThrow().value().toPlainString();

        assertThat(band("64", most).empty()).isFalse();
        assertThat(band("64", new BigDecimal(most).add(new BigDecimal("0.1")).toPlainString())
                        .empty())
                .isTrue();
    }

    @Test
    void aTargetOutsideItsWindowIsFoundAndOneOnItsEndIsNot() {
        assertThat(PlannedJob.plan()
                        .mix("64", "19", "fine", "in", "2.5")
                        .haul("15")
                        .findings("practice", "plan-heat-target"))
                .isEmpty();
        assertThat(PlannedJob.plan()
                        .mix("64", "19", "fine", "in", "2.5")
                        .haul("14")
                        .with(
                                "mixes",
                                List.of(PlannedJob.object("name", "M", "binder", "64-22", "target_plant_degF", "298")))
                        .findings("practice", "plan-heat-target"))
                .singleElement()
                .extracting(Finding::inside)
                .isEqualTo("a target of 299 to 300 °F");
    }

    @Test
    void withoutAHaulTheRoomForALossIsTold() {
        assertThat(PlannedJob.plan().mix("70", "19", "fine", "in", "2.5").findings("practice", "plan-haul"))
                .singleElement()
                .extracting(Finding::seen)
                .isEqualTo("no haul is settled for M; the limits leave room for a loss of at most 5 °F");
    }

    /** Florida DOT 334 (c. 2007-2010), mix design item 8: at most 330 with modified binder, 315 without; read. */
    @ParameterizedTest
    @CsvSource({"yes, 330", "no, 315"})
    void aLimitOfTheTargetItselfIsTheCeilingWithoutAnyTolerance(String polymer, BigDecimal most) {
        Job job = PlannedJob.plan()
                .mix("76", "12.5", "fine", "in", "2.0")
                .with("mixes", List.of(PlannedJob.object("name", "M", "polymer", polymer)))
                .job();

        HeatBand band = HeatBand.all(
                        job, SpecSheet.shipped("florida-300-330-334").orElseThrow())
                .get(0);

        assertThat(band.ceiling().orElseThrow().at()).isEqualByComparingTo(most);
        assertThat(band.floor()).isEmpty();
    }

    @Test
    void aSheetThatSetsNoLimitGivesNoWindowAndNoVerdict() {
        Job job = PlannedJob.plan()
                .mix("64", "19", "fine", "in", "2.5")
                .haul("15")
                .job();

        HeatBand band = HeatBand.all(job, SpecSheet.shipped("ohio-401-2010").orElseThrow())
                .get(0);

        assertThat(band.text()).isEqualTo("no limit set");
        assertThat(band.holdsTarget()).isEmpty();
    }

    /** 260 °F is 126.7 °C, 325 is 162.8, and 25 degrees F of difference are 13.9: own arithmetic. */
    @Test
    void aMetricJobIsToldInItsOwnDegreesToATenth() {
        Job job = PlannedJob.plan()
                .with("units", "metric")
                .with("lifts", null)
                .with("pulls", null)
                .with("lane_lines", null)
                .with("trucks", null)
                .with("tack_targets", null)
                .with("distributors", null)
                .with("mixes", List.of(PlannedJob.object("name", "M", "binder", "64-22", "target_plant_degC", "145")))
                .with("haul", List.of(PlannedJob.object("plant", "Quarry", "loss_dC", "5", "source", "own loads")))
                .job();

        HeatBand band = HeatBand.all(job, PRACTICE).get(0);

        assertThat(band.text()).isEqualTo("145.6 to 148.9 °C");
        assertThat(band.floor().orElseThrow().steps())
                .isEqualTo("126.7 at the paver + 13.9 tolerance + 5 loss = 145.6");
        assertThat(band.holdsTarget()).contains(false);
    }
}
