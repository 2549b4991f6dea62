package screedbook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;

class SunTest {
    private static final DateTimeFormatter HOUR_AND_MINUTE = DateTimeFormatter.ofPattern("HHmm");
    private static final int BEFORE_NOON = -1;
    private static final int AFTER_NOON = 1;
    private static final double LATITUDE = 37.76667;
    private static final double LONGITUDE = -122.43333;

    static List<Row> published() {
        return Published.rows("sun");
    }

    @Test
    void noDateOfTheTablesIsLost() {
        assertThat(published()).hasSize(15);
    }

    @ParameterizedTest
    @MethodSource("published")
    void theSunPassesWithinAMinuteOfTheTable(Row row) {
        assertThat(minutesBetween(printed(row, "morning"), passage(row, BEFORE_NOON)))
                .isLessThanOrEqualTo(1);
        assertThat(minutesBetween(printed(row, "evening"), passage(row, AFTER_NOON)))
                .isLessThanOrEqualTo(1);
    }

    /** All 730 figures of one printed year; the table itself is rounded to minutes. */
    @Test
    void aWholeYearIsWithinAMinuteOfThePrintedTable() {
        List<Passage> year = yearOfFredonia();
        assertThat(year).hasSize(730);
        assertThat(year).allSatisfy(passage -> assertThat(passage.minutesOff()).isLessThanOrEqualTo(1));
        assertThat(year.stream().filter(passage -> passage.minutesOff() == 0)).hasSizeGreaterThan(690);
    }

    /** A printed rise or set and the moment worked out for it. */
    private record Passage(Instant printed, Instant moment) {
        long minutesOff() {
            return minutesBetween(printed, moment);
        }
    }

    private static List<Passage> yearOfFredonia() {
        List<Passage> year = new ArrayList<>();
        for (String line : Published.lines("sun-fredonia-2023.txt")) {
            for (int month = 1; month <= 12; month++) {
                int column = 4 + (month - 1) * 11;
                if (line.length() > column && line.charAt(column) != ' ') {
                    LocalDate date = LocalDate.of(2023, month, Integer.parseInt(line.substring(0, 2)));
                    Instant rise = Sun.rise(date, 36.95, -112.52).orElseThrow();
                    Instant set = Sun.set(date, 36.95, -112.52).orElseThrow();
                    year.add(new Passage(at(date, line.substring(column, column + 4), -7), rise));
                    year.add(new Passage(at(date, line.substring(column + 5, column + 9), -7), set));
                }
            }
        }
        return year;
    }

    /** USNO, San Francisco, 2012-06-21: 04:48 and 19:35 Pacific standard time; the evening is the next day in UTC. */
    @Test
    void sunsetBelongsToTheDateOfThePlace() {
        LocalDate date = LocalDate.of(2012, 6, 21);
        assertThat(minutesBetween(
                        Instant.parse("2012-06-21T12:48:00Z"),
                        Sun.rise(date, LATITUDE, LONGITUDE).orElseThrow()))
                .isLessThanOrEqualTo(1);
        assertThat(minutesBetween(
                        Instant.parse("2012-06-22T03:35:00Z"),
                        Sun.set(date, LATITUDE, LONGITUDE).orElseThrow()))
                .isLessThanOrEqualTo(1);
    }

    @Test
    void theSunIsUpBetweenItsRiseAndItsSet() {
        LocalDate date = LocalDate.of(2012, 10, 15);
        Instant rise = Sun.rise(date, LATITUDE, LONGITUDE).orElseThrow();
        Instant set = Sun.set(date, LATITUDE, LONGITUDE).orElseThrow();
        assertThat(Sun.isUp(rise.minusSeconds(10), LATITUDE, LONGITUDE)).isFalse();
        assertThat(Sun.isUp(rise.plusSeconds(10), LATITUDE, LONGITUDE)).isTrue();
        assertThat(Sun.isUp(set.minusSeconds(10), LATITUDE, LONGITUDE)).isTrue();
        assertThat(Sun.isUp(set.plusSeconds(10), LATITUDE, LONGITUDE)).isFalse();
    }

    /** USNO definition: civil twilight ends when the sun's centre is 6 degrees below the horizon. */
    @Test
    void civilTwilightLiesOutsideTheDay() {
        LocalDate date = LocalDate.of(2012, 3, 20);
        Instant dawn = Sun.dawn(date, LATITUDE, LONGITUDE).orElseThrow();
        Instant dusk = Sun.dusk(date, LATITUDE, LONGITUDE).orElseThrow();
        assertThat(dawn).isBefore(Sun.rise(date, LATITUDE, LONGITUDE).orElseThrow());
        assertThat(dusk).isAfter(Sun.set(date, LATITUDE, LONGITUDE).orElseThrow());
        double sixBelow = 90 + 6;
        assertThat(dawn)
                .isEqualTo(Sun.crossing(date, LATITUDE, LONGITUDE, sixBelow, BEFORE_NOON)
                        .orElseThrow());
        assertThat(dusk)
                .isEqualTo(Sun.crossing(date, LATITUDE, LONGITUDE, sixBelow, AFTER_NOON)
                        .orElseThrow());
    }

    @Test
    void farNorthInJuneTheSunDoesNotSet() {
        LocalDate midsummer = LocalDate.of(2026, 6, 21);
        assertThat(Sun.rise(midsummer, 70, 25)).isEmpty();
        assertThat(Sun.set(midsummer, 90, 0)).isEmpty();
        assertThat(Sun.isUp(Instant.parse("2026-06-21T00:00:00Z"), 70, 25)).isTrue();
        assertThat(Sun.isUp(Instant.parse("2026-12-21T12:00:00Z"), 70, 25)).isFalse();
    }

    @Test
    void aPlaceOffTheGlobeIsNamed() {
        assertThatThrownBy(() -> Sun.rise(LocalDate.of(2026, 6, 3), 91, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("91");
        assertThatThrownBy(() -> Sun.isUp(Instant.EPOCH, 0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Instant printed(Row row, String column) {
        return at(LocalDate.parse(row.text("date")), row.text(column), Integer.parseInt(row.text("offset_h")));
    }

    private static Instant at(LocalDate date, String clock, int offset) {
        return date.atTime(LocalTime.parse(clock, HOUR_AND_MINUTE)).toInstant(ZoneOffset.ofHours(offset));
    }

    private static Instant passage(Row row, int side) {
        return Sun.crossing(
                        LocalDate.parse(row.text("date")),
                        row.number("latitude").doubleValue(),
                        row.number("longitude").doubleValue(),
                        row.number("zenith").doubleValue(),
                        side)
                .orElseThrow();
    }

    /** Between a printed minute and the moment rounded to its minute. */
    private static long minutesBetween(Instant printed, Instant moment) {
        long seconds = Duration.between(printed, moment).toSeconds();
        return Math.abs(Math.round(seconds / 60.0));
    }
}
