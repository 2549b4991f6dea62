package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import screedbook.entry.Crew;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Restart;
import screedbook.entry.Source;
import screedbook.entry.Stop;

/** Stops, crews and the list of kinds as a person keys them. */
class SiteKeysTest {
    /** Written by the program itself, by another key than that of a form, or from a file. */
    private static final Set<Kind> ELSEWHERE = EnumSet.of(
            Kind.OPENING,
            Kind.CLOSING,
            Kind.REVIEW,
            Kind.AMEND,
            Kind.CLOCK,
            Kind.PLAN,
            Kind.SET_ASIDE,
            Kind.DRAW,
            Kind.PLANT_LIST);

    private static Kind begun(DeskRig rig) {
        return ((Screen.Keying) rig.model().top()).form().kind();
    }

    @Test
    void everyKindThatIsKeyedIsReachedByAKeyOfTheShiftOrOfTheList() {
        Set<Kind> reached = new HashSet<>();
        for (String key : List.of("t", "s", "w", "k", "n", "h", "b", "e")) {
            reached.add(begun(DeskRig.open().keys(key)));
        }
        for (KindMenu.Choice choice : KindMenu.all()) {
            DeskRig rig = DeskRig.open().keys("m" + choice.key());
            if (rig.model().top() instanceof Screen.Keying) {
                reached.add(begun(rig));
                assertThat(rig.model().screens()).as(choice.key()).hasSize(3);
            }
        }
        Set<Kind> wanted = EnumSet.allOf(Kind.class);
        wanted.removeAll(ELSEWHERE);

        assertThat(reached).containsExactlyInAnyOrderElementsOf(wanted);
    }

    @Test
    void aRowOfTheListThatIsWalkedToBeginsTheSameAsItsKey() {
        for (int i = 0; i < KindMenu.all().size(); i++) {
            DeskRig walked = DeskRig.open().keys("m" + "<down>".repeat(i) + "<enter>");
            DeskRig struck = DeskRig.open().keys("m" + KindMenu.all().get(i).key());
            assertThat(walked.screen()).isEqualTo(struck.screen());
        }
    }

    @Test
    void aStopBearsTheMinuteOfItsKeyAndNotThatOfItsWriting() {
        DeskRig rig = Scenes.night();
        OffsetDateTime struck = rig.now();
        rig.keys("b").later(3).keys("1<enter>2<enter>");

        assertThat(rig.last().entry()).isInstanceOf(Stop.class);
        assertThat(rig.last().time()).isEqualTo(struck.withSecond(0));
        assertThat(rig.last().source()).isEqualTo(Source.LIVE);
        assertThat(((Stop) rig.last().entry()).place().text())
                .as("where the last load ended")
                .isEqualTo("21+01");
    }

    @Test
    void aStopThatWasOnlyBegunKeepsItsMinuteThroughACrash() {
        DeskRig rig = Scenes.night();
        OffsetDateTime struck = rig.now();
        rig.keys("b").later(5).send(new Msg.Opened(rig.page(), List.copyOf(rig.drafts), true, ""));
        rig.keys("mb1<enter>2<enter>");

        assertThat(rig.last().entry()).isInstanceOf(Stop.class);
        assertThat(rig.last().time()).isEqualTo(struck.withSecond(0));
    }

    @Test
    void aBlankThatIsNotDueSaysItsUnitWhileItHoldsTheCursor() {
        DeskRig rig = Scenes.night().keys("mo");
        assertThat(rig.screen()).doesNotContain("in ft");

        assertThat(Scenes.goTo(rig, "drum_width_ft").screen()).contains("in ft");
        assertThat(Scenes.goTo(rig, "speed_mph").screen()).contains("in mph");
    }

    @Test
    void aStopInWhichNobodyTypedLeavesNothingBehindWithEsc() {
        DeskRig rig = Scenes.night().keys("b<esc>");

        assertThat(rig.model().halfTyped()).isEmpty();
        assertThat(rig.drafts).isEmpty();
        assertThat(rig.screen()).doesNotContain("half typed");
        assertThat(rig.later(3).keys("b").screen()).doesNotContain("half typed").contains("time 20:55");
    }

    @Test
    void aStopInWhichSomethingWasTypedStaysHalfTypedWithItsMinute() {
        DeskRig rig = Scenes.night().keys("b<tab>3<esc>").later(3).keys("b");

        assertThat(rig.screen()).contains("half typed before").contains("time 20:52");
    }

