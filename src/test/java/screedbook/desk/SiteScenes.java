package screedbook.desk;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import screedbook.entry.Crew;

/** The screens of the mat, the joints, stops, crew, instruments and safety. */
final class SiteScenes {
    private static final String GENERAL = "Stoneway Paving";

    private SiteScenes() {}

    static List<Scenes.Scene> all() {
        return List.of(
                new Scenes.Scene("kinds-small", 60, 16, () -> Scenes.night().keys("m<down><down><down><down><down>")),
                new Scenes.Scene("mat", () -> mat().keys("h")),
                new Scenes.Scene("mat-first", () -> Scenes.night().keys("h1<enter>291<enter>")),
                new Scenes.Scene("mat-rolling-ends", () -> mat().keys("h168")),
                new Scenes.Scene("profile", () -> Scenes.night().keys("mf")),
                new Scenes.Scene(
                        "profile-wide-apart",
                        () -> Scenes.night().keys("mf1500<enter>1650<enter>1<enter>298<enter>261")),
                new Scenes.Scene("rolling", () -> Scenes.night().keys("mo")),
                new Scenes.Scene("joint", () -> Scenes.night().keys("mj")),
                new Scenes.Scene("joint-transverse", () -> Scenes.night().keys("mj2<enter>")),
                new Scenes.Scene("straightedge", () -> Scenes.night().keys("ms")),
                new Scenes.Scene("stop", () -> Scenes.night().keys("b")),
                new Scenes.Scene("shift-stopped", () -> stopped().later(14)),
                new Scenes.Scene("restart", () -> stopped().later(22).keys("b")),
                new Scenes.Scene("truck", () -> Scenes.night().keys("mt")),
                new Scenes.Scene("crew", () -> Scenes.night().keys("mk")),
                new Scenes.Scene("crew-before", () -> yesterday().keys("m.")),
                new Scenes.Scene("crew-before-none", () -> Scenes.night().keys("m.")),
                new Scenes.Scene("help-crew-before", () -> yesterday().keys("m.?")),
                new Scenes.Scene("instrument-check", () -> Scenes.night().keys("mi")),
                new Scenes.Scene("instrument-check-ice", () -> Scenes.night().keys("miT1<enter>1<enter>")),
                new Scenes.Scene("safety", () -> Scenes.night().keys("mz")),
                new Scenes.Scene("shift-site", SiteScenes::site));
    }

    /** A night with one reading of each moment of the mat. */
    static DeskRig mat() {
        DeskRig rig = Scenes.keyed(Scenes.night(), "h", Map.of("taken", "1", "mat_degF", "291", "place_sta", "1500"));
        rig.later(5);
        return Scenes.keyed(rig.keys("h<back_tab>3<enter>"), "", Map.of("mat_degF", "181", "place_sta", "1500"));
    }

    /** A night in which the paver stands and three trucks wait. */
    static DeskRig stopped() {
        return Scenes.night().keys("b1<enter>3<enter>");
    }

    static DeskRig yesterday() {
        DeskRig rig = Scenes.night();
        rig.crews = List.of(
                crew(Crew.What.PEOPLE, "foreman", 1, null),
                crew(Crew.What.PEOPLE, "rakers", 3, null),
                crew(Crew.What.MACHINES, "paver", 1, "P2"),
                crew(Crew.What.MACHINES, "rollers", 3, null));
        return rig;
    }

    private static Crew crew(Crew.What what, String named, int count, String id) {
        return new Crew(GENERAL, what, named, count, new BigDecimal("10"), null, id);
    }

    /** Every kind of this part of the work once, as the list of the shift tells them. */
    static DeskRig site() {
        DeskRig rig = mat();
        Scenes.keyed(
                rig,
                "mf",
                Map.of(
                        "from_sta",
                        "1500",
                        "to_sta",
                        "1650",
                        "sublot",
                        "2",
                        "hottest_degF",
                        "298",
                        "coldest_degF",
                        "261",
                        "method",
                        "2",
                        "witness",
                        "RK"));
        Scenes.keyed(
                rig,
                "mo",
                Map.of(
                        "roller",
                        "R1",
                        "task",
                        "1",
                        "drums",
                        "2",
                        "passes",
                        "5",
                        "mat_begins_degF",
                        "280",
                        "mat_ends_degF",
                        "215"));
        Scenes.keyed(
                rig,
                "mj",
                Map.of("run", "1", "from_sta", "1203", "to_sta", "2101", "heat", "2", "tacked", "1", "below_in", "6"));
        Scenes.keyed(rig, "ms", Map.of("gap_in", "0.125", "edge_length_ft", "10", "laid", "1", "place_sta", "1500"));
        Scenes.keyed(rig, "b", Map.of("cause", "1", "waiting", "3"));
        rig.later(22).keys("b<enter>");
        Scenes.keyed(rig, "mt", Map.of("truck", "118", "step", "3"));
        Scenes.keyed(rig, "mi", Map.of("instrument", "T1", "against", "1", "shows_degF", "33", "fit", "1"));
        return Scenes.keyed(
                rig,
                "mz",
                Map.of(
                        "text",
                        "spotter stood behind a truck",
                        "about",
                        "2",
                        "told_to",
                        "foreman",
                        "action",
                        "moved to the shoulder"));
    }
}
