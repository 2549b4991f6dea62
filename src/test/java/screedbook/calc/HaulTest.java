package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

class HaulTest {
    static List<Row> forms() {
        return Published.rows("haul", "case", "form");
    }

    private static Row only(String word) {
        List<Row> rows = Published.rows("haul", "case", word);
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void noWorkedExampleIsLost() {
        assertThat(forms()).hasSize(4);
        assertThat(Published.rows("haul")).hasSize(8);
    }

    @Test
    void aRoundIsTheSumOfItsParts() {
        Row row = only("cycle");
        List<Amount> parts = Arrays.stream(row.text("other").split(" "))
                .map(part -> Amount.of(part, Unit.MINUTE))
                .toList();
        assertThat(parts).hasSize(7);
        assertThat(Haul.cycle(parts).value()).isEqualByComparingTo(row.number("expected"));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void trucksByWholeRoundsAreAsTheFormHasThem(Row row) {
        Haul.Rounds rounds = Haul.byRounds(tons(row, "tons"), row.number("hours"), tons(row, "truck_load"), cycle(row))
                .orElseThrow();
        assertThat(rounds)
                .isEqualTo(new Haul.Rounds(
                        row.number("trips").intValueExact(),
                        row.number("loads").intValueExact(),
                        row.number("trucks").intValueExact()));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void trucksByRateMayBeOneFewer(Row row) {
        BigDecimal perHour = row.number("tons").divide(row.number("hours"));
        BigDecimal trucks = Haul.byRate(new Amount(perHour, Unit.SHORT_TON), tons(row, "truck_load"), cycle(row));
        assertThat(Haul.whole(trucks)).isEqualTo(row.number("expected").intValueExact());
    }

    /** Whatever the figures, so many trucks carry the tons in their whole rounds, and one fewer would not. */
    @Test
    void theRoundsCarryEverythingAndOneTruckFewerDoesNot() {
        for (int tons = 100; tons <= 2500; tons += 173) {
            for (int minutes = 25; minutes <= 240; minutes += 7) {
                Haul.Rounds rounds = Haul.byRounds(
                                tons("" + tons),
                                new BigDecimal("9.5"),
                                tons("21.5"),
                                Amount.of("" + minutes, Unit.MINUTE))
                        .orElseThrow();
                assertThat(rounds.trucks() * rounds.loads() * 21.5).isGreaterThanOrEqualTo(tons);
                assertThat((rounds.trucks() - 1) * rounds.loads()).isLessThan(rounds.trips());
                assertThat(rounds.loads() * minutes).isLessThanOrEqualTo(570);
                assertThat((rounds.loads() + 1) * minutes).isGreaterThan(570);
            }
        }
    }

    @Test
    void aTruckIsNeverCutInPieces() {
        Row row = only("whole");
        assertThat(Haul.whole(row.number("other")))
                .isEqualTo(row.number("expected").intValueExact());
        assertThat(Haul.whole(new BigDecimal("13.0"))).isEqualTo(13);
    }

    @Test
    void aSiloAddsItsTonsOverTheHours() {
        Row row = only("silo");
        assertThat(Haul.fromSilo(tons(row, "tons"), row.number("hours")).value())
                .isEqualByComparingTo(row.number("expected"));
    }

    @Test
    void soManyTrucksReachSoFar() {
        Row row = only("reach");
        BigDecimal miles = Haul.reach(
                row.number("trucks").intValueExact(), row.number("other"), tons(row, "truck_load"), tons(row, "tons"));
        assertThat(miles).isEqualByComparingTo(row.number("expected"));
    }

    /** Own arithmetic: 20 t at 200 t/h last 6 minutes; on a round of 85 minutes 14.17 trucks are on the road. */
    @Test
    void aTruckComesWhenTheOneBeforeItIsUsedUp() {
        Amount spacing = Haul.spacing(tons("200"), tons("20"));
        assertThat(spacing.text()).isEqualTo("6 min");
        BigDecimal onTheRoad = Haul.byRate(tons("200"), tons("20"), Amount.of("85", Unit.MINUTE));
        assertThat(new Amount(onTheRoad, Unit.MINUTE).shown(2).value()).isEqualByComparingTo("14.17");
    }

    @Test
    void aRoundLongerThanTheTimeNeedsNoCount() {
        assertThat(Haul.byRounds(tons("100"), BigDecimal.ONE, tons("20"), Amount.of("61", Unit.MINUTE)))
                .isEmpty();
    }

    @Test
    void figuresThatAreNotAboveZeroAreNamed() {
        assertThatThrownBy(() -> Haul.spacing(tons("0"), tons("20")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tons in an hour are above 0: 0");
        assertThatThrownBy(() -> Haul.byRounds(tons("100"), BigDecimal.ZERO, tons("20"), Amount.of("60", Unit.MINUTE)))
                .hasMessageContaining("hours");
    }

    private static Amount tons(Row row, String column) {
        return new Amount(row.number(column), Unit.SHORT_TON);
    }

    private static Amount tons(String value) {
        return Amount.of(value, Unit.SHORT_TON);
    }

    private static Amount cycle(Row row) {
        return new Amount(row.number("cycle"), Unit.MINUTE);
    }
}
