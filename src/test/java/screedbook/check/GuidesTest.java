package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What stands beside a blank while it is typed. The limits are common practice, no source, as the sheet has them. */
class GuidesTest {
    private static Guide guide(Shift shift, String clock, String partial, String blank) {
        return Guides.of(shift.ground(), shift.day(), Shift.entry(partial), shift.time(clock), blank);
    }

    private static Guide guide(String clock, String partial, String blank) {
        return guide(Shift.night(), clock, partial, blank);
    }

    @Test
    void theLimitStandsThereBeforeTheNumber() {
        Guide guide = guide("21:32", "ticket mix=12.5-70A lift=2", "paver_degF");

        assertThat(guide.limit()).isEqualTo("at least 270");
        assertThat(guide.clause()).isEqualTo("practice PG 70");
        assertThat(guide.verdict()).isEqualTo(Verdict.NONE);
    }

    @Test
    void theVerdictChangesWithEveryDigit() {
        assertThat(List.of("2", "26", "269", "270", "2700"))
                .extracting(typed -> guide("21:32", "ticket mix=12.5-70A lift=2 paver_degF=" + typed, "paver_degF")
                        .verdict())
                .containsExactly(Verdict.OUTSIDE, Verdict.OUTSIDE, Verdict.OUTSIDE, Verdict.INSIDE, Verdict.LOOK_AGAIN);
    }

