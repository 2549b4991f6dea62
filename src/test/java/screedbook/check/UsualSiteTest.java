package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What is usual of mat and rollers, each at its edge and one step outside. */
class UsualSiteTest {
    private static Verdict of(Quantity quantity, String value, String unit) {
        return Marks.usual(quantity).of(Amount.of(value, Unit.ofSuffix(unit).orElseThrow()));
    }

    /**
     * Read: roller speeds in a chapter copy of the Hot-Mix Asphalt Laydown handbook
     * (https://1library.net/article/compaction-variables-under-operator-control.zx86okoq): static 2 to 5 mph, pneumatic
     * 2 to 7, vibratory 2 to 3.5; cessation temperature 175 °F, glossary of Pavement Interactive
     * (https://www.pavementinteractive.org/glossary/cessation-temperature/).
     */
    @ParameterizedTest
    @CsvSource({
        "ROLLER_STATIC, 2, 5, 1.9, 5.1, mph",
        "ROLLER_PNEUMATIC, 2, 7, 1.9, 7.1, mph",
        "ROLLER_VIBRATORY, 2, 3.5, 1.9, 3.6, mph"
    })
    void aRollerGoesAsTheHandbookSays(
            Quantity quantity, String low, String high, String under, String over, String unit) {
        assertThat(of(quantity, low, unit)).isEqualTo(Verdict.INSIDE);
        assertThat(of(quantity, high, unit)).isEqualTo(Verdict.INSIDE);
        assertThat(of(quantity, under, unit)).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(quantity, over, unit)).isEqualTo(Verdict.OUTSIDE);
    }

    /** The first is read as above; all others, as the range of the mat or of a Gmm, are common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "MAT_ROLLING_ENDS, 175, 174, degF",
        "PROFILE_MODERATE, 25, 26, dF",
        "PROFILE_SEVERE, 50, 51, dF",
        "MAT, 140, 139, degF",
        "MAT, 350, 351, degF",
        "JOINT_FROM_LINE, 0.5, 0.6, ft",
        "GMM, 2.2, 2.19, times",
        "GMM, 2.8, 2.81, times",
        "GMB, 1.9, 1.89, times",
        "GMB, 2.7, 2.71, times",
        "AIR_VOIDS, 1, 0.9, pct",
        "AIR_VOIDS, 12, 12.1, pct",
        "BINDER_CONTENT, 3, 2.9, pct",
        "BINDER_CONTENT, 9, 9.1, pct",
        "RESIDUE, 25, 24, pct",
        "RESIDUE, 80, 81, pct"
    })
    void anEdgeIsInsideAndAStepBeyondItIsNot(Quantity quantity, String edge, String beyond, String unit) {
        assertThat(of(quantity, edge, unit)).isEqualTo(Verdict.INSIDE);
        assertThat(of(quantity, beyond, unit)).isEqualTo(Verdict.OUTSIDE);
    }

    /** 25 °F of difference are 13.9 °C of difference: a job in degrees Celsius has the same classes. */
    @ParameterizedTest
    @CsvSource({"13, NONE", "14, MODERATE", "27, MODERATE", "28, SEVERE"})
    void theClassesHoldInDegreesCelsius(String apart, MatRules.Word word) {
        assertThat(MatRules.Word.of(Amount.of(apart, Unit.DIFF_C))).isEqualTo(word);
    }
}
