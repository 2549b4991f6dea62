package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.entry.Amend;
import screedbook.entry.Closing;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.Note;
import screedbook.entry.Opening;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;

/** What the person at the keys is promised, keyed as a person would. */
class DeskTest {
    private static final String WEATHER = "w47<enter>62<enter>6<enter>cl<enter>1<enter>1<enter>";

    @Test
    void enterGoesOnToTheNextBlankThatIsDueAndWritesOnlyFromTheLast() {
        DeskRig rig = DeskRig.open().keys("w47<enter>62<enter>6<enter>cl<enter>1<enter>");
        assertThat(rig.lines()).hasSize(1);
        rig.keys("1<enter>");
        assertThat(rig.lines()).hasSize(2);
        assertThat(((Weather) rig.last().entry()).road()).isEqualTo(Weather.Road.DRY);
    }

    @Test
    void anUntouchedFormCannotBeWritten() {
        DeskRig rig = DeskRig.open().keys(WEATHER);
        rig.keys("w<enter><enter><enter><enter><enter><enter><enter><enter>");
        assertThat(rig.lines()).hasSize(2);
        assertThat(rig.screen()).contains("nothing was typed yet");
    }

    @Test
    void aSecondEnterFromABouncingGloveWritesNothingTwice() {
        DeskRig rig = DeskRig.open().keys(WEATHER + "<enter><enter>");
        assertThat(rig.lines()).hasSize(2);
    }

    @Test
    void keysStruckWhileTheDiskIsBusyAreShownAndTakenAfterwards() {
        DeskRig rig = DeskRig.open();
        rig.silent = true;
        rig.keys(WEATHER + "s44");
        assertThat(rig.effects.stream().filter(e -> e instanceof Effect.Write)).hasSize(1);
        assertThat(rig.screen()).contains("typed ahead: s44");
        rig.answer();
        assertThat(rig.lines()).hasSize(2);
        assertThat(rig.screen()).contains("44@").contains("surface");
    }

    @Test
    void keysTypedAheadOfARefusalAreNotTakenAndTheEntryStays() {
        DeskRig rig = DeskRig.open();
        rig.silent = true;
        rig.keys(WEATHER + "s44").send(new Msg.Refused("the stick was pulled"));
        assertThat(rig.screen())
                .contains("NOT on disk: the stick was pulled; not taken: s44")
                .contains("47");
    }

    @Test
    void aLetterInANumberHoldsTheCursorAndSaysWhy() {
        DeskRig rig = DeskRig.open().keys("w4z<enter>");
        assertThat(rig.screen()).contains("\"4z\" is no number").contains("4z@");
        rig.keys("<backspace>7<enter>");
        assertThat(((Screen.Keying) rig.model().top()).form().active().name()).isEqualTo("humidity_pct");
    }

    @Test
    void whatIsHalfTypedSurvivesAnotherScreenAndARestart() {
        DeskRig rig = DeskRig.open().keys("48217<enter>118<enter><enter>22.3<esc>");
        assertThat(rig.screen()).contains("half typed:").contains("ticket");
        rig.keys(WEATHER);
        assertThat(rig.last().entry()).isInstanceOf(Weather.class);
        List<Draft> kept = List.copyOf(rig.drafts);
        assertThat(kept).hasSize(1);
        rig.send(new Msg.Opened(rig.page(), kept, true, ""));
        rig.keys("7");
        Form form = ((Screen.Keying) rig.model().top()).form();
        assertThat(form.text("truck")).isEqualTo("118");
        assertThat(form.text("net_ston"))
                .as("the digit that called the ticket back is not taken")
                .isEqualTo("22.3");
        assertThat(form.active().name()).isEqualTo("net_ston");
    }

    @Test
    void aRefusalKeepsTheEntryAndSaysSoAtOnce() {
        DeskRig rig = DeskRig.open();
        rig.refuses = true;
        rig.keys(WEATHER);
        assertThat(rig.lines()).hasSize(1);
        assertThat(rig.screen())
                .contains("NOT on disk: no room is left on the disk")
                .contains("47");
        rig.refuses = false;
        rig.keys("<C-s>");
        assertThat(rig.lines()).hasSize(2);
    }

    @Test
    void anotherFolderCanBeNamedWhenTheDiskRefuses() {
        DeskRig rig = DeskRig.open();
        rig.refuses = true;
        rig.keys(WEATHER + "<C-f>").keys("/mnt/stick<enter>");
        assertThat(rig.effects).contains(new Effect.ContinueIn("/mnt/stick"));
        assertThat(rig.model().top()).isInstanceOf(Screen.Keying.class);
    }

    @Test
    void aLonePointMeansAsLastTimeAndStepsAreTypedAfterTheFigure() {
        DeskRig rig = DeskRig.open().keys(WEATHER).later(30);
        rig.keys("s44<enter>1500<enter>B<enter>2<enter>").later(30);
        rig.keys("s3-<enter>.<enter>");
        Surface surface = (Surface) rig.last().entry();
        assertThat(surface.surface().value()).isEqualByComparingTo("41");
        assertThat(surface.place().text()).isEqualTo("15+00");
        rig.keys("s-3<enter>1600<enter>");
        assertThat(((Surface) rig.last().entry()).surface().value()).isEqualByComparingTo("-3");
    }

