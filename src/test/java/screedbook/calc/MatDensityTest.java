package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Density of cores and gauge readings. */
class MatDensityTest {
    /** Common practice, no source: 2.310 of 2.480 has 6.85 % voids. */
    @Test
    void voidsAreWhatIsLackingToTheMaximum() {
        Amount percent = MatDensity.percent(new BigDecimal("2.310"), new BigDecimal("2.480"));
        assertThat(percent.value().setScale(2, RoundingMode.HALF_UP)).isEqualByComparingTo("93.15");
        assertThat(MatDensity.voids(percent).value().setScale(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo("6.85");
    }

    /** The project's own figures of ten sites; the rule, the mean of core less gauge, is from memory. */
    @Test
    void aCorrelationIsTheMeanOfCoreLessGauge() {
        double[] core = {144.9, 142.8, 143.1, 140.7, 145.1, 144.2, 143.8, 142.8, 144.8, 143.0};
        double[] gauge = {142.1, 140.9, 140.7, 138.9, 143.6, 142.4, 141.3, 139.8, 143.3, 141.0};
        List<BigDecimal> differences = new ArrayList<>();
        for (int i = 0; i < core.length; i++) {
            differences.add(BigDecimal.valueOf(core[i]).subtract(BigDecimal.valueOf(gauge[i])));
        }
        PercentWithin.Sample sample = MatDensity.correlation(differences);
        assertThat(sample.mean()).isEqualByComparingTo("2.12");
        assertThat(sample.s().doubleValue()).isCloseTo(0.527, within(0.0005));
    }

    /** A trade article on the rhythm of rollers, page 5, read: 89.2, 91.8, 93.5 and 89.3 after 1 to 4 passes; best is 3. */
    @Test
    void theDensityIsHighestAfterTheThirdPassOfTheArticle() {
        Map<Integer, BigDecimal> curve = Map.of(
                1, new BigDecimal("89.2"),
                2, new BigDecimal("91.8"),
                3, new BigDecimal("93.5"),
                4, new BigDecimal("89.3"));
        assertThat(MatDensity.bestPasses(curve)).isEqualTo(3);
        assertThat(MatDensity.bestPasses(Map.of(2, BigDecimal.ONE, 3, BigDecimal.ONE)))
                .as("more passes that bring nothing")
                .isEqualTo(2);
    }

    @Test
    void aGaugeIsHeldAgainstTheUnitWeightOfTheMaximum() {
        Amount most = MatDensity.unitWeight(new BigDecimal("2.480"), Unit.POUND_PER_CUBIC_FOOT);
        assertThat(most.value()).isEqualByComparingTo("154.752");
        Amount percent = MatDensity.percentOf(Amount.of("144.3", Unit.POUND_PER_CUBIC_FOOT), most);
        assertThat(percent.value().setScale(2, RoundingMode.HALF_UP)).isEqualByComparingTo("93.25");
        assertThat(MatDensity.unitWeight(new BigDecimal("2.480"), Unit.KILOGRAM_PER_CUBIC_METRE)
                        .value())
                .isEqualByComparingTo("2480");
    }
}
