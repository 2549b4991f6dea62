package screedbook.desk;

import java.util.List;
import java.util.Map;
import screedbook.desk.Scenes.Scene;

/** The screens of the job sheet, on which a job is planned, and their help. */
final class SheetScenes {
    private SheetScenes() {}

    static List<Scene> all() {
        return List.of(
                new Scene("sheet", SheetTest::sheet),
                new Scene("sheet-end", () -> SheetTest.sheet().keys("<end>")),
                new Scene("sheet-wide", 132, 43, SheetTest::sheet),
                new Scene("sheet-edited", SheetTest::warmer),
                new Scene("sheet-new", SheetScenes::newSheet),
                new Scene("sheet-to-settle", () -> newSheet().keys("t")),
                new Scene("sheet-written", () -> SheetTest.warmer().keys("wthe plant asked<enter>")),
                new Scene("sheet-elsewhere", SheetScenes::elsewhere),
                new Scene("sheet-job", () -> SheetTest.sheet().keys("<enter>")),
                new Scene("sheet-stationing", () -> SheetTest.part(SheetTest.sheet(), "stationing")),
                new Scene("sheet-mixes", () -> SheetTest.part(SheetTest.sheet(), "mixes")),
                new Scene(
                        "sheet-mix",
                        () -> SheetTest.part(SheetTest.sheet(), "mixes").keys("<enter>")),
                new Scene("sheet-mix-no-number", SheetScenes::noNumber),
                new Scene(
                        "sheet-lift-new",
                        () -> SheetTest.part(SheetTest.sheet(), "lifts").keys("n3<enter>1<enter>1.5<enter>")),
                new Scene(
                        "sheet-truck-half-typed",
                        () -> SheetTest.part(SheetTest.sheet(), "trucks").keys("nT1<esc>")),
                new Scene("sheet-distributor", () -> strapped().keys("<esc>")),
                new Scene("sheet-strapping", SheetScenes::strapped),
                new Scene("sheet-checks", () -> SheetTest.part(SheetTest.sheet(), "checks")),
                new Scene("sheet-others", () -> wanted(Scenes.muchDue())),
                new Scene("sheet-other", () -> wanted(Scenes.muchDue()).keys("<enter>")),
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
                new Scene("help-sheet-changes", () -> SheetTest.warmer().keys("d?")));
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
}
