package screedbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import screedbook.tally.Accrued;
import screedbook.tally.Figure;
import screedbook.tally.Section;
import screedbook.tally.Working;

/** What the pulls of one lift come to together: length and area add up, rates and thickness weigh by area. */
final class LiftRates {
    private static final String SPREAD = "spread";
    private static final Set<String> HEADS =
            Set.of("length", "area", "spread-rate", "spread-target", "spread-percent", "equivalent-thickness");

    private LiftRates() {}

    /**
     * The section of spread rates of a lift.
     *
     * @param whole the sections of a job
     * @param lift as figures end with it: {@code lift 2} for those of {@code A lift 2}
     * @return empty where no pull of the lift has a rate
     */
    static Optional<Section> of(List<Section> whole, String lift) {
        Optional<Section> spread =
                whole.stream().filter(s -> s.id().equals(SPREAD)).findFirst();
        List<Figure> all = spread.map(Section::figures).orElse(List.of());
        List<String> pulls = all.stream()
                .filter(f -> f.id().startsWith("spread-rate.") && f.id().endsWith(" " + lift))
                .map(f -> f.id().substring("spread-rate.".length()))
                .toList();
        if (pulls.isEmpty()) {
            return Optional.empty();
        }
        Accrued accrued = new Accrued();
        for (String pull : pulls) {
            accrued.add(List.of(new Section(SPREAD, spread.get().heading(), ofPull(all, pull, lift))));
        }
        String put = String.join(", ", pulls);
        return accrued.sections().stream()
                .findFirst()
                .map(section -> new Section(
                        SPREAD,
                        section.heading(),
                        section.figures().stream().map(f -> told(f, put)).toList()));
    }

    /** A pull's figures with the lift's name in place of its own. */
    private static List<Figure> ofPull(List<Figure> all, String pull, String lift) {
        List<Figure> its = new ArrayList<>();
        for (Figure each : all) {
            int end = each.id().length() - pull.length() - 1;
            if (each.id().endsWith("." + pull) && HEADS.contains(each.id().substring(0, end))) {
                its.add(new Figure(
                        each.id().substring(0, end + 1) + lift,
                        each.label().replace(pull, lift),
                        each.text(),
                        each.value(),
                        each.unit(),
                        each.working()));
            }
        }
        return its;
    }

    private static Figure told(Figure figure, String pulls) {
        String formula = figure.working().formula().replaceFirst(", \\d+ shifts?$", "");
        Working working = new Working(formula, List.of(pulls), List.of(), "the figures of these pulls");
        return new Figure(figure.id(), figure.label(), figure.text(), figure.value(), figure.unit(), working);
    }
}
