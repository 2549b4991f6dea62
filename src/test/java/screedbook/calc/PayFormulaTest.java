package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;

/** Pay factors as agencies print them. */
class PayFormulaTest {
    static Stream<Published.Row> printed() {
        return Published.rows("pay-factor").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printed")
    void aFactorIsAsItsFormulaIsPrinted(Published.Row row) {
        PayFormula formula =
                PayFormula.valueOf(row.text("formula").toUpperCase(Locale.ROOT).replace('-', '_'));
        int tests = row.number("tests").intValue();
        PayFormula.Factor factor = formula.factor(
                tests < 3 ? small(row, tests) : new PayFormula.Lot(tests(tests), row.number("value"), null));
        assertThat(factor.value())
                .as(factor.how())
                .hasValueSatisfying(f -> assertThat(f).isEqualByComparingTo(row.number("factor")));
    }

    /** Tests that lie the row's deviation off the target: one above it, the next below. */
    private static PayFormula.Lot small(Published.Row row, int tests) {
        boolean coarse = row.text("mix").equals("coarse");
        BigDecimal target = new BigDecimal(coarse ? "94.50" : "93.00");
        List<BigDecimal> both = List.of(target.subtract(row.number("value")), target.add(row.number("value")));
        return new PayFormula.Lot(both.subList(0, tests), null, coarse);
    }

    private static List<BigDecimal> tests(int count) {
        return Collections.nCopies(count, new BigDecimal("93.0"));
    }

    @Test
    void whereAFormulaIsNotHereThereIsNoFactorAndItIsSaid() {
        PayFormula.Factor ten =
                PayFormula.COLORADO_105_3.factor(new PayFormula.Lot(tests(10), new BigDecimal("90"), null));
        assertThat(ten.value()).isEmpty();
        assertThat(ten.how()).isEqualTo("the formula for 10 tests is not here; those for 3 to 9 are");
        for (PayFormula formula : PayFormula.values()) {
            assertThat(formula.factor(new PayFormula.Lot(tests(4), null, true)).value())
                    .isEmpty();
        }
        assertThat(PayFormula.FLORIDA_334
                        .factor(new PayFormula.Lot(tests(1), null, null))
                        .how())
                .isEqualTo("the job does not say whether the mix is coarse or fine");
    }
}
