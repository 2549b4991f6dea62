package screedbook.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.desk.Scenes.Scene;
import screedbook.entry.Ref;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;

/** The screens of the start, of a shift with its forms and lists, of the season, and their help. */
final class ShiftScenes {
    private ShiftScenes() {}

    static List<Scene> all() {
        return List.of(
                new Scene("start", DeskRig::new),
                new Scene("start-who", () -> new DeskRig().keys("1")),
                new Scene("start-not-closed", ShiftScenes::notClosed),
                new Scene("start-job-unread", ShiftScenes::jobUnread),
                new Scene("shift-empty", DeskRig::open),
                new Scene("shift", Scenes::night),
                new Scene("shift-wide", 132, 43, Scenes::night),
                new Scene("shift-walked", () -> Scenes.night().keys("<down><down><down>")),
                new Scene("shift-half-typed", () -> Scenes.night().keys("118<esc>")),
                new Scene("shift-from-notes", () -> Scenes.night().keys("l")),
                new Scene("shift-look-only", () -> lookOnly(Scenes.night())),
                new Scene("shift-closed", ShiftScenes::closed),
                new Scene("ticket", () -> Scenes.night().keys("t")),
                new Scene("ticket-first", () -> DeskRig.open().keys("t")),
                new Scene("ticket-begun", () -> Scenes.night().keys("118<enter>22.31")),
                new Scene("ticket-temperature-due", () -> Scenes.due().keys("118<enter>22.31<enter>")),
                new Scene("ticket-out", () -> Scenes.due().keys("118<enter>22.31<enter>264")),
                new Scene("ticket-left-to-roll", () -> Scenes.due().keys("118<enter>22.31<enter>286")),
                new Scene("ticket-left-working", () -> Scenes.due().keys("118<enter>22.31<enter>286<C-w>")),
                new Scene("mat-left-to-roll", () -> Scenes.night().keys("mh1<enter>278")),
                new Scene("ticket-pounds", () -> Scenes.night().keys("118<enter>44620")),
                new Scene("ticket-no-number", () -> Scenes.night().keys("118<enter>2z<enter>")),
                new Scene("ticket-notes", () -> Scenes.night().keys("l118<enter>22.31<enter>")),
                new Scene("ticket-gross-tare", () -> weighed().keys("t")),
                new Scene("ticket-refused", ShiftScenes::refused),
                new Scene("ticket-writing", ShiftScenes::writing),
                new Scene("surface", () -> Scenes.night().keys("s")),
                new Scene("surface-cold", () -> Scenes.night().keys("s31")),
                new Scene("weather", () -> Scenes.night().keys("w")),
                new Scene("weather-first", () -> DeskRig.open().keys("w")),
                new Scene("tack", () -> Scenes.night().keys("k")),
                new Scene("tack-wide", () -> Scenes.typedIn(Scenes.night().keys("k"), "width_ft", "120")),
                new Scene("note", () -> Scenes.night().keys("nlane closed at 21:00")),
                new Scene("kinds", () -> Scenes.night().keys("m")),
                new Scene("part", () -> Scenes.night().keys("mp")),
                new Scene("waste", () -> Scenes.night().keys("mw")),
                new Scene("refill", () -> Scenes.night().keys("mr")),
                new Scene("number", () -> Scenes.night().keys("mn")),
                new Scene("hand-over", () -> Scenes.night().keys("mq")),
                new Scene("no-work", () -> DeskRig.open().keys("m0")),
                new Scene("answer", () -> Scenes.night().keys("fa")),
                new Scene("strike", () -> Scenes.night().keys("<down>x")),
                new Scene("amend", () -> Scenes.night().keys("<down><down><down>a")),
                new Scene(
                        "amend-note",
                        () -> DeskRig.open().keys("nlane closed<C-s>").keys("<down>a")),
                new Scene("closing", () -> Scenes.night().keys("c<enter>")),
                new Scene("review", () -> closed().keys("r")),
                new Scene("findings", () -> Scenes.night().keys("f")),
                new Scene("findings-none", () -> DeskRig.open().keys("f")),
                new Scene("findings-answered", ShiftScenes::answered),
                new Scene("finding-working", () -> Scenes.night().keys("f<enter>")),
                new Scene("totals", () -> Scenes.night().keys("y")),
                new Scene("totals-end", () -> Scenes.night().keys("y<end>")),
                new Scene("depth", () -> Scenes.night().keys("md2.1<enter>compacted<enter>")),
                new Scene("depth-loose", () -> Scenes.night().keys("md2.25<enter>loose<enter>")),
                new Scene("yield", () -> Scenes.night().keys("my<enter>21+01")),
                new Scene("yield-working", () -> Scenes.night().keys("my<enter>21+01<C-w>")),
                new Scene(
                        "yield-written",
                        () -> Scenes.night().keys("my<enter>21+01<enter>md2.1<enter>compacted<enter><enter>")),
                new Scene("shift-much-due", Scenes::muchDue),
                new Scene("yield-nothing", () -> DeskRig.open().keys("my")),
                new Scene("figure-working", () -> Scenes.night().keys("y<enter>")),
                new Scene("limit-working", () -> Scenes.due().keys("118<enter>22.31<enter><C-w>")),
                new Scene("entry", () -> Scenes.night().keys("<down><enter>")),
                new Scene("entry-amended", () -> amended().keys("<enter>")),
                new Scene("entry-struck", () -> struck().keys("<enter>")),
                new Scene("entry-outside", () -> cold().keys("<down><enter>")),
                new Scene("shift-corrected", () -> struck().keys("<up>")),
                new Scene("pictures", () -> Scenes.night().keys("p")),
                new Scene("pictures-planned", () -> Scenes.planned().keys("p")),
                new Scene(
                        "pictures-planned-wide", 132, 43, () -> Scenes.planned().keys("p")),
                new Scene("shift-planned", Scenes::planned),
                new Scene("totals-planned", () -> Scenes.planned().keys("y<end><page_up>")),
                new Scene("pictures-empty", () -> DeskRig.open().keys("p")),
                new Scene("road", () -> Scenes.night().keys("pr")),
                new Scene("road-marked", RoadKeysTest::marked),
                new Scene("road-wide", 132, 43, RoadKeysTest::marked),
                new Scene("road-empty", () -> DeskRig.open().keys("pr")),
                new Scene("before-closing", () -> Scenes.night().keys("c")),
                new Scene("before-closing-half-typed", () -> Scenes.night().keys("118<esc>c")),
                new Scene("season-reading", () -> Scenes.night().keys("<esc>s")),
                new Scene("season", Scenes::season),
                new Scene("help-season", () -> Scenes.season().keys("?")),
                new Scene("search", () -> Scenes.night().keys("/")),
                new Scene("search-matches", ShiftScenes::found),
                new Scene("search-nothing", ShiftScenes::nothingFound),
                new Scene("other-folder", () -> Scenes.night().keys("<C-f>/media/stick")),
                new Scene("help-start", () -> new DeskRig().keys("?")),
                new Scene("help-shift", () -> Scenes.night().keys("?")),
                new Scene("help-shift-end", () -> Scenes.night().keys("?<page_down><page_down>")),
                new Scene("help-form", () -> Scenes.night().keys("t<C-k>")),
                new Scene("help-entry", () -> Scenes.night().keys("<down><enter>?")),
                new Scene("help-findings", () -> Scenes.night().keys("f?")),
                new Scene("help-totals", () -> Scenes.night().keys("y?")),
                new Scene("help-kinds", () -> Scenes.night().keys("m?")),
                new Scene("help-working", () -> Scenes.night().keys("y<enter>?")),
                new Scene("help-pictures", () -> Scenes.night().keys("p?")),
                new Scene("help-road", () -> Scenes.night().keys("pr?")),
                new Scene("help-closing", () -> Scenes.night().keys("c?")),
                new Scene("help-search", () -> Scenes.night().keys("/<C-k>")),
                new Scene("help-folder", () -> Scenes.night().keys("<C-f><C-k>")));
    }

