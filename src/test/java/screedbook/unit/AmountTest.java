package screedbook.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class AmountTest {
    @Test
    void aFigureKeepsTheDigitsItWasWrittenWith() {
        assertThat(Amount.of("2.50", Unit.INCH).text()).isEqualTo("2.50 in");
        assertThat(Amount.of("2.50", Unit.INCH).to(Unit.INCH).text()).isEqualTo("2.50 in");
    }

    /** ASTM E29-02, 3.1: 1270. and 32.00 are written with four significant digits each. */
    @Test
    void significantDigitsAreThoseThatWereWritten() {
        assertThat(Amount.of("1270.", Unit.POUND).value().precision()).isEqualTo(4);
        assertThat(Amount.of("32.00", Unit.INCH).value().precision()).isEqualTo(4);
    }

    @Test
    void amountsCompareByValueAndNotByDigits() {
        assertThat(Amount.of("2.5", Unit.INCH)).isEqualByComparingTo(Amount.of("2.50", Unit.INCH));
        assertThat(Amount.of("1", Unit.FOOT)).isEqualByComparingTo(Amount.of("12", Unit.INCH));
        assertThat(Amount.of("1", Unit.SHORT_TON)).isLessThan(Amount.of("1", Unit.TONNE));
    }

    @Test
    void sumsAreKeptInTheUnitOfTheFirst() {
        assertThat(Amount.of("21.96", Unit.SHORT_TON)
                        .plus(Amount.of("22.04", Unit.SHORT_TON))
                        .text())
                .isEqualTo("44.00 T");
        assertThat(Amount.of("10.00", Unit.SHORT_TON)
                        .minus(Amount.of("500", Unit.POUND))
                        .value())
                .isEqualByComparingTo("9.75");
    }

    @Test
    void whatIsShownIsRoundedHalfUp() {
        assertThat(Amount.of("0.0445", Unit.GALLON_PER_SQUARE_YARD).shown(3).value())
                .isEqualTo(new BigDecimal("0.045"));
    }

    @Test
    void aMeasureHasItsUnitInEitherSystem() {
        assertThat(Measure.TACK_RATE.unit(UnitSystem.US)).isEqualTo(Unit.GALLON_PER_SQUARE_YARD);
        assertThat(Measure.TACK_RATE.unit(UnitSystem.METRIC)).isEqualTo(Unit.LITRE_PER_SQUARE_METRE);
        assertThat(Measure.DEPTH.takes(Unit.MILLIMETRE)).isTrue();
        assertThat(Measure.DEPTH.takes(Unit.FOOT)).isFalse();
    }

    @Test
    void bothUnitsOfAMeasureTurnIntoEachOther() {
        for (Measure measure : Measure.values()) {
            assertThat(measure.unit(UnitSystem.US).dimension())
                    .isEqualTo(measure.unit(UnitSystem.METRIC).dimension());
        }
    }
}
