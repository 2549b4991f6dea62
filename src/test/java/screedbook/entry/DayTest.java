package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A shift read together from its books. The rules are the record's own. */
class DayTest {
    private static List<String> order(List<? extends Written> lines) {
        return lines.stream().map(w -> w.book() + "/" + w.row()).toList();
    }

    private static List<String> refs(List<? extends Standing<?>> standing) {
        return standing.stream().map(s -> s.ref().toString()).toList();
    }

    @Test
    void anEmptyShiftIsNotClosedAndHasNothing() {
        Day day = Day.of(Book.NIGHT, List.of());
        assertThat(day.all()).isEmpty();
        assertThat(day.closed()).isFalse();
        assertThat(day.opening()).isEmpty();
        assertThat(day.last(Ticket.class)).isEmpty();
        assertThat(day.shift()).isEqualTo(Book.NIGHT);
    }

    @Test
    void aShiftThatOneBookClosedAndAnotherDidNotSaysWhichIsWhich() {
        Book paver = new Book("paver").clock("19:00").line(OPENING).note("a");
        Book plant = new Book("plant").clock("19:05").line(OPENING).note("d").note("e");
        assertThat(Day.of(Book.NIGHT, List.of(paver.lines(), plant.lines())).closedInPart())
                .as("none is closed")
                .isEmpty();

        paver.clock("19:10").line(CLOSING);
        Day day = Day.of(Book.NIGHT, List.of(paver.lines(), plant.lines()));
        assertThat(day.closed()).isFalse();
        assertThat(day.openBooks()).containsExactly("plant");
        assertThat(day.closedInPart()).contains("closed by book paver; book plant, 3 lines, is not");

        plant.clock("19:20").line(CLOSING);
        assertThat(Day.of(Book.NIGHT, List.of(paver.lines(), plant.lines())).closedInPart())
                .as("both are closed")
                .isEmpty();
    }

    @Test
    @DisplayName("row 91: two books are merged by machine time, then by name, whichever is read first")
    void twoBooksAreReadTogetherByMachineTime() {
        List<Written> paver = new Book("paver")
                .clock("19:00")
                .note("a")
                .note("b")
                .clock("19:10")
                .note("c")
                .lines();
        List<Written> back = new Book("back")
                .clock("19:01")
                .note("d")
                .clock("19:05")
                .note("e")
                .clock("19:10")
                .note("f")
                .lines();
        List<String> expected = List.of("paver/1", "back/1", "paver/2", "back/2", "back/3", "paver/3");
        assertThat(order(Day.of(Book.NIGHT, List.of(paver, back)).written())).isEqualTo(expected);
        assertThat(order(Day.of(Book.NIGHT, List.of(back, paver)).written())).isEqualTo(expected);
    }

    @Test
    @DisplayName("row 8: a clock set back within a book never reorders it")
    void aBookIsNeverReordered() {
        List<Written> paver = new Book("paver")
                .clock("21:00")
                .note("a")
                .clock("19:00")
                .note("b")
                .lines();
        List<Written> shop = new Book("shop").clock("20:00").note("c").note("d").lines();
        Day day = Day.of(Book.NIGHT, List.of(paver, shop));
        assertThat(order(day.written())).containsExactly("shop/1", "shop/2", "paver/1", "paver/2");
        assertThat(refs(day.every(Note.class))).containsExactly("shop/1", "shop/2", "paver/1", "paver/2");
    }

    @Test
    @DisplayName("row 3: what counts is listed by when it happened, also over midnight; reading order stays by number")
    void whatCountsIsOrderedByWhenItHappened() {
        Day day = Book.paver()
                .line(Book.made(Note.class, "text", "late"), "22:30", Aside.NONE)
                .line(Book.made(Note.class, "text", "early"), "18:30", Aside.NONE)
                .line(Book.made(Note.class, "text", "not noted, keyed 19:02"))
                .line(Book.made(Note.class, "text", "same"), "22:30", Aside.NONE)
                .day();
        assertThat(refs(day.standing(Note.class))).containsExactly("paver/2", "paver/3", "paver/1", "paver/4");
        assertThat(refs(day.every(Note.class))).containsExactly("paver/1", "paver/2", "paver/3", "paver/4");
        assertThat(day.last(Note.class).orElseThrow().ref()).isEqualTo(Ref.of("paver/4"));
    }

