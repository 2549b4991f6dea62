package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Sun, sky, wind and rain in figures and words. */
class SkyLightTest {
    /** A public model of pavement heat, its code read: air 10 C, dew point 2 C give -4.7 C. */
    @Test
    void aClearSkyRadiatesFromBelowTheAir() {
        Amount sky = SkyLight.radiates(Amount.of("10", Unit.DEG_C), Amount.of("2", Unit.DEG_C), 0);
        assertThat(sky.value().doubleValue()).isEqualTo(-4.7, within(0.05));
        Amount covered = SkyLight.radiates(Amount.of("50", Unit.DEG_F), Amount.of("35.6", Unit.DEG_F), 8);
        assertThat(covered.unit()).isEqualTo(Unit.DEG_F);
        assertThat(covered.value().doubleValue()).isEqualTo(50, within(1e-6));
    }

    /** Kasten and Czeplak 1980, from memory; the figures are worked out from it. */
    @ParameterizedTest
    @CsvSource({"90, 0, 880", "30, 0, 425", "30, 8, 106.25", "30, 4, 394.8", "1, 0, 0", "-10, 0, 0"})
    void theSunGivesLessWhenItIsLowOrCovered(double height, double eighths, double expected) {
        assertThat(SkyLight.sun(height, eighths)).isEqualTo(expected, within(0.1));
    }

    @Test
    void aSkyHasEightEighths() {
        assertThatThrownBy(() -> SkyLight.sun(30, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SkyCover.of(9)).isInstanceOf(IllegalArgumentException.class);
    }

    static List<Row> twilights() {
        return Published.rows("sun-height");
    }

    /** At the printed minute the sun stands as high as the definition says, within what it moves in a minute. */
    @ParameterizedTest
    @MethodSource("twilights")
    void theSunStandsAsHighAsTheTableOfTwilightsSays(Row row) {
        double height = Sun.height(
                Instant.parse(row.text("moment")),
                row.number("latitude").doubleValue(),
                row.number("longitude").doubleValue());
        assertThat(height).isEqualTo(row.number("height").doubleValue(), within(0.2));
    }

    @Test
    void theSunIsAsHighWhenItRisesAsItIsWhenItSets() {
        LocalDate date = LocalDate.of(2026, 6, 3);
        Instant rise = Sun.rise(date, 40, -83).orElseThrow();
        Instant set = Sun.set(date, 40, -83).orElseThrow();
        assertThat(Sun.height(rise, 40, -83)).isEqualTo(-0.833, within(0.01));
        assertThat(Sun.height(set, 40, -83)).isEqualTo(-0.833, within(0.01));
    }

    static List<Row> winds() {
        return Published.rows("beaufort");
    }

    @ParameterizedTest
    @MethodSource("winds")
    void theForceOfAWindIsAsInTheScale(Row row) {
        int force = row.number("force").intValueExact();
        assertThat(Beaufort.of(Amount.of(row.text("least_mph"), Unit.MILE_PER_HOUR)))
                .isEqualTo(force);
        assertThat(Beaufort.of(Amount.of(row.text("most_mph"), Unit.MILE_PER_HOUR)))
                .isEqualTo(force);
    }

    /** Rounded to whole miles per hour first (common practice, no source): 20 km/h are 12.4, force 3. */
    @Test
    void aWindBetweenTwoForcesIsRoundedFirst() {
        assertThat(Beaufort.of(Amount.of("12.4", Unit.MILE_PER_HOUR))).isEqualTo(3);
        assertThat(Beaufort.of(Amount.of("12.5", Unit.MILE_PER_HOUR))).isEqualTo(4);
        assertThat(Beaufort.of(Amount.of("20", Unit.KILOMETRE_PER_HOUR))).isEqualTo(3);
    }

    /** Navy training tables, sky cover (NAVEDTRA 14342A, Table 1-18, read). */
    @ParameterizedTest
    @CsvSource({"0, CLEAR", "1, FEW", "2, FEW", "3, SCATTERED", "4, SCATTERED", "5, BROKEN", "7, BROKEN", "8, OVERCAST"
    })
    void eighthsOfTheSkyHaveTheirWord(int eighths, SkyCover word) {
        assertThat(SkyCover.of(eighths)).isEqualTo(word);
    }

    /** AMS Glossary of Meteorology, "rain" (read): light 0.10 in/h, moderate 0.11 to 0.30, heavy above 0.30. */
    @ParameterizedTest
    @CsvSource({"0, NONE", "0.01, LIGHT", "0.10, LIGHT", "0.11, MODERATE", "0.30, MODERATE", "0.31, HEAVY"})
    void aRateOfRainHasItsWord(String rate, RainRate word) {
        assertThat(RainRate.of(Amount.of(rate, Unit.INCH_PER_HOUR))).isEqualTo(word);
    }

    /** OSHA, Using the Heat Index, as quoted by a university (read): below 91, to 103, to 115, above. */
    @ParameterizedTest
    @CsvSource({"90, lower", "91, moderate", "102, moderate", "103, high", "115, high", "116, very high"})
    void aHeatIndexHasItsBand(String index, String band) {
        assertThat(HeatIndex.band(Amount.of(index, Unit.DEG_F))).isEqualTo(band);
    }
}
