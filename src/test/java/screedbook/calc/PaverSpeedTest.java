package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

class PaverSpeedTest {
    private static Row only(String word) {
        List<Row> rows = Published.rows("paver-speed", "case", word);
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void theTonsOfAnHourAreAsInTheManual() {
        Row row = only("tons");
        Amount tons = PaverSpeed.tonsAnHour(
                new Amount(row.number("speed_ft_min"), Unit.FOOT_PER_MINUTE), width(row), thickness(row), weight(row));
        assertThat(tons.shown(2).value()).isEqualTo(row.number("expected"));
        assertThat(tons.unit()).isEqualTo(Unit.SHORT_TON);
        assertThat(PaverSpeed.of(tons, width(row), thickness(row), weight(row)).value())
                .isEqualByComparingTo(row.number("speed_ft_min"));
    }

    /** The same manual's 2 inches, not rounded to 0.167 ft: own arithmetic. */
    @Test
    void aRoundedThicknessMovesTheLastDigits() {
        Amount tons = PaverSpeed.tonsAnHour(
                Amount.of("11", Unit.FOOT_PER_MINUTE),
                Amount.of("10", Unit.FOOT),
                Amount.of("2", Unit.INCH),
                Amount.of("146", Unit.POUND_PER_CUBIC_FOOT));
        assertThat(tons.shown(2).text()).isEqualTo("80.30 T");
    }

    @Test
    void aMileTakesAsManyHoursAsTheArmySays() {
        Row row = only("mile");
        Amount speed = PaverSpeed.of(
                new Amount(row.number("tons_hour"), Unit.SHORT_TON), width(row), thickness(row), weight(row));
        assertThat(speed.shown(2).value()).isEqualTo(row.number("expected"));
        BigDecimal hours =
                new BigDecimal("5280").divide(speed.value().multiply(BigDecimal.valueOf(60)), MathContext.DECIMAL64);
        assertThat(hours.setScale(4, RoundingMode.HALF_UP)).isEqualTo(row.number("hours_mile"));
    }

    /** Own arithmetic from the Navy's relation. */
    @ParameterizedTest
    @CsvSource({"200, 12, 2, 146, 22.83", "250, 12, 2, 146, 28.54", "300, 12, 1.5, 148, 45.05"})
    void aRateMakesItsSpeed(String tons, String width, String inches, String weight, String expected) {
        Amount speed = PaverSpeed.of(
                Amount.of(tons, Unit.SHORT_TON),
                Amount.of(width, Unit.FOOT),
                Amount.of(inches, Unit.INCH),
                Amount.of(weight, Unit.POUND_PER_CUBIC_FOOT));
        assertThat(speed.shown(2).text()).isEqualTo(expected + " ft/min");
    }

    /** Own arithmetic: 5 m/min of 3.6 m x 0.05 m x 2400 kg/m3 are 2160 kg in a minute. */
    @Test
    void aMetricMatMakesTonnesAndMetresAMinute() {
        Amount width = Amount.of("3.6", Unit.METRE);
        Amount thickness = Amount.of("50", Unit.MILLIMETRE);
        Amount weight = Amount.of("2400", Unit.KILOGRAM_PER_CUBIC_METRE);
        Amount tonnes = PaverSpeed.tonsAnHour(Amount.of("5", Unit.METRE_PER_MINUTE), width, thickness, weight);
        assertThat(tonnes.shown(1).text()).isEqualTo("129.6 t");
        assertThat(PaverSpeed.of(tonnes, width, thickness, weight).shown(3).text())
                .isEqualTo("5.000 m/min");
    }

    @Test
    void aMatWithoutThicknessHasNoSpeed() {
        assertThatThrownBy(() -> PaverSpeed.of(
                        Amount.of("200", Unit.SHORT_TON),
                        Amount.of("12", Unit.FOOT),
                        Amount.of("0", Unit.INCH),
                        Amount.of("146", Unit.POUND_PER_CUBIC_FOOT)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 in");
    }

    private static Amount width(Row row) {
        return new Amount(row.number("width_ft"), Unit.FOOT);
    }

    private static Amount thickness(Row row) {
        return new Amount(row.number("thickness_ft"), Unit.FOOT);
    }

    private static Amount weight(Row row) {
        return new Amount(row.number("unit_weight_lb_ft3"), Unit.POUND_PER_CUBIC_FOOT);
    }
}
