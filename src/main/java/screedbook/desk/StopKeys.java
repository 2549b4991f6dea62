package screedbook.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Source;
import screedbook.tally.Stoppage;

/**
 * What the keys do when the paver stops and when it goes on. The moment is that of the key, not of the writing; it
 * outlives a crash and is gone with Esc, as long as nobody typed anything beside it.
 */
final class StopKeys {
    private StopKeys() {}

    /** Begins a stop; while one lasts, ends it. */
    static Step either(Model model) {
        return model.shift().stopped().isPresent() ? restart(model) : stop(model);
    }

    static Step stop(Model model) {
        return begin(model, Kind.STOP, Map.of());
    }

    /** Ends the stop that began last of those that last. */
    static Step restart(Model model) {
        Optional<Stoppage> lasting = model.shift().stopped();
        return begin(
                model,
                Kind.RESTART,
                lasting.map(s -> Map.of("of", s.stop().ref().toString())).orElse(Map.of()));
    }

    private static Step begin(Model model, Kind kind, Map<String, String> given) {
        boolean live = model.source() == Source.LIVE && !model.halfTyped().containsKey(kind);
        Step step = ShiftKeys.begin(model, kind, new HashMap<>(given));
        if (!live || !(step.model().top() instanceof Screen.Keying keying)) {
            return step;
        }
        Form form = keying.form().change(Reading.TIME, i -> i.carrying(Moment.clock(model.now())));
        return FormKeys.with(step.model(), form);
    }
}
