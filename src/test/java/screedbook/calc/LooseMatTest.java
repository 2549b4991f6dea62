package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

class LooseMatTest {
    /** NAVEDTRA 14080, p. 8-31 (read): 1/8 in for each inch of mat. */
    @Test
    void anEighthOfAnInchIsAddedForEachInch() {
        assertThat(LooseMat.about(Amount.of("1", Unit.INCH)).value()).isEqualByComparingTo("1.125");
        assertThat(LooseMat.about(Amount.of("2.00", Unit.INCH)).value()).isEqualByComparingTo("2.25");
        assertThat(LooseMat.about(Amount.of("40", Unit.MILLIMETRE)))
                .isEqualTo(new Amount(new java.math.BigDecimal("45.000"), Unit.MILLIMETRE));
    }
}
