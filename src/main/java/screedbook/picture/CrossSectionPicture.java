package screedbook.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import screedbook.check.CrossSection;

/**
 * A planned road cut across: {@code |} a final lane line, {@code =} a wheel path, {@code +} an edge or a joint of a
 * lift, {@code #} a joint that is marked. Lifts stand as they lie, the lowest last.
 */
public final class CrossSectionPicture {
    private static final int MARGIN = 9;

    private CrossSectionPicture() {}

    /**
     * The lines, each of exactly so many columns; none where neither lines nor pulls are settled.
     *
     * @param marked joints that do not satisfy every rule
     */
    public static List<String> of(CrossSection road, Set<CrossSection.Joint> marked, int width) {
        List<BigDecimal> places = places(road);
        if (places.isEmpty() || width < 2 * MARGIN) {
            return List.of();
        }
        Ruler ruler = new Ruler(MARGIN, width, places.get(0), places.get(places.size() - 1));
        List<String> lines = new ArrayList<>();
        lines.add(ruler.figures(road.lines().stream().map(CrossSection.Line::at).toList()));
        lines.add(lanes(road, ruler));
        road.courses().stream()
                .sorted(Comparator.comparing((CrossSection.Course c) -> c.lift().number())
                        .reversed())
                .forEach(course -> {
                    lines.add(course(course, marked, ruler));
                    lines.add(ruler.figures(
                            course.joints().stream().map(CrossSection.Joint::at).toList()));
                });
        return List.copyOf(lines);
    }

    private static List<BigDecimal> places(CrossSection road) {
        return Stream.concat(
                        road.lines().stream().map(CrossSection.Line::at),
                        road.courses().stream()
                                .flatMap(c -> c.pulls().stream())
                                .flatMap(p -> Stream.of(p.left(), p.right())))
                .sorted()
                .toList();
    }

    private static String lanes(CrossSection road, Ruler ruler) {
        char[] row = ruler.row("lanes");
        road.paths().forEach(path -> ruler.fillBetween(row, path.from(), path.to(), '='));
        road.lines().forEach(line -> ruler.put(row, line.at(), '|'));
        return new String(row);
    }

    private static String course(CrossSection.Course course, Set<CrossSection.Joint> marked, Ruler ruler) {
        char[] row = ruler.row("lift " + course.lift().number());
        for (CrossSection.Laid pull : course.pulls()) {
            ruler.about(row, pull.left().add(pull.right()).divide(BigDecimal.valueOf(2)), pull.name());
        }
        for (CrossSection.Laid pull : course.pulls()) {
            for (int i = ruler.column(pull.left()); i <= ruler.column(pull.right()); i++) {
                row[i] = row[i] == ' ' ? '-' : row[i];
            }
        }
        for (CrossSection.Laid pull : course.pulls()) {
            ruler.put(row, pull.left(), '+');
            ruler.put(row, pull.right(), '+');
        }
        course.joints().stream().filter(marked::contains).forEach(j -> ruler.put(row, j.at(), '#'));
        return new String(row);
    }
}
