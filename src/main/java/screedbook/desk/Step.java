package screedbook.desk;

import java.util.ArrayList;
import java.util.List;

/** A new model, and what is to be done outside. */
public record Step(Model model, List<Effect> effects) {
    static Step of(Model model, Effect... effects) {
        return new Step(model, List.of(effects));
    }

    /** The same with one more thing to do. */
    Step and(Effect effect) {
        List<Effect> more = new ArrayList<>(effects);
        more.add(effect);
        return new Step(model, List.copyOf(more));
    }

    Step with(Model other) {
        return new Step(other, effects);
    }
}
