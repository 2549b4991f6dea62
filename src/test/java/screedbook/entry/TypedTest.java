package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures, stations and words as people type them. Ways of typing: common practice, no source, unless one is named. */
class TypedTest {
    @ParameterizedTest
    @CsvSource({
        "22.31, 22.31",
        "2.50, 2.50",
        "22, 22",
        "22., 22",
        ".5, 0.5",
        "-3, -3",
        "-0.25, -0.25",
        "+4, 4",
        "' 264 ', 264",
        "0, 0",
        "0.00, 0.00",
        "007, 7",
        "123456789012, 123456789012",
        "123.456789012, 123.456789012"
    })
    void aDecimalKeepsTheDigitsThatWereTyped(String typed, String kept) {
        Typed<BigDecimal> read = Typed.decimal(typed);
        assertThat(read.trouble()).isEmpty();
        assertThat(read.value().toPlainString()).isEqualTo(kept);
        assertThat(read.could()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1234567890123", "1234567890.123", "0.1234567890", "-1234567890123"})
    void moreThanTwelveDigitsAreNotKept(String typed) {
        assertThat(Typed.decimal(typed).read()).isFalse();
        assertThat(Typed.decimal(typed).trouble()).contains(typed).contains("12 digits");
        assertThat(Typed.decimal(typed).value()).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"22a", "a", "2-2", "--2", "-", ".", "1,250", "1e3", "22 31", "0x1F", "1.2.3", "NaN", "٣"})
    void whatIsNoNumberIsHeldAndToldWithWhatWouldBeRight(String typed) {
        Typed<BigDecimal> read = Typed.decimal(typed);
        assertThat(read.read()).isFalse();
        assertThat(read.value()).isNull();
        assertThat(read.trouble()).startsWith("\"" + typed + "\"").endsWith("right would be 22.31");
    }

    @Test
    void anEmptyBlankIsReadAndHoldsNothing() {
        assertThat(Typed.decimal("  ")).isEqualTo(new Typed<BigDecimal>(null, "", List.of()));
        assertThat(Typed.whole("").read()).isTrue();
        assertThat(Typed.station("", StationBase.FT_100).read()).isTrue();
        assertThat(Typed.word("", List.of("a"), w -> w)).isEqualTo(new Typed<String>(null, "", List.of()));
    }

    @Test
    void troubleIsSafeToLookAt() {
        assertThat(Typed.decimal("2\u202E1").trouble()).startsWith("\"2<U+202E>1\"");
        assertThat(Typed.station("\u001b[2J", StationBase.FT_100).trouble()).contains("<U+001B>");
        assertThat(Typed.word("\u200b", List.of("a"), w -> w).trouble()).contains("<U+200B>");
    }

    @ParameterizedTest
    @CsvSource({"3, 3", "-3, -3", "0, 0", "' 12', 12", "999999999, 999999999"})
    void aWholeNumberIsRead(String typed, int kept) {
        assertThat(Typed.whole(typed).value()).isEqualTo(kept);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3.5", "3.0", "x", "9999999999"})
    void aNumberWithAPointIsNoWholeOne(String typed) {
        assertThat(Typed.whole(typed).read()).isFalse();
        assertThat(Typed.whole(typed).value()).isNull();
    }

    @ParameterizedTest(name = "row 58: station {0} is {1}, or {2}")
    @CsvSource({
        "1250, 12+50, ",
        "12+50, 12+50, ",
        "12+50.5, 12+50.5, ",
        "1234+56, 1234+56, ",
        "123456, 1234+56, ",
        "1234.56, 12+34.56, 1234+56",
        "1234.5, 12+34.5, ",
        "12+3.4, 12+03.4, 12+30.4",
        "12+3, 12+03, 12+30",
        "50, 0+50, ",
        "5, 0+05, ",
        "0, 0+00, ",
        "-25, -0+25, ",
        "-1+25, -1+25, ",
        "119+75 bk, 119+75 bk, ",
        "11975 AH, 119+75 ah, ",
        "119+75ah, 119+75 ah, ",
        "' 12+50 ', 12+50, "
    })
    void aStationIsReadAndShownBack(String typed, String shown, String other) {
        Typed<Station> read = Typed.station(typed, StationBase.FT_100);
        assertThat(read.value()).hasToString(shown);
        assertThat(read.could().stream().map(Station::text)).isEqualTo(other == null ? List.of() : List.of(other));
    }

    @ParameterizedTest(name = "row 64: metric station {0} is {1}, or {2}")
    @CsvSource({
        "1+250, 1+250, ",
        "1250, 1+250, ",
        "1+250.5, 1+250.5, ",
        "1+25, 1+025, 1+250",
        "1256.02, 1+256.02, ",
        "50, 0+050, ",
        "1.2345, , "
    })
    void aMetricStationHasThreeDigitsBehindThePlus(String typed, String shown, String other) {
        Typed<Station> read = Typed.station(typed, StationBase.M_1000);
        assertThat(read.value() == null ? null : read.value().text()).isEqualTo(shown);
        assertThat(read.could().stream().map(Station::text)).isEqualTo(other == null ? List.of() : List.of(other));
    }

    @ParameterizedTest(name = "row 64: milepost {0} is {1}, or {2}")
    @CsvSource({
        "12.35, 12.35, ",
        "mp 12.35, 12.35, ",
        "MM12.3, 12.3, ",
        "12, 12.0, ",
        "1235, 1235.0, 12.35",
        "-0.5, -0.5, ",
        "12.35 ah, 12.35 ah, ",
        "12.3456, 12.3456, ",
        "12.34567, , ",
        "12+35, , "
    })
    void aMilepostHasAPointAndNoPlus(String typed, String shown, String other) {
        Typed<Station> read = Typed.station(typed, StationBase.MILEPOSTS);
        assertThat(read.value() == null ? null : read.value().text()).isEqualTo(shown);
        assertThat(read.could().stream().map(Station::text)).isEqualTo(other == null ? List.of() : List.of(other));
        assertThat(read.trouble())
                .isEqualTo(shown == null ? "\"" + typed + "\" is no milepost; right would be 12.35" : "");
    }

    /** A kilometre post of three decimals is offered as the station that it is. */
    @Test
    void aKilometrePostIsOfferedAsAStationOfAThousandMetres() {
        assertThat(Typed.station("12.350", StationBase.M_1000).could())
                .extracting(Station::text)
                .containsExactly("12+350");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"12+505", "twelve", "12+", "+50", "12++50", "12+50.1234", "12+50 left", "1234567890", "12 50"})
    void whatIsNoStationIsToldWithWhatWouldBeRight(String typed) {
        Typed<Station> read = Typed.station(typed, StationBase.FT_100);
        assertThat(read.value()).isNull();
        assertThat(read.trouble()).contains(typed).endsWith("right would be 12+50.5");
    }

    @Test
    void theExampleOfAStationIsOfTheJobsBase() {
        assertThat(Typed.station("x", StationBase.M_1000).trouble()).endsWith("right would be 1+250");
    }

    @ParameterizedTest
    @EnumSource(StationBase.class)
    void aStationThatWasReadIsReadAgainAsItself(StationBase base) {
        for (int metres = -2000; metres < 200_000; metres += 777) {
            Station station = Station.at(new BigDecimal(metres + ".25"), base);
            assertThat(Typed.station(station.text(), base)).isEqualTo(Typed.of(station));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "dry, DRY",
        "DAMP, DAMP",
        "w, WET",
        "1, DRY",
        "3, WET",
    })
    void aWordIsReadInFullByItsBeginningOrByItsNumber(String typed, Weather.Road read) {
        assertThat(road(typed).value()).isEqualTo(read);
        assertThat(road(typed).read()).isTrue();
    }

    @Test
    void aBeginningThatSeveralWordsShareIsAskedWithThoseWords() {
        Typed<Weather.Road> read = road("d");
        assertThat(read.value()).isNull();
        assertThat(read.trouble()).isEqualTo("\"d\" is not in the list: dry, damp, wet");
        assertThat(read.could()).containsExactly(Weather.Road.DRY, Weather.Road.DAMP);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "4", "99", "icy", "-1", "dryer"})
    void aWordThatIsNotInTheListIsToldWithTheList(String typed) {
        assertThat(road(typed).value()).isNull();
        assertThat(road(typed).trouble()).contains("\"" + typed + "\"").endsWith("dry, damp, wet");
        assertThat(road(typed).could()).isEmpty();
    }