    @Test
    void atThePlantTheToleranceAndTheMostAreOneRange() {
        Guide guide = guide("21:32", "ticket mix=12.5-70A lift=2 plant_degF=274", "plant_degF");

        assertThat(guide.limit()).isEqualTo("275 to 325, target 300 ± 25");
        assertThat(guide.verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(guide("21:32", "ticket mix=12.5-70A lift=2 plant_degF=275", "plant_degF")
                        .verdict())
                .isEqualTo(Verdict.INSIDE);
    }

    @Test
    void anAidLowersTheNightLimitAndTheWorkingSaysHow() {
        Guide guide = guide("21:35", "surface surface_degF=44 lift=2 pull=B", "surface_degF");

        assertThat(guide.limit()).isEqualTo("at least 35");
        assertThat(guide.verdict()).isEqualTo(Verdict.INSIDE);
        assertThat(guide.working()).contains("at least 45").contains("45 less 10 is 35, not below 35: 35.");
    }

    @Test
    void byDayARidingSurfaceHasNoLimitSet() {
        Guide guide = guide("19:50", "surface surface_degF=20 lift=2 pull=B", "surface_degF");

        assertThat(guide.limit()).isEqualTo("no limit set");
        assertThat(guide.verdict()).isEqualTo(Verdict.NO_LIMIT);
        assertThat(guide.working()).isEqualTo("Riding surface by day: no limit set.");
    }

    @Test
    void whereNightIsNotSettledItIsLookAgainAndNeverOutside() {
        Map<String, Object> unsettled = new HashMap<>();
        unsettled.put("night", null);
        Guide guide = guide(Shift.night(unsettled), "21:35", "surface surface_degF=30 lift=2 pull=B", "surface_degF");

        assertThat(guide.limit()).isEqualTo("perhaps at least 35");
        assertThat(guide.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(guide.working()).contains("It may not hold here: day or night is not known.");
    }

    @Test
    void theAirIsJudgedForTheCourseThatIsBeingPaved() {
        Shift ohio = Shift.night(Map.of("sheet", "ohio-401-2010"));

        Guide guide = guide(ohio, "21:00", "weather air_degF=49", "air_degF");

        assertThat(guide.limit()).isEqualTo("at least 50");
        assertThat(guide.verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    @Test
    void poundsTypedForTonsAreOffered() {
        Guide guide = guide("21:32", "ticket net_ston=46320", "net_ston");

        assertThat(guide.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(guide.offers()).containsExactly(new Guide.Offer("pounds? 23.16 T", "net_ston", "23.16"));
    }

    @Test
    void tonsTypedForPoundsAreOffered() {
        assertThat(guide("21:32", "ticket gross_lb=36.55", "gross_lb").offers())
                .containsExactly(new Guide.Offer("tons? 73,100 lb", "gross_lb", "73100"));
    }

    @Test
    void degreesCelsiusTypedForFahrenheitAreOffered() {
        assertThat(guide("21:32", "ticket mix=12.5-70A paver_degF=150", "paver_degF")
                        .offers())
                .containsExactly(new Guide.Offer("°C? 302 °F", "paver_degF", "302"));
    }

    @Test
    void aDigitTooManyOrTooFewIsOffered() {
        assertThat(guide("21:32", "ticket mix=12.5-70A paver_degF=3000", "paver_degF")
                        .offers())
                .containsExactly(new Guide.Offer("300.0 °F?", "paver_degF", "300.0"));
        assertThat(guide("21:32", "ticket mix=12.5-70A paver_degF=30", "paver_degF")
                        .offers())
                .containsExactly(new Guide.Offer("300 °F?", "paver_degF", "300"));
    }

    @Test
    void grossAndTareThatChangedPlacesAreOfferedTogether() {
        Guide guide = guide("21:32", "ticket truck=T104 gross_lb=27400 tare_lb=71920", "tare_lb");

        assertThat(guide.offers()).hasSize(1);
        Guide.Offer offer = guide.offers().get(0);
        assertThat(offer.asks()).isEqualTo("gross 71,920 and tare 27,400?");
        assertThat(offer.blank() + " " + offer.typed()).isEqualTo("gross_lb 71920");
        assertThat(offer.also().blank() + " " + offer.also().typed()).isEqualTo("tare_lb 27400");
    }

    @Test
    void aWidthWithoutItsPointIsOffered() {
        assertThat(guide("21:32", "tack pull=B lift=2 width_ft=120", "width_ft").offers())
                .containsExactly(new Guide.Offer("12.0 ft?", "width_ft", "12.0"));
    }

    @Test
    void theUsualTareStandsBesideTheOneThatTheWeightsComeTo() {
        Guide guide = guide("21:32", "ticket truck=T104 net_ston=22.26 gross_lb=72520", "tare_lb");

        assertThat(guide.limit()).isEqualTo("usual tare 27,400, weights come to 28,000");
        assertThat(guide.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
    }

    @Test
    void aGrossAboveTheTrucksLegalOneIsOutside() {
        assertThat(guide("21:32", "ticket truck=T104 gross_lb=73280", "gross_lb")
                        .verdict())
                .isEqualTo(Verdict.INSIDE);
        Guide guide = guide("21:32", "ticket truck=T104 gross_lb=73300", "gross_lb");
        assertThat(guide.limit()).isEqualTo("at most 73,280 legal");
        assertThat(guide.verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    @Test
    void aPrintedNetThatIsNotGrossLessTareIsLookedAtAgain() {
        assertThat(guide("21:32", "ticket net_ston=22.26 gross_lb=71920 tare_lb=27400", "net_ston")
                        .verdict())
                .isEqualTo(Verdict.INSIDE);
        assertThat(guide("21:32", "ticket net_ston=22.27 gross_lb=71920 tare_lb=27400", "net_ston")
                        .verdict())
                .isEqualTo(Verdict.INSIDE);
        assertThat(guide("21:32", "ticket net_ston=22.28 gross_lb=71920 tare_lb=27400", "net_ston")
                        .verdict())
                .isEqualTo(Verdict.LOOK_AGAIN);
    }

    @Test
    void aShotIsJudgedByTheRateThatItLeaves() {
        String shot = "tack product=CSS-1h surface=milled from_sta=12+00 to_sta=18+00 width_ft=12 pull=B lift=2"
                + " at60=yes reading=tank before_gal=500 after_gal=";

        Guide good = guide("21:00", shot + "433", "after_gal");
        assertThat(good.limit()).isEqualTo("0.04 to 0.06 residual");
        assertThat(good.clause()).isEqualTo("plan sheet 7");
        assertThat(good.verdict()).isEqualTo(Verdict.INSIDE);
        assertThat(guide("21:00", shot + "410", "after_gal").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(guide("21:00", shot + "510", "after_gal").verdict()).isEqualTo(Verdict.LOOK_AGAIN);
    }

    @Test
    void waterInTheTackIsOutsideWhereNothingAllowsIt() {
        Guide guide = guide("21:00", "tack product=CSS-1h emulsion_parts=1 water_parts=1", "water_parts");

        assertThat(guide.limit() + ", " + guide.clause()).isEqualTo("undiluted, practice tack");
        assertThat(guide.verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(guide("21:00", "tack product=Dilutable emulsion_parts=1 water_parts=1", "water_parts"))
                .isEqualTo(Guide.NOTHING);
    }

    @Test
    void aMixThatTheLiftIsNotPlannedWithIsLookedAtAgain() {
        assertThat(guide("21:00", "ticket mix=19-64 lift=2", "mix").verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(guide("21:00", "ticket mix=12.5-70A lift=2", "mix").verdict())
                .isEqualTo(Verdict.NONE);
    }

    @Test
    void aSheetThatCannotBeFoundIsReplacedByNoOther() {
        Shift shift = Shift.night();
        Ground without = new Ground(
                List.of(new InForce("paver", 1, shift.ground().inForce().get(0).agreed(), java.util.Optional.empty())));

        Guide guide = Guides.of(
                without,
                shift.day(),
                Shift.entry("ticket mix=12.5-70A lift=2 paver_degF=200"),
                shift.time("21:00"),
                "paver_degF");

        assertThat(guide.limit()).isEqualTo("limit sheet not found");
        assertThat(guide.verdict()).isEqualTo(Verdict.NONE);
    }

    @Test
    void aBlankWithoutALimitIsSilent() {
        assertThat(guide("21:00", "ticket plant=Quarry", "plant")).isEqualTo(Guide.NOTHING);
        assertThat(guide("21:00", "note text=rain", "text")).isEqualTo(Guide.NOTHING);
    }
}
