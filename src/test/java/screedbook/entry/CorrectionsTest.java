package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What counts after strikes and amendments. The rules are the record's own; lines are never rewritten. */
class CorrectionsTest {
    private static List<String> refs(List<? extends Standing<?>> standing) {
        return standing.stream().map(s -> s.ref().toString()).toList();
    }

    private static Standing<Ticket> first(Day day) {
        return day.every(Ticket.class).get(0);
    }

    private static BigDecimal net(Day day) {
        return first(day).entry().weights().net().value();
    }

    private static BigDecimal tons(String text) {
        return new BigDecimal(text);
    }

    @Test
    void aStruckEntryStaysLegibleAndDoesNotCount() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .ticket("T2", "21.90")
                .strike("paver/1")
                .day();
        assertThat(refs(day.standing(Ticket.class))).containsExactly("paver/2");
        assertThat(refs(day.every(Ticket.class))).containsExactly("paver/1", "paver/2");
        assertThat(first(day).struckBy().ref()).isEqualTo(Ref.of("paver/3"));
        assertThat(first(day).entry().paper().truck()).isEqualTo("T1");
        assertThat(day.last(Ticket.class).orElseThrow().ref()).isEqualTo(Ref.of("paver/2"));
    }

    @Test
    @DisplayName("row 92: a strike that is struck has no force, and so on up the chain")
    void aStrikeOfAStrikeBringsTheEntryBack() {
        Book book = Book.paver().ticket("T1", "22.10").strike("paver/1").strike("paver/2");
        assertThat(first(book.day()).struck()).isFalse();
        assertThat(book.day().find(Ref.of("paver/2")).orElseThrow().struck()).isTrue();
        assertThat(first(book.strike("paver/3").day()).struck()).isTrue();
        assertThat(first(book.strike("paver/4").day()).struck()).isFalse();
    }

    @Test
    void anEntryStruckTwiceIsNotBackWhenOneStrikeIsStruck() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .strike("paver/1")
                .strike("paver/1")
                .strike("paver/2")
                .day();
        assertThat(first(day).struckBy().ref()).isEqualTo(Ref.of("paver/3"));
    }

    @Test
    void aValueIsAmendedAndTheLineBehindItStays() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .amend("paver/1", "net_ston", tons("21.20"))
                .day();
        assertThat(first(day).entry().weights().net()).isEqualTo(Amount.of("21.20", Unit.SHORT_TON));
        assertThat(first(day).entry().paper().truck()).isEqualTo("T1");
        assertThat(((Ticket) first(day).line().entry()).weights().net().value()).isEqualTo("22.10");
        assertThat(first(day).amendedBy()).extracting(Line::n).containsExactly(2);
        assertThat(first(day).slips()).isEmpty();
    }

    @Test
    @DisplayName("row 92: of several amendments of one value the later one wins")
    void theLaterAmendmentWins() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .amend("paver/1", "net_ston", tons("21.20"), "truck", "T7")
                .amend("paver/1", "net_ston", tons("21.30"))
                .day();
        assertThat(net(day)).isEqualTo("21.30");
        assertThat(first(day).entry().paper().truck()).isEqualTo("T7");
        assertThat(first(day).amendedBy()).extracting(Line::n).containsExactly(2, 3);
    }

    @Test
    @DisplayName("row 92: an amendment is itself amended, by the blanks of the entry or by its own")
    void anAmendmentOfAnAmendmentIsTheOneThatCounts() {
        Book byBlanks = Book.paver().ticket("T1", "22.10").amend("paver/1", "net_ston", tons("21.20"), "truck", "T7");
        byBlanks.amend("paver/2", "net_ston", tons("21.25"));
        assertThat(net(byBlanks.day())).isEqualTo("21.25");
        assertThat(first(byBlanks.day()).entry().paper().truck()).isEqualTo("T7");

        Book byItsOwn = Book.paver().ticket("T1", "22.10").amend("paver/1", "net_ston", tons("21.20"), "truck", "T7");
        byItsOwn.amend("paver/2", "set", Book.map("net_ston", tons("21.25")), "reason", "read again");
        assertThat(net(byItsOwn.day())).isEqualTo("21.25");
        assertThat(first(byItsOwn.day()).entry().paper().truck()).isEqualTo("T1");
        Amend amend =
                (Amend) byItsOwn.day().find(Ref.of("paver/2")).orElseThrow().entry();
        assertThat(amend.reason()).isEqualTo("read again");
        assertThat(first(byItsOwn.day()).entry().fate().reason()).isNull();
    }

    @Test
    @DisplayName("row 92: an amendment that is struck has no force")
    void aStruckAmendmentGivesTheValueBack() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .amend("paver/1", "net_ston", tons("21.20"))
                .strike("paver/2")
                .day();
        assertThat(net(day)).isEqualTo("22.10");
        assertThat(first(day).amendedBy()).isEmpty();
    }

    @Test
    void anAmendmentTakesAValueAway() {
        Day day = Book.paver()
                .line(
                        Book.made(Ticket.class, "truck", "T1", "paver_degF", tons("264")),
                        "21:32",
                        new Aside("BT", List.of("17"), "windy"))
                .amend("paver/1", "paver_degF", null, "time", null, "remark", null)
                .day();
        assertThat(first(day).entry().heat().paver()).isNull();
        assertThat(first(day).time()).isNull();
        assertThat(first(day).order()).isEqualTo("2026-06-03T19:00:00-06:00");
        assertThat(first(day).aside()).isEqualTo(new Aside("BT", List.of("17"), null));
    }

    @Test
    @DisplayName("row 11: when it happened is amended like any value; the old time stays in its line")
    void theTimeIsAmended() {
        Day day = Book.paver()
                .line(Book.made(Note.class, "text", "x"), "21:32", Aside.NONE)
                .amend("paver/1", "time", "2026-06-03T20:32:00-06:00", "photos", List.of("3"))
                .day();
        Standing<Note> note = day.every(Note.class).get(0);
        assertThat(note.time()).isEqualTo("2026-06-03T20:32:00-06:00");
        assertThat(note.line().time()).isEqualTo("2026-06-03T21:32:00-06:00");
        assertThat(note.aside().photos()).containsExactly("3");
    }

    @Test
    void aValueThatCannotBeReadLeavesTheOldOneAndIsReportedAndTheOthersCount() {
        Day day = Book.paver()
                .line(Book.made(Ticket.class, "truck", "T1", "net_ston", tons("22.10")), "21:32", Aside.NONE)
                .amend(
                        "paver/1",
                        "net_ston",
                        "a lot",
                        "truck",
                        "T7",
                        "fate",
                        "eaten",
                        "time",
                        "late",
                        "photos",
                        List.of("3", tons("4")),
                        "remark",
                        "windy")
                .day();
        Standing<Ticket> ticket = first(day);
        assertThat(ticket.slips())
                .extracting(Built.Slip::path)
                .containsExactlyInAnyOrder("net_ston", "fate", "time", "photos[1]");
        assertThat(net(day)).isEqualTo("22.10");
        assertThat(ticket.entry().paper().truck()).isEqualTo("T7");
        assertThat(ticket.entry().fate().fate()).isNull();
        assertThat(ticket.time()).isEqualTo("2026-06-03T21:32:00-06:00");
        assertThat(ticket.aside()).isEqualTo(new Aside(null, null, "windy"));
    }

    @Test
    void aKeyThatTheEntryDoesNotHaveIsReportedAndChangesNothing() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .amend("paver/1", "colour\u202E", "red", "who", "BT", "truck", "T7")
                .day();
        assertThat(first(day).slips()).extracting(Built.Slip::path).containsExactly("colour<U+202E>", "who");
        assertThat(first(day).entry().paper().truck()).isEqualTo("T7");
    }

    @Test
    @DisplayName("row 65: an amendment in the other system's unit is reported and the figure stays")
    void aFigureIsNotAmendedInAnotherUnit() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .amend("paver/1", "net_t", tons("20.05"))
                .day();
        assertThat(first(day).entry().weights().net()).isEqualTo(Amount.of("22.10", Unit.SHORT_TON));
        assertThat(first(day).slips()).extracting(Built.Slip::path).containsExactly("net_t");
    }

    @Test
    void whatAStrikeNamesIsNotAmended() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .ticket("T2", "21.90")
                .strike("paver/1")
                .amend("paver/3", "of", "paver/2", "reason", "printed twice")
                .day();
        assertThat(refs(day.standing(Ticket.class))).containsExactly("paver/2");
        Standing<?> strike = day.find(Ref.of("paver/3")).orElseThrow();
        assertThat(((Strike) strike.entry()).reason()).isEqualTo("printed twice");
        assertThat(((Strike) strike.entry()).of()).isEqualTo(Ref.of("paver/1"));
        assertThat(strike.slips()).extracting(Built.Slip::path).containsExactly("of");
    }

    @Test
    @DisplayName("row 92: a correction of an entry that is not there is adrift; so is an answer to it")
    void correctionsOfWhatIsNotThereAreAdrift() {
        Day day = Book.paver()
                .ticket("T1", "22.10")
                .strike("paver/99")
                .amend("shop/1", "truck", "T7")
                .line(Book.made(Answer.class, "of", "paver/98", "rule", "x", "text", "y"))
                .line(new Amend(null, null, null))
                .line(new Strike(null, null))
                .strike("paver/7")
                .amend("paver/8", "reason", "of itself")
                .day();
        assertThat(day.adrift()).extracting(Line::n).containsExactly(2, 3, 4, 5, 6, 7, 8);
        assertThat(first(day).struck()).isFalse();
        assertThat(day.all()).hasSize(8);
    }

    @Test
    void aStruckCorrectionIsNotAdrift() {
        Day day = Book.paver()
                .strike("paver/99")
                .line(Book.made(Answer.class, "of", "paver/98", "rule", "x", "text", "y"))
                .strike("paver/1")
                .strike("paver/2")
                .day();
        assertThat(day.adrift()).isEmpty();
    }

    @Test
    @DisplayName("row 8: a clock set back on another laptop does not turn a correction round")
    void aCorrectionOfALaterLineHasForce() {
        Book paver = new Book("paver").clock("20:00").ticket("T1", "22.10").strike("paver/1");
        Book shop = new Book("shop").clock("19:00").strike("paver/2");
        Day day = Day.of(Book.NIGHT, List.of(paver.lines(), shop.lines()));
        assertThat(first(day).struck()).isFalse();

        Book amends = new Book("paver").clock("20:00").ticket("T1", "22.10").amend("paver/1", "net_ston", tons("21"));
        Book again = new Book("shop").clock("19:00").amend("paver/2", "net_ston", tons("21.5"));
        assertThat(net(Day.of(Book.NIGHT, List.of(again.lines(), amends.lines()))))
                .isEqualTo("21.5");
    }

    @Test
    void linesThatStrikeOrAmendEachOtherEndTheSearch() {
        Book a = new Book("a").strike("b/1").amend("b/2", "reason", "one");
        Book b = new Book("b").strike("a/1").amend("a/2", "reason", "two");
        Day day = Day.of(Book.NIGHT, List.of(a.lines(), b.lines()));
        assertThat(day.all()).hasSize(4);
        assertThat(day.all().stream().filter(Standing::struck)).hasSize(1);
    }

    @Test
    void aLongChainOfCorrectionsIsFollowedToItsEnd() {
        Book book = Book.paver().ticket("T1", "22.10");
        for (int n = 1; n <= 20_000; n++) {
            book.strike("paver/" + n);
        }
        assertThat(first(book.day()).struck()).isFalse();
        Book amends = Book.paver().ticket("T1", "22.10");
        for (int n = 1; n <= 20_000; n++) {
            amends.amend("paver/" + n, "truck", "T" + n);
        }
        assertThat(first(amends.day()).entry().paper().truck()).isEqualTo("T20000");
    }
}
