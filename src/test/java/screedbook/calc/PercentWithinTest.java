package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;

/** Percent within limits against printed tables, cell by cell, and against Apache Commons Math. */
class PercentWithinTest {
    private static final int[] COLUMNS = {3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 19, 26, 38, 70, 201};
    /** Cells in which the beta formula with the first number of tests of the column is not what is printed. */
    private static final List<String> APART = List.of("62/15", "67/5", "64/15", "58/19");

    static Stream<Published.Row> printed() {
        return Published.rows("pwl-table").stream();
    }

    static Stream<Published.Row> florida() {
        return Published.rows("pwl-florida").stream();
    }

    /** FHWA T 5080.12 (1989), Table 1B, read: 255 cells. The misprint .031 is 0.31 in the program. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("printed")
    void theTableIsAsItIsPrintedCellByCell(Published.Row row) {
        int percent = row.number("percent").intValue();
        for (int n : COLUMNS) {
            boolean misprint = percent == 62 && n == 15;
            assertThat(row.text("n" + n).equals(".031")).isEqualTo(misprint);
            BigDecimal cell = misprint ? new BigDecimal("0.31") : row.number("n" + n);
            assertThat(QualityTable.q(percent, n)).as(percent + " for " + n).isEqualByComparingTo(cell);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printed")
    void theBetaFormulaGivesTheTableButForTheCellsNamedHere(Published.Row row) {
        int percent = row.number("percent").intValue();
        for (int n : COLUMNS) {
            BigDecimal formula =
                    BigDecimal.valueOf(PercentWithin.inverse(percent, n)).setScale(2, RoundingMode.HALF_UP);
            boolean same = formula.compareTo(row.number("n" + n)) == 0;
            assertThat(same).as(percent + "/" + n).isEqualTo(!APART.contains(percent + "/" + n));
        }
    }

    /** Florida DOT Table 334-8, read: Q from 2.00 to 2.65. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("florida")
    void theBetaFormulaGivesFloridasTableToTheHundredth(Published.Row row) {
        for (int n = 3; n <= 6; n++) {
            assertThat(PercentWithin.formula(row.number("q"), n).setScale(2, RoundingMode.HALF_UP))
                    .as("n = " + n)
                    .isEqualByComparingTo(row.number("n" + n));
        }
    }

    /** Row 100 of the WSDOT and FHWA tables, from memory; the program works it out. */
    @Test
    void theRowOfAHundredIsAsItIsRemembered() {
        String[] remembered = {
            "1.16", "1.50", "1.79", "2.03", "2.23", "2.39", "2.53", "2.65", "2.83", "3.03", "3.20", "3.38", "3.54",
            "3.70", "3.83"
        };
        for (int i = 0; i < COLUMNS.length; i++) {
            assertThat(QualityTable.q(100, COLUMNS[i])).as("n = " + COLUMNS[i]).isEqualByComparingTo(remembered[i]);
        }
    }

    /** FAA AC 150/5370-10, section 110, Table 1, row 99: from memory. */
    @Test
    void theFormulaGivesTheRowOf99AsItIsRemembered() {
        double[] remembered = {1.1541, 1.4700, 1.6714, 1.8008, 1.8888, 1.9520, 1.9994, 2.0362};
        for (int n = 3; n <= 10; n++) {
            assertThat(PercentWithin.inverse(99, n)).isCloseTo(remembered[n - 3], within(0.00006));
        }
    }

    @Test
    void theIncompleteBetaIsWhatAnotherLibrarySays() {
        for (double a : new double[] {0.5, 1, 1.5, 2, 3.5, 6, 17, 99.5, 500}) {
            for (int i = 0; i <= 200; i++) {
                double x = i / 200.0;
                assertThat(Beta.below(x, a))
                        .as("I_" + x + "(" + a + ")")
                        .isCloseTo(
                                org.apache.commons.math3.special.Beta.regularizedBeta(x, a, a, 1e-15), within(1e-11));
            }
        }
    }

    @Test
    void theLogarithmOfGammaIsWhatAnotherLibrarySays() {
        for (double z = 0.5; z < 600; z += 0.5) {
            assertThat(Beta.logGamma(z)).isCloseTo(Gamma.logGamma(z), within(1e-10));
        }
    }

    @Test
    void theIndexOfAPercentIsTheQuantileOfAnotherLibrary() {
        for (int n : COLUMNS) {
            BetaDistribution beta = new BetaDistribution(n / 2.0 - 1, n / 2.0 - 1, 1e-12);
            for (int percent = 51; percent < 100; percent++) {
                double x = beta.inverseCumulativeProbability(1 - percent / 100.0);
                double q = (0.5 - x) * 2 * (n - 1) / Math.sqrt(n);
                assertThat(PercentWithin.inverse(percent, n))
                        .as(percent + " for " + n)
                        .isCloseTo(q, within(1e-7));
            }
        }
    }