    @Test
    void theNextLoadBeginsWhereTheLastOneEnded() {
        DeskRig rig = DeskRig.open().keys("t");
        fill(rig, "118", "22.31", "1203", "1353");
        assertThat(((Ticket) rig.last().entry()).spot().to().text()).isEqualTo("13+53");
        rig.later(6).keys("t");
        assertThat(((Screen.Keying) rig.model().top()).form().text("from_sta")).isEqualTo("13+53");
    }

    private static void fill(DeskRig rig, String truck, String net, String from, String to) {
        Form form = ((Screen.Keying) rig.model().top()).form();
        for (String[] each : new String[][] {
            {"truck", truck},
            {"net_ston", net},
            {"from_sta", from},
            {"to_sta", to},
            {"number", "48217"},
            {"mix", "12.5-70A"},
            {"pull", "B"},
            {"lift", "2"}
        }) {
            form = form.change(each[0], i -> i.typed(each[1]));
        }
        rig.type(form);
    }

    @Test
    void anAmendmentAsksWhyAndLeavesTheOldValueVisible() {
        DeskRig rig = DeskRig.open().keys("s44<enter>1500<enter>B<enter>2<enter>");
        rig.keys("<down>a").keys("46<enter>");
        assertThat(rig.lines()).hasSize(2);
        assertThat(((Screen.Keying) rig.model().top()).form().active().name()).isEqualTo(Forms.WHY);
        rig.keys("1<enter>");
        Amend amend = (Amend) rig.last().entry();
        assertThat(amend.set()).containsOnlyKeys("surface_degF");
        assertThat(amend.reason()).isEqualTo("misread");
        assertThat(rig.screen()).contains("46 °F").contains("surface_degF 46, was 44");
    }

    @Test
    void aRemarkOnAnEntryIsAnAmendmentToo() {
        DeskRig rig =
                DeskRig.open().keys("s44<enter>1500<enter>B<enter>2<enter>").keys("<down>a");
        Form form = ((Screen.Keying) rig.model().top()).form().change("remark", i -> i.typed("wet at the edge"));
        rig.type(form.change(Forms.WHY, i -> i.typed("5")));
        assertThat(((Amend) rig.last().entry()).set()).containsEntry("remark", "wet at the edge");
    }

    @Test
    void aStruckEntryStaysLegible() {
        DeskRig rig =
                DeskRig.open().keys("s44<enter>1500<enter>B<enter>2<enter>").keys("<down>x1<enter>");
        assertThat(rig.screen()).contains("struck (RK)  surface  15+00  44 °F");
    }

    @Test
    void aQuestionMarkIsAnUnreadDigitInATextAndHelpElsewhere() {
        DeskRig rig = DeskRig.open().keys("t");
        rig.type1(form -> form.at("number"));
        rig.keys("486?7");
        assertThat(((Screen.Keying) rig.model().top()).form().text("number")).isEqualTo("486?7");
        rig.type1(form -> form.at("net_ston"));
        rig.keys("?");
        assertThat(rig.model().top()).isInstanceOf(Screen.Help.class);
    }

    @Test
    void aPasteGoesIntoOneBlankWithItsLineEndsMadeBlanks() {
        DeskRig rig = DeskRig.open().keys("n");
        rig.type1(form -> form.at("text"));
        rig.key(Key.paste("lane closed\nat 21:00\t\u202e")).keys("<C-s>");
        assertThat(((Note) rig.last().entry()).text()).isEqualTo("lane closed at 21:00 \u202e");
        assertThat(rig.screen()).contains("<U+202E>");
    }

    @Test
    void aNoWorkDayTakesTwoKeysAndItsReason() {
        DeskRig rig = new DeskRig().keys("1o");
        assertThat(rig.model().top()).isInstanceOf(Screen.Keying.class);
        assertThat(((Screen.Keying) rig.model().top()).form().kind()).isEqualTo(Kind.NO_WORK);
        rig.keys("1<enter>");
        assertThat(rig.last().kind()).isEqualTo(Kind.NO_WORK);
    }

    @Test
    void aShiftThatIsNotClosedIsNamedBeforeAnotherIsBegun() {
        DeskRig rig = new DeskRig();
        rig.send(new Msg.Folder(
                rig.model().setting().job(),
                List.of(),
                List.of(new Msg.Row(screedbook.entry.ShiftId.of("2026-06-02-night"), "open since 19:58", 61, "RK"))));
        rig.keys("1n");
        assertThat(rig.lines()).isEmpty();
        assertThat(rig.screen()).contains("2026-06-02-night is not closed");
        rig.keys("n");
        assertThat(rig.last().entry()).isInstanceOf(Opening.class);
    }