    @Test
    void atOneTimeTheBookAndThenTheNumberDecide() {
        Note note = Book.made(Note.class, "text", "x");
        List<Written> shop = new Book("shop")
                .line(note, "21:00", Aside.NONE)
                .line(note, "21:00", Aside.NONE)
                .lines();
        List<Written> paver =
                new Book("paver").clock("20:00").line(note, "21:00", Aside.NONE).lines();
        Day day = Day.of(Book.NIGHT, List.of(shop, paver));
        assertThat(refs(day.standing(Note.class))).containsExactly("paver/1", "shop/1", "shop/2");
        assertThat(refs(day.every(Note.class))).containsExactly("shop/1", "shop/2", "paver/1");
    }

    @Test
    @DisplayName(
            "rows 90 and 98: foreign and unreadable lines are kept right behind the line before them and counted as such")
    void whatCannotBeReadIsKeptInItsPlace() {
        Foreign foreign = new Foreign("paver", 2, 2, "core", "{\"kind\":\"core\"}");
        Unreadable torn = new Unreadable("paver", 3, "it is not JSON", "{\"n\":3,");
        Book book = Book.paver().note("a").other(foreign).other(torn).note("b");
        Day day = Day.of(
                Book.NIGHT,
                List.of(book.lines(), new Book("shop").clock("19:00").note("c").lines()));
        assertThat(order(day.written())).containsExactly("paver/1", "paver/2", "paver/3", "shop/1", "paver/4");
        assertThat(day.uncounted()).containsExactly(foreign, torn);
        assertThat(day.all()).hasSize(3);
        assertThat(day.find(Ref.of("paver/2"))).isEmpty();
    }

    @Test
    void aBookOfUnreadableLinesAloneSpoilsNoOther() {
        List<Written> torn = List.of(new Unreadable("back", 1, "x", ""), new Unreadable("back", 2, "x", ""));
        Day day = Day.of(Book.NIGHT, List.of(Book.paver().note("a").lines(), torn));
        assertThat(day.all()).hasSize(1);
        assertThat(day.uncounted()).hasSize(2);
    }

    @Test
    void aNumberThatIsThereTwiceCountsOnce() {
        Book book = Book.paver().note("first");
        Line line = (Line) book.lines().get(0);
        Day day = Day.of(Book.NIGHT, List.of(book.lines(), List.of(line)));
        assertThat(day.all()).hasSize(1);
        assertThat(day.written()).hasSize(2);
    }

    private static final Opening OPENING = Book.made(Opening.class);
    private static final Closing CLOSING = Book.made(Closing.class);

    @Test
    @DisplayName("row 12: what is written behind the closing of its book is late")
    void aLateLineStandsBehindTheClosingOfItsBook() {
        Book paver = Book.paver().line(OPENING).note("a").line(CLOSING);
        assertThat(paver.day().closed()).isTrue();
        assertThat(paver.day().late()).isEmpty();
        Day day = paver.note("b").strike("paver/2").day();
        assertThat(refs(day.late())).containsExactly("paver/4", "paver/5");
        assertThat(day.closed()).isTrue();
    }

    @Test
    void aShiftIsClosedWhenEveryBookThatWasOpenedIs() {
        Book paver = Book.paver().line(OPENING).line(CLOSING);
        Book shop = new Book("shop").line(OPENING).note("a");
        assertThat(Day.of(Book.NIGHT, List.of(paver.lines(), shop.lines())).closed())
                .isFalse();
        shop.line(CLOSING);
        Day day = Day.of(Book.NIGHT, List.of(paver.lines(), shop.lines()));
        assertThat(day.closed()).isTrue();
        assertThat(day.late()).isEmpty();
        assertThat(day.opening().orElseThrow().ref()).isEqualTo(Ref.of("paver/1"));
    }
}
