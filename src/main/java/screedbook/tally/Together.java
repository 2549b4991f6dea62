package screedbook.tally;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import screedbook.unit.Unit;

/** What becomes of a figure when several shifts are taken together. */
enum Together {
    /** Counts, weights, volumes, lengths and areas add up. */
    SUM,
    LEAST,
    MOST,
    /** A rate or a mean: each shift's weighs by what it was taken over. */
    WEIGHED,
    /** What runs on by itself: the newest counts. */
    NEWEST,
    /** What cannot be added: the least and the greatest of the shifts. */
    RANGE,
    /** A time, a text, or what only holds within its shift. */
    NOTHING;

    /** By what a rate weighs; the figure with the same tail. A mean weighs by its readings. */
    private static final Map<String, String> OVER = Map.of(
            "spread-rate", "area",
            "spread-target", "area",
            "spread-percent", "area",
            "equivalent-thickness", "area",
            "tack-applied", "tack-area",
            "tack-residual", "tack-area");

    private static final Set<Unit.Dimension> ADDED =
            Set.of(Unit.Dimension.MASS, Unit.Dimension.VOLUME, Unit.Dimension.AREA);

    /** Figures that run on from shift to shift, or tell what is left. */
    private static final Pattern RUNS_ON =
            Pattern.compile("pay-to-date|(sub)?lot-.*|plan-.*|.*-left(-.*)?|.*-planned(-.*)?");

    /** A figure of one entry, such as {@code core-density.paver/26}, is of its shift alone. */
    private static final Pattern OF_AN_ENTRY = Pattern.compile(".*\\.[a-z0-9-]+/\\d+");

    /** @param there whether the figure by which a mean weighs is there */
    static Together of(Figure figure, Predicate<String> there) {
        String head = head(figure.id());
        if (figure.value() == null
                || head.equals("pay-previous")
                || OF_AN_ENTRY.matcher(figure.id()).matches()) {
            return NOTHING;
        }
        if (RUNS_ON.matcher(head).matches()) {
            return NEWEST;
        }
        if (head.endsWith("-least")) {
            return LEAST;
        }
        if (head.endsWith("-most")) {
            return MOST;
        }
        if (head.endsWith("-mean") || OVER.containsKey(head)) {
            return there.test(over(figure.id())) ? WEIGHED : RANGE;
        }
        return adds(figure.unit()) ? SUM : RANGE;
    }

    private static boolean adds(String suffix) {
        Optional<Unit> unit = Unit.ofSuffix(suffix);
        return suffix.isEmpty()
                || unit.filter(u -> ADDED.contains(u.dimension()) || u == Unit.FOOT || u == Unit.METRE)
                        .isPresent();
    }

    /** The id of the figure by which another one weighs: {@code area.B lift 2} for {@code spread-rate.B lift 2}. */
    static String over(String id) {
        String head = head(id);
        String tail = id.substring(head.length());
        return (head.endsWith("-mean") ? head.substring(0, head.length() - 5) + "-readings" : OVER.get(head)) + tail;
    }

    /** The word before the first point. */
    static String head(String id) {
        int dot = id.indexOf('.');
        return dot < 0 ? id : id.substring(0, dot);
    }

    /** Nothing in a figure that is not there. */
    static BigDecimal none(BigDecimal value) {
        return value == null ? BigDecimal.ZERO : value;
    }
}
