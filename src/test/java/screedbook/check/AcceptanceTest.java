package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/**
 * What a sheet makes of a lot's densities. Lots of 40 T in sublots of 30 T and the 10 T that are
 * left; two loads of 22.31 T fill the first.
 */
class AcceptanceTest {
    private static final String HEAD =
            "id,does,quantity,low,high,unit,rounding,document,edition,clause,known,working\n";
    private static final String ENDS =
            "ends,limit,density-quality,92.0,,pct,absolute,own,of the test,1,read,From 92.0.\n";

    private static Shift shift(String sheet, String... cores) {
        return shift("40", sheet, cores);
    }

    private static Shift shift(String lot, String sheet, String[] cores) {
        Map<String, Object> changes = new HashMap<>();
        changes.put(
                "lots",
                Map.of(
                        "lot_ston",
                        new BigDecimal(lot),
                        "sublot_ston",
                        new BigDecimal("30"),
                        "ends",
                        "exact-ton",
                        "overnight",
                        "carry"));
        Shift shift = Shift.night(changes)
                .judgedBy(SpecSheet.read("own", (HEAD + sheet).getBytes(StandardCharsets.UTF_8))
                        .sheet()
                        .orElseThrow())
                .load("20:10", "1001", "")
                .load("20:20", "1002", "");
        int i = 0;
        for (String gmb : cores) {
            i++;
            shift.at(
                    "22:0" + i,
                    "core core=C-" + i + " place_sta=12+50 pull=B lift=2 lot=1 sublot=" + (i + 1) / 2 + " gmb=" + gmb
                            + " gmm=2.500");
        }
        return shift;
    }

    private static Optional<Figure> figure(Shift shift, String id) {
        return Acceptance.added(shift.totals(), shift.ground()).figure(id + ".12.5-70A.1");
    }

    private static String text(Shift shift, String id) {
        return figure(shift, id).orElseThrow().text();
    }

    /** 93.2, 93.6, 92.8: mean 93.2, s 0.4, Q 3.0; three tests have 100 above Q 1.1547 by the beta distribution. */
    @Test
    void aLotIsWithinLimitsAsItsCoresAndTheSheetsEndsSay() {
        Shift shift = shift(ENDS, "2.330", "2.340", "2.320");
        assertThat(text(shift, "density-within")).isEqualTo("100.00 % within at least 92.0, 3 tests");
        Figure figure = figure(shift, "density-within").orElseThrow();
        assertThat(figure.value()).isEqualByComparingTo("100");
        assertThat(figure.working().put())
                .containsExactly(
                        "3 tests: 93.20, 93.60, 92.80",
                        "mean 93.20, s 0.4000",
                        "QL 3.0000 from 92.0: 100.00 %",
                        "the sheet names no way from Q to percent; the beta distribution behind the printed tables");
        assertThat(figure.working().entries()).hasSize(3);
    }

    /** The same Q of 3.0 lies beyond a table whose last row for three tests is 1.16. */
    @Test
    void beyondTheTableThereIsNoPercentAndItIsSaid() {
        Shift shift = shift(
                ENDS + "way,asks,pwl-by-next-higher-row,,,,,own,of the test,2,read,Next higher.\n",
                "2.330",
                "2.340",
                "2.320");
        assertThat(text(shift, "density-within")).startsWith("no percent within limits: Q 3.00 lies beyond the table");
        assertThat(figure(shift, "density-within").orElseThrow().value()).isNull();
    }

    @Test
    void ofTwoCoresThereIsNoPercent() {
        assertThat(text(shift(ENDS, "2.330", "2.340"), "density-within"))
                .isEqualTo("no percent within limits: 2 tests, at least 3 are needed");
    }

    @Test
    void withoutEndsInTheSheetNothingIsSaid() {
        Shift shift = shift("other,limit,density,80,,pct,absolute,own,of the test,1,read,Each.\n", "2.330", "2.340");
        assertThat(Acceptance.added(shift.totals(), shift.ground()).sections())
                .extracting(Section::id)
                .contains("density")
                .doesNotContain("quality");
    }

    /** Florida DOT 334-8.2.2.2, read: (55 + 0.5 x 100) / 100 = 1.05. */
    @Test
    void payIsAnEstimateAndOnlyThereWhereTheSheetGivesTheFormula() {
        String pay = "pay,asks,pay-by-florida-334,,,,,own,of the test,3,read,By the formula.\n";
        assertThat(figure(shift(ENDS, "2.330", "2.340", "2.320"), "pay-factor")).isEmpty();
        assertThat(text(shift(ENDS + pay, "2.330", "2.340", "2.320"), "pay-factor"))
                .isEqualTo("1.0500, estimate, the pay office decides");
        assertThat(text(shift(ENDS + pay, "2.330"), "pay-factor"))
                .isEqualTo("not worked out: the job does not say whether the mix is coarse or fine");
    }

    /** Sublot 1: 93.2 and 93.6, mean 93.4; sublot 2: 92.0. Two tests, so no percent. */
    @Test
    void aTestIsTheMeanOfASublotWhereTheSheetSaysSo() {
        Shift shift = shift(
                ENDS + "by,asks,density-by-sublot,,,,,own,of the test,4,read,By sublot.\n", "2.330", "2.340", "2.300");
        assertThat(text(shift, "density-within")).isEqualTo("no percent within limits: 2 tests, at least 3 are needed");
    }

    /** 30 T at 93.4 and 10 T at 92.0: (2802 + 920) / 40 = 93.05. */
    @Test
    void unequalSublotsWeighByTheirTonsOnlyWhereTheSheetSaysSo() {
        String weigh = "weigh,asks,density-by-tons,,,,,own,of the test,5,read,By tons.\n";
        assertThat(figure(shift(ENDS, "2.330", "2.340", "2.300"), "density-weighed"))
                .isEmpty();
        Figure figure = figure(shift(ENDS + weigh, "2.330", "2.340", "2.300"), "density-weighed")
                .orElseThrow();
        assertThat(figure.text()).isEqualTo("93.05 %");
        assertThat(figure.working().put()).containsExactly("sublot 1: 93.40 x 30.00", "sublot 2: 92.00 x 10");
    }

    /** FHWA-HRT-12-027, figure 103, read: 1 + 0.004 x 100 - 0.360 = 1.04. */
    @Test
    void aLotThatStillFillsSaysSo() {
        String pay = "pay,asks,pay-by-hrt-12-027,,,,,own,of the test,3,read,By the formula.\n";
        String[] cores = {"2.330", "2.340", "2.320"};
        assertThat(text(shift("400", ENDS + pay, cores), "pay-factor"))
                .isEqualTo("1.0400 so far, estimate, the pay office decides");
        assertThat(text(shift("40", ENDS + pay, cores), "pay-factor"))
                .isEqualTo("1.0400, estimate, the pay office decides");
    }
}
