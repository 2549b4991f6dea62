package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import screedbook.entry.Core;
import screedbook.entry.Custody;
import screedbook.entry.Depth;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Joint;
import screedbook.entry.Kind;
import screedbook.entry.Mat;
import screedbook.entry.Profile;
import screedbook.entry.Restart;
import screedbook.entry.Result;
import screedbook.entry.Sample;
import screedbook.entry.Source;
import screedbook.entry.Stop;
import screedbook.entry.Straightedge;
import screedbook.entry.Strike;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Truck;
import screedbook.entry.Weather;
import screedbook.entry.YesNo;
import screedbook.entry.Yield;

/** How many keys an entry takes. The budgets are the program's own promise; there is no outside source for them. */
class KeystrokesTest {
    private static final List<String> TABLE = new ArrayList<>();

    @AfterAll
    static void printTheTable() {
        System.out.println("keystrokes              live  notes  budget live");
        TABLE.forEach(System.out::println);
    }

    private static int count(DeskRig rig, String keys) {
        int before = rig.keys;
        rig.keys(keys);
        return rig.keys - before;
    }

    private static void row(String what, int live, int notes, int budget) {
        TABLE.add(String.format("%-22s %5d %6s %12d", what, live, notes < 0 ? "-" : "" + notes, budget));
        assertThat(live).as(what).isLessThanOrEqualTo(budget);
    }

    /** A night with the first tickets keyed, so that everything carried on is there. */
    private static DeskRig withTickets(int loads) {
        DeskRig rig = DeskRig.open();
        rig.keys("w47<enter>62<enter>6<enter>cl<enter>1<enter>1<enter>");
        rig.keys("s62<enter>1000<enter>B<enter>2<enter>");
        first(rig.keys("t"));
        for (int i = 1; i < loads; i++) {
            rig.later(6);
            rig.keys("104<enter>21.96<enter>");
            if (rig.model().top() instanceof Screen.Keying) {
                rig.keys("281<enter>");
            }
        }
        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
        return rig;
    }

    /** The first ticket asks for what nothing can be carried on from yet. */
    private static void first(DeskRig rig) {
        Map<String, String> answers = Map.of(
                "truck",
                "118",
                "net_ston",
                "22.31",
                "number",
                "48217",
                "mix",
                "12.5-70A",
                "pull",
                "B",
                "lift",
                "2",
                "paver_degF",
                "285");
        for (int i = 0; i < 20 && rig.model().top() instanceof Screen.Keying keying; i++) {
            rig.keys(answers.getOrDefault(keying.form().active().name(), "") + "<enter>");
        }
    }

    @Test
    void anOrdinaryLoadTakesFourteenKeysWhenATemperatureIsDueAndTenWhenNot() {
        DeskRig due = withTickets(2);
        int live = count(due, "118<enter>22.31<enter>264<enter>");
        assertThat(due.last().entry()).isInstanceOf(Ticket.class);
        assertThat(((Ticket) due.last().entry()).heat().paver().value()).isEqualByComparingTo("264");
        DeskRig notes = withTickets(2).keys("l");
        int fromNotes = count(notes, "118<enter>22.31<enter>2002<enter>264<enter>");
        assertThat(notes.last().source()).isEqualTo(Source.NOTES);
        row("load, temperature due", live, fromNotes, 14);

        DeskRig plain = withTickets(5);
        int short1 = count(plain, "118<enter>22.31<enter>");
        assertThat(((Ticket) plain.last().entry()).weights().net().value()).isEqualByComparingTo("22.31");
        assertThat(((Ticket) plain.last().entry()).paper().number()).isEqualTo("48222");
        DeskRig plainNotes = withTickets(5).keys("l");
        int short2 = count(plainNotes, "118<enter>22.31<enter>2020<enter>");
        assertThat(plainNotes.last().entry()).isInstanceOf(Ticket.class);
        row("load, none due", short1, short2, 10);
    }

    @Test
    void aSurfaceTemperatureTakesTenKeys() {
        DeskRig rig = withTickets(1);
        int live = count(rig, "s44<enter>1500<enter>");
        assertThat(((Surface) rig.last().entry()).place().text()).isEqualTo("15+00");
        DeskRig notes = withTickets(1).keys("l");
        int fromNotes = count(notes, "s2001<enter>44<enter>1500<enter>");
        assertThat(notes.last().entry()).isInstanceOf(Surface.class);
        row("surface temperature", live, fromNotes, 10);
    }