    @Test
    void whatWasTypedAndTakenAwayAgainIsNotHalfTyped() {
        DeskRig rig = Scenes.night().keys("nrain<backspace><backspace><backspace><backspace><esc>");

        assertThat(rig.model().halfTyped()).isEmpty();
        assertThat(rig.drafts).isEmpty();
    }

    @Test
    void whileAPaverStandsTheSideCountsTheMinutesAndTheSameKeyEndsIt() {
        DeskRig rig = SiteScenes.stopped();
        assertThat(rig.later(13).screen()).contains("stopped 13 min", "3 trucks waiting");
        assertThat(rig.later(1).screen()).contains("stopped 14 min");
        int stop = rig.last().n();
        OffsetDateTime goesOn = rig.now();
        rig.keys("b").later(2).keys("<enter>");

        assertThat(((Restart) rig.last().entry()).of().n()).isEqualTo(stop);
        assertThat(rig.last().time()).isEqualTo(goesOn.withSecond(0));
        assertThat(rig.screen()).doesNotContain("stopped");
    }

    @Test
    void aSecondStopBegunInTheListLeavesTheFirstOneToBeEndedAfterIt() {
        DeskRig rig = SiteScenes.stopped().later(5);
        int first = rig.last().n();
        rig.keys("mb2<enter>0<enter>").later(5);
        int second = rig.last().n();
        rig.keys("b<enter>").later(5);
        assertThat(((Restart) rig.last().entry()).of().n()).isEqualTo(second);
        rig.keys("b<enter>");
        assertThat(((Restart) rig.last().entry()).of().n()).isEqualTo(first);
        assertThat(rig.screen()).doesNotContain("stopped");
    }

    @Test
    void fromNotesNoHourIsFilledIn() {
        DeskRig rig = Scenes.night().keys("lb");
        assertThat(((Screen.Keying) rig.model().top()).form().text(Reading.TIME))
                .isEmpty();
        Scenes.keyed(rig, "", Map.of("time", "2040", "cause", "rain", "waiting", "1"));
        assertThat(rig.last().time().toLocalTime()).hasToString("20:40");
        assertThat(rig.last().source()).isEqualTo(Source.NOTES);
    }

    @Test
    void aLineOfTheCrewMayBeLeftOutBeforeTheOthersAreWritten() {
        DeskRig rig = SiteScenes.yesterday();
        int before = rig.lines().size();
        rig.keys("m.<down>x<enter>");

        assertThat(rig.lines().subList(before, rig.lines().size()))
                .extracting(l -> ((Crew) ((Line) l).entry()).named())
                .containsExactly("foreman", "paver", "rollers");
    }

    @Test
    void aDiskThatRefusesLeavesTheCrewOnTheScreen() {
        DeskRig rig = SiteScenes.yesterday();
        int before = rig.lines().size();
        rig.refuses = true;
        rig.keys("m.<enter>");
        assertThat(rig.model().top()).isInstanceOf(Screen.CrewLines.class);
        assertThat(rig.screen()).contains("NOT on disk");
        rig.refuses = false;
        rig.keys("<enter>");
        assertThat(rig.lines()).hasSize(before + rig.crews.size());
    }

    @Test
    void aShiftThatCanOnlyBeLookedAtTakesNoCrew() {
        DeskRig rig = SiteScenes.yesterday();
        rig.send(new Msg.Opened(rig.page(), List.of(), false, "held by another desk"));
        assertThat(rig.keys("m.").screen()).contains("this shift can only be looked at here");
        assertThat(rig.effects).noneMatch(e -> e instanceof Effect.ReadCrewBefore);
    }

    @Test
    void aThermalProfileBeginsInTheSublotOfTheNewestLoad() {
        DeskRig rig = new DeskRig(
                DeskRig.job(Map.of("lots", DeskRig.map("lot_ston", 1000, "sublot_ston", 40))), DeskRig.practice());
        rig.keys("1n" + Scenes.WEATHER);
        Scenes.load(rig, "118", "22.31", "286", "1203", "1353");
        Scenes.load(rig, "104", "21.96", "284", "1353", "1502");
        Scenes.load(rig, "118", "22.08", "281", "1502", "1652");
        Form form = ((Screen.Keying) rig.keys("mf").model().top()).form();

        assertThat(form.text("lot")).isEqualTo("1");
        assertThat(form.text("sublot")).isEqualTo("2");
    }

    @Test
    void anEighthIsTypedAsItStandsOnTheRule() {
        DeskRig rig = DeskRig.open().keys("ms10<enter>1<enter>3/16");
        assertThat(rig.screen()).contains("= 0.1875");
    }
}
