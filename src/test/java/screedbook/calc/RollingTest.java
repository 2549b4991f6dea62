package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * Against a supplier's tables, read: Graniterock, asphalt compaction tables
 * (https://www.graniterock.com/product/asphalt-compaction-tables): passes for one coverage, and vibratory speed.
 */
class RollingTest {
    private static Amount feet(String feet) {
        return Amount.of(feet, Unit.FOOT);
    }

    private static Amount inches(String inches) {
        return Amount.of(inches, Unit.INCH);
    }

    /** Pave 12 ft with a drum of 54 in: printed 3. With 6 in over the edge it is 4: common practice, no source. */
    @Test
    void aWidthIsCoveredByAsManyRunsAsTheTablePrints() {
        assertThat(RollerCover.runsAcross(feet("12"), inches("54"), false)).isEqualTo(3);
        assertThat(RollerCover.runsAcross(feet("12"), inches("54"), true)).isEqualTo(4);
    }

    /** Pave 14 ft with a drum of 84 in: printed 2, the rule of the 55 other cells gives 3. */
    @Test
    void theOneCellThatDoesNotFollowTheRuleIsNotFollowed() {
        assertThat(RollerCover.runsAcross(feet("14"), inches("84"), false)).isEqualTo(3);
        assertThat(RollerCover.runsAcross(feet("13"), inches("84"), false)).isEqualTo(2);
    }

    /** The table prints feet a minute for vibrations a minute and impacts a foot: 3000 and 12 are 250. */
    @ParameterizedTest
    @CsvSource({"2500, 208.3, 12.0", "3000, 250, 12.0", "4000, 400, 10.0"})
    void blowsInAFootAreVibrationsOverFeetAMinute(int vibrations, String speed, String impacts) {
        assertThat(RollerCover.impactsAFoot(vibrations, Amount.of(speed, Unit.FOOT_PER_MINUTE)))
                .isEqualByComparingTo(impacts);
    }

    /** The same three columns in miles an hour, as printed to one decimal. */
    @ParameterizedTest
    @CsvSource({"2500, 2.4, 12", "3000, 2.8, 12", "4000, 4.5, 10"})
    void aSpeedInMilesAnHourComesWithinATenthOfAMile(int vibrations, String speed, String impacts) {
        Amount printed = Amount.of(speed, Unit.MILE_PER_HOUR);
        Amount feet = new Amount(
                BigDecimal.valueOf(vibrations).divide(new BigDecimal(impacts), 4, RoundingMode.HALF_UP),
                Unit.FOOT_PER_MINUTE);
        assertThat(feet.to(Unit.MILE_PER_HOUR).minus(printed).value().abs().doubleValue())
                .isLessThanOrEqualTo(0.1);
        assertThat(RollerCover.impactsAFoot(vibrations, feet)).isEqualByComparingTo(impacts);
    }

    @Test
    void aRollerThatStandsHasNoBlowsInAFoot() {
        assertThatThrownBy(() -> RollerCover.impactsAFoot(3000, Amount.of("0", Unit.MILE_PER_HOUR)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RollerCover.runsAcross(feet("12"), inches("6"), false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
