package screedbook.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.check.Guide;
import screedbook.check.LeftToRoll;
import screedbook.entry.Amend;
import screedbook.entry.Aside;
import screedbook.entry.Closing;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Moment;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.entry.Unwritten;
import screedbook.unit.Unit;

/** What the keys do while an entry is keyed. */
final class FormKeys {
    private FormKeys() {}

    private static Form form(Model model) {
        return ((Screen.Keying) model.top()).form();
    }

    /** The form in another state; what is due is looked at anew, and the draft is kept. */
    static Step with(Model model, Form form) {
        Form ready = Forms.dues(model, form);
        Model next = model.top(new Screen.Keying(ready));
        return kept(next, ready, ready.touched());
    }

    private static Step kept(Model model, Form form, boolean half) {
        if (half) {
            return Step.of(model.halfTyped(form), new Effect.Keep(Forms.draft(form)));
        }
        return model.halfTyped().containsKey(form.slot())
                ? Step.of(model.dropped(form.slot()), new Effect.Drop(form.slot()))
                : Step.of(model);
    }

    static Step typed(Model model, String text) {
        return with(model, form(model).active(i -> i.insert(text)));
    }

    static Step erase(Model model, Key key) {
        return with(model, form(model).active(i -> key.code() == Key.Code.BACKSPACE ? i.backspace() : i.delete()));
    }

    static Step caret(Model model, Key key) {
        Form form = form(model).active(i -> switch (key.code()) {
            case LEFT -> i.caret(i.caret() - 1);
            case RIGHT -> i.caret(i.caret() + 1);
            case HOME -> i.caret(0);
            default -> i.caret(i.text().length());
        });
        return with(model, form);
    }

    static Step move(Model model, int by) {
        Form form = form(model);
        return Step.of(model.top(new Screen.Keying(form.at(form.at() + by))));
    }

    /** On to the next blank that is due; from the last one the entry is written. */
    static Step enter(Model model, Key key) {
        Form form = form(model);
        String trouble = Reading.of(form, model).troubles().get(form.active().name());
        if (trouble != null) {
            return Step.of(model.alert(trouble));
        }
        int next = form.nextDue();
        return next < 0 ? write(model) : Step.of(model.top(new Screen.Keying(form.at(next))));
    }

    static Step write(Model model) {
        Form form = form(model);
        if (!form.touched()) {
            return Step.of(model.say("nothing was typed yet; Esc leaves"));
        }
        Reading reading = Reading.of(form, model);
        if (!reading.readable()) {
            Map.Entry<String, String> first =
                    reading.troubles().entrySet().iterator().next();
            return Step.of(model.top(new Screen.Keying(form.at(first.getKey()))).alert(first.getValue()));
        }
        return form.amends() == null ? writeNew(model, reading) : writeAmend(model, reading);
    }

    private static Step writeNew(Model model, Reading reading) {
        Entry entry = reading.entry();
        if (entry instanceof Closing closing) {
            entry = Echo.counted(model, closing);
        }
        Unwritten unwritten = new Unwritten(
                reading.time(), model.setting().who(), reading.form().source(), entry, reading.aside());
        return Step.of(model.writing(true).say("writing"), new Effect.Write(List.of(unwritten)));
    }

    private static Step writeAmend(Model model, Reading reading) {
        Standing<?> old = model.shift().find(reading.form().amends()).orElseThrow();
        Map<String, Object> set = changes(old, reading);
        if (set.isEmpty()) {
            return Step.of(model.say("nothing differs from what stands"));
        }
        Object why = reading.plain().get(Forms.WHY);
        if (why == null) {
            return Step.of(
                    model.top(new Screen.Keying(reading.form().at(Forms.WHY))).alert("a correction says why"));
        }
        Amend amend = new Amend(reading.form().amends(), set, why.toString());
        Unwritten unwritten = new Unwritten(model.now(), model.setting().who(), model.source(), amend, Aside.NONE);
        return Step.of(model.writing(true).say("writing"), new Effect.Write(List.of(unwritten)));
    }

    /** Keys whose values differ; null takes a value away. */
    private static Map<String, Object> changes(Standing<?> old, Reading reading) {
        Map<String, Object> before = new LinkedHashMap<>(Fields.plain((Record) old.entry()));
        before.putAll(Fields.plain(old.aside()));
        Map<String, Object> after = new LinkedHashMap<>(reading.plain());
        after.remove(Forms.WHY);
        Map<String, Object> set = new LinkedHashMap<>();
        for (Input input : reading.form().inputs()) {
            String started = reading.form().started().getOrDefault(input.name(), "");
            if (!input.text().equals(started) && !input.name().equals(Forms.WHY)) {
                change(input, old, before, after, reading, set);
            }
        }
        return set;
    }

