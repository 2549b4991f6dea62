package screedbook.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;

/** Factors between units against NIST Handbook 44 Appendix C and SP 811 B.8, and what follows from them exactly. */
class UnitTest {
    static List<Row> published() {
        return Published.rows("units");
    }

    @Test
    void noRowOfThePublishedFactorsIsLost() {
        assertThat(published()).hasSize(9);
    }

    @ParameterizedTest
    @MethodSource("published")
    void aPublishedFactorIsTheFactorHere(Row row) {
        BigDecimal expected = row.number("expected");
        Amount told = new Amount(row.number("value"), unit(row, "unit")).to(unit(row, "to"));
        assertThat(told.value().setScale(expected.scale(), RoundingMode.HALF_UP))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("published")
    void anExactFactorIsExactAndNotOnlyNear(Row row) {
        Amount told = new Amount(row.number("value"), unit(row, "unit")).to(unit(row, "to"));
        boolean compound = row.text("unit").contains("_");
        assertThat(told.value().compareTo(row.number("expected")) == 0).isEqualTo(!compound);
    }

    static List<Row> inBothSystems() {
        return Published.rows("both-systems");
    }

    @Test
    void noRowPrintedInBothSystemsIsLost() {
        assertThat(inBothSystems()).hasSize(23);
    }

    /** Documents round their metric figures, some to a size that is made: the tolerance stands in the row. */
    @ParameterizedTest
    @MethodSource("inBothSystems")
    void aFigurePrintedInBothSystemsIsTheSameHere(Row row) {
        Amount told = new Amount(row.number("value"), unit(row, "unit")).to(unit(row, "to"));
        assertThat(told.value().subtract(row.number("printed")).abs()).isLessThanOrEqualTo(row.number("tolerance"));
    }

    static Stream<Unit[]> unitsThatTurnIntoEachOther() {
        return Stream.of(Unit.values())
                .flatMap(from -> Stream.of(Unit.values())
                        .filter(to -> to.dimension() == from.dimension())
                        .map(to -> new Unit[] {from, to}));
    }

    @ParameterizedTest
    @MethodSource("unitsThatTurnIntoEachOther")
    void thereAndBackIsTheSameFigure(Unit from, Unit to) {
        BigDecimal figure = new BigDecimal("48.625");
        Amount back = new Amount(figure, from).to(to).to(from);
        assertThat(back.value().round(new MathContext(30))).isEqualByComparingTo(figure);
    }

    @Test
    void aUnitInEachHourOrMinuteIsShownByTheSymbolOfTheUnit() {
        assertThat(Stream.of("ston", "ston_h", "dF_min", "lb_yd2", "in_h", "").map(Unit::symbol))
                .containsExactly("T", "T/h", "°F/min", "lb/yd²", "in/h", "");
    }

    @Test
    void aShortTonIsTwoThousandPounds() {
        assertThat(Amount.of("21.96", Unit.SHORT_TON).to(Unit.POUND).value()).isEqualByComparingTo("43920");
    }

    @Test
    void aSquareYardIsNineSquareFeet() {
        assertThat(Amount.of("1", Unit.SQUARE_YARD).to(Unit.SQUARE_FOOT).value())
                .isEqualByComparingTo("9");
    }

    /** NAVEDTRA 14080, p. 8-31, takes 146 lb/ft3 for 110 lb/yd2 in each inch; the figure before rounding is 109.5. */
    @Test
    void aCubicFootAtOneInchIsThreeQuartersOfASquareYard() {
        assertThat(Amount.of("146", Unit.POUND_PER_CUBIC_FOOT)
                        .to(Unit.POUND_PER_SQUARE_YARD_INCH)
                        .value())
                .isEqualByComparingTo("109.5");
    }

    @Test
    void freezingAndBoilingAreTheSameHeatInBothScales() {
        assertThat(Amount.of("32", Unit.DEG_F).to(Unit.DEG_C).value()).isEqualByComparingTo("0");
        assertThat(Amount.of("0", Unit.DEG_C).to(Unit.DEG_F).value()).isEqualByComparingTo("32");
        assertThat(Amount.of("100", Unit.DEG_C).to(Unit.DEG_F).value()).isEqualByComparingTo("212");
    }

    @Test
    void aDifferenceOfTemperaturesHasNoZeroOfItsOwn() {
        assertThat(Amount.of("10", Unit.DIFF_F).to(Unit.DIFF_C).shown(1).text()).isEqualTo("5.6 °C");
    }

    @Test
    void unitsOfTwoDimensionsDoNotTurnIntoEachOther() {
        assertThatThrownBy(() -> Amount.of("10", Unit.DIFF_F).to(Unit.DEG_F))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("10 °F");
    }

    @Test
    void aSuffixNamesOneUnitAndNoSuffixIsTheSameButForCase() {
        assertThat(Stream.of(Unit.values()).map(unit -> unit.suffix().toLowerCase(Locale.ROOT)))
                .doesNotHaveDuplicates();
        for (Unit unit : Unit.values()) {
            assertThat(Unit.ofSuffix(unit.suffix())).contains(unit);
        }
        assertThat(Unit.ofSuffix("furlong")).isEmpty();
    }

    private static Unit unit(Row row, String column) {
        return Unit.ofSuffix(row.text(column)).orElseThrow();
    }
}
