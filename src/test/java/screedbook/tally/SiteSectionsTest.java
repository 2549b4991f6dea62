package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;

/** What is added up of mat, joints, stops, people and instruments; each expected figure is worked by hand beside it. */
class SiteSectionsTest {
    private static Totals totals(Shift shift) {
        return Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("12:00"));
    }

    private static String text(Totals totals, String id) {
        return totals.figure(id).map(Figure::text).orElse("none");
    }

    @Test
    void aShiftWithoutAnyOfThemHasNoSectionOfThem() {
        assertThat(totals(Shift.day().ticket("08:00", "1", "22.00", "mix", "12.5-70A"))
                        .sections())
                .extracting(Section::id)
                .doesNotContain("mat", "profiles", "rolling", "joints", "straightedge", "stops", "crew", "instruments");
    }

    /** 08:00 to 08:14 and 09:00 to 09:30 are 14 + 30 = 44 min; the third lasts from 11:40 until now, 12:00: 64. */
    @Test
    void stopsAreCountedWithTheirMinutesByCause() {
        Totals totals = totals(Shift.day()
                .key(Kind.STOP, "08:00", "cause", "no-trucks", "waiting", "0")
                .key(Kind.RESTART, "08:14", "of", "paver/1")
                .key(Kind.STOP, "09:00", "cause", "rain", "waiting", "5", "ended", "09:30")
                .key(Kind.STOP, "11:40", "cause", "no-trucks"));

        assertThat(text(totals, "stops")).isEqualTo("3");
        assertThat(text(totals, "stop-minutes")).isEqualTo("64 min");
        assertThat(text(totals, "stop-minutes.no trucks")).isEqualTo("34 min");
        assertThat(text(totals, "stop-minutes.rain")).isEqualTo("30 min");
        assertThat(text(totals, "trucks-waiting-most")).isEqualTo("5");
        assertThat(totals.figure("stops").orElseThrow().working().put())
                .containsExactly(
                        "paver/1 no trucks 08:00 to 08:14: 14 min, 0 waiting",
                        "paver/3 rain 09:00 to 09:30: 30 min, 5 waiting",
                        "paver/4 no trucks 11:40 to lasts: 20 min");
    }

    @Test
    void aStruckStopOrRestartCountsNothing() {
        Totals totals = totals(Shift.day()
                .key(Kind.STOP, "08:00", "cause", "rain")
                .key(Kind.RESTART, "08:10", "of", "paver/1")
                .key(Kind.RESTART, "08:40", "of", "paver/1")
                .key(Kind.STOP, "09:00", "cause", "rain")
                .strike(2, "wrong entry")
                .strike(4, "wrong entry"));

        assertThat(text(totals, "stops")).isEqualTo("1");
        assertThat(text(totals, "stop-minutes")).isEqualTo("40 min");
    }

    /** (291 + 288 + 279) / 3 = 286. */
    @Test
    void theMatHasLeastMeanAndMostByMoment() {
        Totals totals = totals(Shift.day()
                .key(Kind.MAT, "08:00", "mat_degF", "291", "taken", "behind-screed")
                .key(Kind.MAT, "08:05", "mat_degF", "288", "taken", "behind-screed")
                .key(Kind.MAT, "08:10", "mat_degF", "279", "taken", "behind-screed")
                .key(Kind.MAT, "08:30", "mat_degF", "181", "taken", "rolling-ends"));

        assertThat(text(totals, "mat-temperature-least.behind screed")).isEqualTo("279 °F");
        assertThat(text(totals, "mat-temperature-mean.behind screed")).isEqualTo("286.0 °F");
        assertThat(text(totals, "mat-temperature-most.behind screed")).isEqualTo("291 °F");
        assertThat(text(totals, "mat-temperature-readings.rolling ends")).isEqualTo("1");
    }

    /** 298 - 261 = 37, 301 - 289 = 12: mean 24.5. */
    @Test
    void profilesHaveTheirDifferences() {
        Totals totals = totals(Shift.day()
                .key(Kind.PROFILE, "08:00", "hottest_degF", "298", "coldest_degF", "261")
                .key(Kind.PROFILE, "09:00", "hottest_degF", "301", "coldest_degF", "289")
                .key(Kind.PROFILE, "10:00", "hottest_degF", "301"));

        assertThat(text(totals, "profile-difference-readings")).isEqualTo("2");
        assertThat(text(totals, "profile-difference-least")).isEqualTo("12 °F");
        assertThat(text(totals, "profile-difference-mean")).isEqualTo("24.5 °F");
        assertThat(text(totals, "profile-difference-most")).isEqualTo("37 °F");
    }

    /** 12+00 to 18+00 is 600 ft, 18+00 to 20+50 is 250 ft. */
    @Test
    void jointsHaveTheirLengthAndHowMuchOfItIsTacked() {
        Totals totals = totals(Shift.day()
                .key(
                        Kind.JOINT,
                        "08:00",
                        "run",
                        "longitudinal",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "18+00",
                        "heat",
                        "cold",
                        "tacked",
                        "yes")
                .key(
                        Kind.JOINT,
                        "09:00",
                        "run",
                        "longitudinal",
                        "from_sta",
                        "18+00",
                        "to_sta",
                        "20+50",
                        "heat",
                        "cold",
                        "tacked",
                        "no")
                .key(Kind.JOINT, "10:00", "run", "transverse", "from_sta", "20+50"));

        assertThat(text(totals, "joint-length.other side cold")).isEqualTo("850 ft");
        assertThat(text(totals, "joint-tacked.other side cold")).isEqualTo("600 ft");
        assertThat(text(totals, "joints-across")).isEqualTo("1");
    }

    @Test
    void theWidestGapUnderAStraightedgeStandsByHowItLay() {
        Totals totals = totals(Shift.day()
                .key(Kind.STRAIGHTEDGE, "08:00", "laid", "along", "gap_in", "0.0625", "edge_length_ft", "10")
                .key(Kind.STRAIGHTEDGE, "08:05", "laid", "along", "gap_in", "0.125", "edge_length_ft", "10")
                .key(Kind.STRAIGHTEDGE, "08:10", "laid", "over-joint", "gap_in", "0.25", "edge_length_ft", "10"));

        assertThat(text(totals, "straightedge-readings.along")).isEqualTo("2");
        assertThat(text(totals, "straightedge-most.along")).isEqualTo("0.125 in");
        assertThat(text(totals, "straightedge-most.over joint")).isEqualTo("0.25 in");
    }

    /** 3 x 10 + 1 x 9.5 = 39.5 hours of rakers; 2 x 8 = 16 of rollers. */
    @Test
    void peopleAndMachinesHaveTheirHoursByTrade() {
        Totals totals = totals(Shift.day()
                .key(Kind.CREW, "07:00", "what", "people", "named", "rakers", "how_many", "3", "hours", "10")
                .key(Kind.CREW, "07:00", "what", "people", "named", "rakers", "how_many", "1", "hours", "9.5")
                .key(Kind.CREW, "07:00", "what", "machines", "named", "rollers", "how_many", "2", "hours", "8")
                .key(Kind.CREW, "07:00", "what", "people", "named", "foreman", "how_many", "1"));

        assertThat(text(totals, "crew-people.rakers")).isEqualTo("4");
        assertThat(text(totals, "crew-hours-people.rakers")).isEqualTo("39.5 h");
        assertThat(text(totals, "crew-hours-machines.rollers")).isEqualTo("16 h");
        assertThat(text(totals, "crew-hours-people.foreman")).isEqualTo("0 h, some not noted");
    }

    /** 3000 / (2.841 mph x 88) = 12.0 impacts a foot; 12 ft over a drum of 54 in: 3, or 4 with the drum over the edge. */
    @Test
    void aRollerIsToldWithItsPassesImpactsAndRunsAcross() {
        Totals totals = totals(Shift.day()
                .key(
                        Kind.ROLLING,
                        "08:00",
                        "roller",
                        "R1",
                        "task",
                        "breakdown",
                        "drums",
                        "vibratory",
                        "passes",
                        "5",
                        "mat_begins_degF",
                        "280",
                        "mat_ends_degF",
                        "215",
                        "vibrations",
                        "3000",
                        "speed_mph",
                        "2.841",
                        "drum_width_ft",
                        "4.5",
                        "pull",
                        "A",
                        "lift",
                        "2"));

        assertThat(text(totals, "roller.R1 breakdown"))
                .isEqualTo("vibratory, 5 passes, mat 280 °F to 215 °F, 12.0 impacts a foot, 3 runs across,"
                        + " 4 with the drum over the edge");
    }

    @Test
    void anInstrumentIsToldWithItsLastCheck() {
        Totals totals = totals(Shift.day()
                .key(
                        Kind.INSTRUMENT,
                        "07:00",
                        "instrument",
                        "T1",
                        "against",
                        "ice-bath",
                        "shows_degF",
                        "35",
                        "fit",
                        "no")
                .key(
                        Kind.INSTRUMENT,
                        "07:10",
                        "instrument",
                        "T1",
                        "against",
                        "ice-bath",
                        "shows_degF",
                        "32",
                        "fit",
                        "yes"));

        assertThat(totals.figure("instrument.T1").orElseThrow().label()).isEqualTo("instrument T1, checked 07:10");
        assertThat(text(totals, "instrument.T1")).isEqualTo("ice bath  shows 32 °F  fit");
    }
}
