package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Yield;

/** A yield check goes on from the one before, a probe is where the paver is, and the side counts down to what is due. */
class SinceCheckTest {
    private static Form form(DeskRig rig) {
        return ((Screen.Keying) rig.model().top()).form();
    }

    @Test
    void theFirstCheckStandsOverAllThatWasLaid() {
        Form form = form(Scenes.night().keys("my"));
        assertThat(form.text("from_sta")).isEqualTo("12+03");
        assertThat(form.text("to_sta")).isEmpty();
        assertThat(form.text("first_ticket")).isEqualTo("48212");
        assertThat(form.text("last_ticket")).isEqualTo("48217");
        assertThat(form.text("width_ft")).isEqualTo("12");
        assertThat(form.text("pull")).isEqualTo("B");
    }

    @Test
    void theNextCheckBeginsWhereTheLastOneEnded() {
        DeskRig rig = Scenes.night().keys("my<enter>21+01<enter>");
        assertThat(rig.last().entry()).as(rig.screen()).isInstanceOf(Yield.class);
        Scenes.load(rig, "118", "22.10", "281", "21+01", "22+50");
        Form form = form(rig.keys("my"));
        assertThat(form.text("from_sta")).isEqualTo("21+01");
        assertThat(form.text("first_ticket")).isEqualTo("48218");
        assertThat(form.text("last_ticket")).isEqualTo("48218");
    }

    @Test
    void aProbeIsMadeWhereThePaverIs() {
        assertThat(form(Scenes.night().keys("md")).text("place_sta")).isEqualTo("21+01");
        assertThat(form(DeskRig.open().keys("md")).text("place_sta")).isEmpty();
    }

    /** What may be behind a rate is told on the working of its figure, on no page. */
    @Test
    void theWorkingOfARateTellsHowThePullComesOutAndWhatMayBeBehindIt() {
        DeskRig rig = Scenes.night().keys("y");
        int at =
                ListKeys.figures(rig.model()).stream().map(f -> f.id()).toList().indexOf("spread-percent.B lift 2");
        rig.keys("<down>".repeat(at) + "<enter><page_down>");
        String lines = String.join("\n", ((Screen.Worked) rig.model().top()).lines());
        assertThat(lines)
                .contains("last 5 loads 221.6 lb/yd², 100.7 % of target")
                .contains("may be behind 100.8 % of the planned rate")
                .contains("length: 898 ft by the stations");
    }

    /** Twelve checks do not fit beside the entries: the most urgent stand there, the others are counted. */
    @Test
    void theSideTellsTheMostUrgentAndCountsTheOthers() {
        List<Map<String, Object>> others = new ArrayList<>();
        for (int tons = 500; tons <= 1200; tons += 100) {
            others.add(Map.of("kind", "depth", "each", new BigDecimal(tons), "of", "tons"));
        }
        others.add(Map.of("kind", "yield", "each", new BigDecimal(100), "of", "tons", "source", "clause 7"));
        DeskRig rig = new DeskRig(DeskRig.job(Map.of("checks", Map.of("others", others))), DeskRig.practice());
        Scenes.load(rig.keys("1n"), "104", "22.31", "286", "12+03", "13+53");
        for (int i = 0; i < 5; i++) {
            Scenes.load(rig, "104", "22.31", "286", (13 + i) + "+53", (14 + i) + "+53");
        }
        String screen = rig.screen();
        assertThat(screen).contains("yield check").contains("NOW, over");
        assertThat(screen.indexOf("yield check")).isLessThan(screen.indexOf("depth"));
        assertThat(screen).containsPattern(" \\+\\d+ more");
        assertThat(screen).contains("to answer");
        assertThat(rig.screen(132, 43)).doesNotContainPattern("\\+\\d+ more");
    }
}
