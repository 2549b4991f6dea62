package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Times of day as people type them. The rule is the record's own: the latest such instant not more than 15 minutes
 * ahead of the clock and not before the opening. When clocks change: 15 USC 260a (second Sunday of March, first Sunday
 * of November, at 2:00), from memory, and the time zone data of the JDK.
 */
class HourTypedTest {
    private static final ZoneId DENVER = ZoneId.of("America/Denver");
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    /** A shift that opened and a clock that stands, both as local times of a zone. */
    private static Typed.Clock clock(String opened, String now, ZoneId zone) {
        return new Typed.Clock(local(opened, zone), local(now, zone), zone);
    }

    private static OffsetDateTime local(String text, ZoneId zone) {
        return LocalDateTime.parse(text).atZone(zone).toOffsetDateTime();
    }

    private static final Typed.Clock NIGHT = clock("2026-06-03T19:00", "2026-06-04T00:30", DENVER);
    private static final Typed.Clock DAY = clock("2026-06-03T06:30", "2026-06-03T14:00", DENVER);

    @ParameterizedTest(name = "row 15: {0} is {1}")
    @CsvSource({
        "2132, 2026-06-03T21:32-06:00",
        "21:32, 2026-06-03T21:32-06:00",
        "21.32, 2026-06-03T21:32-06:00",
        "9:32p, 2026-06-03T21:32-06:00",
        "9:32 pm, 2026-06-03T21:32-06:00",
        "9:32PM, 2026-06-03T21:32-06:00",
        "932p, 2026-06-03T21:32-06:00",
        "9p, 2026-06-03T21:00-06:00",
        "24:00, 2026-06-04T00:00-06:00",
        "2400, 2026-06-04T00:00-06:00",
        "0:00, 2026-06-04T00:00-06:00",
        "12:10a, 2026-06-04T00:10-06:00",
        "1210am, 2026-06-04T00:10-06:00",
        "010, 2026-06-04T00:10-06:00",
        "' 23:59 ', 2026-06-03T23:59-06:00",
        "1900, 2026-06-03T19:00-06:00"
    })
    void aTimeOfANightIsReadWithItsFullDate(String typed, OffsetDateTime read) {
        assertThat(Typed.time(typed, NIGHT)).isEqualTo(Typed.of(read));
    }

