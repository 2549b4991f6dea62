package screedbook.check;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.CrossSection.Course;
import screedbook.check.CrossSection.Joint;

/**
 * Which joint of a lift belongs to which one below: by their order where the lifts have as many, else two that are each
 * other's nearest. A joint that has no other has nothing to be too far from.
 */
final class Pairs {
    private Pairs() {}

    static Map<Joint, Joint> of(Course upper, Course lower) {
        Map<Joint, Joint> pairs = new LinkedHashMap<>();
        boolean even = upper.joints().size() == lower.joints().size();
        for (int i = 0; i < upper.joints().size(); i++) {
            Joint joint = upper.joints().get(i);
            if (even) {
                pairs.put(joint, lower.joints().get(i));
            } else {
                nearest(lower.joints(), joint)
                        .filter(below -> nearest(upper.joints(), below)
                                .filter(joint::equals)
                                .isPresent())
                        .ifPresent(below -> pairs.put(joint, below));
            }
        }
        return pairs;
    }

    static Optional<Joint> nearest(List<Joint> of, Joint to) {
        return of.stream()
                .min(Comparator.comparing(j -> j.at().subtract(to.at()).abs()));
    }

    static Optional<Joint> upper(Map<Joint, Joint> pairs, Joint lower) {
        return pairs.entrySet().stream()
                .filter(e -> e.getValue().equals(lower))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
