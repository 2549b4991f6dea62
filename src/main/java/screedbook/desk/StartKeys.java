package screedbook.desk;

import java.time.LocalDate;
import java.util.List;
import screedbook.entry.ShiftId;

/** What the keys do on the first screen. */
final class StartKeys {
    /** What the first screen remembers while a shift opens on which nothing was placed. */
    static final String NO_WORK = "no work";

    private StartKeys() {}

    static Step open(Model model, Key key) {
        int at = ((Screen.Start) model.top()).walk().at();
        if (at < 0 || at >= model.shifts().size()) {
            return Step.of(model.say("no shift yet: d begins a day shift, n a night shift"));
        }
        Msg.Row row = model.shifts().get(at);
        if (model.setting().who().isEmpty()) {
            return Step.of(model.say("say first who writes: the digit before the name"));
        }
        return Step.of(
                model.writing(true).say("reading " + Frame.named(row.shift())),
                new Effect.Open(row.shift(), model.setting().who(), false));
    }

    static Step begin(Model model, String word) {
        if (model.setting().job().isEmpty()) {
            return Step.of(model.alert("the job cannot be read; a shift that is there can still be looked at"));
        }
        if (model.setting().who().isEmpty()) {
            return Step.of(model.say("say first who writes: the digit before the name"));
        }
        ShiftId shift = new ShiftId(today(model), word);
        return unclosed(model, shift, word);
    }

    /** A shift that was not closed is named before another is begun; the same key again begins it all the same. */
    private static Step unclosed(Model model, ShiftId shift, String word) {
        List<Msg.Row> open = model.shifts().stream()
                .filter(r -> r.state().startsWith("open") && !r.shift().equals(shift))
                .toList();
        Screen.Start start = (Screen.Start) model.top();
        if (!open.isEmpty() && !start.sure().equals(word)) {
            return Step.of(model.top(new Screen.Start(start.walk(), word))
                    .alert(open.get(0).shift() + " is not closed; the same key again begins " + shift));
        }
        return Step.of(
                model.top(new Screen.Start(start.walk(), "")).writing(true),
                new Effect.Open(shift, model.setting().who(), true));
    }

    /** The first extra shift of the date that is not there yet. */
    static Step extra(Model model) {
        for (int n = 2; n <= 9; n++) {
            String word = "extra-" + n;
            if (model.shifts().stream()
                    .noneMatch(r -> r.shift().date().equals(today(model))
                            && r.shift().word().equals(word))) {
                return begin(model, word);
            }
        }
        return Step.of(model.alert("nine shifts of one date are there already"));
    }

    static Step noWork(Model model) {
        Step step = begin(model, "day");
        Walk walk = ((Screen.Start) step.model().top()).walk();
        return step.effects().isEmpty() ? step : step.with(step.model().top(new Screen.Start(walk, NO_WORK)));
    }

    static Step who(Model model, Key key) {
        List<String> initials = model.setting()
                .job()
                .map(j -> j.people().stream().map(p -> p.initials()).toList())
                .orElse(List.of());
        int at = Integer.parseInt(key.text()) - 1;
        if (at < 0 || at >= initials.size()) {
            return Step.of(model.say("nobody has the number " + key.text()));
        }
        return Step.of(model.with(model.setting().by(initials.get(at))).say(initials.get(at) + " writes"));
    }

    /** Before noon a night belongs to the evening before only when it is open already; a new one begins today. */
    private static LocalDate today(Model model) {
        return model.now().toLocalDate();
    }
}
