package screedbook.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import screedbook.entry.Kind;

/**
 * Every key of the desk: where it holds, how it is written, what it does. The foot of each screen, the help and the
 * table of the manual are read off these rows; a new key is one row.
 */
public final class KeyTable {
    /**
     * One key.
     *
     * @param foot the word for the line at the foot of the screen; empty where it stands in the help only
     */
    public record Row(
            Place place,
            String key,
            String foot,
            String does,
            Predicate<Key> struck,
            BiFunction<Model, Key, Step> act) {}

    /** Made when first asked for: the first screen does not wait for the keys of the others. */
    private static final Map<Place, List<Row>> ROWS = new ConcurrentHashMap<>();

    private KeyTable() {}

    /** All keys in the order of the help. */
    public static List<Row> all() {
        return Arrays.stream(Place.values()).flatMap(p -> at(p).stream()).toList();
    }

    static List<Row> at(Place place) {
        return ROWS.computeIfAbsent(place, KeyTable::rows);
    }

    static Optional<Row> find(Place place, Key key) {
        return at(place).stream().filter(r -> r.struck().test(key)).findFirst();
    }

    /** The foot of a screen. */
    static String foot(Place place) {
        List<String> words = new ArrayList<>();
        for (Row row : at(place)) {
            if (!row.foot().isEmpty()) {
                words.add(row.key() + " " + row.foot());
            }
        }
        return String.join("  ", words);
    }

    /** {@code ? keys}; empty where no help is. */
    static String helpKey(Place place) {
        return at(place).stream()
                .filter(r -> r.foot().equals("keys"))
                .map(r -> r.key() + " " + r.foot())
                .findFirst()
                .orElse("");
    }

    private static List<Row> rows(Place place) {
        List<Row> rows = new ArrayList<>();
        switch (place) {
            case START -> start(rows);
            case SHIFT -> shift(rows);
            case FORM -> form(rows);
            case SHEET, PLAN, DRAWN, NUMBERS, ITEMS, ITEM, REASON, CHANGES -> SheetKeyTable.rows(rows);
            default -> ListKeyTable.rows(place, rows);
        }
        return rows.stream().filter(r -> r.place() == place).toList();
    }

    private static void start(List<Row> to) {
        Place p = Place.START;
        to.add(walk(p));
        to.add(row(p, "Enter", "open", "open the shift walked to", code(Key.Code.ENTER), StartKeys::open));
        to.add(row(p, "d", "day", "begin today's day shift", c("d"), (m, k) -> StartKeys.begin(m, "day")));
        to.add(row(p, "n", "night", "begin tonight's night shift", c("n"), (m, k) -> StartKeys.begin(m, "night")));
        to.add(row(p, "e", "extra", "begin an extra shift today", c("e"), (m, k) -> StartKeys.extra(m)));
        to.add(row(p, "o", "no work", "write that nothing was placed today", c("o"), (m, k) -> StartKeys.noWork(m)));
        to.add(row(
                p,
                "s",
                "season",
                "see the season: its calendar, what went up and down, one line a shift",
                c("s"),
                (m, k) -> SeasonKeys.open(m)));
        to.add(row(p, "j", "job", "the job sheet: prepare or revise the job", c("j"), (m, k) -> SheetKeys.open(m)));
        to.add(row(p, "1-9", "who", "say who writes", digits(), StartKeys::who));
        to.add(row(
                p,
                "/",
                "find",
                "look for a ticket, truck, station, person, finding or words in every shift",
                c("/"),
                (m, k) -> ListKeys.search(m)));
        to.add(look(p));
        to.add(help(p));
        to.add(row(p, "q", "quit", "end the program", c("q"), (m, k) -> Step.of(m.ended())));
    }

