package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import screedbook.entry.Note;
import screedbook.entry.Safety;

/** What is said beside a form where the work can hurt somebody, and that it has its source. */
class CautionsTest {
    private static Cautions.Caution beside(String partial) {
        return Cautions.beside(Shift.entry(partial)).orElseThrow();
    }

    /** Sources read: 23 CFR 634.3, ASTM D3143 (scope), API RP 2023 (2001), 29 CFR 1926.601(b)(4), NIOSH fatality reports. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ticket                                | from a stopped truck only     | NIOSH in-house fatality reports
            tack product=CSS-1h                   | hot tack burns                | Cornell Local Roads Program
            refill                                | hot tack burns                | Cornell Local Roads Program
            tack product=RC-70                    | cutback: no flame near        | scope of ASTM D3143
            tack product=MC~30                    | cutback: no flame near        | below 200 °F (93 °C)
            depth state=loose                     | hot mix burns                 | Cornell Local Roads Program
            surface                               | where the driver sees you     | 29 CFR 1926.601(b)(4)
            rolling                               | where the driver sees you     | 29 CFR 1926.601(b)(4)
            core                                  | be seen by the traffic        | 23 CFR 634.3
            sample material=binder                | tank fumes: stay out of them  | API RP 2023 of 2001
            sample material=mix                   | hot mix burns                 | Cornell Local Roads Program
            safety about=fumes                    | upwind of the fumes           | OSHA topic page, asphalt fumes
            safety about=traffic                  | be seen by the traffic        | 71 FR 67792 of 2006
            """)
    void besideAFormStandsWhatCanHurtThereWithItsSource(String partial, String brief, String source) {
        assertThat(beside(partial).brief()).isEqualTo(brief);
        assertThat(beside(partial).text()).contains(source);
    }

    @ParameterizedTest
    @ValueSource(strings = {"SS-1", "CRS-1", "CSS-1h", "RA-550", "MCS-2", "NTSS-1HM"})
    void anEmulsionIsNoCutback(String product) {
        assertThat(beside("tack product=" + product).brief()).isEqualTo("hot tack burns");
    }

    @Test
    void aNoteOfALaneThatIsClosedOrOpenedSaysToBeSeen() {
        Note closed = new Note(List.of("lane closed"), "cones", null, null, null, null, null);
        assertThat(Cautions.beside(closed).orElseThrow().brief()).isEqualTo("be seen by the traffic");
        assertThat(Cautions.beside(Shift.entry("note text=visitor"))).isEmpty();
    }

    @Test
    void everySafetyObservationButAnOtherHasItsCard() {
        for (Safety.About about : Safety.About.values()) {
            assertThat(Cautions.beside(Shift.entry("safety text=a about=" + about.word()))
                            .isPresent())
                    .as(about.word())
                    .isEqualTo(about != Safety.About.OTHER);
        }
        assertThat(Cautions.beside(Shift.entry("safety text=a"))).isEmpty();
    }

    @Test
    void theBriefWordsFitBesideTheHeadingOfAForm() {
        assertThat(Arrays.stream(Safety.About.values())
                        .flatMap(a -> Cautions.beside(Shift.entry("safety text=a about=" + a.word())).stream()))
                .allSatisfy(c -> assertThat(c.brief()).hasSizeLessThanOrEqualTo(28));
    }

    @Test
    void aShiftThatSprayedACutbackSaysSoOnItsPage() {
        assertThat(Cautions.of(Shift.night()
                        .at("21:00", "tack product=RC-70 surface=existing")
                        .day()))
                .anyMatch(c -> c.contains("ASTM D3143"));
        assertThat(Cautions.of(Shift.night()
                        .at("21:00", "tack product=CSS-1h surface=existing")
                        .day()))
                .noneMatch(c -> c.contains("ASTM D3143"));
    }

    /** 35 °C at 50 % feel like 105 °F, which is 41 °C (NWS chart: 95 °F at 50 % is 107 at 96 °F, 105 at 95 °F). */
    @Test
    void whatTheHeatFeelsLikeIsToldInTheDegreesInWhichTheAirWasRead() {
        assertThat(beside("weather air_degC=35 humidity_pct=50").brief()).isEqualTo("heat index 41 °C");
        assertThat(beside("weather air_degC=35 humidity_pct=50").text()).contains("33 °C (91 °F)");
        assertThat(beside("weather air_degF=95 humidity_pct=50").brief()).isEqualTo("heat index 105 °F");
    }
}
