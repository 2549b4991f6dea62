package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** An invented job before paving, made for one question. Keys end in their unit, as in a job file. */
final class PlannedJob {
    private final Map<String, Object> changes = new LinkedHashMap<>();

    static PlannedJob plan() {
        return new PlannedJob();
    }

    PlannedJob with(String key, Object value) {
        changes.put(key, value);
        return this;
    }

    /** One mix and one lift of it. */
    PlannedJob mix(String grade, String nmas, String gradation, String thicknessUnit, String thickness) {
        Map<String, Object> mix =
                object("name", "M", "nmas_mm", nmas, "binder", grade + "-22", "target_plant_degF", "300");
        if (gradation != null) {
            mix.put("gradation", gradation);
        }
        return with("mixes", List.of(mix))
                .with(
                        "lifts",
                        List.of(object(
                                "number",
                                "1",
                                "layer",
                                "below-riding-surface",
                                "thickness_" + thicknessUnit,
                                thickness,
                                "mix",
                                "M")))
                .with("pulls", null);
    }

    PlannedJob haul(String loss) {
        return with("haul", List.of(object("plant", "Quarry", "loss_dF", loss, "source", "own loads")));
    }

    /** Lane lines and, lift by lift from the lowest, the edges at which pulls begin and end; the last lift is ridden on. */
    PlannedJob road(List<String> lines, List<List<String>> edges) {
        List<Object> laneLines = new ArrayList<>();
        lines.forEach(l -> laneLines.add(object("offset_ft", l)));
        List<Object> lifts = new ArrayList<>();
        List<Object> pulls = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            String number = String.valueOf(i + 1);
            String layer = i == edges.size() - 1 ? "riding-surface" : "below-riding-surface";
            lifts.add(object("number", number, "layer", layer, "thickness_in", "2.5", "mix", "19-64"));
            for (int p = 1; p < edges.get(i).size(); p++) {
                String name = String.valueOf((char) ('A' + p - 1));
                pulls.add(object(
                        "name",
                        name,
                        "lift",
                        number,
                        "left_ft",
                        edges.get(i).get(p - 1),
                        "right_ft",
                        edges.get(i).get(p)));
            }
        }
        return with("lane_lines", laneLines).with("lifts", lifts).with("pulls", pulls);
    }

    /** Wheel paths that the job settles itself. */
    PlannedJob wheels(String width, String offset) {
        return with("wheel_paths", object("width_ft", width, "offset_ft", offset, "source", "contract, sheet 4"));
    }

    Job job() {
        return Shift.job(changes);
    }

    List<Finding> findings(String sheet) {
        return PlanFindings.of(job(), SpecSheet.shipped(sheet).orElseThrow());
    }

    List<Finding> findings(String sheet, String rule) {
        return findings(sheet).stream().filter(f -> f.rule().equals(rule)).toList();
    }

    /** Keys and values in turn; what reads as a number is one. */
    static Map<String, Object> object(String... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            String value = keysAndValues[i + 1];
            boolean number = value.matches("-?\\d+(\\.\\d+)?");
            object.put(keysAndValues[i], number ? new BigDecimal(value) : value);
        }
        return object;
    }
}