    @Test
    void theWeatherAsBeforeButForOneValueTakesTwelveKeys() {
        DeskRig rig = withTickets(1);
        rig.later(30);
        int live = count(rig, "w45<enter><enter><enter><enter><enter><enter>");
        assertThat(rig.last().entry()).isInstanceOf(Weather.class);
        assertThat(((Weather) rig.last().entry()).humidity().value()).isEqualByComparingTo("62");
        DeskRig notes = withTickets(1).keys("l");
        int fromNotes = count(notes, "w2010<enter>45<enter><enter><enter><enter><enter><enter>");
        assertThat(notes.last().entry()).isInstanceOf(Weather.class);
        row("weather, one new value", live, fromNotes, 12);
    }

    @Test
    void aTackShotTakesTwentyFiveKeys() {
        DeskRig rig = withTickets(1);
        rig.keys("k");
        Map<String, String> first = Map.of(
                "from_sta",
                "1000",
                "to_sta",
                "1800",
                "surface",
                "3",
                "width_ft",
                "12",
                "before_gal",
                "1450",
                "after_gal",
                "1360",
                "material_degF",
                "150",
                "pull",
                "B",
                "lift",
                "2");
        for (int i = 0; i < 20 && rig.model().top() instanceof Screen.Keying keying; i++) {
            String name = keying.form().active().name();
            rig.keys((keying.form().active().carried() ? "" : first.getOrDefault(name, "")) + "<enter>");
        }
        rig.later(20);
        int live = count(rig, "k<enter>2600<enter><enter>1270<enter>148<enter>");
        assertThat(rig.last().entry()).isInstanceOf(Tack.class);
        Tack tack = (Tack) rig.last().entry();
        assertThat(tack.target().from().text()).isEqualTo("18+00");
        assertThat(tack.gauge().before().value()).isEqualByComparingTo("1360");
        assertThat(tack.gauge().after().value()).isEqualByComparingTo("1270");
        row("tack shot", live, -1, 25);
    }

    @Test
    void aStrikeTakesEightKeys() {
        DeskRig rig = withTickets(1);
        int live = count(rig, "<down>x1<enter>");
        assertThat(rig.last().entry()).isInstanceOf(Strike.class);
        assertThat(((Strike) rig.last().entry()).reason()).isEqualTo("keyed twice");
        row("strike", live, live, 8);
    }

    /** A night in which each kind was keyed once, so that what is carried on stands there. */
    private static DeskRig site() {
        return SiteScenes.site().later(5);
    }

    private static int site(String keys, Class<?> kind) {
        DeskRig rig = site();
        int struck = count(rig, keys);
        assertThat(rig.last().entry()).isInstanceOf(kind);
        return struck;
    }

    @Test
    void theMatTakesTenKeysAndAThermalProfileTwentyFive() {
        row("mat temperature", site("h291<enter>1600<enter>", Mat.class), -1, 10);
        row("thermal profile", site("mf1650<enter>1800<enter>3<enter>298<enter>271<enter>", Profile.class), -1, 25);
    }

    @Test
    void aJointTakesSixteenKeysAndAStraightedgeTwelve() {
        row("joint", site("mj<enter><enter>2250<enter>1<enter>6<enter>", Joint.class), -1, 16);
        row("straightedge", site("ms1/8<enter>1600<enter>", Straightedge.class), -1, 12);
    }

    @Test
    void aStopTakesEightKeysAndTheRestartFour() {
        DeskRig rig = site();
        int stop = count(rig, "b1<enter>3<enter>");
        assertThat(((Stop) rig.last().entry()).waiting()).isEqualTo(3);
        rig.later(14);
        int restart = count(rig, "b<enter>");
        assertThat(((Restart) rig.last().entry()).of().n()).isEqualTo(rig.last().n() - 1);
        row("stop of the paver", stop, -1, 8);
        row("restart", restart, -1, 4);
    }