    private static void shift(List<Row> to) {
        Place p = Place.SHIFT;
        to.add(row(
                p, "0-9", "ticket", "begin a ticket; the digit goes into its first blank", digits(), ShiftKeys::digit));
        to.add(begin(p, "t", "", "key a ticket", Kind.TICKET));
        to.add(begin(p, "s", "surface", "key a surface temperature", Kind.SURFACE));
        to.add(begin(p, "w", "weather", "key the weather", Kind.WEATHER));
        to.add(begin(p, "k", "tack", "key a tack shot", Kind.TACK));
        to.add(begin(p, "n", "", "key a note", Kind.NOTE));
        to.add(begin(p, "h", "", "key the heat of the mat", Kind.MAT));
        to.add(row(p, "b", "", "the paver stops; while it stands: it goes on", c("b"), (m, k) -> StopKeys.either(m)));
        to.add(begin(p, "e", "", "key a sample", Kind.SAMPLE));
        to.add(row(
                p,
                "m",
                "more",
                "every other kind of entry, each with a key of its own",
                c("m"),
                (m, k) -> Step.of(m.push(new Screen.Kinds(Walk.FIRST)))));
        to.add(row(
                p,
                "f",
                "findings",
                "see what is outside, missing, to look at again, not adding up",
                c("f"),
                (m, k) -> Step.of(m.push(new Screen.FindingList(Walk.FIRST)))));
        to.add(row(
                p,
                "y",
                "totals",
                "see what the day comes to, with its working",
                c("y"),
                (m, k) -> Step.of(m.push(new Screen.Sums(Walk.FIRST)))));
        to.add(row(p, "p", "", "see the pictures", c("p"), (m, k) -> Step.of(m.push(new Screen.Pictures()))));
        to.add(walk(p));
        to.add(row(p, "Enter", "", "open the entry walked to", code(Key.Code.ENTER), ShiftKeys::open));
        to.add(row(p, "x", "", "strike the entry walked to", c("x"), ShiftKeys::strike));
        to.add(row(p, "a", "", "amend the entry walked to, or remark on it", c("a"), ShiftKeys::amend));
        to.add(row(p, "l", "", "key live, or from notes", c("l"), (m, k) -> ShiftKeys.source(m)));
        to.add(row(
                p,
                "/",
                "",
                "look for a ticket, truck, station, person, finding or words in every shift",
                c("/"),
                (m, k) -> ListKeys.search(m)));
        to.add(row(
                p, "P", "", "save the page so far as text and CSV", c("P"), (m, k) -> Step.of(m, new Effect.Print())));
        to.add(row(p, "c", "", "see what is missing, then close the shift", c("c"), (m, k) -> ShiftKeys.close(m)));
        to.add(row(p, "r", "", "write a review of a closed shift", c("r"), (m, k) -> ShiftKeys.review(m)));
        to.add(row(p, "u", "", "say who writes", c("u"), (m, k) -> ShiftKeys.nextWho(m)));
        to.add(look(p));
        to.add(row(
                p,
                "Ctrl-F",
                "",
                "go on in another folder when the disk refuses",
                ctrl("f"),
                (m, k) -> Step.of(m.push(new Screen.OtherFolder("")))));
        to.add(help(p));
        to.add(row(
                p,
                "Esc",
                "",
                "back to the shifts; what is half typed stays",
                code(Key.Code.ESCAPE),
                (m, k) -> ShiftKeys.leave(m)));
    }

