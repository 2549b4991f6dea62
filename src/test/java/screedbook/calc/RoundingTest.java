package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;

class RoundingTest {
    static List<Row> rounded() {
        return Published.rows("rounding").stream()
                .filter(row -> Rounding.ofKey(row.text("rule")).isPresent())
                .toList();
    }

    @Test
    void noRowOfThePublishedRulesIsLost() {
        assertThat(Published.rows("rounding")).hasSize(12);
        assertThat(rounded()).hasSize(11);
    }

    @ParameterizedTest
    @MethodSource("rounded")
    void aFigureIsRoundedAsItsSourcePrintsIt(Row row) {
        Rounding rule = Rounding.ofKey(row.text("rule")).orElseThrow();
        int decimals = Integer.parseInt(row.text("decimals"));
        assertThat(rule.to(decimals, row.number("value"))).isEqualTo(row.number("rounded"));
    }

    /** ASTM E29-02, 3.1; the row that is no rule but a way of writing. */
    @Test
    void theDigitsOfAPrintedFigureAreCountedAsWritten() {
        Row row = Published.rows("rounding", "rule", "significant digits").get(0);
        assertThat(row.number("value").precision()).isEqualTo(Integer.parseInt(row.text("rounded")));
        assertThat(new BigDecimal("32.00").precision()).isEqualTo(Integer.parseInt(row.text("rounded")));
    }

    /** Follows from the two rules; the figures are supplied. */
    @Test
    void aLoneFiveTellsTheRulesApart() {
        BigDecimal tie = new BigDecimal("45.4500");
        assertThat(Rounding.HALF_EVEN.to(1, tie)).isEqualTo("45.4");
        assertThat(Rounding.HALF_UP.to(1, tie)).isEqualTo("45.5");
        assertThat(Rounding.ABSOLUTE.to(1, tie)).isEqualTo("45.4500");
    }

    @Test
    void belowZeroTheSizeDecides() {
        assertThat(Rounding.HALF_UP.to(0, new BigDecimal("-2.5"))).isEqualTo("-3");
        assertThat(Rounding.HALF_EVEN.to(0, new BigDecimal("-2.5"))).isEqualTo("-2");
    }
}