    private static void change(
            Input input,
            Standing<?> old,
            Map<String, Object> before,
            Map<String, Object> after,
            Reading reading,
            Map<String, Object> set) {
        if (input.name().equals(Reading.TIME)) {
            set.put("time", reading.time() == null ? null : Moment.text(reading.time()));
            return;
        }
        for (String key : keys(input, before, after)) {
            Object now = after.get(key);
            if (!Objects.equals(before.get(key), now)) {
                set.put(key, now);
            }
        }
        if (old.entry() instanceof Ticket && List.of("discharged", "arrived").contains(input.name())) {
            set.put("time", after.getOrDefault("discharged", after.get("arrived")));
        }
    }

    /** The key of the line, whatever unit an older value has. */
    private static List<String> keys(Input input, Map<String, Object> before, Map<String, Object> after) {
        List<String> keys = new ArrayList<>();
        for (Map<String, Object> values : List.of(before, after)) {
            for (String key : values.keySet()) {
                String name = input.field().name();
                boolean unit = input.field().measure().isPresent()
                        && key.startsWith(name + "_")
                        && Unit.ofSuffix(key.substring(name.length() + 1))
                                .filter(input.field().measure().get()::takes)
                                .isPresent();
                boolean mine = unit || key.equals(input.name());
                if (mine && !keys.contains(key)) {
                    keys.add(key);
                }
            }
        }
        return keys;
    }

    /** What is half typed stays and is found again under its key; a form in which nobody typed leaves nothing behind. */
    static Step leave(Model model) {
        Form form = form(model);
        Step step = kept(model, form, form.keyed());
        Model back = step.model().pop();
        return step.with(form.keyed() ? back.say(Told.kind(form.kind()) + " stays half typed") : back);
    }

    static Step drop(Model model) {
        Form form = form(model);
        return Step.of(
                model.pop().dropped(form.slot()).say("dropped, nothing was written"), new Effect.Drop(form.slot()));
    }

    /** The first offer of the blank that holds the cursor, then of the others. */
    static Step offer(Model model) {
        Form form = form(model);
        List<Guide.Offer> offers = Guiding.offers(model, form);
        if (offers.isEmpty()) {
            return Step.of(model.say("nothing is offered here"));
        }
        Form taken = form;
        for (Guide.Offer offer = offers.get(0); offer != null; offer = offer.also()) {
            Guide.Offer each = offer;
            taken = taken.change(each.blank(), i -> i.typed(each.typed()));
        }
        return with(model, taken);
    }

    /** The limit of the blank that holds the cursor, and how long the mat stays warm where that is told. */
    static Step working(Model model) {
        Form form = form(model);
        Reading reading = Reading.of(form, model);
        Guide guide = Guiding.of(model, form, form.active().name());
        Optional<LeftToRoll> left = Guiding.left(model, reading, reading.entry());
        if (guide.working().isEmpty() && left.isEmpty()) {
            return Step.of(model.say("no limit stands behind this blank"));
        }
        List<String> lines = new ArrayList<>();
        if (!guide.working().isEmpty()) {
            lines.addAll(List.of(guide.working(), guide.clause()));
        }
        left.ifPresent(l -> {
            lines.add("");
            lines.add(l.text());
            lines.addAll(l.working());
        });
        return Step.of(model.push(new Screen.Worked(
                form.active().field().label() + "  " + guide.limit(), List.copyOf(lines), List.of(), Walk.NOWHERE, 0)));
    }

    static Step source(Model model) {
        Form form = form(model);
        Source other = form.source() == Source.LIVE ? Source.NOTES : Source.LIVE;
        return with(model.with(other), form.with(other));
    }

    static boolean helps(Key key) {
        return key.code() == Key.Code.CHAR && (key.ctrl() && key.text().equals("k") || key.is("?"));
    }

    /** {@code ?} is a character where the blank holds text: an unread digit of a ticket number. */
    static Step help(Model model, Key key) {
        if (key.is("?") && form(model).active().field().type() == String.class) {
            return typed(model, "?");
        }
        return Step.of(model.push(new Screen.Help(Place.FORM, 0)));
    }
}