    /** Seeded; compared with Apache Commons Math. */
    @Test
    void meanAndStandardDeviationAreWhatAnotherLibrarySays() {
        Random random = new Random(4);
        for (int round = 0; round < 200; round++) {
            List<BigDecimal> values = new ArrayList<>();
            DescriptiveStatistics other = new DescriptiveStatistics();
            for (int i = 0; i < 2 + random.nextInt(30); i++) {
                BigDecimal value = BigDecimal.valueOf(8500 + random.nextInt(1500), 2);
                values.add(value);
                other.addValue(value.doubleValue());
            }
            PercentWithin.Sample sample = PercentWithin.Sample.of(values);
            assertThat(sample.mean().doubleValue()).isCloseTo(other.getMean(), within(1e-10));
            assertThat(sample.s().doubleValue()).isCloseTo(other.getStandardDeviation(), within(1e-9));
        }
    }

    private static List<BigDecimal> values(String... values) {
        return Stream.of(values).map(BigDecimal::new).toList();
    }

    /** FAA AC 150/5370-10, section 110, example A, from memory: 97.95, 1.15, Q about 1.435, 98. */
    @Test
    void aLotWithALowerLimitIsWorkedAsTheExampleIsRemembered() {
        List<BigDecimal> density = values("96.60", "97.55", "99.30", "98.35");
        PercentWithin row = PercentWithin.of(
                density, new BigDecimal("96.3"), null, PercentWithin.Way.NEXT_HIGHER_ROW, Rounding.HALF_UP);
        assertThat(row.sample().mean()).isEqualByComparingTo("97.95");
        assertThat(row.sample().s().setScale(2, RoundingMode.HALF_UP)).isEqualByComparingTo("1.15");
        assertThat(row.percent()).hasValue(BigDecimal.valueOf(98));
        PercentWithin beta =
                PercentWithin.of(density, new BigDecimal("96.3"), null, PercentWithin.Way.BETA, Rounding.ABSOLUTE);
        assertThat(beta.low().q().doubleValue()).isCloseTo(1.4352, within(0.00005));
        assertThat(beta.percent().orElseThrow().doubleValue()).isCloseTo(97.8, within(0.05));
    }

    /** The same, example B, from memory: 3.57, 1.12, QL 1.3992, QU 1.2702, 97, 93, 90. */
    @Test
    void aLotWithBothLimitsIsWorkedAsTheExampleIsRemembered() {
        PercentWithin voids = PercentWithin.of(
                values("5.00", "3.74", "2.30", "3.25"),
                new BigDecimal("2.0"),
                new BigDecimal("5.0"),
                PercentWithin.Way.NEXT_HIGHER_ROW,
                Rounding.ABSOLUTE);
        assertThat(voids.low().q().setScale(4, RoundingMode.HALF_UP)).isEqualByComparingTo("1.3992");
        assertThat(voids.high().q().setScale(4, RoundingMode.HALF_UP)).isEqualByComparingTo("1.2702");
        assertThat(voids.low().percent()).isEqualByComparingTo("97");
        assertThat(voids.high().percent()).isEqualByComparingTo("93");
        assertThat(voids.percent()).hasValue(BigDecimal.valueOf(90));
    }

    @Test
    void belowZeroTheRowIsTakenOffAHundred() {
        assertThat(QualityTable.percent(new BigDecimal("-0.43"), 3)).hasValue(BigDecimal.valueOf(38));
        assertThat(QualityTable.percent(new BigDecimal("0.43"), 3)).hasValue(BigDecimal.valueOf(62));
        assertThat(QualityTable.percent(new BigDecimal("0.44"), 3)).hasValue(BigDecimal.valueOf(63));
    }

    @Test
    void thereIsNoPercentOfTwoTestsOfNoSpreadOrBeyondTheTable() {
        BigDecimal low = new BigDecimal("92.0");
        PercentWithin two =
                PercentWithin.of(values("93.1", "94.0"), low, null, PercentWithin.Way.BETA, Rounding.ABSOLUTE);
        assertThat(two.percent()).isEmpty();
        assertThat(two.why()).isEqualTo("2 tests, at least 3 are needed");
        PercentWithin alike =
                PercentWithin.of(values("93.1", "93.10", "93.1"), low, null, PercentWithin.Way.BETA, Rounding.ABSOLUTE);
        assertThat(alike.percent()).isEmpty();
        assertThat(alike.why()).contains("standard deviation is 0");
        PercentWithin beyond = PercentWithin.of(
                values("94.1", "94.3", "94.2"), low, null, PercentWithin.Way.NEXT_HIGHER_ROW, Rounding.ABSOLUTE);
        assertThat(beyond.percent()).isEmpty();
        assertThat(beyond.why()).contains("Q 22.00 lies beyond the table", "1.16", "100.00");
        assertThat(PercentWithin.of(
                                values("94.1", "94.3", "94.2"), low, null, PercentWithin.Way.BETA, Rounding.ABSOLUTE)
                        .percent())
                .hasValueSatisfying(p -> assertThat(p).isEqualByComparingTo("100"));
    }

    @Test
    void aHigherIndexNeverGivesALowerPercent() {
        for (int n : COLUMNS) {
            List<BigDecimal> rows = IntStream.rangeClosed(50, 100)
                    .mapToObj(p -> QualityTable.q(p, n))
                    .toList();
            assertThat(rows).as("n = " + n).isSorted();
        }
    }
}
