package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import screedbook.check.Finding;
import screedbook.entry.Kind;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantList;
import screedbook.entry.Source;
import screedbook.entry.Ticket;

/** A plant's list brought in at the desk: its path, which column is which, and what comes of the differences. */
class PlantKeysTest {
    private static final String LIST = "Date,Time,Ticket No,Vehicle,Product,Net lb\n"
            + "6/3/2026,20:02,48217,104,SURF,43920\n"
            + "6/3/2026,20:12,48218,118,SURF,44200\n"
            + "6/3/2026,20:22,48219,104,SURF,41000\n";

    private DeskRig rig;

    @BeforeEach
    void keyTwoLoads() {
        rig = DeskRig.open();
        rig.paperLists.put("loads.csv", LIST);
        ticket("48217", "104", "21.96");
        rig.later(20);
        ticket("48219", "104", "20.60");
    }

    private void ticket(String number, String truck, String net) {
        Form form = Forms.fresh(rig.model(), Kind.TICKET);
        rig.keys("t")
                .type(form.change("number", i -> i.typed(number))
                        .change("truck", i -> i.typed(truck))
                        .change("mix", i -> i.typed("12.5-70A"))
                        .change("net_ston", i -> i.typed(net))
                        .change("pull", i -> i.typed("A"))
                        .change("lift", i -> i.typed("2")));
    }

    @Test
    void thePathIsTypedAndTheColumnsAreOfferedOneByOne() {
        rig.keys("mLloads.csv<enter>");
        assertThat(rig.screen())
                .contains("list of Quarry Road  loads.csv")
                .contains("which column is which? it is asked once, and the job keeps it")
                .contains("list: number")
                .contains("perhaps Ticket No")
                .contains("1 Date  2 Time  3 Ticket No  4 Vehicle  5 Product  6 Net lb");
        assertThat(((Screen.PlantColumns) rig.model().top()).chosen())
                .as("nothing is taken")
                .isEmpty();
        rig.keys("ooooooo");
        assertThat(rig.screen()).contains("Ticket No").contains("1 ymd  2 mdy  3 dmy");
        rig.keys("2<enter>");
        assertThat(rig.screen()).contains("line 4 on disk  1 matched, 1 missing here, 0 missing there, 1 different");
        assertThat(((PlantList) rig.last().entry()).columns())
                .isEqualTo(new ListColumns(
                        "Ticket No",
                        "Vehicle",
                        "Net lb",
                        "Time",
                        "Date",
                        "Product",
                        ListColumns.Weights.LB,
                        ListColumns.Dates.MDY));
        assertThat(rig.model().top()).isInstanceOf(Screen.Log.class);
    }

    @Test
    void aChoiceIsTurnedNumberedAndTakenBack() {
        rig.keys("mLloads.csv<enter>3");
        assertThat(chosen("number_column")).isEqualTo("Ticket No");
        assertThat(rig.screen()).contains("in its first rows: 48217 | 48218 | 48219");
        rig.keys("<right>");
        assertThat(chosen("number_column")).isEqualTo("Vehicle");
        rig.keys("<left><left>");
        assertThat(chosen("number_column")).isEqualTo("Time");
        rig.keys("<backspace>");
        assertThat(chosen("number_column")).isNull();
        rig.keys("<left>");
        assertThat(chosen("number_column")).isEqualTo("Net lb");
        rig.keys("9");
        assertThat(rig.screen()).contains("there is no choice of this number here");
    }

    private String chosen(String name) {
        return ((Screen.PlantColumns) rig.model().top()).chosen().get(name);
    }

    private DeskRig broughtIn() {
        return rig.keys("mLloads.csv<enter>ooooooo2<enter>");
    }

    @Test
    void theSecondListIsBroughtInWithoutAsking() {
        broughtIn();
        rig.paperLists.put("again.csv", LIST + "6/3/2026,20:32,48220,104,SURF,41000\n");
        rig.keys("mLagain.csv<enter>");
        assertThat(rig.screen()).contains("line 5 on disk  1 matched, 2 missing here");
    }

    @Test
    void aListOfOtherColumnsIsAskedAgain() {
        broughtIn();
        rig.paperLists.put("other.csv", LIST.replace("Ticket No", "Load"));
        rig.keys("mLother.csv<enter>");
        assertThat(rig.model().top()).isInstanceOf(Screen.PlantColumns.class);
        assertThat(chosen("net_column")).isEqualTo("Net lb");
        assertThat(chosen("number_column"))
                .as("a column that is not there is not chosen")
                .isNull();
    }

    @Test
    void aPathWhereNothingLiesStaysToBeMended() {
        rig.keys("mLnothing.csv<enter>");
        assertThat(rig.screen()).contains("nothing.csv: it is not there").contains("file    nothing.csv");
        assertThat(rig.lines()).hasSize(3);
        rig.keys("<esc>mL<enter>");
        assertThat(rig.screen()).contains("type the path of the list");
    }

    @Test
    void aLoadThatIsNotHereFillsATicketThatSomebodyHasToWrite() {
        broughtIn();
        walkTo("list-load-not-here");
        rig.keys("t");
        assertThat(rig.lines()).as("nothing is written by itself").hasSize(4);
        assertThat(rig.screen()).contains("from notes").contains("48218").contains("22.10");
        rig.keys("<C-s>");
        Ticket ticket = (Ticket) rig.last().entry();
        assertThat(rig.last().source()).isEqualTo(Source.NOTES);
        assertThat(ticket.paper().number()).isEqualTo("48218");
        assertThat(ticket.paper().truck()).as("104 is T104 in the job").isEqualTo("T118");
        assertThat(ticket.paper().mix()).as("SURF is what its other loads are").isEqualTo("12.5-70A");
        assertThat(ticket.weights().net().text()).isEqualTo("22.10 T");
        assertThat(ticket.times().loaded().toString()).startsWith("2026-06-03T20:12");
        assertThat(ticket.times().discharged()).as("nobody saw it").isNull();
        assertThat(ticket.paper().receivedBy()).as("nobody has its paper").isNull();
        assertThat(ticket.spot().from()).as("nobody saw where it went").isNull();
        assertThat(rig.last().aside().remark()).isEqualTo("from Quarry Road's list, line 3");
        assertThat(rig.model().source()).as("what is keyed next is live again").isEqualTo(Source.LIVE);
        assertThat(rig.model().shift().findings()).noneMatch(f -> f.rule().equals("list-load-not-here"));
    }

    @Test
    void aFindingAboutAnotherThingFillsNoTicket() {
        broughtIn();
        walkTo("list-differs");
        rig.keys("t");
        assertThat(rig.screen()).contains("this finding names no load of a plant's list that is not here");
    }

    private void walkTo(String rule) {
        rig.keys("f<home>");
        int at = rig.model().shift().findings().stream()
                .map(Finding::rule)
                .toList()
                .indexOf(rule);
        assertThat(at).as(rule).isNotNegative();
        rig.keys("<down>".repeat(at));
    }

    @Test
    void nothingIsBroughtInBeforeNumberNetAndUnitAreSettled() {
        rig.keys("mLloads.csv<enter>o<C-s>");
        assertThat(rig.screen()).contains("number, net and what the list weighs in have to be settled first");
        assertThat(rig.lines()).hasSize(3);
    }
}