    @Test
    void aWordInFullCountsBeforeLongerOnesThatBeginWithIt() {
        List<Weather.Compass> winds = List.of(Weather.Compass.values());
        assertThat(Typed.word("n", winds, Word::word).value()).isEqualTo(Weather.Compass.N);
        assertThat(Typed.word("nw", winds, Word::word).value()).isEqualTo(Weather.Compass.NW);
    }

    @Test
    void aSpaceDoesForTheDashOfAWord() {
        List<Weather.Precipitation> all = List.of(Weather.Precipitation.values());
        assertThat(Typed.word("light rain", all, Word::word).value()).isEqualTo(Weather.Precipitation.LIGHT_RAIN);
        assertThat(Typed.word("heavy r", all, Word::word).value()).isEqualTo(Weather.Precipitation.HEAVY_RAIN);
    }

    @Test
    @DisplayName("a name that is itself a number is meant before the place in the list")
    void aNameOfDigitsIsMeantBeforeItsPlace() {
        assertThat(Typed.word("2", List.of("2", "1"), w -> w).value()).isEqualTo("2");
    }

    private static Typed<Weather.Road> road(String typed) {
        return Typed.word(typed, List.of(Weather.Road.values()), Word::word);
    }

    @ParameterizedTest
    @CsvSource({"2026-06-03, 2026-06-03", "20260603, 2026-06-03", "20280229, 2028-02-29"})
    void aDateIsReadWithAndWithoutDashes(String typed, String date) {
        assertThat(Typed.date(typed).value()).hasToString(date);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-02-30", "20270229", "3 June", "2026-6-3"})
    void aDateThatIsNoneSaysWhatWouldBeRight(String typed) {
        assertThat(Typed.date(typed).value()).isNull();
        assertThat(Typed.date(typed).trouble()).contains("is no date; right would be 2026-06-03");
    }

    @ParameterizedTest
    @CsvSource({"2130, 21:30", "21:30, 21:30", "630, 06:30", "6:30, 06:30", "0000, 00:00"})
    void anHourOfAnyDayIsReadWithAndWithoutColon(String typed, String hour) {
        assertThat(Typed.hour(typed).value()).hasToString(hour);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2460", "2400", "half past", "21.30"})
    void anHourThatIsNoneSaysWhatWouldBeRight(String typed) {
        assertThat(Typed.hour(typed).trouble()).contains("is no hour; right would be 21:30");
    }

    @Test
    void aZoneIsNamedByAPlaceInIt() {
        assertThat(Typed.zone("America/Denver").value()).hasToString("America/Denver");
        assertThat(Typed.zone("Mountain").trouble()).contains("is no zone; right would be America/Denver");
        assertThat(Typed.zone(" ").value()).isNull();
    }
}
