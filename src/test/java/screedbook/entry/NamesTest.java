package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How shifts, entries and times are named in a line. No source: the form of the record is this program's own. */
class NamesTest {
    @ParameterizedTest
    @ValueSource(strings = {"2026-06-03-day", "2026-06-03-night", "2026-06-03-extra-2", "2026-06-03-extra-9"})
    void aShiftIsItsDateAndAWord(String text) {
        assertThat(ShiftId.of(text)).hasToString(text);
        assertThat(ShiftId.of(text).date()).isEqualTo(LocalDate.of(2026, 6, 3));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-06-03",
                "2026-06-03-",
                "2026-06-03-Day",
                "2026-06-03-evening",
                "2026-06-03-extra-1",
                "2026-06-03-extra-10",
                "26-06-03-day",
                "2026-6-3-day",
                "../2026-06-03-day",
                "2026-06-03-day.r2"
            })
    void whatNamesNoShiftIsRefusedWithWhatWouldBeRight(String text) {
        assertThatThrownBy(() -> ShiftId.of(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("right would be 2026-06-03-day");
    }

    @ParameterizedTest(name = "row 20: {0} is no date")
    @ValueSource(strings = {"2026-02-29-day", "2026-13-01-day", "2026-06-31-night", "2100-02-29-day", "2026-00-10-day"})
    void aDateThatDoesNotExistNamesNoShift(String text) {
        assertThatThrownBy(() -> ShiftId.of(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"" + text + "\" names a date that does not exist");
    }

    @Test
    @DisplayName("row 9: a day and a night of one date are two shifts, in this order; row 20: over the year's end")
    void shiftsAreOrderedByDateThenDayExtraNight() {
        Stream<String> mixed = Stream.of(
                "2027-01-01-day",
                "2026-12-31-night",
                "2028-02-29-day",
                "2026-12-31-extra-3",
                "2026-12-31-day",
                "2026-12-31-extra-2");
        assertThat(mixed.map(ShiftId::of).sorted().map(ShiftId::toString))
                .containsExactly(
                        "2026-12-31-day",
                        "2026-12-31-extra-2",
                        "2026-12-31-extra-3",
                        "2026-12-31-night",
                        "2027-01-01-day",
                        "2028-02-29-day");
    }

    @Test
    void anEntryIsItsBookAndNumber() {
        assertThat(Ref.of("paver/17")).isEqualTo(new Ref("paver", 17)).hasToString("paver/17");
        assertThat(Ref.of("a/b/3")).isEqualTo(new Ref("a/b", 3));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "17",
                "/17",
                "paver/",
                "paver/x",
                "paver/0",
                "paver/-3",
                "paver/+3",
                "paver/017",
                "paver/9999999999",
                "paver/1.5"
            })
    void whatNamesNoEntryIsRefusedWithWhatWouldBeRight(String text) {
        assertThatThrownBy(() -> Ref.of(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"" + text + "\" names no entry; right would be paver/17");
    }

    @Test
    void aTimeInALineAlwaysHasSecondsAndOffset() {
        assertThat(Moment.text(OffsetDateTime.parse("2026-06-03T21:32-06:00"))).isEqualTo("2026-06-03T21:32:00-06:00");
        assertThat(Moment.text(OffsetDateTime.parse("2026-06-03T21:32:05.9Z"))).isEqualTo("2026-06-03T21:32:05+00:00");
        assertThat(Moment.keyed(OffsetDateTime.parse("2026-06-03T21:33:08.12-06:00")))
                .isEqualTo("2026-06-03T21:33:08.120-06:00");
        assertThat(Moment.keyed(OffsetDateTime.parse("2026-06-03T21:33+05:30")))
                .isEqualTo("2026-06-03T21:33:00.000+05:30");
    }

    @Test
    void aTimeThatNobodyNotedIsDashesOfTheSameWidth() {
        assertThat(Moment.clock(OffsetDateTime.parse("2026-06-03T09:05:59-06:00")))
                .isEqualTo("09:05");
        assertThat(Moment.clock(null)).isEqualTo("--:--");
    }
}
