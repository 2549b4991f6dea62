package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import screedbook.check.CrossSection;
import screedbook.check.HeatBand;
import screedbook.check.JointPlaces;
import screedbook.check.TaughtLoss;
import screedbook.job.Job;
import screedbook.picture.CrossSectionPicture;
import screedbook.picture.HeatBandPicture;
import screedbook.spec.SpecSheet;
import screedbook.tally.HaulLoss;
import screedbook.unit.Amount;

/** A plan as pictures: the road cut across, and the window of target temperatures of each mix. */
final class PlanDrawing {
    private static final int WIDTH = 78;

    private PlanDrawing() {}

    static List<String> lines(Job job, SpecSheet sheet, List<HaulLoss> seen) {
        List<String> lines = new ArrayList<>();
        road(job, sheet, lines);
        heat(job, sheet, seen, lines);
        return lines.isEmpty() ? List.of("neither lane lines nor pulls nor mixes are settled") : List.copyOf(lines);
    }

    private static void road(Job job, SpecSheet sheet, List<String> lines) {
        CrossSection road = CrossSection.of(job);
        List<JointPlaces> odd = JointPlaces.all(job, sheet, road).stream()
                .filter(p -> !p.holds())
                .toList();
        Set<CrossSection.Joint> marked = odd.stream().map(JointPlaces::joint).collect(Collectors.toSet());
        List<String> picture = CrossSectionPicture.of(road, marked, WIDTH);
        if (picture.isEmpty()) {
            return;
        }
        lines.add("across, offsets in " + road.unit().symbol() + ", left negative, looking up-station");
        lines.addAll(picture);
        say(lines, "| lane line, = wheel path, + edge or joint, # joint that does not fit every rule");
        for (JointPlaces p : odd) {
            String at = new Amount(p.joint().at(), road.unit()).text();
            say(
                    lines,
                    "lift " + p.joint().lift() + ", " + p.joint().left() + " and "
                            + p.joint().right() + " at " + at + ", nearest to fit every rule: " + p.text());
        }
        lines.add("");
    }

    private static void heat(Job job, SpecSheet sheet, List<HaulLoss> seen, List<String> lines) {
        List<HeatBand> bands = HeatBand.all(job, sheet);
        if (bands.isEmpty()) {
            return;
        }
        say(
                lines,
                "targets at the plant: | limit of a load, . tolerance, - loss on the way, = targets that hold both, x taken by both, T the target");
        for (HeatBand band : bands) {
            say(lines, band.name() + ": " + band.text());
            lines.addAll(HeatBandPicture.of(band, WIDTH));
            band.opens().forEach(o -> say(lines, "would open it: " + o));
            TaughtLoss.of(band, job, sheet, seen).ifPresent(t -> say(lines, t));
        }
    }

    private static void say(List<String> lines, String text) {
        lines.addAll(Frame.wrapped(text, WIDTH));
    }
}
