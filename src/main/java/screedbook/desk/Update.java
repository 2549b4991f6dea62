package screedbook.desk;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Draft;
import screedbook.entry.HandOver;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.PlantList;
import screedbook.entry.Shown;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Told;

/** From a model and a message to the next model and what is to be done outside. */
public final class Update {
    private Update() {}

    public static Step of(Model model, Msg message) {
        if (message instanceof Msg.Struck struck) {
            return model.writing() ? Step.of(Ahead.keep(model, struck.key())) : key(model, struck.key());
        }
        Step step = told(model, message);
        return model.writing() && !step.model().writing() ? Ahead.take(step) : step;
    }

    private static Step told(Model model, Msg message) {
        if (message instanceof Msg.Size size) {
            return Step.of(model.size(size.width(), size.height()));
        }
        if (message instanceof Msg.Minute minute) {
            return Step.of(minute(model, minute.now().toOffsetDateTime()));
        }
        if (message instanceof Msg.Looked looked) {
            return Step.of(looked(model, looked));
        }
        if (message instanceof Msg.Folder folder) {
            return Step.of(folder(model, folder));
        }
        if (message instanceof Msg.Opened opened) {
            return opened(model, opened);
        }
        if (message instanceof Msg.Wrote wrote) {
            return wrote(model, wrote);
        }
        if (message instanceof Msg.Found found) {
            return Step.of(found(model, found));
        }
        if (message instanceof Msg.ListAsked asked) {
            return Step.of(PlantKeys.asked(model, asked));
        }
        if (message instanceof Msg.CrewBefore crew) {
            return Step.of(CrewKeys.told(model, crew));
        }
        if (message instanceof Msg.SeasonRead season) {
            return Step.of(SeasonKeys.read(model, season));
        }
        if (message instanceof Msg.JobSheet sheet) {
            return Step.of(SheetKeys.told(model, sheet));
        }
        if (message instanceof Msg.JobWritten written) {
            return Step.of(SheetKeys.written(model, written));
        }
        if (message instanceof Msg.JobNotWritten not) {
            return Step.of(SheetKeys.notWritten(model, not));
        }
        if (message instanceof Msg.Refused refused) {
            return Step.of(Ahead.drop(model.writing(false), "NOT on disk: " + refused.said()));
        }
        return Step.of(model.say(((Msg.Said) message).said()));
    }

    static Step key(Model model, Key key) {
        Model quiet = model.with(Notice.NONE);
        return KeyTable.find(model.top().place(), key)
                .map(row -> row.act().apply(quiet, key))
                .orElseGet(() -> Typing.key(quiet, key));
    }

    /** The clock is told in the job's zone; what is due by the clock is worked out anew. */
    private static Model minute(Model model, OffsetDateTime now) {
        OffsetDateTime there = model.setting()
                .job()
                .map(j -> now.atZoneSameInstant(j.zone()).toOffsetDateTime())
                .orElse(now);
        Model at = model.at(there);
        return model.shift() == null ? at : at.with(model.shift().at(there));
    }

    /** Before the folder is told the desk goes on waiting; what comes after that would be old. */
    private static Model looked(Model model, Msg.Looked looked) {
        if (!model.writing()) {
            return model;
        }
        Model shown = model.with(model.setting().of(Optional.of(looked.job()))).with(List.of(), looked.shifts());
        return model.now() == null ? shown : minute(shown, model.now());
    }

    private static Model folder(Model model, Msg.Folder folder) {
        Setting setting = model.setting().of(folder.job());
        if (setting.who().isEmpty() && folder.job().map(j -> j.people().size()).orElse(0) == 1) {
            setting = setting.by(folder.job().get().people().get(0).initials());
        }
        Model told = model.writing(false).with(setting).with(folder.troubles(), folder.shifts());
        return model.now() == null ? told : minute(told, model.now());
    }

    private static Step opened(Model model, Msg.Opened opened) {
        Shift shift = Shift.of(opened.page(), model.setting().job().orElse(null), opened.writable(), model.now());
        Model on = model.with(shift)
                .with(Notice.NONE)
                .writing(false)
                .halfTyped(Map.of())
                .screens(under(model));
        Map<Kind, Form> forms = new EnumMap<>(Kind.class);
        for (Draft draft : opened.drafts()) {
            Forms.of(on, draft).ifPresent(f -> forms.put(f.slot(), f));
        }
        Model ready = on.halfTyped(forms);
        String said =
                opened.said().isEmpty() && !forms.isEmpty() ? "half typed before: " + names(forms) : opened.said();
        Model told = at(said.isEmpty() ? ready : ready.say(said), model.top());
        boolean noWork =
                model.top() instanceof Screen.Start start && start.sure().equals(StartKeys.NO_WORK);
        return noWork ? ShiftKeys.begin(told, Kind.NO_WORK) : Step.of(told);
    }

