package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Aside;
import screedbook.entry.Draw;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.entry.Unwritten;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Forms of samples, cores, readings, hand-overs and results: what stands there already, and what is told beside it. */
class SampleFormsTest {
    /** Three loads of about 22 T in sublots of 40 T: the second and third end in sublot 2. */
    static DeskRig loaded() {
        DeskRig rig = new DeskRig(
                        DeskRig.job(Map.of(
                                "lots",
                                DeskRig.map(
                                        "lot_ston",
                                        100,
                                        "sublot_ston",
                                        40,
                                        "ends",
                                        "exact-ton",
                                        "overnight",
                                        "carry"))),
                        DeskRig.practice())
                .keys("1n")
                .later(5);
        Scenes.load(rig, "118", "22.31", "286", "1203", "1353");
        Scenes.load(rig, "104", "21.96", "284", "1353", "1502");
        return Scenes.load(rig, "118", "22.08", "281", "1502", "1652").later(3);
    }

    private static Form form(DeskRig rig) {
        return ((Screen.Keying) rig.model().top()).form();
    }

    private static String ticket(DeskRig rig, int nth) {
        return rig.lines().stream()
                .map(l -> (Line) l)
                .filter(l -> l.kind() == Kind.TICKET)
                .map(l -> ((Ticket) l.entry()).paper().number())
                .toList()
                .get(nth);
    }

    private static Ref ref(DeskRig rig, int nth) {
        return rig.lines().stream()
                .map(l -> (Line) l)
                .filter(l -> l.kind() == Kind.TICKET)
                .map(Line::ref)
                .toList()
                .get(nth);
    }

    static DeskRig placed() {
        return drawn(loaded(), Amount.of("4.5", Unit.FOOT));
    }

    /** @param left how far from the left edge; null where a load was drawn by its tons */
    private static DeskRig drawn(DeskRig rig, Amount left) {
        Draw draw = Draw.reached(
                "12.5-70A",
                1,
                new Draw.Reached(
                        1,
                        1,
                        Amount.of("30.00", Unit.SHORT_TON),
                        ref(rig, 1),
                        "B",
                        2,
                        Station.of("14+05"),
                        left,
                        null,
                        null,
                        List.of()));
        return rig.with(List.of(new Unwritten(rig.now(), "RK", Source.LIVE, draw, Aside.NONE)));
    }

    @Test
    void aSampleIsOfTheLastLoadAndItsSublot() {
        DeskRig rig = loaded().keys("me");
        assertThat(form(rig).text("ticket")).isEqualTo(ticket(rig, 2));
        assertThat(form(rig).text("place_sta")).isEqualTo("16+52");
        assertThat(form(rig).text("pull")).isEqualTo("B");
        assertThat(form(rig).text("lot")).isEqualTo("1");
        assertThat(form(rig).text("sublot")).isEqualTo("2");
        assertThat(rig.screen()).contains("lot 1 sublot 2, 26.35 T so far");
    }

    @Test
    void aSampleIsOfTheRandomPlaceThatHasNoneYet() {
        DeskRig rig = placed().keys("me");
        assertThat(form(rig).text("ticket")).isEqualTo(ticket(rig, 1));
        assertThat(form(rig).text("place_sta")).isEqualTo("14+05");
        assertThat(form(rig).text("from_left_ft")).isEqualTo("4.5");
        assertThat(form(rig).text("sublot")).isEqualTo("1");
        assertThat(form(rig).text("at_random")).isEqualTo("yes");
        assertThat(form(rig).text("draw"))
                .isEqualTo(
                        rig.lines().get(rig.lines().size() - 1) instanceof Line l
                                ? l.ref().toString()
                                : "");
        assertThat(rig.model().shift().totals().dues())
                .anySatisfy(d -> assertThat(d.when()).startsWith("NOW: lot 1 sublot 1"));

        Scenes.keyed(
                rig, "", Map.of("sample", "S-1", "material", "mix", "purpose", "acceptance", "seal_number", "4411"));
        assertThat(rig.last().kind()).isEqualTo(Kind.SAMPLE);
        assertThat(rig.model().shift().totals().dues())
                .anySatisfy(d -> assertThat(d.id() + " " + d.when()).isEqualTo("sample not yet"));

        rig.keys("me");
        assertThat(form(rig).text("draw")).as("the place has its sample").isEmpty();
    }

    @Test
    void aLoadDrawnByItsTonsIsForASampleAndNotForACoreOrAReading() {
        DeskRig rig = drawn(loaded(), null);
        for (String key : List.of("mc", "mg")) {
            rig.keys(key);
            assertThat(form(rig).text("at_random")).isEmpty();
            assertThat(form(rig).text("place_sta")).isEmpty();
            assertThat(form(rig).text("sublot")).isEmpty();
            rig.keys("<esc>");
        }

        assertThat(form(rig.keys("me")).text("at_random")).isEqualTo("yes");
    }

