package screedbook.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import screedbook.check.Cautions;
import screedbook.check.InCase;
import screedbook.entry.Moment;
import screedbook.job.Job;
import screedbook.spec.Asked;
import screedbook.spec.Quantity;
import screedbook.spec.SpecSheet;

/** The limits in force as plain text, 80 columns wide: a table for each case, and each sentence with its clause once. */
public final class LimitsPage {
    private static final Map<Quantity, String> NAMES = names();

    private final Leaf leaf = new Leaf(Leaf.PAPER);
    private final Map<String, Integer> notes = new LinkedHashMap<>();

    private LimitsPage() {}

    private static Map<Quantity, String> names() {
        Map<Quantity, String> names = new HashMap<>();
        names.put(Quantity.SURFACE, "surface");
        names.put(Quantity.AIR, "air");
        names.put(Quantity.PLANT_TARGET, "target at the plant");
        names.put(Quantity.PLANT_MIX, "mix at the plant");
        names.put(Quantity.PLANT_DIFFERENCE, "plant, from target");
        names.put(Quantity.PAVER_MIX, "mix at the paver");
        names.put(Quantity.PAVER_DIFFERENCE, "paver, from target");
        names.put(Quantity.LIFT, "planned thickness");
        names.put(Quantity.CORE_HEIGHT, "core height");
        names.put(Quantity.DENSITY, "density, each test");
        names.put(Quantity.DENSITY_MEAN, "density, mean of a lot");
        names.put(Quantity.DENSITY_QUALITY, "density, ends of Q");
        names.put(Quantity.DENSITY_WITHIN, "density within limits");
        names.put(Quantity.DENSITY_COLD_SPOT, "density, cold spot");
        names.put(Quantity.OF_CONTROL_STRIP, "gauge, of the strip");
        names.put(Quantity.MEAN_OF_CONTROL_STRIP, "gauge, mean of strip");
        names.put(Quantity.WATER_ABSORBED, "water in a core");
        names.put(Quantity.JOINT_OFFSET, "joint, from one below");
        names.put(Quantity.MAT_RANGE, "range along the mat");
        names.put(Quantity.UNCOMPACTED_RANGE, "range, uncompacted mat");
        names.put(Quantity.MAT_BEHIND_SCREED, "mat behind screed");
        names.put(Quantity.MAT_VIBRATED, "mat, vibrating drums");
        names.put(Quantity.MAT_ROLLING_ENDS, "mat, rolling ends");
        names.put(Quantity.MAT_BELOW_TARGET, "mat, below target");
        names.put(Quantity.STRAIGHTEDGE_LENGTH, "straightedge, length");
        names.put(Quantity.STRAIGHTEDGE_ALONG, "gap under it, along");
        names.put(Quantity.STRAIGHTEDGE_ACROSS, "gap under it, across");
        names.put(Quantity.STRAIGHTEDGE_OVER_JOINT, "gap over a joint");
        names.put(Quantity.JOINT_ACROSS_OFFSET, "joint across, off one");
        names.put(Quantity.JOINT_NOTCH_OF_LIFT, "notch, of the lift");
        names.put(Quantity.JOINT_WEDGE_SLOPE, "wedge, across for 1");
        names.put(Quantity.JOINT_ACROSS_SLOPE, "wedge across, for 1");
        names.put(Quantity.JOINT_OVERLAP, "overlap at a joint");
        names.put(Quantity.JOINT_HIGHER, "new side higher by");
        names.put(Quantity.SPREAD, "spread, of planned");
        names.put(Quantity.SPREAD_PAID, "spread that is paid");
        names.put(Quantity.DEPTH_DIFFERENCE, "rolled mat, from plan");
        names.put(Quantity.TACK_APPLIED, "tack, applied");
        names.put(Quantity.TACK_RESIDUAL, "tack, residual");
        names.put(Quantity.TACK_WATER, "water in the tack");
        names.put(Quantity.TACK_MATERIAL, "tack when sprayed");
        return names;
    }

    /** As a reader knows the quantity. */
    static String name(Quantity quantity) {
        return NAMES.getOrDefault(quantity, quantity.word());
    }

    /** The page; every line ends with a line feed. */
    public static String text(Job job, SpecSheet sheet, List<InCase> cases) {
        LimitsPage page = new LimitsPage();
        page.leaf.ends(
                job.name(), "limit sheet " + sheet.name() + " " + sheet.sha256().substring(0, 8));
        Map<List<Object>, List<InCase>> alike = new LinkedHashMap<>();
        for (InCase each : cases) {
            alike.computeIfAbsent(
                            List.of(each.mix().name(), each.lift(), each.limits(), each.asked()),
                            same -> new ArrayList<>())
                    .add(each);
        }
        alike.values().forEach(page::table);
        if (cases.isEmpty()) {
            page.leaf.blank();
            page.leaf.say(0, "no lift or no mix in the job yet");
        }
        page.foot(sheet);
        return String.join("\n", page.leaf.lines()) + "\n";
    }

    private void table(List<InCase> alike) {
        InCase first = alike.get(0);
        Set<String> lights = new TreeSet<>();
        alike.forEach(each -> lights.add(each.light() == null ? "hour not known" : "by " + each.light()));
        leaf.heading(first.mix().name() + " on lift " + first.lift().number() + ", "
                + first.lift().layer().word().replace('-', ' ') + ", "
                + first.lift().thickness().text() + ", " + String.join(" and ", lights)
                + (first.at() == null ? "" : ", " + Moment.text(first.at()))
                + (first.planned()
                        ? ""
                        : " (the lift is planned with " + first.lift().mix() + ")"));
        List<String> open = new ArrayList<>();
        for (InCase.Told told : first.limits()) {
            if (told.ends().isEmpty() && told.silent().isEmpty() && told.on().isEmpty()) {
                open.add(name(told.quantity()));
            } else {
                row(
                        name(told.quantity()),
                        told.text() + " " + marks(told) + (told.on().isEmpty() ? "" : " on " + told.on()));
            }
        }
        if (!open.isEmpty()) {
            row("no limit set", String.join("; ", open));
        }
        asked(first, true, "asked for");
        asked(first, false, "perhaps asked for");
    }

    private void asked(InCase of, boolean sure, String name) {
        List<String> told = new ArrayList<>();
        for (Asked each : of.asked()) {
            if (each.sure() == sure) {
                told.add(each.demand().word().replace('-', ' ')
                        + (each.count() == null ? "" : ": " + each.count().toPlainString()) + " "
                        + note(each.citation() + ": " + each.says()));
            }
        }
        if (!told.isEmpty()) {
            row(name, String.join("; ", told));
        }
    }

    private String marks(InCase.Told told) {
        Set<String> marks = new LinkedHashSet<>();
        told.ends().forEach(end -> marks.add(note(end.clause() + ": " + end.working())));
        told.silent().forEach(says -> marks.add(note(says)));
        return String.join(" ", marks);
    }

    private String note(String text) {
        return "[" + notes.computeIfAbsent(text, t -> notes.size() + 1) + "]";
    }

    private void row(String name, String text) {
        leaf.named(" " + name, 25, text);
    }

    private void foot(SpecSheet sheet) {
        if (!notes.isEmpty()) {
            leaf.heading("where they come from");
        }
        notes.forEach((text, number) -> leaf.say(1, "[" + number + "] " + text));
        leaf.blank();
        sheet.foot().forEach(line -> leaf.say(0, line));
        leaf.blank();
        leaf.say(0, Cautions.GOVERNS);
    }
}