    private static void form(List<Row> to) {
        Place p = Place.FORM;
        to.add(row(
                p,
                "Enter",
                "on",
                "on to the next blank that is due; from the last one: write the entry",
                code(Key.Code.ENTER),
                FormKeys::enter));
        to.add(row(
                p,
                "Tab",
                "next",
                "next blank; Shift-Tab and arrows likewise",
                codes(Key.Code.TAB, Key.Code.DOWN),
                (m, k) -> FormKeys.move(m, 1)));
        to.add(row(
                p,
                "Shift-Tab",
                "",
                "blank before",
                codes(Key.Code.BACK_TAB, Key.Code.UP),
                (m, k) -> FormKeys.move(m, -1)));
        to.add(row(p, "Ctrl-S", "write", "write the entry as it stands", ctrl("s"), (m, k) -> FormKeys.write(m)));
        to.add(row(
                p,
                "Esc",
                "leave",
                "leave it half typed and go back",
                code(Key.Code.ESCAPE),
                (m, k) -> FormKeys.leave(m)));
        to.add(row(p, "Ctrl-D", "drop", "give up what was typed", ctrl("d"), (m, k) -> FormKeys.drop(m)));
        to.add(row(p, "Ctrl-O", "", "take what is offered", ctrl("o"), (m, k) -> FormKeys.offer(m)));
        to.add(row(p, "Ctrl-W", "", "see the working of the limit", ctrl("w"), (m, k) -> FormKeys.working(m)));
        to.add(row(p, "Ctrl-L", "", "key live, or from notes", ctrl("l"), (m, k) -> FormKeys.source(m)));
        to.add(row(
                p,
                "Ctrl-F",
                "",
                "go on in another folder when the disk refuses",
                ctrl("f"),
                (m, k) -> Step.of(m.push(new Screen.OtherFolder("")))));
        to.add(row(p, ".", "", "alone in an empty blank: as last time", k -> false, (m, k) -> Step.of(m)));
        to.add(row(p, "3+ 3-", "", "three more or less than last time", k -> false, (m, k) -> Step.of(m)));
        to.add(row(
                p,
                "Left Right",
                "",
                "move in the blank; Home and End to its ends",
                codes(Key.Code.LEFT, Key.Code.RIGHT, Key.Code.HOME, Key.Code.END),
                FormKeys::caret));
        to.add(row(
                p,
                "Backspace",
                "",
                "take away a character; Delete the one ahead",
                codes(Key.Code.BACKSPACE, Key.Code.DELETE),
                FormKeys::erase));
        to.add(row(
                p,
                "Ctrl-K",
                "keys",
                "these keys; also ? where the blank is no text",
                k -> FormKeys.helps(k),
                (m, k) -> FormKeys.help(m, k)));
    }

    static Row row(
            Place place,
            String key,
            String foot,
            String does,
            Predicate<Key> struck,
            BiFunction<Model, Key, Step> act) {
        return new Row(place, key, foot, does, struck, act);
    }

    private static Row begin(Place place, String key, String foot, String does, Kind kind) {
        return row(place, key, foot, does, c(key), (m, k) -> ShiftKeys.begin(m, kind));
    }

    static Row walk(Place place) {
        return row(
                place,
                "Up Down",
                "",
                "walk the list; Page keys, Home and End likewise",
                codes(Key.Code.UP, Key.Code.DOWN, Key.Code.PAGE_UP, Key.Code.PAGE_DOWN, Key.Code.HOME, Key.Code.END),
                Walking::walk);
    }

    private static Row look(Place place) {
        return row(
                place,
                "v",
                "",
                "another look: night, sun, without colour",
                c("v"),
                (m, k) -> Step.of(m.with(m.setting().nextLook())));
    }

    static Row help(Place place) {
        return row(
                place,
                "?",
                "keys",
                "what the keys do here",
                c("?"),
                (m, k) -> Step.of(m.push(new Screen.Help(place, 0))));
    }

    /** Where {@code ?} may be a character of what is typed. */
    static Row helpWhileTyping(Place place) {
        return row(
                place,
                "Ctrl-K",
                "keys",
                "what the keys do here",
                ctrl("k"),
                (m, k) -> Step.of(m.push(new Screen.Help(place, 0))));
    }

    static Row esc(Place place) {
        return row(place, "Esc", "back", "back", code(Key.Code.ESCAPE), (m, k) -> Step.of(m.pop()));
    }

    static Predicate<Key> c(String text) {
        return key -> key.is(text);
    }

    static Predicate<Key> ctrl(String letter) {
        return key -> key.code() == Key.Code.CHAR && key.ctrl() && key.text().equals(letter);
    }

    static Predicate<Key> code(Key.Code code) {
        return key -> key.code() == code;
    }

    static Predicate<Key> codes(Key.Code... codes) {
        return key -> Arrays.asList(codes).contains(key.code());
    }

    static Predicate<Key> digits() {
        return key -> key.code() == Key.Code.CHAR
                && !key.ctrl()
                && !key.alt()
                && key.text().matches("[0-9]");
    }
}