    @Test
    void aTruckThatIsSeenTakesEightKeysAndAnInstrumentCheckFourteen() {
        row("truck seen", site("mt104<enter>", Truck.class), -1, 8);
        row("instrument check", site("mi<enter>33<enter>1<enter>", InstrumentCheck.class), -1, 14);
        DeskRig first = withTickets(1);
        int keys = count(first, "miT1<enter>1<enter>32<enter>1<enter>");
        assertThat(((InstrumentCheck) first.last().entry()).fit()).isEqualTo(YesNo.YES);
        row("first instrument check", keys, -1, 14);
    }

    @Test
    void theCrewAsLastTimeTakesFourKeys() {
        DeskRig rig = SiteScenes.yesterday();
        int before = rig.lines().size();
        int keys = count(rig, "m.<enter>");
        assertThat(rig.lines()).hasSize(before + rig.crews.size());
        assertThat(rig.last().entry()).isEqualTo(rig.crews.get(rig.crews.size() - 1));
        assertThat(rig.last().source()).isEqualTo(Source.LIVE);
        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
        row("crew as last time", keys, -1, 4);
    }

    @Test
    void aRandomSampleTakesSixteenKeysItsHandOverThirteenAndItsResultTwentyTwo() {
        DeskRig rig = SampleFormsTest.placed();
        int sample = count(rig, "meS-1<enter>1<enter>1<enter>4411<enter>");
        assertThat(((Sample) rig.last().entry()).origin().draw()).isNotNull();
        row("sample, random place", sample, -1, 16);
        row("hand-over of a sample", count(rig, "mu<enter>CD<enter>4411<enter>1<enter>"), -1, 13);
        assertThat(((Custody) rig.last().entry()).givenBy())
                .isEqualTo(rig.last().who());
        row("result that closes it", count(rig, "mv5<enter>5.4<enter>2026-06-04<enter>1<enter>"), -1, 22);
        assertThat(((Result) rig.last().entry()).sample()).isEqualTo("S-1");
    }

    @Test
    void aCoreTakesTwentyKeysAndAReadingTwentyFour() {
        DeskRig rig = SampleFormsTest.loaded();
        row("core", count(rig, "mcC-1<enter>1250<enter>4.5<enter>2.1<enter>"), -1, 20);
        assertThat(rig.last().entry()).isInstanceOf(Core.class);
        rig.keys("mg143<enter>144<enter>1250<enter>4<enter>G-1<enter>two locks<enter>");
        row("density reading", count(rig, "mg143.2<enter>144.1<enter>1400<enter>4.5<enter>"), -1, 24);
        assertThat(((Gauge) rig.last().entry()).keeping().secured()).isEqualTo("two locks");
    }

    @Test
    void aTicketOfASharedSeriesHasItsLeadingDigitsFilled() {
        DeskRig rig = new DeskRig(
                DeskRig.job(Map.of("plants", List.of(DeskRig.map("name", "Quarry Road", "series", "shared")))),
                DeskRig.practice());
        rig.keys("1n");
        first(rig.keys("t"));
        rig.later(5).keys("t");
        Form form = ((Screen.Keying) rig.model().top()).form();
        assertThat(form.kind()).isEqualTo(Kind.TICKET);
        assertThat(form.active().name()).isEqualTo("number");
        assertThat(form.active().text()).isEqualTo("48");
        rig.keys("230<enter>104<enter>21.96<enter>285<enter>");
        assertThat(((Ticket) rig.last().entry()).paper().number()).isEqualTo("48230");
    }

    /** The station to which was measured, and no more: the tickets and where it began are carried on. */
    @Test
    void aYieldCheckTakesTwelveKeysAndAProbeTwelve() {
        DeskRig rig = Scenes.night();
        int check = count(rig, "my<enter>2101<enter>");
        assertThat(rig.last().entry()).isInstanceOf(Yield.class);
        assertThat(((Yield) rig.last().entry()).lastTicket()).isEqualTo("48217");
        row("yield check", check, -1, 12);
        int probe = count(rig, "md2.1<enter>2<enter><enter>");
        assertThat(rig.last().entry()).isInstanceOf(Depth.class);
        assertThat(((Depth) rig.last().entry()).state()).isEqualTo(Depth.State.COMPACTED);
        row("probe of thickness", probe, -1, 12);
    }
}
