package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.spec.Demand;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;

/** How many tests of density the shipped sheets ask for in a sublot. */
class SamplingRulesTest {
    static Stream<Published.Row> printed() {
        return Published.rows("sampling").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printed")
    void aSheetAsksForAsManyTestsAsItsDocument(Published.Row row) {
        SpecSheet sheet = SpecSheet.shipped(row.text("sheet")).orElseThrow();
        assertThat(sheet.asked(Demand.DENSITY_TESTS, Situation.UNKNOWN))
                .singleElement()
                .satisfies(a -> assertThat(a.count()).isEqualByComparingTo(row.number("tests")));
    }
}
