package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.entry.Weather;

/** What weather readings come to; the formulas themselves are held against printed charts where they stand. */
class FeltAirFiguresTest {
    private static Totals totals(String... readings) {
        Shift shift = Shift.day();
        for (int i = 0; i < readings.length; i++) {
            String[] cells = readings[i].split(" ");
            shift.key(
                    Kind.WEATHER,
                    "0" + (7 + i) + ":00",
                    "air_degF",
                    cells[0],
                    "humidity_pct",
                    cells[1],
                    "wind_mph",
                    cells[2],
                    "sky",
                    "few");
        }
        return Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("12:00"));
    }

    private static String text(Totals totals, String id) {
        return totals.figure(id).orElseThrow(() -> new AssertionError(id)).text();
    }

    /** Wind chill: NWS chart of 2001, 40 °F at 10 mph is 34, at 20 mph 30 (read); force: Beaufort scale (read). */
    @Test
    void theColdestReadingTellsTheWindChill() {
        Totals totals = totals("40 80 10", "40 80 20", "55 80 20");

        assertThat(text(totals, "wind-chill-least")).isEqualTo("30 °F");
        assertThat(text(totals, "wind-force-most")).isEqualTo("force 5");
        assertThat(totals.figure("wind-chill-least").orElseThrow().working().put())
                .hasSize(2)
                .first()
                .isEqualTo("paver/1 40 °F, 80 %, 10 mph: 33.6 °F");
        assertThat(totals.figure("heat-index-most")).isEmpty();
    }

    /** Heat index: NWS chart, 96 °F and 55 % is 112 (read); the band: OSHA, from 103 high (read). */
    @Test
    void theHottestReadingTellsTheHeatIndexWithItsBand() {
        Totals totals = totals("80 40 5", "96 55 5");

        assertThat(text(totals, "heat-index-most")).isEqualTo("112 °F, high");
        assertThat(totals.figure("wind-chill-least")).isEmpty();
    }

    /** Dew point: the WMO formula, 50 °F and 80 % is 6.706 °C (computed from the formula), 44.07 °F. */
    @Test
    void theDampestReadingTellsTheDewPoint() {
        assertThat(text(totals("50 80 0", "50 20 0"), "dew-point-most")).isEqualTo("44 °F");
    }

    /** Sky cover, Navy training tables (read): few is up to 2 eighths. */
    @Test
    void whatAReadingComesToIsToldUnderIt() {
        Shift shift = Shift.day()
                .key(
                        Kind.WEATHER,
                        "07:00",
                        "air_degF",
                        "40",
                        "humidity_pct",
                        "80",
                        "wind_mph",
                        "10",
                        "sky",
                        "few",
                        "rain_in_h",
                        "0.05");

        assertThat(FeltAir.of(shift.read().last(Weather.class).orElseThrow().entry())
                        .text())
                .isEqualTo("dew point 34 °F  wind chill 34 °F  wind force 3  rain light  sky up to 2 eighths");
    }

    @Test
    void measuredRainHasItsWord() {
        Shift shift = Shift.day()
                .key(Kind.WEATHER, "07:00", "air_degF", "60", "rain_in_h", "0.12")
                .key(Kind.WEATHER, "08:00", "air_degF", "60", "rain_in_h", "0.05");

        Totals totals = Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("12:00"));

        assertThat(text(totals, "rain-most")).isEqualTo("moderate");
    }
}
