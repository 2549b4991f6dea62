package screedbook.desk;

import java.util.List;
import java.util.Map;

/** The screens of what a plant says: its total, its own list, and what comes of them. Everything is invented. */
final class PlantScenes {
    static final String LIST = "Date,Time,Ticket No,Vehicle,Product,Net lb\n"
            + "6/3/2026,20:17,48215,104,SURF,43500\n"
            + "6/3/2026,20:31,48216,118,SURF,44620\n"
            + "6/3/2026,20:40,48217,104,SURF,44000\n";

    private PlantScenes() {}

    static List<Scenes.Scene> all() {
        return List.of(
                new Scenes.Scene("plant-total", () -> Scenes.night().keys("ml")),
                new Scenes.Scene("plant-total-found", () -> told().keys("f")),
                new Scenes.Scene("plant-file", () -> desk().keys("mL/media/stick/loads of the 3rd.csv")),
                new Scenes.Scene("plant-columns", () -> asked()),
                new Scenes.Scene("plant-columns-small", 40, 12, () -> asked().keys("<down><down>")),
                new Scenes.Scene("plant-columns-chosen", () -> asked().keys("oooooo")),
                new Scenes.Scene("plant-list", () -> asked().keys("ooooooo2<enter>")),
                new Scenes.Scene("plant-list-totals", () -> totals()),
                new Scenes.Scene("plant-ticket", () -> ticket()),
                new Scenes.Scene("help-plant-file", () -> desk().keys("mL<C-k>")),
                new Scenes.Scene("help-plant-columns", () -> asked().keys("?")));
    }

    private static DeskRig desk() {
        DeskRig rig = Scenes.night();
        rig.paperLists.put("loads.csv", LIST);
        return rig;
    }

    private static DeskRig asked() {
        return desk().keys("mLloads.csv<enter>");
    }

    private static DeskRig told() {
        return Scenes.keyed(Scenes.night(), "ml", Map.of("loads", "7", "tons_ston", "150.00"));
    }

    private static DeskRig totals() {
        DeskRig rig = asked().keys("ooooooo2<enter>y");
        int at =
                ListKeys.figures(rig.model()).stream().map(f -> f.id()).toList().indexOf("plant-list.Quarry Road");
        return rig.keys("<down>".repeat(at) + "<enter>");
    }

    private static DeskRig ticket() {
        DeskRig rig = desk();
        rig.paperLists.put("loads.csv", LIST + "6/3/2026,20:45,48299,118,SURF,44100\n");
        rig.keys("mLloads.csv<enter>ooooooo2<enter>f");
        int at = rig.model().shift().findings().stream()
                .map(f -> f.rule())
                .toList()
                .indexOf("list-load-not-here");
        return rig.keys("<down>".repeat(at) + "t");
    }
}
