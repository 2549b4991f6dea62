package screedbook.desk;

import java.util.List;

/** The keys of the job sheet. */
final class SheetKeyTable {
    private SheetKeyTable() {}

    static void rows(List<KeyTable.Row> to) {
        sheet(to);
        plan(to);
        drawn(to);
        numbers(to);
        items(to);
        item(to);
        reason(to);
        changes(to);
    }

    private static void sheet(List<KeyTable.Row> to) {
        Place p = Place.SHEET;
        to.add(KeyTable.row(
                p,
                "Enter",
                "open",
                "open the part walked to",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> SheetKeys.enterList(m)));
        to.add(KeyTable.row(
                p,
                "w",
                "write",
                "write the sheet as the job's next revision, with a reason",
                KeyTable.c("w"),
                (m, k) -> SheetKeys.ask(m)));
        to.add(KeyTable.row(
                p,
                "t",
                "to settle",
                "everything that is missing or wrong",
                KeyTable.c("t"),
                (m, k) -> SheetKeys.doubts(m)));
        to.add(KeyTable.row(
                p,
                "f",
                "findings",
                "what the limit sheet says of the plan, with its working",
                KeyTable.c("f"),
                (m, k) -> PlanKeys.findings(m)));
        to.add(KeyTable.row(
                p,
                "d",
                "changes",
                "what changed between two revisions",
                KeyTable.c("d"),
                (m, k) -> ChangeKeys.changes(m)));
        to.add(KeyTable.row(
                p,
                "p",
                "print",
                "save the pre-paving sheet of what is written under plan/",
                KeyTable.c("p"),
                (m, k) -> PlanKeys.print(m)));
        to.add(KeyTable.row(
                p,
                "y",
                "numbers",
                "tons, tack, trucks and the last load, each with its working",
                KeyTable.c("y"),
                (m, k) -> PlanKeys.numbers(m)));
        to.add(KeyTable.row(
                p,
                "c",
                "drawn",
                "the road cut across, and the windows of target temperatures",
                KeyTable.c("c"),
                (m, k) -> PlanKeys.drawn(m)));
        to.add(KeyTable.row(
                p,
                "r",
                "",
                "read the sheet from the disk again, giving up what was typed",
                KeyTable.c("r"),
                (m, k) -> SheetKeys.again(m)));
        to.add(KeyTable.walk(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.row(
                p,
                "Esc",
                "back",
                "back; what was typed stays and is written with w",
                KeyTable.code(Key.Code.ESCAPE),
                (m, k) -> SheetKeys.leave(m)));
    }

    private static void plan(List<KeyTable.Row> to) {
        Place p = Place.PLAN;
        to.add(KeyTable.row(
                p,
                "Enter",
                "working",
                "how the finding came about",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> PlanKeys.working(m)));
        to.add(KeyTable.walk(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void drawn(List<KeyTable.Row> to) {
        Place p = Place.DRAWN;
        to.add(scroll(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static void numbers(List<KeyTable.Row> to) {
        Place p = Place.NUMBERS;
        to.add(KeyTable.row(
                p,
                "Enter",
                "working",
                "how the figure came about",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> PlanKeys.figure(m)));
        to.add(KeyTable.walk(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }

    private static KeyTable.Row scroll(Place p) {
        return KeyTable.row(
                p,
                "Up Down",
                "",
                "move the text; Page keys likewise",
                KeyTable.codes(Key.Code.UP, Key.Code.DOWN, Key.Code.PAGE_UP, Key.Code.PAGE_DOWN),
                Walking::scroll);
    }

    private static void items(List<KeyTable.Row> to) {
        Place p = Place.ITEMS;
        to.add(KeyTable.row(
                p,
                "Enter",
                "edit",
                "open the one walked to",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> SheetKeys.enterList(m)));
        to.add(KeyTable.row(p, "n", "new", "put in another one", KeyTable.c("n"), (m, k) -> SheetKeys.add(m)));
        to.add(KeyTable.row(
                p, "x", "take out", "take out the one walked to", KeyTable.c("x"), (m, k) -> SheetKeys.takeOut(m)));
        to.add(KeyTable.walk(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.row(p, "Esc", "back", "back", KeyTable.code(Key.Code.ESCAPE), (m, k) -> ItemKeys.back(m)));
    }

    private static void item(List<KeyTable.Row> to) {
        Place p = Place.ITEM;
        to.add(KeyTable.row(
                p,
                "Enter",
                "on",
                "on to the next blank; a list inside is opened; from the last blank: keep it",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> ItemKeys.enter(m)));
        typing(p, to);
        to.add(KeyTable.row(
                p,
                "Ctrl-S",
                "keep",
                "keep it in the sheet as it stands",
                KeyTable.ctrl("s"),
                (m, k) -> ItemKeys.keep(m)));
        to.add(KeyTable.row(
                p,
                "Esc",
                "leave",
                "leave it half typed and go back",
                KeyTable.code(Key.Code.ESCAPE),
                (m, k) -> ItemKeys.back(m)));
        to.add(KeyTable.row(
                p, "Ctrl-D", "drop", "give up what was typed", KeyTable.ctrl("d"), (m, k) -> ItemKeys.drop(m)));
        to.add(KeyTable.helpWhileTyping(p));
    }

    private static void reason(List<KeyTable.Row> to) {
        Place p = Place.REASON;
        to.add(KeyTable.row(
                p,
                "Enter",
                "on",
                "on to the next blank; from the last one: write the sheet",
                KeyTable.code(Key.Code.ENTER),
                (m, k) -> ItemKeys.enter(m)));
        typing(p, to);
        to.add(KeyTable.row(p, "Ctrl-S", "write", "write the sheet", KeyTable.ctrl("s"), (m, k) -> ItemKeys.keep(m)));
        to.add(KeyTable.helpWhileTyping(p));
        to.add(KeyTable.esc(p));
    }

    private static void typing(Place p, List<KeyTable.Row> to) {
        to.add(KeyTable.row(
                p,
                "Tab",
                "next",
                "next blank; Shift-Tab and arrows likewise",
                KeyTable.codes(Key.Code.TAB, Key.Code.DOWN),
                (m, k) -> ItemKeys.move(m, 1)));
        to.add(KeyTable.row(
                p,
                "Shift-Tab",
                "",
                "blank before",
                KeyTable.codes(Key.Code.BACK_TAB, Key.Code.UP),
                (m, k) -> ItemKeys.move(m, -1)));
        to.add(KeyTable.row(
                p,
                "Left Right",
                "",
                "move in the blank; Home and End to its ends",
                KeyTable.codes(Key.Code.LEFT, Key.Code.RIGHT, Key.Code.HOME, Key.Code.END),
                ItemKeys::caret));
        to.add(KeyTable.row(
                p,
                "Backspace",
                "",
                "take away a character; Delete the one ahead",
                KeyTable.codes(Key.Code.BACKSPACE, Key.Code.DELETE),
                ItemKeys::erase));
    }

    private static void changes(List<KeyTable.Row> to) {
        Place p = Place.CHANGES;
        to.add(KeyTable.row(
                p,
                "Left",
                "older",
                "an older revision as the later one",
                KeyTable.codes(Key.Code.LEFT),
                (m, k) -> ChangeKeys.other(m, -1, 0)));
        to.add(KeyTable.row(
                p,
                "Right",
                "newer",
                "a newer revision as the later one",
                KeyTable.codes(Key.Code.RIGHT),
                (m, k) -> ChangeKeys.other(m, 1, 0)));
        to.add(KeyTable.row(
                p,
                "-",
                "from older",
                "hold it against an older revision",
                KeyTable.c("-"),
                (m, k) -> ChangeKeys.other(m, 0, -1)));
        to.add(KeyTable.row(
                p,
                "+",
                "from newer",
                "hold it against a newer revision",
                KeyTable.c("+"),
                (m, k) -> ChangeKeys.other(m, 0, 1)));
        to.add(scroll(p));
        to.add(KeyTable.help(p));
        to.add(KeyTable.esc(p));
    }
}
