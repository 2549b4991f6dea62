package screedbook.desk;

import java.util.List;

/** A new model, and what is to be done outside. */
public record Step(Model model, List<Effect> effects) {
    static Step of(Model model, Effect... effects) {
        return new Step(model, List.of(effects));
    }

    Step with(Model other) {
        return new Step(other, effects);
    }
}
