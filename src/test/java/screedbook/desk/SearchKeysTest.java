package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.check.InShort;
import screedbook.entry.Ref;

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
        assertThat(rig.keys("<enter>").screen()).contains("no shift is read yet");

        rig.send(new Msg.SeasonRead(Scenes.seasonShifts())).keys("<down><enter>");

        List<?> shifts = Scenes.seasonShifts();
        assertThat(rig.effects).contains(new Effect.LookAt(((InShort) shifts.get(shifts.size() - 2)).shift()));
    }

    @Test
    void aSeasonThatIsReadWhenItsScreenWasLeftDisturbsNothing() {
        DeskRig rig = Scenes.night().keys("<esc>s<esc>");
        Screen before = rig.model().top();

        rig.send(new Msg.SeasonRead(Scenes.seasonShifts()));

        assertThat(rig.model().top()).isEqualTo(before);
    }
}