    @ParameterizedTest(name = "row 15: {0} is {1}")
    @CsvSource({
        "7.30, 2026-06-03T07:30-06:00",
        "730, 2026-06-03T07:30-06:00",
        "0730, 2026-06-03T07:30-06:00",
        "7:30a, 2026-06-03T07:30-06:00",
        "7:30, 2026-06-03T07:30-06:00",
        "12p, 2026-06-03T12:00-06:00",
        "12:30p, 2026-06-03T12:30-06:00"
    })
    void aTimeOfADayIsReadWithItsDate(String typed, OffsetDateTime read) {
        assertThat(Typed.time(typed, DAY)).isEqualTo(Typed.of(read));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "25:00", "2160", "24:01", "13:00p", "13p", "0p", "9", "noon", "7:3", "12345", "-7:30", "9:32x", "13:40a"
            })
    void whatIsNoTimeIsToldWithWhatWouldBeRight(String typed) {
        Typed<OffsetDateTime> read = Typed.time(typed, DAY);
        assertThat(read.value()).isNull();
        assertThat(read.trouble()).isEqualTo("\"" + typed + "\" is no time; right would be 2132, 21:32 or 9:32p");
    }

    @Test
    void anEmptyBlankIsReadAndHoldsNothing() {
        assertThat(Typed.time(" ", DAY)).isEqualTo(new Typed<OffsetDateTime>(null, "", List.of()));
    }

    @Test
    @DisplayName("row 1: a ticket at 00:20 of a night that began at 19:00 has the next date, the shift's own")
    void aNightCrossesMidnight() {
        assertThat(Typed.time("0020", NIGHT).value()).isEqualTo("2026-06-04T00:20-06:00");
        assertThat(Typed.time("1910", NIGHT).value()).isEqualTo("2026-06-03T19:10-06:00");
    }

    @Test
    @DisplayName("row 2: loaded 23:58 and arrived 00:25 are 27 minutes")
    void aHaulAcrossMidnightIsShort() {
        OffsetDateTime loaded = Typed.time("2358", NIGHT).value();
        OffsetDateTime arrived = Typed.time("0025", NIGHT).value();
        assertThat(Duration.between(loaded, arrived)).isEqualTo(Duration.ofMinutes(27));
    }

    @Test
    @DisplayName("row 13: 15 minutes ahead of the clock is read, a minute more is not taken for this shift")
    void aTimeMayLieAQuarterHourAhead() {
        assertThat(Typed.time("1415", DAY).value()).isEqualTo("2026-06-03T14:15-06:00");
        Typed<OffsetDateTime> later = Typed.time("1416", DAY);
        assertThat(later.value()).isEqualTo("2026-06-02T14:16-06:00");
        assertThat(later.could()).containsExactly(OffsetDateTime.parse("2026-06-03T14:16-06:00"));
    }

    @Test
    @DisplayName("row 13: 21:40 typed for 12:40 is nothing of this shift; 9:40 in the morning is offered")
    void aFutureTimeIsShownAndTheOtherHalfOffered() {
        Typed<OffsetDateTime> read = Typed.time("2140", DAY);
        assertThat(read.value()).isEqualTo("2026-06-02T21:40-06:00");
        assertThat(read.could()).containsExactly(OffsetDateTime.parse("2026-06-03T09:40-06:00"));
    }

    @Test
    @DisplayName("row 15: 7:30 in a night shift is before its opening; half past seven in the evening is offered")
    void theOtherHalfOfTheDayIsOfferedAndNotChosen() {
        Typed<OffsetDateTime> read = Typed.time("7:30", NIGHT);
        assertThat(read.value()).isEqualTo("2026-06-03T07:30-06:00");
        assertThat(read.could()).containsExactly(OffsetDateTime.parse("2026-06-03T19:30-06:00"));
    }

    @Test
    void aMinuteBeforeTheOpeningIsShownWithTheOneToCome() {
        Typed<OffsetDateTime> read = Typed.time("1859", NIGHT);
        assertThat(read.value()).isEqualTo("2026-06-03T18:59-06:00");
        assertThat(read.could()).containsExactly(OffsetDateTime.parse("2026-06-04T18:59-06:00"));
    }

    @Test
    @DisplayName("row 4: 01:40 on 1 Nov 2026 comes twice in New York and is asked; a is the first, b the second")
    void aTimeThatComesTwiceIsAsked() {
        Typed.Clock back = clock("2026-10-31T19:00", "2026-11-01T06:00", NEW_YORK);
        OffsetDateTime first = OffsetDateTime.parse("2026-11-01T01:40-04:00");
        OffsetDateTime second = OffsetDateTime.parse("2026-11-01T01:40-05:00");
        Typed<OffsetDateTime> asked = Typed.time("0140", back);
        assertThat(asked.value()).isNull();
        assertThat(asked.trouble())
                .isEqualTo("01:40 comes twice, clocks go back; add a for the first, b for the second");
        assertThat(asked.could()).containsExactly(first, second);
        for (String form : List.of("0140", "140", "1:40", "01:40", "1:40a", "1:40 am")) {
            assertThat(Typed.time(form + "b", back).value()).as(form).isEqualTo(second);
        }
        for (String form : List.of("0140a", "140a", "1:40a", "01:40a", "1:40 am a")) {
            assertThat(Typed.time(form, back).value()).as(form).isEqualTo(first);
        }
        assertThat(Duration.between(first, second)).isEqualTo(Duration.ofHours(1));
    }

    @Test
    @DisplayName("row 4: 19:00 to 06:00 over the night when clocks go back is 12 hours")
    void theLongNightHasTwelveHours() {
        Typed.Clock back = clock("2026-10-31T19:00", "2026-11-01T06:00", NEW_YORK);
        assertThat(Duration.between(
                        Typed.time("1900", back).value(),
                        Typed.time("0600", back).value()))
                .isEqualTo(Duration.ofHours(12));
    }

    @Test
    @DisplayName("row 4: while only the first 01:40 has come there is nothing to ask, and b is not there yet")
    void theSecondIsAskedOnlyWhenItCanBeMeant() {
        Typed.Clock early = new Typed.Clock(
                local("2026-10-31T19:00", NEW_YORK), OffsetDateTime.parse("2026-11-01T01:45-04:00"), NEW_YORK);
        assertThat(Typed.time("0140", early)).isEqualTo(Typed.of(OffsetDateTime.parse("2026-11-01T01:40-04:00")));
        assertThat(Typed.time("0140b", early).value()).isNull();
        assertThat(Typed.time("0140b", early).trouble()).contains("comes once here");
    }

    @Test
    void aMidnightHourThatComesTwiceIsChosenByItsLetterToo() {
        ZoneId azores = ZoneId.of("Atlantic/Azores");
        Typed.Clock back = clock("2026-10-24T19:00", "2026-10-25T06:00", azores);
        assertThat(Typed.time("0:40", back).value()).isNull();
        assertThat(Typed.time("0:40a", back).value()).isEqualTo("2026-10-25T00:40Z");
        assertThat(Typed.time("0:40b", back).value()).isEqualTo("2026-10-25T00:40-01:00");
    }

    @Test
    @DisplayName("row 5: 02:30 on 8 Mar 2026 does not exist; 03:30 is suggested; 19:00 to 06:00 is 10 hours")
    void aTimeThatClocksJumpOverIsNotRead() {
        Typed.Clock forward = clock("2026-03-07T19:00", "2026-03-08T06:00", DENVER);
        Typed<OffsetDateTime> read = Typed.time("0230", forward);
        assertThat(read.value()).isNull();
        assertThat(read.trouble())
                .isEqualTo("02:30 does not exist on this date, clocks go forward; right would be 03:30");
        assertThat(read.could()).containsExactly(OffsetDateTime.parse("2026-03-08T03:30-06:00"));
        assertThat(Duration.between(
                        Typed.time("1900", forward).value(),
                        Typed.time("0600", forward).value()))
                .isEqualTo(Duration.ofHours(10));
    }

    @Test
    @DisplayName("row 5: the half of the day that is offered has the offset of its own hour")
    void anOfferedTimeHasTheOffsetOfItsHour() {
        Typed.Clock forward = clock("2026-03-08T06:00", "2026-03-08T16:00", DENVER);
        Typed<OffsetDateTime> read = Typed.time("1:30", forward);
        assertThat(read.value()).isEqualTo("2026-03-08T01:30-07:00");
        assertThat(read.could()).containsExactly(OffsetDateTime.parse("2026-03-08T13:30-06:00"));
    }

    @ParameterizedTest(name = "row 20: {2} typed at {1} is {3}")
    @CsvSource({
        "2028-02-28T19:00, 2028-02-29T04:00, 0130, 2028-02-29T01:30-07:00",
        "2028-02-29T19:00, 2028-03-01T04:00, 0130, 2028-03-01T01:30-07:00",
        "2026-02-28T19:00, 2026-03-01T04:00, 2330, 2026-02-28T23:30-07:00",
        "2026-12-31T19:00, 2027-01-01T04:00, 2359, 2026-12-31T23:59-07:00",
        "2026-12-31T19:00, 2027-01-01T04:00, 0001, 2027-01-01T00:01-07:00",
        "2026-12-31T19:00, 2026-12-31T23:50, 0001, 2027-01-01T00:01-07:00"
    })
    void leapDaysAndYearEndsAreDaysLikeOthers(String opened, String now, String typed, OffsetDateTime read) {
        assertThat(Typed.time(typed, clock(opened, now, DENVER)).value()).isEqualTo(read);
    }

    @Test
    @DisplayName("row 6: the laptop's zone does not matter, times are the job's")
    void aClockOfAnotherZoneIsToldInTheJobs() {
        Typed.Clock utc = new Typed.Clock(
                OffsetDateTime.parse("2026-06-04T01:00Z"), OffsetDateTime.parse("2026-06-04T06:30Z"), DENVER);
        assertThat(Typed.time("2132", utc).value()).isEqualTo("2026-06-03T21:32-06:00");
        assertThat(Typed.time("2132", utc).value().getOffset()).hasToString("-06:00");
    }

    @Test
    @DisplayName("row 10: a shift that was left open is read by its newest such hour")
    void ofSeveralDaysTheNewestIsMeant() {
        Typed.Clock leftOpen = clock("2026-06-03T06:30", "2026-06-05T14:00", DENVER);
        assertThat(Typed.time("0900", leftOpen).value()).isEqualTo("2026-06-05T09:00-06:00");
        assertThat(Typed.time("1500", leftOpen).value()).isEqualTo("2026-06-04T15:00-06:00");
    }
}
