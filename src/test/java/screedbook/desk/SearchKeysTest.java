package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.check.InShort;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;

/** From the words that are looked for to the entry. */
class SearchKeysTest {
    @Test
    void whatWasFoundInAnotherShiftOpensThatShiftAtTheEntry() {
        DeskRig rig = Scenes.night().keys("<esc>/truck T118<enter>");
        assertThat(rig.effects).contains(new Effect.Find("truck T118"));

        rig.send(new Msg.Found(
                "truck T118", List.of(new Msg.Match(DeskRig.NIGHT, new Ref("paver", 6), "ticket 48213  T118"))));
        rig.keys("<enter>");
        assertThat(rig.effects).contains(new Effect.LookAt(DeskRig.NIGHT));
        rig.send(new Msg.Opened(rig.page(), List.of(), false, ""));

        assertThat(rig.model().top()).isEqualTo(new Screen.Whole(new Ref("paver", 6), 0));
        rig.keys("<esc>");
        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
    }

    @Test
    void anEntryThatIsNotThereAnyMoreOpensTheShift() {
        DeskRig rig = Scenes.night().keys("<esc>/rain<enter>");
        rig.send(new Msg.Found("rain", List.of(new Msg.Match(DeskRig.NIGHT, new Ref("tack", 99), "note"))));
        rig.keys("<enter>").send(new Msg.Opened(rig.page(), List.of(), false, ""));

        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
    }

    @Test
    void theSeasonOpensTheDayThatIsWalkedTo() {
        DeskRig rig = Scenes.night().keys("<esc>s");
        assertThat(rig.effects).contains(new Effect.ReadSeason());
        assertThat(rig.screen()).contains("> 2 Jun 2026 day").contains("1 to read");

        rig.send(Scenes.seasonRead(Scenes.seasonShifts())).keys("<down><enter>");

        List<?> shifts = Scenes.seasonShifts();
        assertThat(rig.effects).contains(new Effect.LookAt(((InShort) shifts.get(shifts.size() - 2)).shift()));
    }

    @Test
    void aShiftThatIsNotReadYetOpensAllTheSameAndEscGoesBackToTheSeason() {
        DeskRig rig = Scenes.night().keys("<esc>s<enter>");
        assertThat(rig.effects).contains(new Effect.LookAt(ShiftId.of("2026-06-02-day")));

        rig.send(new Msg.Opened(rig.page(), List.of(), false, ""));
        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
        assertThat(rig.keys("n").screen()).contains("Enter in the list of shifts opens it for writing");
        rig.keys("<esc>");

        assertThat(rig.model().top()).isInstanceOf(Screen.Season.class);
        assertThat(rig.effects).contains(new Effect.Leave());
    }

    @Test
    void theShiftWalkedToStaysItWhenANewerOneComesIntoTheSeason() {
        List<InShort> shifts = Scenes.seasonShifts();
        DeskRig rig = Scenes.night().keys("<esc>s");
        rig.send(Scenes.seasonRead(shifts.subList(0, 30))).keys("<down><down>");
        String at = rig.screen()
                .lines()
                .filter(l -> l.startsWith(" > "))
                .findFirst()
                .orElseThrow();

        rig.send(Scenes.seasonRead(shifts));

        assertThat(rig.screen().lines().filter(l -> l.startsWith(" > "))).containsExactly(at);
    }

    @Test
    void aShiftThatIsNotAsItWasWrittenSaysSoInTheSeason() {
        DeskRig rig = Scenes.season();

        assertThat(rig.screen()).contains("22 May 2026 day damaged").contains("1 not as written");
    }

    @Test
    void whatIsFoundComesShiftByShiftAndOnlyForTheWordsThatStandThere() {
        DeskRig rig = Scenes.night().keys("<esc>/T118<enter>");
        Msg.Match match = new Msg.Match(DeskRig.NIGHT, new Ref("paver", 6), "ticket 48213  T118");

        rig.send(new Msg.Found("T118", List.of(match), 12));
        assertThat(rig.screen()).contains("ticket 48213").contains("looking: 12 shifts left, 1 found");
        rig.send(new Msg.Found("T118", List.of(match)));
        assertThat(rig.screen()).contains("1 found");
        rig.keys("9");
        assertThat(rig.screen()).doesNotContain("ticket 48213");
        rig.send(new Msg.Found("T118", List.of(match)));

        assertThat(rig.screen()).as("what was looked for before").doesNotContain("ticket 48213");
    }

    @Test
    void theListOfAShiftThatWasOpenedFromWhatWasFoundStandsAtTheEntry() {
        DeskRig rig = Scenes.night().keys("<esc>/T118<enter>");
        rig.send(new Msg.Found("T118", List.of(new Msg.Match(DeskRig.NIGHT, new Ref("paver", 6), "ticket 48213"))));
        rig.keys("<enter>")
                .send(new Msg.Opened(rig.page(), List.of(), false, ""))
                .keys("<esc><enter>");

        assertThat(rig.model().top()).isEqualTo(new Screen.Whole(new Ref("paver", 6), 0));
        rig.keys("<esc><esc>");
        assertThat(rig.screen())
                .as("what was found is still there")
                .contains("look for  T118")
                .contains("48213");
    }

    @Test
    void aSeasonThatIsReadWhenItsScreenWasLeftDisturbsNothing() {
        DeskRig rig = Scenes.night().keys("<esc>s<esc>");
        Screen before = rig.model().top();

        rig.send(Scenes.seasonRead(Scenes.seasonShifts()));

        assertThat(rig.model().top()).isEqualTo(before);
    }
}
