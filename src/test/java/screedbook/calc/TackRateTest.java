package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

class TackRateTest {
    private static final Amount THOUSAND = Amount.of("1000", Unit.SQUARE_YARD);
    private static final BigDecimal TWO_THIRDS = new BigDecimal(200).divide(new BigDecimal(3), MathContext.DECIMAL128);

    static List<Row> gallons() {
        return Published.rows("tack-rate", "case", "gallons for 1000 yd2");
    }

    static List<Row> residuals() {
        return Published.rows("tack-rate", "case", "residual");
    }

    static List<Row> metrics() {
        return Published.rows("tack-rate", "case", "metric");
    }

    static List<Row> bands() {
        return Published.rows("tack-rate", "case", "band");
    }

    static List<Row> dilutions() {
        return Published.rows("tack-dilution");
    }

    static List<Row> residues() {
        return Published.rows("emulsion-residue");
    }

    static List<Row> volumes() {
        return Published.rows("worked-tack", "case", "volume");
    }

    static List<Row> orders() {
        return Published.rows("worked-tack", "case", "order");
    }

    @Test
    void noPublishedRateIsLost() {
        assertThat(gallons()).hasSize(14);
        assertThat(residuals()).hasSize(3);
        assertThat(metrics()).hasSize(2);
        assertThat(bands()).hasSize(1);
        assertThat(Published.rows("tack-rate")).hasSize(14 + 3 + 2 + 1);
        assertThat(dilutions()).hasSize(3);
        assertThat(residues()).hasSize(9);
        assertThat(volumes()).hasSize(2);
        assertThat(orders()).hasSize(2);
        assertThat(Published.rows("worked-tack")).hasSize(6);
    }

    @ParameterizedTest
    @MethodSource("gallons")
    void gallonsOverAreaAreThePrintedRate(Row row) {
        Amount gallons = new Amount(row.number("gal"), Unit.GALLON);
        Amount applied = TackRate.applied(gallons, THOUSAND).orElseThrow();
        assertThat(applied).isEqualByComparingTo(rate(row));
        assertThat(TackRate.volumeFor(THOUSAND, rate(row), BigDecimal.ZERO)).isEqualByComparingTo(gallons);
    }

    @ParameterizedTest
    @MethodSource("bands")
    void aBandOfRatesIsABandOfGallons(Row row) {
        Amount fewest = TackRate.volumeFor(THOUSAND, gallonsPerYard(row.number("low")), BigDecimal.ZERO);
        Amount most = TackRate.volumeFor(THOUSAND, gallonsPerYard(row.number("high")), BigDecimal.ZERO);
        assertThat(fewest.value()).isEqualByComparingTo("50");
        assertThat(most.value()).isEqualByComparingTo("70");
    }

    @ParameterizedTest
    @MethodSource("metrics")
    void aRateIsToldInLitresAsPrintedBesideIt(Row row) {
        assertThat(rate(row).to(Unit.LITRE_PER_SQUARE_METRE).shown(2).value()).isEqualTo(row.number("expected"));
    }

