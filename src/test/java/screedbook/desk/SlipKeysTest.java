package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Ticket;

/** A likely slip is offered beside the figure, taken by one key, and never taken by itself. */
class SlipKeysTest {
    private static Form form(DeskRig rig) {
        return ((Screen.Keying) rig.model().top()).form();
    }

    private static void taken(DeskRig rig, String offer, Map<String, String> typed, Map<String, String> meant) {
        assertThat(rig.screen()).contains("Ctrl-O takes: " + offer);
        typed.forEach((blank, text) -> assertThat(form(rig).text(blank)).isEqualTo(text));
        rig.keys("<C-o>");
        meant.forEach((blank, text) -> assertThat(form(rig).text(blank)).isEqualTo(text));
        assertThat(rig.screen()).doesNotContain("Ctrl-O takes: " + offer);
    }

    /** 2,000 lb are one short ton: NIST Handbook 44, appendix C; from memory. 44,620 lb are 22.31 T. */
    @Test
    void aNetWeightInPoundsIsOfferedInTons() {
        taken(
                Scenes.night().keys("118<enter>44620"),
                "pounds? 22.31 T",
                Map.of("net_ston", "44620"),
                Map.of("net_ston", "22.31"));
    }

    /** 140 °C are 140 x 9/5 + 32 = 284 °F. */
    @Test
    void aMixTemperatureInCelsiusIsOfferedInFahrenheit() {
        taken(
                Scenes.due().keys("118<enter>22.31<enter>140"),
                "°C? 284 °F",
                Map.of("paver_degF", "140"),
                Map.of("paver_degF", "284"));
    }

    @Test
    void grossAndTareThatChangedPlacesAreOfferedTheOtherWayRound() {
        DeskRig rig = Scenes.night().keys("t");
        Scenes.typedIn(rig, "gross_lb", "27800");
        Scenes.typedIn(rig, "tare_lb", "72420");
        taken(
                rig,
                "gross 72,420 and tare 27,800?",
                Map.of("gross_lb", "27800", "tare_lb", "72420"),
                Map.of("gross_lb", "72420", "tare_lb", "27800"));
    }

    @Test
    void aWidthOfAHundredAndTwentyFeetIsOfferedAsTwelve() {
        taken(
                Scenes.typedIn(Scenes.night().keys("k"), "width_ft", "120"),
                "12.0 ft?",
                Map.of("width_ft", "120"),
                Map.of("width_ft", "12.0"));
    }

    @Test
    void whatIsOfferedIsNotTakenAndWhatWasTypedIsWritten() {
        DeskRig rig = Scenes.night().keys("118<enter>44620<C-s>");
        assertThat(((Ticket) rig.last().entry()).weights().net().value()).isEqualByComparingTo("44620");
        assertThat(rig.screen()).contains("44620 T");
    }
}
