package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

class SpreadRateTest {
    private static final Amount LANE = Strip.area(Amount.of("12", Unit.FOOT), Amount.of("1000", Unit.FOOT));

    static List<Row> worked() {
        return Published.rows("spread-rate");
    }

    static List<Row> percents() {
        return Published.rows("spread-rate", "case", "percent");
    }

    static List<Row> thicknesses() {
        return worked().stream()
                .filter(row -> !row.text("case").equals("percent"))
                .toList();
    }

    @Test
    void noWorkedExampleIsLost() {
        assertThat(worked()).hasSize(9);
        assertThat(thicknesses()).hasSize(6);
        assertThat(percents()).hasSize(3);
    }

    @ParameterizedTest
    @MethodSource("thicknesses")
    void aThicknessMakesItsRate(Row row) {
        assertThat(SpreadRate.target(thickness(row), unitWeight(row)).value())
                .isEqualByComparingTo(row.number("rate_lb_yd2"));
    }

    @ParameterizedTest
    @MethodSource("thicknesses")
    void aRateIsWorthItsThickness(Row row) {
        Amount worth = SpreadRate.equivalentThickness(rate(row), unitWeight(row));
        assertThat(worth.unit()).isEqualTo(Unit.INCH);
        assertThat(worth.value()).isEqualByComparingTo(row.number("thickness_in"));
    }

    @ParameterizedTest
    @MethodSource("percents")
    void aRateIsToldInPercentOfItsTarget(Row row) {
        Amount target = SpreadRate.target(thickness(row), unitWeight(row));
        assertThat(SpreadRate.percentOf(target, rate(row)).orElseThrow().value())
                .isEqualByComparingTo(row.number("percent"));
    }

    /** Own arithmetic with the usual unit weight: 1333.33 yd2 at 220 lb/yd2. */
    @Test
    void aThousandFeetOfLaneTwoInchesThickTakeAHundredAndFortySixTons() {
        Amount target = SpreadRate.target(Amount.of("2", Unit.INCH), SpreadRate.USUAL_UNIT_WEIGHT);
        Amount tons = SpreadRate.weightFor(LANE, target);
        assertThat(tons.shown(2).text()).isEqualTo("146.67 T");
        assertThat(SpreadRate.of(tons, LANE).orElseThrow().shown(6).text()).isEqualTo("220.000000 lb/yd²");
    }

    /** The form of the rate as paving forms print it: tons times 2000 over length times width over 9. */
    @Test
    void theRateIsPoundsOverSquareYards() {
        Amount rate = SpreadRate.of(Amount.of("22.00", Unit.SHORT_TON), Amount.of("200", Unit.SQUARE_YARD))
                .orElseThrow();
        assertThat(rate.value()).isEqualByComparingTo("220");
        assertThat(rate.unit()).isEqualTo(Unit.POUND_PER_SQUARE_YARD);
    }

    @Test
    void aMetricAreaMakesAMetricRate() {
        Amount rate = SpreadRate.of(Amount.of("24.0", Unit.TONNE), Amount.of("200", Unit.SQUARE_METRE))
                .orElseThrow();
        assertThat(rate.text()).isEqualTo("120.0 kg/m²");
        Amount tonnes = SpreadRate.weightFor(Amount.of("200", Unit.SQUARE_METRE), rate);
        assertThat(tonnes.value()).isEqualByComparingTo("24");
        assertThat(tonnes.unit()).isEqualTo(Unit.TONNE);
    }

    @Test
    void fiftyMillimetresAtTwentyThreeHundredFiftyKilogramsAreOneSeventeenAndAHalf() {
        Amount density = Amount.of("2350", Unit.KILOGRAM_PER_CUBIC_METRE);
        Amount target = SpreadRate.target(Amount.of("50", Unit.MILLIMETRE), density);
        assertThat(target.value()).isEqualByComparingTo("117.5");
        assertThat(SpreadRate.equivalentThickness(target, density).value()).isEqualByComparingTo("50");
    }

    /** Florida DOT training on spread rates: 43.3 times Gmm for each inch. The Gmm is supplied. */
    @Test
    void theUnitWeightFollowsFromTheMaximumSpecificGravity() {
        Amount unitWeight = SpreadRate.unitWeightFromGmm(new BigDecimal("2.540"));
        assertThat(unitWeight.value()).isEqualByComparingTo("109.982");
        assertThat(SpreadRate.target(Amount.of("1.5", Unit.INCH), unitWeight).value())
                .isEqualByComparingTo("164.973");
    }

    @Test
    void withoutAnAreaThereIsNoRate() {
        assertThat(SpreadRate.of(Amount.of("22", Unit.SHORT_TON), Amount.of("0", Unit.SQUARE_YARD)))
                .isEmpty();
        assertThat(SpreadRate.percentOf(
                        Amount.of("0", Unit.POUND_PER_SQUARE_YARD), Amount.of("165", Unit.POUND_PER_SQUARE_YARD)))
                .isEmpty();
    }

    @Test
    void aThicknessInFeetIsAskedForInInches() {
        assertThatThrownBy(() -> SpreadRate.target(Amount.of("0.15", Unit.FOOT), SpreadRate.USUAL_UNIT_WEIGHT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.15 ft");
    }

    private static Amount thickness(Row row) {
        return new Amount(row.number("thickness_in"), Unit.INCH);
    }

    private static Amount unitWeight(Row row) {
        return new Amount(
                row.number("unit_weight"),
                Unit.ofSuffix(row.text("unit_weight_unit")).orElseThrow());
    }

    private static Amount rate(Row row) {
        return new Amount(row.number("rate_lb_yd2"), Unit.POUND_PER_SQUARE_YARD);
    }
}
