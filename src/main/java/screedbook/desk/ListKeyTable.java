package screedbook.desk;

import java.util.List;
import screedbook.desk.KeyTable.Row;

/** The keys of lists, of what is opened from them and of the pictures: rows of {@link KeyTable}. */
final class ListKeyTable {
    private ListKeyTable() {}

    static void rows(Place place, List<Row> to) {
        switch (place) {
            case KINDS -> kinds(place, to);
            case CREW -> crew(place, to);
            case SEASON -> season(place, to);
            case ENTRY -> entry(place, to);
            case FINDINGS -> findings(place, to);
            case TOTALS -> totals(place, to);
            case WORKING -> working(place, to);
            case PICTURES -> pictures(place, to);
            case ROAD -> road(place, to);
            case CLOSING -> closing(place, to);
            case SEARCH -> search(place, to);
            case FOLDER -> folder(place, to);
            case LIST_FILE -> listFile(place, to);
            case COLUMNS -> columns(place, to);
            case HELP -> help(place, to);
            default -> throw new IllegalArgumentException("no list: " + place);
        }
    }

    private static void kinds(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p,
                "Enter",
                "key it",
                "key an entry of the kind walked to; its own key does it at once",
                KeyTable.code(Key.Code.ENTER),
                ListKeys::kind));
        KindMenu.rows().forEach(to::add);
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void crew(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p,
                "Enter",
                "write them all",
                "write every line as one of this shift; amend them afterwards",
                KeyTable.code(Key.Code.ENTER),
                CrewKeys::write));
        to.add(KeyTable.row(p, "x", "leave out", "leave out the line walked to", KeyTable.c("x"), CrewKeys::leaveOut));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void season(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p, "Enter", "open", "open the shift walked to", KeyTable.code(Key.Code.ENTER), SeasonKeys::day));
        to.add(KeyTable.row(
                p,
                "/",
                "find",
                "look for a ticket, truck, station, person, finding or words in every shift",
                KeyTable.c("/"),
                (m, k) -> ListKeys.search(m)));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void entry(Place p, List<Row> to) {
        to.add(scroll(p));
        to.add(KeyTable.row(p, "a", "amend", "amend it, or remark on it", KeyTable.c("a"), ListKeys::amend));
        to.add(KeyTable.row(p, "x", "strike", "strike it", KeyTable.c("x"), ListKeys::strike));
        to.add(KeyTable.row(p, "n", "answer", "answer its first open finding", KeyTable.c("n"), ListKeys::answerHere));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void findings(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p, "Enter", "working", "how the finding came about", KeyTable.code(Key.Code.ENTER), ListKeys::finding));
        to.add(KeyTable.row(p, "a", "answer", "write what was done about it", KeyTable.c("a"), ListKeys::answer));
        to.add(KeyTable.row(p, "o", "entry", "open the entry", KeyTable.c("o"), ListKeys::findingEntry));
        to.add(KeyTable.row(
                p,
                "t",
                "",
                "key the ticket of a load that a plant's list has and that is not here",
                KeyTable.c("t"),
                ListKeys::findingTicket));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void totals(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p, "Enter", "working", "how the figure came about", KeyTable.code(Key.Code.ENTER), ListKeys::figure));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void working(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p, "Enter", "open", "open the entry walked to", KeyTable.code(Key.Code.ENTER), ListKeys::workedEntry));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void pictures(Place p, List<Row> to) {
        to.add(KeyTable.row(
                p, "r", "road", "see the road by pull and station", KeyTable.c("r"), (m, k) -> RoadView.open(m)));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void road(Place p, List<Row> to) {
        to.add(KeyTable.row(
                p,
                "Left Right",
                "along",
                "go along the road; Home and End to its ends",
                KeyTable.codes(Key.Code.LEFT, Key.Code.RIGHT, Key.Code.HOME, Key.Code.END),
                RoadView::along));
        to.add(KeyTable.row(
                p,
                "Up Down",
                "across",
                "go to other pulls; Page keys likewise",
                KeyTable.codes(Key.Code.UP, Key.Code.DOWN, Key.Code.PAGE_UP, Key.Code.PAGE_DOWN),
                RoadView::across));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void closing(Place p, List<Row> to) {
        to.add(KeyTable.row(
                p,
                "Enter",
                "go on",
                "key the closing entry",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> ShiftKeys.closing(m)));
        to.add(scroll(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void search(Place p, List<Row> to) {
        to.add(KeyTable.row(
                p,
                "Enter",
                "look, open",
                "look for the words; then open the entry walked to",
                KeyTable.code(Key.Code.ENTER),
                ListKeys::searchEnter));
        to.add(KeyTable.walk(p));
        to.add(KeyTable.helpWhileTyping(p));
        to.add(KeyTable.esc(p));
    }

    private static void folder(Place p, List<Row> to) {
        to.add(KeyTable.row(
                p,
                "Enter",
                "go on there",
                "go on in a new file in this folder",
                KeyTable.code(Key.Code.ENTER),
                ListKeys::folderEnter));
        to.add(KeyTable.helpWhileTyping(p));
        to.add(KeyTable.esc(p));
    }

    private static void listFile(Place p, List<Row> to) {
        to.add(KeyTable.row(
                p,
                "Enter",
                "read it",
                "read the list of this path",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> PlantKeys.read(m)));
        to.add(KeyTable.row(
                p,
                "Tab",
                "plant",
                "another plant of the job",
                KeyTable.code(Key.Code.TAB),
                (m, k) -> PlantKeys.nextPlant(m)));
        to.add(KeyTable.helpWhileTyping(p));
        to.add(KeyTable.esc(p));
    }

    private static void columns(Place p, List<Row> to) {
        to.add(KeyTable.walk(p));
        to.add(KeyTable.row(
                p,
                "Enter",
                "on",
                "on to the next row; from the last one: lay the list beside the shift",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> PlantKeys.enter(m)));
        to.add(KeyTable.row(
                p,
                "Left Right",
                "choose",
                "the choice before or behind",
                KeyTable.codes(Key.Code.LEFT, Key.Code.RIGHT),
                (m, k) -> PlantKeys.turn(m, k.code() == Key.Code.LEFT ? -1 : 1)));
        to.add(KeyTable.row(p, "1-9", "", "the choice of this number", KeyTable.digits(), PlantKeys::numbered));
        to.add(KeyTable.row(
                p, "o", "take offer", "take what is offered, and on", KeyTable.c("o"), (m, k) -> PlantKeys.offer(m)));
        to.add(KeyTable.row(
                p,
                "Backspace",
                "",
                "nothing in this row",
                KeyTable.code(Key.Code.BACKSPACE),
                (m, k) -> PlantKeys.none(m)));
        to.add(KeyTable.row(
                p,
                "Ctrl-S",
                "bring in",
                "lay the list beside the shift",
                KeyTable.ctrl("s"),
                (m, k) -> PlantKeys.bring(m)));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void help(Place p, List<Row> to) {
        to.add(scroll(p));
        to.add(KeyTable.esc(p));
    }

    private static Row scroll(Place place) {
        return KeyTable.row(
                place,
                "Up Down",
                "",
                "move the text; Page keys likewise",
                KeyTable.codes(Key.Code.UP, Key.Code.DOWN, Key.Code.PAGE_UP, Key.Code.PAGE_DOWN),
                Walking::scroll);
    }
}
