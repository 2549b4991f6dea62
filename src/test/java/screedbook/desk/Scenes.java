package screedbook.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Ref;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Every screen of the desk with something on it, reached by keys as a person reaches it; the picture of each is a file. */
final class Scenes {
    static final String WEATHER = "w47<enter>62<enter>6<enter>cl<enter>1<enter>1<enter>";
    static final String SURFACE = "s44<enter>1500<enter>B<enter>2<enter>";

    private static final Map<String, String> TACK = Map.ofEntries(
            Map.entry("from_sta", "1200"),
            Map.entry("to_sta", "2400"),
            Map.entry("surface", "milled"),
            Map.entry("width_ft", "12"),
            Map.entry("before_gal", "1450"),
            Map.entry("after_gal", "1306"),
            Map.entry("material_degF", "150"),
            Map.entry("pull", "B"),
            Map.entry("lift", "2"));

    private static final Map<String, Model> MODELS = new HashMap<>();

    private Scenes() {}

    /** One screen: its name, its size, and the desk with it on top. */
    record Scene(String name, int width, int height, Supplier<DeskRig> desk) {
        Scene(String name, Supplier<DeskRig> desk) {
            this(name, 80, 24, desk);
        }

        /** The desk of the scene as a value, keyed once for all tests that do not key on. */
        Model model() {
            return MODELS.computeIfAbsent(name, n -> desk.get().model());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Scene> all() {
        return Stream.of(own(), SiteScenes.all(), SampleScenes.all(), PlantScenes.all())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Scene> own() {
        return List.of(
                new Scene("start", DeskRig::new),
                new Scene("start-who", () -> new DeskRig().keys("1")),
                new Scene("start-not-closed", Scenes::notClosed),
                new Scene("start-job-unread", Scenes::jobUnread),
                new Scene("shift-empty", DeskRig::open),
                new Scene("shift", Scenes::night),
                new Scene("shift-wide", 132, 43, Scenes::night),
                new Scene("shift-walked", () -> night().keys("<down><down><down>")),
                new Scene("shift-half-typed", () -> night().keys("118<esc>")),
                new Scene("shift-from-notes", () -> night().keys("l")),
                new Scene("shift-look-only", () -> lookOnly(night())),
                new Scene("shift-closed", Scenes::closed),
                new Scene("ticket", () -> night().keys("t")),
                new Scene("ticket-first", () -> DeskRig.open().keys("t")),
                new Scene("ticket-begun", () -> night().keys("118<enter>22.31")),
                new Scene("ticket-temperature-due", () -> due().keys("118<enter>22.31<enter>")),
                new Scene("ticket-out", () -> due().keys("118<enter>22.31<enter>264")),
                new Scene("ticket-left-to-roll", () -> due().keys("118<enter>22.31<enter>286")),
                new Scene("ticket-left-working", () -> due().keys("118<enter>22.31<enter>286<C-w>")),
                new Scene("mat-left-to-roll", () -> night().keys("mh1<enter>278")),
                new Scene("ticket-pounds", () -> night().keys("118<enter>44620")),
                new Scene("ticket-no-number", () -> night().keys("118<enter>2z<enter>")),
                new Scene("ticket-notes", () -> night().keys("l118<enter>22.31<enter>")),
                new Scene("ticket-gross-tare", () -> weighed().keys("t")),
                new Scene("ticket-refused", Scenes::refused),
                new Scene("ticket-writing", Scenes::writing),
                new Scene("surface", () -> night().keys("s")),
                new Scene("surface-cold", () -> night().keys("s31")),
                new Scene("weather", () -> night().keys("w")),
                new Scene("weather-first", () -> DeskRig.open().keys("w")),
                new Scene("tack", () -> night().keys("k")),
                new Scene("tack-wide", () -> typedIn(night().keys("k"), "width_ft", "120")),
                new Scene("note", () -> night().keys("nlane closed at 21:00")),
                new Scene("kinds", () -> night().keys("m")),
                new Scene("part", () -> night().keys("mp")),
                new Scene("waste", () -> night().keys("mw")),
                new Scene("refill", () -> night().keys("mr")),
                new Scene("number", () -> night().keys("mn")),
                new Scene("hand-over", () -> night().keys("mq")),
                new Scene("no-work", () -> DeskRig.open().keys("m0")),
                new Scene("answer", () -> night().keys("fa")),
                new Scene("strike", () -> night().keys("<down>x")),
                new Scene("amend", () -> night().keys("<down><down><down>a")),
                new Scene(
                        "amend-note",
                        () -> DeskRig.open().keys("nlane closed<C-s>").keys("<down>a")),
                new Scene("closing", () -> night().keys("c<enter>")),
                new Scene("review", () -> closed().keys("r")),
                new Scene("findings", () -> night().keys("f")),
                new Scene("findings-none", () -> DeskRig.open().keys("f")),
                new Scene("findings-answered", Scenes::answered),
                new Scene("finding-working", () -> night().keys("f<enter>")),
                new Scene("totals", () -> night().keys("y")),
                new Scene("totals-end", () -> night().keys("y<end>")),
                new Scene("depth", () -> night().keys("md2.1<enter>compacted<enter>")),
                new Scene("depth-loose", () -> night().keys("md2.25<enter>loose<enter>")),
                new Scene("yield", () -> night().keys("my<enter>21+01")),
                new Scene("yield-working", () -> night().keys("my<enter>21+01<C-w>")),
                new Scene(
                        "yield-written",
                        () -> night().keys("my<enter>21+01<enter>md2.1<enter>compacted<enter><enter>")),
                new Scene("shift-much-due", Scenes::muchDue),
                new Scene("yield-nothing", () -> DeskRig.open().keys("my")),
                new Scene("figure-working", () -> night().keys("y<enter>")),
                new Scene("limit-working", () -> due().keys("118<enter>22.31<enter><C-w>")),
                new Scene("entry", () -> night().keys("<down><enter>")),
                new Scene("entry-amended", () -> amended().keys("<enter>")),
                new Scene("entry-struck", () -> struck().keys("<enter>")),
                new Scene("entry-outside", () -> cold().keys("<down><enter>")),
                new Scene("shift-corrected", () -> struck().keys("<up>")),
                new Scene("pictures", () -> night().keys("p")),
                new Scene("pictures-planned", () -> planned().keys("p")),
                new Scene("pictures-planned-wide", 132, 43, () -> planned().keys("p")),
                new Scene("shift-planned", Scenes::planned),
                new Scene("totals-planned", () -> planned().keys("y<end><page_up>")),
                new Scene("pictures-empty", () -> DeskRig.open().keys("p")),
                new Scene("road", () -> night().keys("pr")),
                new Scene("road-marked", RoadKeysTest::marked),
                new Scene("road-wide", 132, 43, RoadKeysTest::marked),
                new Scene("road-empty", () -> DeskRig.open().keys("pr")),
                new Scene("before-closing", () -> night().keys("c")),
                new Scene("before-closing-half-typed", () -> night().keys("118<esc>c")),
                new Scene("season-reading", () -> night().keys("<esc>s")),
                new Scene("season", Scenes::season),
                new Scene("help-season", () -> season().keys("?")),
                new Scene("search", () -> night().keys("/")),
                new Scene("search-matches", Scenes::found),
                new Scene("search-nothing", Scenes::nothingFound),
                new Scene("other-folder", () -> night().keys("<C-f>/media/stick")),
                new Scene("sheet", SheetTest::sheet),
                new Scene("sheet-end", () -> SheetTest.sheet().keys("<end>")),
                new Scene("sheet-wide", 132, 43, SheetTest::sheet),
                new Scene("sheet-edited", SheetTest::warmer),
                new Scene("sheet-new", Scenes::newSheet),
                new Scene("sheet-to-settle", () -> newSheet().keys("t")),
                new Scene("sheet-written", () -> SheetTest.warmer().keys("wthe plant asked<enter>")),
                new Scene("sheet-elsewhere", Scenes::elsewhere),
                new Scene("sheet-job", () -> SheetTest.sheet().keys("<enter>")),
                new Scene("sheet-stationing", () -> SheetTest.part(SheetTest.sheet(), "stationing")),
                new Scene("sheet-mixes", () -> SheetTest.part(SheetTest.sheet(), "mixes")),
                new Scene(
                        "sheet-mix",
                        () -> SheetTest.part(SheetTest.sheet(), "mixes").keys("<enter>")),
                new Scene("sheet-mix-no-number", Scenes::noNumber),
                new Scene(
                        "sheet-lift-new",
                        () -> SheetTest.part(SheetTest.sheet(), "lifts").keys("n3<enter>1<enter>1.5<enter>")),
                new Scene(
                        "sheet-truck-half-typed",
                        () -> SheetTest.part(SheetTest.sheet(), "trucks").keys("nT1<esc>")),
                new Scene("sheet-distributor", () -> strapped().keys("<esc>")),
                new Scene("sheet-strapping", Scenes::strapped),
                new Scene("sheet-checks", () -> SheetTest.part(SheetTest.sheet(), "checks")),
                new Scene("sheet-others", () -> wanted(muchDue())),
                new Scene("sheet-other", () -> wanted(muchDue()).keys("<enter>")),
                new Scene(
                        "sheet-haul",
                        () -> SheetTest.part(SheetTest.sheet(), "haul").keys("n")),
                new Scene(
                        "sheet-phones",
                        () -> SheetTest.part(SheetTest.sheet(), "phones and addresses")
                                .keys("n")),
                new Scene("sheet-plan", () -> SheetTest.sheet().keys("f")),
                new Scene("sheet-plan-working", () -> SheetTest.sheet().keys("f<enter>")),
                new Scene("sheet-drawn", () -> laned().keys("c")),
                new Scene("sheet-drawn-end", () -> laned().keys("c<page_down>")),
                new Scene("sheet-drawn-nothing", () -> bare().keys("c")),
                new Scene("sheet-numbers", () -> laned().keys("y")),
                new Scene("sheet-number-working", () -> laned().keys("y<enter>")),
                new Scene("sheet-plan-outside", () -> laned().keys("f")),
                new Scene("help-sheet-drawn", () -> laned().keys("c?")),
                new Scene("help-sheet-numbers", () -> laned().keys("y?")),
                new Scene("sheet-reason", () -> SheetTest.warmer().keys("w")),
                new Scene("sheet-reason-missing", () -> SheetTest.warmer().keys("w<enter>")),
                new Scene("sheet-changes", () -> SheetTest.warmer().keys("wthe plant asked<enter>d")),
                new Scene("sheet-changes-typed", () -> SheetTest.warmer().keys("d")),
                new Scene("start-sheet-half-typed", () -> SheetTest.warmer().keys("<esc>")),
                new Scene("help-sheet", () -> SheetTest.sheet().keys("?")),
                new Scene(
                        "help-sheet-list",
                        () -> SheetTest.part(SheetTest.sheet(), "mixes").keys("?")),
                new Scene("help-sheet-part", () -> SheetTest.sheet().keys("<enter><C-k>")),
                new Scene("help-sheet-plan", () -> SheetTest.sheet().keys("f?")),
                new Scene("help-sheet-reason", () -> SheetTest.warmer().keys("w<C-k>")),
                new Scene("help-sheet-changes", () -> SheetTest.warmer().keys("d?")),
                new Scene("help-start", () -> new DeskRig().keys("?")),
                new Scene("help-shift", () -> night().keys("?")),
                new Scene("help-shift-end", () -> night().keys("?<page_down><page_down>")),
                new Scene("help-form", () -> night().keys("t<C-k>")),
                new Scene("help-entry", () -> night().keys("<down><enter>?")),
                new Scene("help-findings", () -> night().keys("f?")),
                new Scene("help-totals", () -> night().keys("y?")),
                new Scene("help-kinds", () -> night().keys("m?")),
                new Scene("help-working", () -> night().keys("y<enter>?")),
                new Scene("help-pictures", () -> night().keys("p?")),
                new Scene("help-road", () -> night().keys("pr?")),
                new Scene("help-closing", () -> night().keys("c?")),
                new Scene("help-search", () -> night().keys("/<C-k>")),
                new Scene("help-folder", () -> night().keys("<C-f><C-k>")));
    }

    /** More checks than the side has room for, one of them over. */
    private static DeskRig muchDue() {
        DeskRig rig = new DeskRig(
                DeskRig.job(Map.of(
                        "checks",
                        DeskRig.map(
                                "others",
                                List.of(
                                        DeskRig.map(
                                                "kind",
                                                "yield",
                                                "first",
                                                1,
                                                "each",
                                                40,
                                                "of",
                                                "tons",
                                                "source",
                                                "special provision 9"),
                                        DeskRig.map("kind", "tack", "each", 1, "of", "shifts", "times", 2),
                                        DeskRig.map("kind", "mat", "each", 60, "of", "minutes"),
                                        DeskRig.map("kind", "depth", "each", 4, "of", "loads"),
                                        DeskRig.map("kind", "rolling", "each", 1, "of", "shifts", "change", "pull"))))),
                DeskRig.practice());
        load(rig.keys("1n"), "104", "22.31", "286", "12+03", "13+53");
        load(rig, "118", "21.96", "284", "13+53", "15+02");
        return load(rig, "104", "22.08", "281", "15+02", "16+52");
    }

    private static DeskRig wanted(DeskRig rig) {
        DeskRig checks = SheetTest.part(rig.keys("<esc>j"), "checks");
        return goToPart(checks, "others").keys("<enter>");
    }

    private static DeskRig goToPart(DeskRig rig, String blank) {
        for (int i = 0; i < 40; i++) {
            if (((Screen.Item) rig.model().top()).form().active().name().equals(blank)) {
                return rig;
            }
            rig.keys("<tab>");
        }
        throw new IllegalStateException("no blank " + blank + "\n" + rig.screen());
    }

    private static DeskRig newSheet() {
        DeskRig rig = new DeskRig();
        rig.paper.empty();
        return rig.keys("1j");
    }

    /** A job with name, units and nothing else. */
    private static DeskRig bare() {
        return SheetTest.fill(SheetTest.fill(newSheet().keys("<enter>"), "name", "New road"), "units", "1")
                .keys("<C-s>");
    }

    /** Two lanes, a joint in a wheel path, a haul that loses too much, a stretch to be paved. */
    private static DeskRig laned() {
        DeskRig rig = new DeskRig(
                DeskRig.job(Map.of(
                        "lane_lines",
                        List.of(
                                DeskRig.map("name", "left edge", "offset_ft", -12),
                                DeskRig.map("name", "centre", "offset_ft", 0),
                                DeskRig.map("name", "right edge", "offset_ft", 12)),
                        "lifts",
                        List.of(
                                DeskRig.map(
                                        "number",
                                        1,
                                        "layer",
                                        "below-riding-surface",
                                        "thickness_in",
                                        2.5,
                                        "mix",
                                        "19-64"),
                                DeskRig.map(
                                        "number",
                                        2,
                                        "layer",
                                        "riding-surface",
                                        "thickness_in",
                                        2.0,
                                        "mix",
                                        "12.5-70A")),
                        "pulls",
                        List.of(
                                DeskRig.map("name", "A", "lift", 1, "left_ft", -12, "right_ft", 0.5),
                                DeskRig.map("name", "B", "lift", 1, "left_ft", 0.5, "right_ft", 12),
                                DeskRig.map("name", "A", "lift", 2, "left_ft", -12, "right_ft", -3),
                                DeskRig.map("name", "B", "lift", 2, "left_ft", -3, "right_ft", 12)),
                        "haul",
                        List.of(DeskRig.map(
                                "plant", "Quarry Road", "minutes_min", 40, "loss_dF", 12, "source", "guess")),
                        "planned",
                        List.of(DeskRig.map("pull", "A", "lift", 2, "from_sta", "12+00", "to_sta", "64+80")))),
                DeskRig.practice());
        return rig.keys("1j");
    }

    private static DeskRig elsewhere() {
        DeskRig rig = SheetTest.warmer();
        rig.paper.elsewhere = true;
        return rig.keys("wthe plant asked<enter>");
    }

    private static DeskRig noNumber() {
        return SheetTest.fill(SheetTest.part(SheetTest.sheet(), "mixes").keys("<enter>"), "target_plant_degF", "3oo");
    }

    private static DeskRig strapped() {
        return SheetTest.part(SheetTest.sheet(), "distributors")
                .keys("nD9<enter>1<enter><enter>n0<enter>0<enter>n12<enter>299.5<enter>");
    }

    static Scene named(String name) {
        return all().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    /** Strikes a key, then answers every blank that is due until the entry is on the paper disk. */
    static DeskRig keyed(DeskRig rig, String key, Map<String, String> answers) {
        rig.keys(key);
        for (int i = 0; i < 25 && rig.model().top() instanceof Screen.Keying keying; i++) {
            rig.keys(answers.getOrDefault(keying.form().active().name(), "") + "<enter>");
        }
        if (rig.model().top() instanceof Screen.Keying keying) {
            throw new IllegalStateException("still at " + keying.form().active().name() + "\n" + rig.screen());
        }
        return rig;
    }

    /** Types into one blank of the form on top, reached by Tab. */
    static DeskRig typedIn(DeskRig rig, String blank, String text) {
        goTo(rig, blank);
        return rig.keys(text);
    }

    static DeskRig goTo(DeskRig rig, String blank) {
        for (int i = 0; i < 60; i++) {
            if (((Screen.Keying) rig.model().top()).form().active().name().equals(blank)) {
                return rig;
            }
            rig.keys("<tab>");
        }
        throw new IllegalStateException("no blank " + blank + "\n" + rig.screen());
    }

    static DeskRig load(DeskRig rig, String truck, String net, String paver, String from, String to) {
        rig.later(6).keys("t");
        for (String[] each : new String[][] {{"from_sta", from}, {"to_sta", to}}) {
            typedIn(rig, each[0], each[1]);
        }
        goTo(
                rig,
                rig.lines().stream().anyMatch(l -> l instanceof Line line && line.kind() == Kind.TICKET)
                        ? "truck"
                        : "number");
        return keyed(
                rig,
                "",
                Map.of(
                        "truck",
                        truck,
                        "net_ston",
                        net,
                        "paver_degF",
                        paver,
                        "number",
                        "48212",
                        "mix",
                        "12.5-70A",
                        "pull",
                        "B",
                        "lift",
                        "2"));
    }

    /** A night with the weather, a surface reading, a shot of tack, six loads and a note. */
    static DeskRig night() {
        DeskRig rig = due();
        load(rig, "104", "21.75", "279", "1652", "1799");
        load(rig, "118", "22.40", "278", "1799", "1950");
        load(rig, "104", "22.31", "282", "1950", "2101");
        return rig.later(2).keys("nlane closed at 21:00, cones walked<C-s>").later(1);
    }

    /** Three loads; the next one still wants a temperature. */
    static DeskRig due() {
        DeskRig rig = DeskRig.open().keys(WEATHER).later(4).keys(SURFACE).later(3);
        keyed(rig, "k", TACK);
        load(rig, "118", "22.31", "286", "1203", "1353");
        load(rig, "104", "21.96", "284", "1353", "1502");
        load(rig, "118", "22.08", "281", "1502", "1652");
        return rig.later(6);
    }

    /** A night whose tons, cutoff and rolling are planned, with temperatures at the plant, at the paver and of the mat. */
    static DeskRig planned() {
        Map<String, Object> plan = Map.of(
                "production", DeskRig.map("plant_rate_ston", 120, "hours", 3.0),
                "cutoff", DeskRig.map("lanes_open", "00:30", "rolling_min", 30, "cooling_min", 60),
                "haul", List.of(DeskRig.map("plant", "Quarry Road", "minutes_min", 25, "loss_dF", 10)),
                "roll_until", DeskRig.map("mat_degF", 175, "source", "test strip"));
        DeskRig rig = new DeskRig(DeskRig.job(plan), DeskRig.practice()).keys("1n");
        rig.keys(WEATHER).later(4).keys("s52<enter>1500<enter>B<enter>2<enter>").later(3);
        keyed(rig, "k", TACK);
        heated(rig, "118", "22.31", "301", "286");
        mat(rig.later(1), "281", "1");
        heated(rig, "104", "21.96", "298", "284");
        rig.later(12).keys("s49<enter>1500<enter>");
        mat(rig, "232", "2");
        heated(rig, "118", "22.08", "296", "264");
        heated(rig, "104", "21.75", "303", "279");
        rig.later(12).keys("s46<enter>1600<enter>");
        mat(rig, "171", "3");
        heated(rig, "118", "22.40", "299", "283");
        return rig.later(3);
    }

    private static void mat(DeskRig rig, String degrees, String taken) {
        goTo(typedIn(rig.keys("mh"), "taken", taken), "mat_degF");
        keyed(rig, "", Map.of("mat_degF", degrees, "place_sta", "1500", "pull", "B", "lift", "2"));
    }

    private static void heated(DeskRig rig, String truck, String net, String plant, String paver) {
        typedIn(rig.later(6).keys("t"), "plant_degF", plant);
        goTo(
                rig,
                rig.lines().stream().anyMatch(l -> l instanceof Line line && line.kind() == Kind.TICKET)
                        ? "truck"
                        : "number");
        keyed(
                rig,
                "",
                Map.of(
                        "number",
                        "48212",
                        "truck",
                        truck,
                        "mix",
                        "12.5-70A",
                        "net_ston",
                        net,
                        "paver_degF",
                        paver,
                        "pull",
                        "B",
                        "lift",
                        "2"));
    }

    private static DeskRig cold() {
        return load(due(), "104", "21.96", "264", "1652", "1799");
    }

    private static DeskRig amended() {
        return keyed(typedIn(night().keys("<down><down>a"), "net_ston", "21.31"), "", Map.of(Forms.WHY, "misread"));
    }

    private static DeskRig struck() {
        return cold().keys("<down>x2<enter>").later(1);
    }

    private static DeskRig answered() {
        return keyed(night().keys("f"), "a", Map.of("text", "foreman told 20:50"));
    }

    private static DeskRig weighed() {
        DeskRig rig =
                new DeskRig(DeskRig.job(Map.of("checks", DeskRig.map("gross_and_tare", "yes"))), DeskRig.practice());
        return rig.keys("1n");
    }

    private static DeskRig refused() {
        DeskRig rig = night();
        rig.refuses = true;
        return rig.keys("118<enter>22.31<C-s>");
    }

    private static DeskRig writing() {
        DeskRig rig = night();
        rig.silent = true;
        return rig.keys("118<enter>22.31<C-s>");
    }

    private static DeskRig closed() {
        DeskRig rig = night().keys("c<enter>");
        typedIn(rig, "text", "swept and opened").keys("<C-s>");
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
        DeskRig rig = night().keys("/T118<enter>");
        return rig.send(new Msg.Found(
                "T118",
                List.of(
                        new Msg.Match(DeskRig.NIGHT, new Ref("paver", 9), "ticket 48213  T118  22.40 T"),
                        new Msg.Match(DeskRig.NIGHT, new Ref("paver", 7), "ticket 48211  T118  22.08 T"),
                        new Msg.Match(
                                ShiftId.of("2026-06-02-day"), new Ref("paver", 12), "ticket 48102  T118  21.87 T"))));
    }

    /** A season of invented shifts with gaps; the third newest is walked to. */
    static DeskRig season() {
        return night().keys("<esc>s").send(new Msg.SeasonRead(seasonShifts())).keys("<down><down>");
    }

    static List<InShort> seasonShifts() {
        List<InShort> shifts = new ArrayList<>();
        LocalDate date = LocalDate.parse("2026-03-30");
        for (int i = 0; i < 40; i++) {
            boolean none = i % 13 == 6;
            shifts.add(new InShort(
                    ShiftId.of(date + (i % 5 == 4 ? "-night" : "-day")),
                    none ? "no work" : "closed",
                    none ? 0 : 60 + i * 7 % 40,
                    new Amount(none ? BigDecimal.ZERO : new BigDecimal(1300 + i * 137 % 800), Unit.SHORT_TON),
                    none ? Optional.empty() : Optional.of(new BigDecimal(96 + i * 3 % 9)),
                    none ? Optional.empty() : Optional.of(new BigDecimal("27" + i * 7 % 10 + ".4")),
                    Map.of(Sort.OUTSIDE, i * 5 % 4, Sort.MISSING, i % 3),
                    0));
            date = date.plusDays(i % 9 == 8 ? 5 : 1);
        }
        return shifts;
    }

    private static DeskRig nothingFound() {
        return night().keys("/T999<enter>").send(new Msg.Found("T999", List.of()));
    }
}
