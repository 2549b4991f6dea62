package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Standing;

/** What the keys do on the shift. */
final class ShiftKeys {
    private ShiftKeys() {}

    /** A digit begins a ticket; a half-typed one comes back first and the digit is not taken. */
    static Step digit(Model model, Key key) {
        boolean back = model.halfTyped().containsKey(Kind.TICKET);
        Step step = begin(model, Kind.TICKET);
        if (back || !(step.model().top() instanceof Screen.Keying)) {
            return step;
        }
        return FormKeys.typed(step.model(), key.text());
    }

    static Step begin(Model model, Kind kind) {
        return begin(model, kind, Map.of());
    }

    static Step begin(Model model, Kind kind, Map<String, String> given) {
        if (!model.shift().writable()) {
            return lookedAt(model);
        }
        Form half = model.halfTyped().get(kind);
        if (half != null && given.isEmpty()) {
            return Step.of(model.push(new Screen.Keying(half)).say("half typed before; Ctrl-D drops it"));
        }
        return Step.of(model.push(new Screen.Keying(Forms.fresh(model, kind, given))));
    }

    /** Why nothing can be written, and what helps where the shift was only opened to be looked at. */
    static Step lookedAt(Model model) {
        boolean beside =
                model.screens().stream().anyMatch(s -> s instanceof Screen.Season || s instanceof Screen.Search);
        return Step.of(model.alert(
                beside
                        ? "opened to look at; Enter in the list of shifts opens it for writing"
                        : "this shift can only be looked at here"));
    }

    static Optional<Standing<?>> chosen(Model model) {
        int at = ((Screen.Log) model.top()).walk().at();
        List<Standing<?>> all = model.shift().day().all();
        return at < 0 || at >= all.size() ? Optional.empty() : Optional.of(all.get(all.size() - 1 - at));
    }

    static Step open(Model model, Key key) {
        return Step.of(chosen(model)
                .map(s -> model.push(new Screen.Whole(s.ref(), 0)))
                .orElse(model.say("walk to an entry with the arrows first")));
    }

    static Step strike(Model model, Key key) {
        return chosen(model)
                .map(s -> strike(model, s.ref()))
                .orElse(Step.of(model.say("walk to an entry with the arrows first")));
    }

    static Step strike(Model model, Ref ref) {
        return begin(model, Kind.STRIKE, Map.of("of", ref.toString()));
    }

    static Step amend(Model model, Key key) {
        return chosen(model)
                .map(s -> amend(model, s))
                .orElse(Step.of(model.say("walk to an entry with the arrows first")));
    }

    static Step amend(Model model, Standing<?> standing) {
        if (!model.shift().writable()) {
            return lookedAt(model);
        }
        return Step.of(model.push(new Screen.Keying(Forms.amend(model, standing))));
    }

    static Step source(Model model) {
        Source other = model.source() == Source.LIVE ? Source.NOTES : Source.LIVE;
        String said = other == Source.LIVE
                ? "keying live: now is filled in"
                : "keying from notes: the printed time is asked, what was not noted stays blank";
        return Step.of(model.with(other).say(said));
    }

    static Step close(Model model) {
        if (model.shift().closed()) {
            return Step.of(model.say("this book is closed; late lines and a review go behind the close"));
        }
        return Step.of(model.push(new Screen.BeforeClosing(0)));
    }

    static Step closing(Model model) {
        Step step = begin(model.pop(), Kind.CLOSING);
        return step;
    }

    /** A review goes behind the close of a book; what another book closed is reviewed in that one. */
    private static String notYet(Shift shift) {
        return shift.day().closed() && !shift.page().seals().isEmpty()
                ? "closed in the book " + shift.page().seals().get(0).book()
                        + "; started with --book and that name the program takes its review"
                : "a review is written when the shift is closed";
    }

    static Step review(Model model) {
        if (!model.shift().closed()) {
            return Step.of(model.say(notYet(model.shift())));
        }
        String seal = model.shift().page().seals().isEmpty()
                ? ""
                : model.shift().page().seals().get(0).sha256();
        return begin(model, Kind.REVIEW, seal.isEmpty() ? Map.of() : Map.of("seal", seal));
    }

    static Step nextWho(Model model) {
        List<String> initials = new ArrayList<>();
        model.shift().job().people().forEach(p -> initials.add(p.initials()));
        if (initials.isEmpty()) {
            return Step.of(model.say("the job names nobody"));
        }
        String next = initials.get((initials.indexOf(model.setting().who()) + 1) % initials.size());
        return Step.of(model.with(model.setting().by(next)).say(next + " writes from here on"));
    }

    static Step leave(Model model) {
        return Step.of(model.pop(), new Effect.Leave(), new Effect.ListShifts());
    }
}