    @ParameterizedTest
    @MethodSource("residuals")
    void whatStaysIsAsPublished(Row row) {
        Amount residual = TackRate.residual(rate(row), residue(row), dilution(row));
        BigDecimal expected = row.number("expected");
        assertThat(residual.value().setScale(expected.scale(), RoundingMode.HALF_UP))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("dilutions")
    void theEmulsionsShareFollowsFromItsParts(Row row) {
        Amount share = TackRate.residual(gallonsPerYard(BigDecimal.ONE), residue(row), dilution(row));
        assertThat(share.value()).isEqualByComparingTo(row.number("share"));
    }

    @ParameterizedTest
    @MethodSource("residues")
    void theResidueOfAGradeSaysWhatStays(Row row) {
        Amount applied = gallonsPerYard(row.number("applied"));
        Amount residual = TackRate.residual(applied, row.number("residue"), Dilution.NONE);
        assertThat(residual.value()).isEqualByComparingTo(row.number("residual"));
        assertThat(TackRate.appliedFor(residual, row.number("residue"), Dilution.NONE))
                .isEqualByComparingTo(applied);
    }

    @ParameterizedTest
    @MethodSource("volumes")
    void theVolumeForAStripIsAsWorked(Row row) {
        BigDecimal expected = row.number("expected");
        assertThat(worked(row).value().setScale(expected.scale(), RoundingMode.HALF_UP))
                .isEqualTo(expected);
    }

    @Test
    void theDrumsForAParkingAreaAreAsWorked() {
        Row row = Published.rows("worked-tack", "case", "drums").get(0);
        BigDecimal drums = worked(row).value().divide(new BigDecimal("53"), MathContext.DECIMAL128);
        assertThat(drums.setScale(2, RoundingMode.HALF_UP)).isEqualTo(row.number("expected"));
    }

    @ParameterizedTest
    @MethodSource("orders")
    void anEstimateGoesToTheNextHigherGallon(Row row) {
        assertThat(TackRate.toOrder(new Amount(row.number("rate"), Unit.GALLON)).value())
                .isEqualTo(row.number("expected"));
    }

    @Test
    void theAnswerOnTackRatesIsAsWorked() {
        Row row = Published.rows("worked-tack", "case", "residual").get(0);
        Amount residual = TackRate.residual(rate(row), TWO_THIRDS, Dilution.of("1", "1"));
        assertThat(residual.shown(2).value()).isEqualTo(row.number("expected"));
    }

    @Test
    void waterHalvesWhatStaysAndDoublesWhatIsSprayed() {
        Dilution half = Dilution.of("1", "1");
        Amount residual = gallonsPerYard(new BigDecimal("0.04"));
        assertThat(TackRate.appliedFor(residual, new BigDecimal("50"), half).value())
                .isEqualByComparingTo("0.16");
        assertThat(TackRate.appliedFor(residual, new BigDecimal("50"), Dilution.NONE)
                        .value())
                .isEqualByComparingTo("0.08");
        assertThat(half.diluted()).isTrue();
        assertThat(Dilution.NONE.diluted()).isFalse();
        assertThat(half.text()).isEqualTo("1:1");
    }

    @Test
    void aMetricAreaMakesLitresToTheSquareMetre() {
        Amount area = Amount.of("500", Unit.SQUARE_METRE);
        Amount rate = TackRate.applied(Amount.of("150", Unit.LITRE), area).orElseThrow();
        assertThat(rate.text()).isEqualTo("0.3 L/m²");
        assertThat(TackRate.volumeFor(area, rate, new BigDecimal("5")).text()).isEqualTo("157.5 L");
    }

    @Test
    void withoutAnAreaThereIsNoRate() {
        assertThat(TackRate.applied(Amount.of("50", Unit.GALLON), Amount.of("0", Unit.SQUARE_YARD)))
                .isEmpty();
    }

    @Test
    void aResidueOutsideItsRangeIsNamed() {
        assertThatThrownBy(() -> TackRate.residual(
                        gallonsPerYard(new BigDecimal("0.06")), new BigDecimal("100.1"), Dilution.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("100.1");
        assertThatThrownBy(() -> Dilution.of("0", "1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0:1");
    }

    private static Amount worked(Row row) {
        Amount area = Strip.area(
                new Amount(row.number("width_ft"), Unit.FOOT), new Amount(row.number("length_ft"), Unit.FOOT));
        return TackRate.volumeFor(area, rate(row), row.number("loss"));
    }

    private static Amount rate(Row row) {
        return gallonsPerYard(row.number("rate"));
    }

    private static Amount gallonsPerYard(BigDecimal value) {
        return new Amount(value, Unit.GALLON_PER_SQUARE_YARD);
    }

    private static Dilution dilution(Row row) {
        return Dilution.of(row.text("emulsion"), row.text("water"));
    }

    private static BigDecimal residue(Row row) {
        return row.text("residue").equals("2/3") ? TWO_THIRDS : row.number("residue");
    }
}
