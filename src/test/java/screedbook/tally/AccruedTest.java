package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures of several shifts taken together, each carried by what it is. Common practice, no source. */
class AccruedTest {
    private static final Working WORKING = new Working("", List.of(), List.of(), "");

    private static Figure figure(String id, String value, String unit) {
        return new Figure(id, id, value + " x", new BigDecimal(value), unit, WORKING);
    }

    private static Figure mean(String id, String value, String whole) {
        return new Figure(id, id, value + " x", new BigDecimal(value), "degF", WORKING, new BigDecimal(whole));
    }

    private static List<Figure> together(List<Figure> one, List<Figure> other) {
        Accrued accrued = new Accrued();
        accrued.add(List.of(new Section("s", "S", one)));
        accrued.add(List.of(new Section("s", "S", other)));
        return accrued.sections().get(0).figures();
    }

    private static BigDecimal value(List<Figure> figures, String id) {
        return figures.stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void countsAndWeightsAddUpAndUnitsNeverMeet() {
        List<Figure> all = together(
                List.of(figure("loads", "3", ""), figure("placed-tons", "66.21", "ston")),
                List.of(figure("loads", "2", ""), figure("placed-tons", "40.10", "t")));

        assertThat(value(all, "loads")).isEqualByComparingTo("5");
        assertThat(all)
                .filteredOn(f -> f.id().equals("placed-tons"))
                .extracting(Figure::unit)
                .containsExactly("ston", "t");
        assertThat(all).extracting(f -> f.value().toPlainString()).containsExactly("5", "66.21", "40.10");
    }

    @Test
    void aMeanWeighsByItsReadingsAndARateByItsArea() {
        List<Figure> all = together(
                List.of(
                        figure("air-readings", "3", ""),
                        mean("air-mean", "50.33", "151"),
                        figure("area.B lift 2", "100", "yd2"),
                        figure("spread-rate.B lift 2", "220", "lb_yd2")),
                List.of(
                        figure("air-readings", "1", ""),
                        mean("air-mean", "60.00", "60"),
                        figure("area.B lift 2", "300", "yd2"),
                        figure("spread-rate.B lift 2", "230", "lb_yd2")));

        assertThat(value(all, "air-mean")).isEqualByComparingTo("52.75");
        assertThat(value(all, "spread-rate.B lift 2")).isEqualByComparingTo("227.5");
    }

    @Test
    void aFigureThatNobodyKnowsHowToAddIsToldByItsLeastAndGreatest() {
        List<Figure> all =
                together(List.of(figure("roundness.A", "1.5", "pct")), List.of(figure("roundness.A", "2.5", "pct")));

        assertThat(all).extracting(Figure::id).containsExactly("roundness-least.A", "roundness-most.A");
        assertThat(all).extracting(f -> f.value().toPlainString()).containsExactly("1.5", "2.5");
    }

    @Test
    void aMeanWithoutItsReadingsIsToldByItsLeastAndGreatestAndAFigureOfOneEntryNotAtAll() {
        List<Figure> all = together(
                List.of(figure("density-mean.1.core", "93.1", "pct"), figure("core-density.paver/26", "93.1", "pct")),
                List.of(figure("density-mean.1.core", "92.4", "pct"), figure("core-density.paver/26", "92.4", "pct")));

        assertThat(all).extracting(Figure::id).containsExactly("density-mean-least.1.core", "density-mean-most.1.core");
    }

    @Test
    void aLotGoesOnAndWhatIsLeftIsWhatIsLeftNow() {
        List<Figure> all = together(
                List.of(figure("lot-tons.19-64.1", "900", "ston"), figure("yield-length-left.A lift 2", "400", "ft")),
                List.of(figure("lot-tons.19-64.1", "1500", "ston"), figure("yield-length-left.A lift 2", "100", "ft")));

        assertThat(value(all, "lot-tons.19-64.1")).isEqualByComparingTo("1500");
        assertThat(value(all, "yield-length-left.A lift 2")).isEqualByComparingTo("100");
    }

    @Test
    void whatRunsOnIsTheNewestAndWhatWentBeforeIsLeftOut() {
        List<Figure> all = together(
                List.of(figure("pay-previous.403", "0", "ston"), figure("pay-to-date.403", "10", "ston")),
                List.of(figure("pay-previous.403", "10", "ston"), figure("pay-to-date.403", "25", "ston")));

        assertThat(all).extracting(Figure::id).containsExactly("pay-to-date.403");
        assertThat(value(all, "pay-to-date.403")).isEqualByComparingTo("25");
    }
}
