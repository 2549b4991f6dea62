package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Shown;

/**
 * Keys struck while the disk has not answered: they are shown, and taken in their order when it has, so that the next
 * ticket can be keyed into a slow disk. When the disk refuses they are not taken, for they were meant for what follows.
 */
final class Ahead {
    private static final int MOST = 200;

    private Ahead() {}

    static Model keep(Model model, Key key) {
        if (model.ahead().size() >= MOST) {
            return model.alert("the disk is slow, no more keys are kept");
        }
        List<Key> keys = new ArrayList<>(model.ahead());
        keys.add(key);
        return model.ahead(keys).say("waiting for the disk; typed ahead: " + told(keys));
    }

    private static String told(List<Key> keys) {
        StringBuilder out = new StringBuilder();
        for (Key key : keys) {
            boolean text = key.code() == Key.Code.CHAR && !key.ctrl();
            out.append(
                    text ? Shown.text(key.text()) : "<" + key.code().name().toLowerCase(java.util.Locale.ROOT) + ">");
        }
        return out.toString();
    }

    /** The keys that waited, one after the other; a key that makes the disk write again lets the rest wait again. */
    static Step take(Step step) {
        List<Key> keys = step.model().ahead();
        Step at = step.with(step.model().ahead(List.of()));
        Notice notice = step.model().notice();
        for (Key key : keys) {
            if (at.model().writing()) {
                at = at.with(keep(at.model(), key));
            } else {
                Step next = Update.key(at.model(), key);
                List<Effect> effects = new ArrayList<>(at.effects());
                effects.addAll(next.effects());
                at = new Step(next.model(), List.copyOf(effects));
            }
        }
        boolean silent = at.model().notice().text().isEmpty();
        return silent ? at.with(at.model().with(notice)) : at;
    }

    static Model drop(Model model, String said) {
        String kept = model.ahead().isEmpty() ? "" : "; not taken: " + told(model.ahead());
        return model.ahead(List.of()).alert(said + kept);
    }
}
