package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Part;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;

/** Forms take things by the names that they bear on paper, and fill in nothing that cannot have been. */
class PaperNamesTest {
    private static Line ticket(DeskRig rig, int nth) {
        return rig.lines().stream()
                .map(l -> (Line) l)
                .filter(l -> l.kind() == Kind.TICKET)
                .toList()
                .get(nth);
    }

    private static String number(Line ticket) {
        return ((Ticket) ticket.entry()).paper().number();
    }

    private static Part part(DeskRig rig, String named) {
        rig.keys("mp" + named + "<enter>10<enter>A<enter>");
        return (Part) rig.last().entry();
    }

    @Test
    void aPartNamesItsTicketByTheNumberOnThePaperOrItsLastDigits() {
        DeskRig rig = SampleFormsTest.loaded();
        Line second = ticket(rig, 1);
        assertThat(part(rig, number(second)).of()).isEqualTo(second.ref());
        String digits = number(second).substring(number(second).length() - 3);
        assertThat(part(rig, digits).of()).isEqualTo(second.ref());
    }

    @Test
    void whereNoTicketBearsTheNumberItIsThatOfALine() {
        DeskRig rig = SampleFormsTest.loaded();
        Line first = ticket(rig, 0);
        assertThat(part(rig, "" + first.n()).of()).isEqualTo(first.ref());
    }

    @Test
    void aPartIsListedWithTheTicketAndARestartWithTheHourOfItsStop() {
        DeskRig rig = SampleFormsTest.loaded();
        String number = number(ticket(rig, 1));
        part(rig, number);
        assertThat(rig.screen(132, 43)).contains("part  of ticket " + number + "  10 T  pull A lift 2");
        rig.keys("mb1<enter><C-s>").later(4).keys("m+<enter><C-s>");
        assertThat(rig.screen(132, 43)).containsPattern("restart  after stop \\d\\d:\\d\\d");
    }

    @Test
    void aPartLaidElsewhereDoesNotMoveTheYieldCheckToItsPull() {
        DeskRig rig = SampleFormsTest.loaded();
        part(rig, number(ticket(rig, 1)));
        Form yield = ((Screen.Keying) rig.keys("my").model().top()).form();
        assertThat(yield.text("pull")).isEqualTo("B");
        assertThat(yield.text("last_ticket")).isEqualTo(number(ticket(rig, 2)));
    }

    @Test
    void aYieldCheckWhoseTicketIsNotHereSaysWhich() {
        DeskRig rig = SampleFormsTest.loaded().keys("my");
        Form typed = ((Screen.Keying) rig.model().top())
                .form()
                .change("last_ticket", i -> i.typed("99999"))
                .change("to_sta", i -> i.typed("1652"));
        rig.type(typed).keys("<C-s>");
        assertThat(rig.model().shift().findings())
                .anySatisfy(f -> assertThat(f.seen()).contains("last ticket 99999 is not in this shift"));
    }

    @Test
    void aRefillAsksForTheTankAtOnceWhereTheJobHasOneDistributor() {
        DeskRig rig = SampleFormsTest.loaded().keys("mr");
        Form form = ((Screen.Keying) rig.model().top()).form();
        assertThat(form.text("distributor")).isNotEmpty();
        assertThat(form.active().name()).startsWith("before");
    }

    @Test
    void aNumberWithAnotherUnitIsNotConvertedUnseenAndOneWithTheBlanksOwnIsTaken() {
        DeskRig rig = SampleFormsTest.loaded().keys("s18C");
        assertThat(rig.screen(80, 24)).contains("\"18C\" is not in °F, key the number alone");
        rig.keys("<C-d>s64F<enter>1650<enter>");
        assertThat(((Surface) rig.last().entry()).surface().text()).isEqualTo("64 °F");
    }

    @Test
    void aLongFigureOfTheDayIsSeenToItsEndAtEightyColumns() {
        DeskRig rig = SampleFormsTest.loaded().keys("mo1<enter>1<enter>1<enter>4<enter>260<enter>190<enter>y");
        String found = "";
        for (int i = 0; i < 20 && found.isEmpty(); i++) {
            found = rig.screen(80, 24)
                    .lines()
                    .filter(l -> l.contains("roller 1"))
                    .findFirst()
                    .orElse("");
            rig.keys("<down><down><down><down>");
        }
        assertThat(found).contains("190 °F").doesNotContain("~");
    }

    @Test
    void aReviewOfWhatAnotherBookClosedSaysWithWhichBookItIsWritten() {
        DeskRig rig = SampleFormsTest.loaded();
        assertThat(rig.keys("c<enter>CD<enter>3<enter><C-s>").last().kind()).isEqualTo(Kind.CLOSING);
        Msg.Page page = rig.page();
        Msg.Page elsewhere = new Msg.Page(
                page.shift(),
                "office",
                page.day(),
                page.ground(),
                page.before(),
                List.of(new screedbook.entry.Seal("paver", "1b54".repeat(16), 9)),
                List.of());
        rig.send(new Msg.Opened(elsewhere, List.of(), true, ""));
        assertThat(rig.keys("r").screen(80, 24))
                .contains("closed in the book paver; started with --book and that name the program");
    }

    @Test
    void aListOfKeysThatIsLongerThanTheScreenSaysHowToMoveIt() {
        DeskRig rig = SampleFormsTest.loaded().keys("?");
        assertThat(rig.screen(80, 24)).contains("keys on the shift, Up Down for more");
        assertThat(rig.screen(132, 60)).doesNotContain("for more");
    }

    private static String instrument(DeskRig rig, String key) {
        rig.keys(key);
        String text = ((Screen.Keying) rig.model().top()).form().text("instrument");
        rig.keys("<C-d>");
        return text;
    }

    @Test
    void aThermometerIsNotOfferedWhereAThicknessOrADensityIsRead() {
        DeskRig rig = new DeskRig(
                        DeskRig.job(Map.of(
                                "instruments", List.of(DeskRig.map("id", "IR-2", "kind", "infrared thermometer")))),
                        DeskRig.practice())
                .keys("1n");
        assertThat(instrument(rig, "s")).isEqualTo("IR-2");
        assertThat(instrument(rig, "mh")).isEqualTo("IR-2");
        assertThat(instrument(rig, "md")).isEmpty();
        assertThat(instrument(rig, "mg")).isEmpty();
        assertThat(instrument(rig, "ms")).isEmpty();
        assertThat(instrument(rig, "mi")).isEqualTo("IR-2");
    }

    @Test
    void everyWordThatMayStandInABlankIsOfferedWithItsNumber() {
        DeskRig rig = SampleFormsTest.loaded().keys("meS-1<enter>1<enter>");
        String screen = rig.screen(80, 24);
        assertThat(screen).contains("4 independent assurance").contains("5 i").doesNotContain("5 i~");
        assertThat(rig.keys("<C-d>mb").screen(80, 24)).contains("8 transfer vehicle");
    }

    @Test
    void whatIsLongInAFindingGoesOnUnderItsTextAndAnEmptyWorkingIsNotNamed() {
        DeskRig rig = SampleFormsTest.loaded().keys("<down>");
        for (int i = 0; i < 12; i++) {
            rig.keys("<enter>");
            if (rig.screen(80, 24).contains("  rule ")) {
                break;
            }
            rig.keys("<esc><down>");
        }
        String screen = rig.screen(60, 40);
        assertThat(screen).contains("  limit     ").doesNotContainPattern("(?m)^.?  working *$");
        assertThat(screen).containsPattern("(?m)^.?            \\S");
    }
}
