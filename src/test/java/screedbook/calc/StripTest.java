package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

class StripTest {
    @Test
    void aLaneIsItsWidthTimesItsLength() {
        assertThat(Strip.area(feet("12.0"), feet("1000")).shown(2).text()).isEqualTo("1333.33 yd²");
        assertThat(Strip.area(Amount.of("3.6", Unit.METRE), Amount.of("1000", Unit.METRE))
                        .value())
                .isEqualByComparingTo("3600");
    }

    /**
     * The rule of average ends as printed for volumes (an explainer of earthwork sums, average end area: 50 and 70 over
     * 100 make 6000); here the ends are widths.
     */
    @Test
    void aTaperIsTheMeanOfItsEndsTimesItsLength() {
        assertThat(Strip.taper(feet("50"), feet("70"), feet("100"))
                        .to(Unit.SQUARE_FOOT)
                        .value())
                .isEqualByComparingTo("6000");
    }

    /** Own arithmetic: 2400 + 2700 + 2400 = 7500 ft2. */
    @Test
    void aLaneATaperAndAWideLaneAddUp() {
        Amount area = Strip.area(feet("12"), feet("200"))
                .plus(Strip.taper(feet("12"), feet("24"), feet("150")))
                .plus(Strip.area(feet("24"), feet("100")));
        assertThat(area.shown(2).text()).isEqualTo("833.33 yd²");
    }

    @Test
    void aGoreIsHalfOfItsRectangle() {
        assertThat(Strip.taper(feet("0"), feet("18"), feet("100")).value()).isEqualByComparingTo("100");
    }

    @Test
    void aWidthInInchesIsAWidth() {
        assertThat(Strip.area(Amount.of("6", Unit.INCH), feet("900")).value()).isEqualByComparingTo("50");
    }

    @Test
    void aLengthInInchesIsNoLengthOfAStrip() {
        assertThatThrownBy(() -> Strip.area(feet("12"), Amount.of("120", Unit.INCH)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("120 in");
    }

    private static Amount feet(String value) {
        return Amount.of(value, Unit.FOOT);
    }
}
