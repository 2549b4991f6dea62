package screedbook.desk;

import java.util.List;
import java.util.Map;

/** The screens of samples, cores, gauge readings, hand-overs and results. */
final class SampleScenes {
    private SampleScenes() {}

    static List<Scenes.Scene> all() {
        return List.of(
                new Scenes.Scene("sample", () -> SampleFormsTest.loaded().keys("me")),
                new Scenes.Scene("sample-random", () -> SampleFormsTest.placed().keys("me")),
                new Scenes.Scene("core", () -> SampleFormsTest.loaded().keys("mcC-1<enter>1250<enter>")),
                new Scenes.Scene(
                        "gauge",
                        () -> Scenes.typedIn(
                                Scenes.typedIn(SampleFormsTest.loaded().keys("mg"), "gmm", "2.480"),
                                "first_reading_lb_ft3",
                                "144.3")),
                new Scenes.Scene("custody", () -> sampled().keys("mu")),
                new Scenes.Scene("result", () -> Scenes.goTo(sampled().keys("mv"), "sample")),
                new Scenes.Scene("totals-samples", 100, 40, () -> tested().keys("y<end>")),
                new Scenes.Scene("shift-samples", SampleScenes::tested));
    }

    private static DeskRig sampled() {
        return Scenes.keyed(
                SampleFormsTest.loaded(),
                "me",
                Map.of("sample", "S-1", "material", "mix", "purpose", "acceptance", "seal_number", "4411"));
    }

    private static DeskRig tested() {
        DeskRig rig = sampled().later(20);
        Scenes.keyed(rig, "mu", Map.of("taken_by", "CD", "seal_number", "4412", "whole", "yes"));
        String[] gmb = {"2.311", "2.330", "2.296"};
        for (int i = 0; i < gmb.length; i++) {
            rig.later(2).keys("mc");
            Scenes.typedIn(rig, "gmb", gmb[i]);
            Scenes.typedIn(rig, "gmm", "2.480");
            Scenes.goTo(rig, "core");
            Scenes.keyed(rig, "", Map.of("core", "C-" + (i + 1), "place_sta", 1250 + 120 * i + ""));
        }
        return rig.later(1);
    }
}