    private static DeskRig cold() {
        return Scenes.load(Scenes.due(), "104", "21.96", "264", "1652", "1799");
    }

    private static DeskRig amended() {
        return Scenes.keyed(
                Scenes.typedIn(Scenes.night().keys("<down><down>a"), "net_ston", "21.31"),
                "",
                Map.of(Forms.WHY, "misread"));
    }

    private static DeskRig struck() {
        return cold().keys("<down>x2<enter>").later(1);
    }

    private static DeskRig answered() {
        return Scenes.keyed(Scenes.night().keys("f"), "a", Map.of("text", "foreman told 20:50"));
    }

    private static DeskRig weighed() {
        DeskRig rig =
                new DeskRig(DeskRig.job(Map.of("checks", DeskRig.map("gross_and_tare", "yes"))), DeskRig.practice());
        return rig.keys("1n");
    }

    private static DeskRig refused() {
        DeskRig rig = Scenes.night();
        rig.refuses = true;
        return rig.keys("118<enter>22.31<C-s>");
    }

    private static DeskRig writing() {
        DeskRig rig = Scenes.night();
        rig.silent = true;
        return rig.keys("118<enter>22.31<C-s>");
    }

    private static DeskRig closed() {
        DeskRig rig = Scenes.night().keys("c<enter>");
        Scenes.typedIn(rig, "text", "swept and opened").keys("<C-s>");
        Msg.Page page = rig.page();
        Seal seal = new Seal("paver", "ab".repeat(32), 14);
        return rig.send(new Msg.Opened(
                new Msg.Page(
                        page.shift(),
                        page.book(),
                        page.day(),
                        page.ground(),
                        page.before(),
                        List.of(seal),
                        page.damages()),
                List.of(),
                true,
                ""));
    }

    private static DeskRig lookOnly(DeskRig rig) {
        return rig.send(new Msg.Opened(rig.page(), List.of(), false, "held by another desk"));
    }

    private static DeskRig notClosed() {
        DeskRig rig = new DeskRig();
        rig.send(new Msg.Folder(
                rig.model().setting().job(),
                List.of(),
                List.of(new Msg.Row(ShiftId.of("2026-06-02-night"), "open since 19:58", 61, "RK"))));
        return rig.keys("1n");
    }

    private static DeskRig jobUnread() {
        DeskRig rig = new DeskRig();
        return rig.send(new Msg.Folder(
                Optional.empty(),
                List.of("job.json line 12: \"lifts\" is a word; right would be a list"),
                List.of(new Msg.Row(ShiftId.of("2026-06-02-day"), "closed", 131, "RK"))));
    }

    private static DeskRig found() {
        DeskRig rig = Scenes.night().keys("/T118<enter>");
        return rig.send(new Msg.Found(
                "T118",
                List.of(
                        new Msg.Match(DeskRig.NIGHT, new Ref("paver", 9), "ticket 48213  T118  22.40 T"),
                        new Msg.Match(DeskRig.NIGHT, new Ref("paver", 7), "ticket 48211  T118  22.08 T"),
                        new Msg.Match(
                                ShiftId.of("2026-06-02-day"), new Ref("paver", 12), "ticket 48102  T118  21.87 T"))));
    }

    private static DeskRig nothingFound() {
        return Scenes.night().keys("/T999<enter>").send(new Msg.Found("T999", List.of()));
    }
}