    @Test
    void aPlaceDrawnInTheMatIsForACoreAndAReadingToo() {
        DeskRig rig = placed();
        for (String key : List.of("mc", "mg")) {
            rig.keys(key);
            assertThat(form(rig).text("at_random")).isEqualTo("yes");
            assertThat(form(rig).text("from_left_ft")).isEqualTo("4.5");
            rig.keys("<esc>");
        }
    }

    @Test
    void whetherASampleIsAtRandomDoesNotGoOnFromTheLastOne() {
        DeskRig rig = placed();
        Scenes.keyed(rig, "me", Map.of("sample", "S-1", "material", "mix", "purpose", "acceptance"));

        rig.keys("me");

        assertThat(form(rig).text("at_random")).as("asked anew").isEmpty();
        assertThat(form(rig).text("material")).isEqualTo("mix");
    }

    @Test
    void aSampleOfTackDoesNotMakeTheNextOneAtARandomPlaceOneOfTack() {
        DeskRig rig = loaded();
        Scenes.keyed(
                rig, "me", Map.of("sample", "T-1", "material", "tack", "purpose", "acceptance", "at_random", "no"));

        drawn(rig, null).keys("me");

        assertThat(form(rig).text("at_random")).isEqualTo("yes");
        assertThat(form(rig).text("material")).isEmpty();
    }

    @Test
    void whatIsUsualOfAResultStandsBesideItAndIsOnlyAskedAbout() {
        DeskRig rig = loaded().keys("mv");
        Scenes.typedIn(rig, "what", "gmm");
        Scenes.typedIn(rig, "found", "24.7");
        assertThat(rig.screen()).contains("usually 2.2 to 2.8", "look again");

        Scenes.typedIn(rig, "mix", "12.5-70A");
        rig.keys("<C-s>");
        assertThat(rig.last().kind()).isEqualTo(Kind.RESULT);
    }

    @Test
    void theOnlyOpenSampleStandsInAHandOverWithWhoHasIt() {
        DeskRig rig = loaded();
        Scenes.keyed(rig, "me", Map.of("sample", "S-1", "seal_number", "4411", "taken_by", "RK"));
        rig.keys("mu");
        assertThat(form(rig).text("sample")).isEqualTo("S-1");
        assertThat(form(rig).text("given_by")).isEqualTo("RK");
        assertThat(rig.screen()).contains("last with RK").doesNotContain("sealed under");
        Scenes.typedIn(rig, "seal_number", "4412");
        assertThat(rig.screen()).contains("last with RK, sealed under 4411");
    }

    @Test
    void openSamplesAndCoresAreOfferedForAResult() {
        DeskRig rig = loaded();
        Scenes.keyed(rig, "me", Map.of("sample", "S-1"));
        Scenes.keyed(rig, "mc", Map.of("core", "C-1", "place_sta", "12+50"));
        rig.keys("mv");
        Scenes.goTo(rig, "sample");
        assertThat(rig.screen()).contains("1 S-1  2 C-1");
        rig.keys("2");
        Scenes.keyed(rig, "<enter>", Map.of("what", "density", "found", "93.4", "closes", "yes"));
        assertThat(rig.model().shift().totals().figure("core-density.C-1"))
                .hasValueSatisfying(f -> assertThat(f.text()).isEqualTo("93.4 %"));
    }

    @Test
    void aReadingIsToldInPercentWhileItIsTyped() {
        DeskRig rig = loaded().keys("mg");
        Scenes.typedIn(rig, "first_reading_lb_ft3", "144.3");
        Scenes.typedIn(rig, "gmm", "2.480");
        Scenes.typedIn(rig, "place_sta", "1250");
        assertThat(rig.screen()).contains("93.2 % of the maximum  lot 1 sublot 1, 40.00 T");
    }

    /** Common practice, no source: the practice sheet has 1.25 in for the 12.5 mm mix. */
    @Test
    void theLeastHeightOfACoreStandsBesideItsBlank() {
        DeskRig rig = loaded().keys("mc");
        Scenes.typedIn(rig, "height_in", "1.2");
        assertThat(rig.screen()).contains("at least 1.25").contains("OUT");
    }

    @Test
    void whatWasTakenAtARandomPlaceIsCalledAsItIsMarked() {
        DeskRig rig = placed().keys("meS-1<enter>1<enter>1<enter><C-s>");
        assertThat(rig.model().shift().totals().sections().stream()
                        .flatMap(s -> s.figures().stream())
                        .filter(f -> f.id().startsWith("random-place."))
                        .map(f -> f.text()))
                .contains("taken: sample S-1");
    }
}
