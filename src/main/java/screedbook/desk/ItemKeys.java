package screedbook.desk;

import java.util.List;
import java.util.Map;
import screedbook.job.JobReading;

/** What the keys do in a form of the job sheet: a part or an item of it, or why it is written. */
final class ItemKeys {
    private ItemKeys() {}

    static Form form(Screen screen) {
        return screen instanceof Screen.Item item ? item.form() : ((Screen.Reason) screen).form();
    }

    private static Model with(Model model, Form form) {
        return model.top() instanceof Screen.Item item
                ? model.top(new Screen.Item(item.path(), form))
                : model.top(new Screen.Reason(form));
    }

    /** With something else typed; what is half typed in the sheet is kept. */
    private static Step changed(Model model, Form form) {
        Model next = with(model, form);
        return next.top() instanceof Screen.Item item ? half(next, item) : Step.of(next);
    }

    /** A form in which nothing differs from how it began is not half typed. */
    private static Step half(Model model, Screen.Item item) {
        boolean typed = item.form().touched();
        if (!typed && !model.sheet().half().containsKey(item.path())) {
            return Step.of(model);
        }
        Sheet sheet = model.sheet().half(item.path(), typed ? item.form() : null);
        return Step.of(model.with(sheet), sheet.keep());
    }

    static Step typed(Model model, String text) {
        Form form = form(model.top());
        return Sheet.nested(form.active().field())
                ? Step.of(model.say("Enter opens it"))
                : changed(model, form.active(i -> i.insert(text)));
    }

    static Step erase(Model model, Key key) {
        Form form = form(model.top());
        return Sheet.nested(form.active().field())
                ? Step.of(model.say("Enter opens it"))
                : changed(model, form.active(i -> key.code() == Key.Code.BACKSPACE ? i.backspace() : i.delete()));
    }

    static Step caret(Model model, Key key) {
        Form form = form(model.top());
        if (Sheet.nested(form.active().field())) {
            return Step.of(model);
        }
        return Step.of(with(model, form.active(i -> switch (key.code()) {
            case LEFT -> i.caret(i.caret() - 1);
            case RIGHT -> i.caret(i.caret() + 1);
            case HOME -> i.caret(0);
            default -> i.caret(i.text().length());
        })));
    }

    static Step move(Model model, int by) {
        Form form = form(model.top());
        return Step.of(with(model, form.at(form.at() + by)));
    }

    /** On to the next blank; from the last one the item is kept, or the sheet written. */
    static Step enter(Model model) {
        Form form = form(model.top());
        if (Sheet.nested(form.active().field())) {
            return inside(model, (Screen.Item) model.top());
        }
        String trouble =
                Filled.of(form, model.sheet()).troubles().get(form.active().name());
        if (trouble != null) {
            return Step.of(model.alert(trouble));
        }
        int next = form.nextDue();
        return next < 0 ? keep(model) : Step.of(with(model, form.at(next)));
    }

    /** A list inside an item is opened; what was typed around it is kept first. */
    private static Step inside(Model model, Screen.Item item) {
        Step kept = kept(model, item);
        if (!(kept.model().top() instanceof Screen.Item)
                || kept.model().notice().alert()) {
            return kept;
        }
        List<Object> path = Sheet.step(item.path(), item.form().active().field().name());
        return kept.with(SheetKeys.opened(kept.model(), path));
    }

    /** The item as it stands goes into the sheet, and the form stays open. */
    private static Step kept(Model model, Screen.Item item) {
        Filled filled = Filled.of(item.form(), model.sheet());
        if (!filled.readable()) {
            Map.Entry<String, String> first =
                    filled.troubles().entrySet().iterator().next();
            return Step.of(with(model, item.form().at(first.getKey())).alert(first.getValue()));
        }
        List<Object> path = item.path();
        Map<String, Object> old =
                path.isEmpty() ? model.sheet().values() : model.sheet().record(path);
        Map<String, Object> record = SheetForms.record(old, item.form(), filled);
        boolean inList = !path.isEmpty() && path.get(path.size() - 1) instanceof Integer;
        Sheet sheet = model.sheet();
        if (!record.equals(old)) {
            sheet = sheet.with(path, record.isEmpty() && !inList ? null : record);
        }
        sheet = sheet.half(path, null);
        Form fresh = SheetForms.of(sheet, path).at(item.form().at());
        Model next = model.with(sheet).top(new Screen.Item(path, fresh));
        boolean same = record.equals(old) && !model.sheet().half().containsKey(path);
        return same ? Step.of(next) : Step.of(next, sheet.keep());
    }

    static Step keep(Model model) {
        if (model.top() instanceof Screen.Reason) {
            return write(model);
        }
        Screen.Item item = (Screen.Item) model.top();
        boolean there = item.path().isEmpty() || model.sheet().at(item.path()) != null;
        if (!item.form().touched() && !there) {
            return Step.of(model.say("nothing was typed yet; Esc leaves"));
        }
        Step kept = kept(model, item);
        if (kept.model().notice().alert()) {
            return kept;
        }
        Model back = shown(kept.model().pop());
        List<JobReading.Doubt> doubts = back.sheet().doubts(item.path());
        String said = doubts.isEmpty()
                ? "kept in the sheet, not written yet"
                : "kept; " + back.sheet().told(doubts.get(0));
        return kept.with(back.say(said));
    }

    /** What a form says of the lists inside it is made anew when one comes back to it. */
    private static Model shown(Model model) {
        return model.top() instanceof Screen.Item item
                ? model.top(new Screen.Item(item.path(), SheetForms.nested(model.sheet(), item.path(), item.form())))
                : model;
    }

    static Step back(Model model) {
        if (model.top() instanceof Screen.Item item) {
            Step step = half(model, item);
            Model back = shown(step.model().pop());
            return step.with(item.form().touched() ? back.say("it stays half typed") : back);
        }
        return Step.of(shown(model.pop()));
    }

    static Step drop(Model model) {
        if (model.top() instanceof Screen.Item item) {
            Sheet sheet = model.sheet().half(item.path(), null);
            return Step.of(
                    shown(model.with(sheet).pop()).say("dropped; the sheet says what it said before"), sheet.keep());
        }
        return Step.of(model.pop());
    }

    private static Step write(Model model) {
        Form form = form(model.top());
        Filled filled = Filled.of(form, model.sheet());
        for (Input input : form.inputs()) {
            if (!filled.plain().containsKey(input.name())) {
                String asked =
                        input.name().equals(SheetForms.WHO) ? "somebody writes it: initials" : "a revision says why";
                return Step.of(with(model, form.at(input.name())).alert(asked));
            }
        }
        String who = filled.plain().get(SheetForms.WHO).toString();
        String why = filled.plain().get(SheetForms.WHY).toString();
        return Step.of(
                model.with(model.setting().by(who)).writing(true).say("writing"),
                new Effect.WriteJobSheet(model.sheet().toWrite(), who, why));
    }
}