    @Test
    void whatIsLookedAtFirstIsShownAndKeysWaitForTheWholeReading() {
        DeskRig rig = new DeskRig();
        Model told = rig.model();
        Msg.Row row = new Msg.Row(screedbook.entry.ShiftId.of("2026-06-02-night"), "closed", 61, "RK");
        Model first = Model.start(new Setting(Optional.empty(), "harrow-bend", "paver", "", Look.NIGHT, false));
        first = Update.of(first, new Msg.Minute(java.time.ZonedDateTime.parse("2026-06-03T20:00:00-06:00")))
                .model();
        first = Update.of(first, new Msg.Looked(told.setting().job().orElseThrow(), List.of(row)))
                .model();

        assertThat(View.of(first, 80, 24).text()).contains("who writes").contains("2 Jun 2026 night");
        Model waits = Update.of(first, new Msg.Struck(Key.of("1"))).model();
        assertThat(waits.setting().who()).isEmpty();
        Model read = Update.of(waits, new Msg.Folder(told.setting().job(), List.of(), List.of(row)))
                .model();
        assertThat(read.setting().who())
                .isEqualTo(told.setting().job().get().people().get(0).initials());
        Model broken = Update.of(first, new Msg.Folder(Optional.empty(), List.of("job.json:3: no"), List.of(row)))
                .model();
        assertThat(View.of(broken, 80, 24).text()).contains("job.json:3: no").doesNotContain("who writes");
        assertThat(Update.of(read, new Msg.Looked(told.setting().job().get(), List.of()))
                        .model())
                .isSameAs(read);
    }

    @Test
    void resizingLosesNothingThatWasTyped() {
        DeskRig rig = DeskRig.open().keys("48217<enter>118<enter><enter>22.3");
        rig.size(20, 5);
        rig.canvas(20, 5);
        rig.size(132, 43);
        assertThat(rig.screen(132, 43)).contains("22.3@").contains("118");
    }

    @Test
    void theTicketEchoesWhatTheShiftWouldComeTo() {
        DeskRig rig = DeskRig.open().keys("48217<enter>118<enter><enter>22.31");
        assertThat(rig.screen()).contains("22.31 T  1 load 22.31 T");
    }

    @Test
    void theClosingLineHoldsWhatWasCounted() {
        DeskRig rig =
                DeskRig.open().keys("s44<enter>1500<enter>B<enter>2<enter>").keys("c");
        assertThat(rig.screen()).contains("Before the last line of this book is written");
        rig.keys("<enter>");
        rig.type1(form -> form.at("text"));
        rig.keys("done<C-s>");
        Closing closing = (Closing) rig.last().entry();
        assertThat(closing.counts()).extracting(c -> c.what() + " " + c.count()).contains("opening 1", "surface 1");
    }

    @Test
    void theHelpIsLeftWithEscAndTheShiftStaysOpen() {
        DeskRig rig = DeskRig.open().keys("?<down><page_down><up>");
        assertThat(rig.model().top()).isInstanceOf(Screen.Help.class);
        rig.keys("<esc>");
        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
        assertThat(rig.effects).doesNotContain(new Effect.Leave());
    }

    @Test
    void theEntryWalkedToStaysTheOneWalkedToWhenALineIsWritten() {
        DeskRig rig =
                DeskRig.open().keys("s44<enter>1500<enter>B<enter>2<enter>").later(5);
        rig.keys("s46<enter>1600<enter>").keys("<down><down>");
        assertThat(rig.screen()).contains(">20:00 surface  15+00  44");
        rig.keys("ncones moved<C-s>");
        assertThat(rig.screen()).contains(">20:00 surface  15+00  44");
        rig.keys("<enter>x1<enter><esc>");
        assertThat(rig.screen()).contains(">20:00 struck (RK)  surface  15+00  44");
    }

    @Test
    void theBlanksThatAreDueStayInTheirPlacesWhileTheyAreTyped() {
        DeskRig rig = DeskRig.open().keys("k");
        Form before = ((Screen.Keying) rig.model().top()).form();
        List<String> due =
                before.inputs().stream().filter(Input::due).map(Input::name).toList();
        rig.keys("milled<enter>1000<enter>1800<enter>12<enter>B<enter>");
        Form after = ((Screen.Keying) rig.model().top()).form();
        assertThat(after.inputs().stream().filter(Input::due).map(Input::name)).containsExactlyElementsOf(due);
        assertThat(due).contains("surface", "from_sta", "to_sta", "before_gal", "after_gal", "material_degF");
    }

    @Test
    void anotherDischargeTimeIsTheTicketsTimeToo() {
        DeskRig rig = DeskRig.open().later(30).keys("t");
        fill(rig, "118", "22.31", "1203", "1353");
        rig.keys("<down>a");
        rig.type(((Screen.Keying) rig.model().top())
                .form()
                .change("discharged", i -> i.typed("2011"))
                .change(Forms.WHY, i -> i.typed("1")));
        assertThat(((Amend) rig.last().entry()).set())
                .containsEntry("discharged", "2026-06-03T20:11:00-06:00")
                .containsEntry("time", "2026-06-03T20:11:00-06:00");
    }
}
