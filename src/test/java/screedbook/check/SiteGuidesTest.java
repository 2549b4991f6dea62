package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** What stands beside the blanks of mat, joints, stops and instruments; the limits' sources stand in the published tables. */
class SiteGuidesTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-06-03T21:00:00-06:00");

    private static Guide guide(Map<String, Object> changes, String blank, String told) {
        return Guides.of(ground(changes), Shift.night().day(), Shift.entry(told), AT, blank);
    }

    private static Ground ground(Map<String, Object> changes) {
        Job job = Shift.job(changes);
        SpecSheet sheet = SpecSheet.shipped((String) changes.getOrDefault("sheet", "practice"))
                .orElseThrow();
        return new Ground(
                List.of(new InForce("paver", 1, Optional.of(new Agreed(job, 1, "ab12")), Optional.of(sheet))));
    }

    private static void says(Guide guide, String limit, Verdict verdict) {
        assertThat(guide.limit()).isEqualTo(limit);
        assertThat(guide.verdict()).isEqualTo(verdict);
    }

    @Test
    void theEndOfRollingIsAskedAboutBelowWhatIsUsualAndBehindTheScreedNoLimitIsSet() {
        says(guide(Map.of(), "mat_degF", "mat taken=rolling-ends pull=B lift=2"), "usually at least 175", Verdict.NONE);
        says(
                guide(Map.of(), "mat_degF", "mat taken=rolling-ends mat_degF=174 pull=B lift=2"),
                "usually at least 175",
                Verdict.LOOK_AGAIN);
        Map<String, Object> own = Map.of("roll_until", PlannedJob.object("mat_degF", "160", "source", "test strip"));
        says(guide(own, "mat_degF", "mat taken=rolling-ends mat_degF=160 pull=B lift=2"), "at least 160", Verdict.NONE);
        says(
                guide(own, "mat_degF", "mat taken=rolling-ends mat_degF=159 pull=B lift=2"),
                "at least 160",
                Verdict.LOOK_AGAIN);
        says(
                guide(Map.of(), "mat_degF", "mat taken=behind-screed mat_degF=290 pull=B lift=2"),
                "no limit set",
                Verdict.NO_LIMIT);
    }

    /** Common practice: at most 10 apart at a look with a handheld camera; else 25 and 50 are the ends of the classes. */
    @Test
    void theColdestOfAProfileHasItsLimitAsATemperatureBeforeItIsTyped() {
        String lift = " pull=B lift=2";
        Map<String, Object> camera = Map.of("thermal", "handheld-camera");
        says(guide(camera, "coldest_degF", "profile hottest_degF=298" + lift), "at least 288", Verdict.NONE);
        says(
                guide(camera, "coldest_degF", "profile hottest_degF=298 coldest_degF=287" + lift),
                "11 apart, at most 10",
                Verdict.OUTSIDE);
        says(guide(Map.of(), "coldest_degF", "profile hottest_degF=298" + lift), "usually at least 273", Verdict.NONE);
        says(
                guide(Map.of(), "coldest_degF", "profile hottest_degF=298 coldest_degF=261" + lift),
                "moderate, 37 apart, at most 25",
                Verdict.LOOK_AGAIN);
        says(guide(Map.of(), "coldest_degF", "profile" + lift), "usually within 25 of the hottest", Verdict.NONE);
        says(guide(camera, "witness", "profile" + lift), "the engineer is there", Verdict.NONE);
    }

    /** WSDOT 5-04.3(10)A and 5-04.3(13), read. */
    @Test
    void drumsAndStraightedgeHaveTheirLimitsFromTheSheet() {
        Map<String, Object> wsdot = Map.of("sheet", "wsdot-5-04");
        says(
                guide(wsdot, "mat_ends_degF", "rolling drums=vibratory mat_ends_degF=174 pull=B lift=2"),
                "at least 175",
                Verdict.OUTSIDE);
        says(guide(wsdot, "edge_length_ft", "straightedge lift=2"), "10 ft", Verdict.NONE);
        says(
                guide(wsdot, "gap_in", "straightedge laid=along edge_length_ft=10 gap_in=0.125 lift=2"),
                "at most 0.125",
                Verdict.INSIDE);
        says(
                guide(wsdot, "gap_in", "straightedge laid=along edge_length_ft=12 gap_in=0.125 lift=2"),
                "limit for an edge of 10 ft",
                Verdict.LOOK_AGAIN);
        says(
                guide(Map.of(), "gap_in", "straightedge laid=along edge_length_ft=10 lift=2"),
                "no limit set",
                Verdict.NONE);
        says(guide(Map.of(), "speed_mph", "rolling drums=static speed_mph=6"), "usually 2 to 5", Verdict.LOOK_AGAIN);
    }

    @Test
    void aJointIsHeldAgainstWhatTheSheetAsksFor() {
        String joint = "joint run=longitudinal heat=cold pull=B lift=2 ";
        says(guide(Map.of(), "tacked", joint), "every contact face", Verdict.NONE);
        says(guide(Map.of(), "tacked", joint + "tacked=no"), "every contact face", Verdict.OUTSIDE);
        says(guide(Map.of("sheet", "wsdot-5-04"), "below_in", joint + "below_in=7"), "2 to 6", Verdict.OUTSIDE);
        says(guide(Map.of(), "below_in", joint), "no limit set", Verdict.NONE);
        says(
                guide(Map.of("sheet", "joints-new-hampshire-401"), "lane_line_ft", joint + "lane_line_ft=1"),
                "on the line",
                Verdict.LOOK_AGAIN);
    }

    @Test
    void whatTheJobAllowsOfStopsAndThermometersStandsBesideThem() {
        Map<String, Object> allowed =
                Map.of("checks", Shift.map("stop_at_most_min=20 thermometer_off_dF=2 source=plan~sheet~3"));
        says(guide(allowed, "cause", "stop cause=rain"), "stands at most 20 min", Verdict.NONE);
        says(guide(Map.of(), "cause", "stop cause=rain"), "", Verdict.NONE);
        says(guide(allowed, "shows_degF", "instrument against=ice-bath"), "32 ± 2", Verdict.NONE);
        says(guide(allowed, "shows_degF", "instrument against=ice-bath shows_degF=35"), "32 ± 2", Verdict.OUTSIDE);
        says(guide(allowed, "shows_degF", "instrument against=ice-bath shows_degF=34"), "32 ± 2", Verdict.INSIDE);
        says(
                guide(Map.of(), "shows_degF", "instrument against=ice-bath shows_degF=40"),
                "should show 32",
                Verdict.NONE);
        says(guide(Map.of(), "truck", "truck truck=T999"), "not in the job's list", Verdict.LOOK_AGAIN);
        says(guide(Map.of(), "truck", "truck truck=T104"), "", Verdict.NONE);
    }

    @Test
    void aRestartSaysHowLongThePaverStood() {
        Shift shift = Shift.night().at("20:40", "stop cause=rain waiting=3");
        Guide guide = Guides.of(ground(Map.of()), shift.day(), Shift.entry("restart of=paver/4"), AT, "of");
        says(guide, "stood 20 min, 3 waiting", Verdict.NONE);
        Guide other = Guides.of(ground(Map.of()), shift.day(), Shift.entry("restart of=paver/3"), AT, "of");
        says(other, "no stop that stands", Verdict.LOOK_AGAIN);
    }

    /** 10 CFR 30.34(i), read: two independent physical controls when a portable gauge is not under watch. */
    @Test
    void theCautionOfAGaugeStandsWithItsReadingAndItsStandardCountOnly() {
        assertThat(Cautions.beside(Shift.entry("gauge"))).get().satisfies(c -> {
            assertThat(c.brief()).isEqualTo("gauge: two controls");
            assertThat(c.text()).contains("two independent physical controls", "10 CFR 30.34(i)");
        });
        assertThat(Cautions.beside(Shift.entry("instrument against=standard-count")))
                .isPresent();
        assertThat(Cautions.beside(Shift.entry("instrument against=ice-bath"))).isEmpty();
        assertThat(Cautions.of(Shift.night().at("21:00", "gauge").day())).anyMatch(c -> c.contains("10 CFR 30.34(i)"));
        assertThat(Cautions.of(Shift.night().day())).noneMatch(c -> c.contains("30.34"));
    }
}