    /** A shift lies on the season or on what was found when it was opened from there: Esc goes back to it. */
    private static List<Screen> under(Model model) {
        List<Screen> screens = new ArrayList<>(List.of(new Screen.Start(Walk.FIRST, "")));
        model.screens().stream()
                .filter(s -> s instanceof Screen.Season || s instanceof Screen.Search)
                .forEach(screens::add);
        screens.add(new Screen.Log(Walk.NOWHERE));
        return screens;
    }

    /** A shift that is opened from what was found opens at the entry, in the list too. */
    private static Model at(Model on, Screen from) {
        if (from instanceof Screen.Search search && search.walk().at() >= 0) {
            Msg.Match match = search.matches().get(search.walk().at());
            List<Standing<?>> all = on.shift().day().all();
            for (int i = 0; i < all.size() && match.shift().equals(on.shift().id()); i++) {
                if (all.get(i).ref().equals(match.ref())) {
                    return on.top(new Screen.Log(new Walk(all.size() - 1 - i))).push(new Screen.Whole(match.ref(), 0));
                }
            }
        }
        return on;
    }

    static String names(Map<Kind, Form> forms) {
        List<String> names = new ArrayList<>();
        forms.values().forEach(f -> names.add(Told.kind(f.kind())));
        return String.join(", ", names);
    }

    /** What was written is taken off the desk; the echo says what it comes to. */
    private static Step wrote(Model model, Msg.Wrote wrote) {
        Shift shift = Shift.of(wrote.page(), model.setting().job().orElse(null), true, model.now());
        Model next = model.with(shift).writing(false);
        List<Effect> effects = new ArrayList<>();
        if (model.top() instanceof Screen.Keying keying && model.writing()) {
            next = next.dropped(keying.form().slot()).pop();
            effects.add(new Effect.Drop(keying.form().slot()));
        }
        if (model.top() instanceof Screen.CrewLines && model.writing()) {
            next = next.pop();
        }
        next = PlantKeys.done(next);
        next = onTheSameEntry(next, shift.day().all().size() - size(model));
        for (Line line : wrote.lines()) {
            if (line.entry() instanceof HandOver over && over.nextWho() != null) {
                next = next.with(next.setting().by(over.nextWho()));
            }
        }
        return new Step(next.say(echo(shift, wrote)), List.copyOf(effects));
    }

    private static int size(Model model) {
        return model.shift() == null ? 0 : model.shift().day().all().size();
    }

    /** New lines go to the head of the list; the entry that was walked to stays the one walked to. */
    private static Model onTheSameEntry(Model model, int more) {
        return model.screens(model.screens().stream()
                .map(s -> s instanceof Screen.Log log && log.walk().at() >= 0
                        ? new Screen.Log(log.walk().by(more, size(model)))
                        : s)
                .toList());
    }

    private static String echo(Shift shift, Msg.Wrote wrote) {
        Line last = wrote.lines().get(wrote.lines().size() - 1);
        String on = "line " + last.n() + " on disk";
        if (last.entry() instanceof Ticket ticket && ticket.weights().net() != null) {
            on += "  " + ticket.weights().net().text() + "  " + Echo.loads(shift);
        }
        if (last.entry() instanceof PlantList list) {
            on += "  " + PlantKeys.echo(shift, list.plant());
        }
        return wrote.said().isEmpty() ? on : on + "  " + wrote.said();
    }

    private static Model found(Model model, Msg.Found found) {
        return model.screens(model.screens().stream()
                        .map(s -> s instanceof Screen.Search search && asks(search, found) ? with(search, found) : s)
                        .toList())
                .with(
                        model.top() instanceof Screen.Search search && asks(search, found)
                                ? told(found)
                                : model.notice());
    }

    /** What was typed since is not what was found. */
    private static boolean asks(Screen.Search search, Msg.Found found) {
        return search.asked() && search.words().strip().equals(found.words());
    }

    private static Screen with(Screen.Search search, Msg.Found found) {
        int size = found.matches().size();
        Walk walk = search.walk().at() < 0 ? Walk.FIRST : search.walk();
        return new Screen.Search(search.words(), found.matches(), walk.within(size), true);
    }

    private static Notice told(Msg.Found found) {
        int size = found.matches().size();
        String left = found.left() == 1 ? "1 shift" : found.left() + " shifts";
        if (found.left() > 0) {
            return Notice.of("looking: " + left + " left, " + size + " found");
        }
        if (size == 0) {
            return Notice.of("nothing found for " + Shown.text(found.words()));
        }
        return Notice.of(size < Msg.Found.MOST ? size + " found" : "the newest " + size + "; more words find fewer");
    }
}
