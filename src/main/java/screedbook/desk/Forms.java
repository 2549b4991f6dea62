package screedbook.desk;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Cases;
import screedbook.entry.Aside;
import screedbook.entry.Blank;
import screedbook.entry.Draft;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** Forms made ready: what is carried on stands there, and Enter knows where to stop. */
final class Forms {
    /** The blank that asks why an entry gets other values. */
    static final String WHY = "why_amended";

    private static final Field TIME = line(Reading.TIME, "time", java.time.OffsetDateTime.class, 8);
    private static final Field REASON = line(WHY, "why", String.class, 40);

    private Forms() {}

    private static Field line(String name, String label, Class<?> type, int width) {
        return new Field(
                name,
                label,
                type,
                Optional.empty(),
                Blank.Pick.NONE,
                Blank.Due.ASKED,
                false,
                width,
                "",
                List.of(),
                Optional.empty());
    }

    /** The blanks of a kind that a person fills in: its own, the time where it has none, and what stands on any entry. */
    static List<Field> blanks(Kind kind) {
        List<Field> fields = new ArrayList<>();
        if (kind != Kind.TICKET) {
            fields.add(TIME);
        }
        for (Field field : kind.fields()) {
            boolean typed = field.type() != Map.class
                    && field.element().map(e -> e == String.class).orElse(true);
            if (typed) {
                fields.add(field);
            }
        }
        fields.addAll(Fields.of(Aside.class));
        return fields;
    }

    /** A new entry of a kind. */
    static Form fresh(Model model, Kind kind) {
        return fresh(model, kind, Map.of());
    }

    /** A new entry of a kind with some blanks filled in beforehand; the cursor is at the first that is due. */
    static Form fresh(Model model, Kind kind, Map<String, String> given) {
        Map<String, String> before = before(model, kind);
        Map<String, String> carried = carried(model, kind, before);
        List<Input> inputs = new ArrayList<>();
        for (Field field : blanks(kind)) {
            Input input = Input.empty(field, model.shift().job().system());
            String text = given.getOrDefault(input.name(), carried.getOrDefault(input.name(), ""));
            inputs.add(text.isEmpty() ? input : input.carrying(text));
        }
        Form form = started(new Form(kind, model.source(), null, List.copyOf(inputs), 0, before, Map.of()));
        Form due = dues(model, form);
        Form ready = started(given.containsKey("number") ? due : number(model, due));
        Form at = ready.at(ready.firstDue());
        return given.containsKey(at.active().name()) && at.nextDue() >= 0 ? at.at(at.nextDue()) : at;
    }

    /** The form with what stands in it now taken as how it began. */
    private static Form started(Form form) {
        Map<String, String> started = new HashMap<>();
        form.inputs().forEach(i -> started.put(i.name(), i.text()));
        return new Form(form.kind(), form.source(), form.amends(), form.inputs(), form.at(), form.before(), started);
    }

    /** The texts of the last entry of the kind that counts, by blank. */
    static Map<String, String> before(Model model, Kind kind) {
        return last(model, kind).map(e -> texts((Record) e)).orElse(Map.of());
    }

    private static Optional<Entry> last(Model model, Kind kind) {
        return Optional.ofNullable(model.shift().last().get(kind)).map(Standing::entry);
    }

    static Map<String, String> texts(Record record) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Field field : Fields.of(record.getClass())) {
            Object value = field.get(record);
            if (value != null) {
                boolean amount = value instanceof Amount;
                String key =
                        amount ? field.name() + "_" + ((Amount) value).unit().suffix() : field.name();
                texts.put(key, amount ? ((Amount) value).value().toPlainString() : Told.value(value));
            }
        }
        return texts;
    }

    private static Map<String, String> carried(Model model, Kind kind, Map<String, String> before) {
        Map<String, String> carried = new HashMap<>();
        for (Field field : kind.fields()) {
            if (field.carry()) {
                String key = field.key(model.shift().job().system());
                Optional<String> value = Optional.ofNullable(before.get(key))
                        .or(() -> elsewhere(model, kind, field))
                        .or(() -> only(model, kind, field));
                value.ifPresent(v -> carried.put(key, v));
            }
        }
        if (kind == Kind.TICKET) {
            ticket(model, before, carried);
        } else if (kind == Kind.TACK) {
            tack(model, before, carried);
        } else if (kind == Kind.SURFACE) {
            surface(model, carried);
        } else if (kind == Kind.YIELD) {
            SinceCheck.yield(model, carried);
        } else if (kind == Kind.DEPTH) {
            SinceCheck.depth(model, carried);
        }
        SiteForms.carried(model, kind, before, carried);
        SampleForms.carried(model, kind, carried);
        return carried;
    }

    /** Pull and lift go on from the last ticket or surface reading where this kind has not been keyed yet. */
    private static Optional<String> elsewhere(Model model, Kind kind, Field field) {
        if (field.pick() != Blank.Pick.PULL && field.pick() != Blank.Pick.LIFT && field.pick() != Blank.Pick.MIX) {
            return Optional.empty();
        }
        for (Kind other : List.of(Kind.TICKET, Kind.SURFACE, Kind.TACK)) {
            String value = other == kind ? null : before(model, other).get(field.name());
            if (value != null) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> only(Model model, Kind kind, Field field) {
        List<String> all = field.pick() == Blank.Pick.INSTRUMENT
                ? SiteForms.instruments(model.shift().job(), kind)
                : Picks.of(model, field);
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** The next load begins where the last one ended. */
    private static void ticket(Model model, Map<String, String> before, Map<String, String> carried) {
        if (before.containsKey("to_sta")) {
            carried.put("from_sta", before.get("to_sta"));
        }
        if (!carried.containsKey("mix") && carried.getOrDefault("lift", "").matches("\\d{1,4}")) {
            model.shift()
                    .job()
                    .lift(Integer.valueOf(carried.get("lift")))
                    .ifPresent(lift -> carried.put("mix", lift.mix()));
        }
        carried.put("received_by", model.setting().who());
        if (!carried.containsKey("kept")) {
            carried.put("kept", Ticket.Kept.PAPER.word());
        }
    }

    /** By night a surface is read at night; by day only the eye tells sun from shade. */
    private static void surface(Model model, Map<String, String> carried) {
        boolean night = Cases.light(model.shift().job(), model.now())
                .map(Surface.Light.NIGHT.word()::equals)
                .orElse(false);
        if (night) {
            carried.put("light", Surface.Light.NIGHT.word());
        } else if (Surface.Light.NIGHT.word().equals(carried.get("light"))) {
            carried.remove("light");
        }
    }

    /** A tank goes on where it stood, the next shot begins where the last one ended, as wide as its pull. */
    private static void tack(Model model, Map<String, String> before, Map<String, String> carried) {
        Job job = model.shift().job();
        String width = "width_" + Measure.WIDTH.unit(job.system()).suffix();
        if (!carried.containsKey(width) && carried.containsKey("pull")) {
            job.pull(carried.get("pull"), null)
                    .ifPresent(p -> carried.put(width, p.width().value().toPlainString()));
        }
        for (Map.Entry<String, String> each : before.entrySet()) {
            if (each.getKey().matches("(depth_)?after_\\w+")) {
                carried.put(each.getKey().replace("after", "before"), each.getValue());
            }
        }
        if (before.containsKey("to_sta")) {
            carried.put("from_sta", before.get("to_sta"));
        }
    }

    /** The ticket number by the plant's rule: own series the next one that is not kept yet, shared series its leading digits. */
    private static Form number(Model model, Form form) {
        String last = form.before().get("number");
        if (form.kind() != Kind.TICKET || last == null || !last.matches("\\d{3,12}")) {
            return form;
        }
        if (shared(model, form)) {
            return form.change(
                    "number", i -> i.typed(last.substring(0, last.length() - 3)).due(true));
        }
        String next = new BigInteger(last).add(BigInteger.ONE).toString();
        String padded = "0".repeat(Math.max(0, last.length() - next.length())) + next;
        String free = model.shift().seen().numbers().free(form.text("plant"), padded);
        return form.change("number", i -> i.carrying(free).due(false));
    }

    private static boolean shared(Model model, Form form) {
        return form.kind() == Kind.TICKET
                && model.shift()
                        .job()
                        .plant(form.text("plant"))
                        .map(p -> p.series() == Job.Series.SHARED)
                        .orElse(false);
    }

    /** Where Enter stops, by the kind's own word and by what the job asks for now. */
    static Form dues(Model model, Form form) {
        List<Input> inputs = new ArrayList<>();
        for (Input input : form.inputs()) {
            inputs.add(input.due(due(model, form, input)));
        }
        return form.with(inputs);
    }

    private static boolean due(Model model, Form form, Input input) {
        if (form.amends() != null) {
            return input.name().equals(WHY);
        }
        return switch (input.field().due()) {
            case ALWAYS -> true;
            case FREE -> false;
            case ASKED -> asked(model, form, input);
        };
    }

    private static boolean asked(Model model, Form form, Input input) {
        boolean notes = form.source() == Source.NOTES;
        if (SiteForms.idle(form, input)) {
            return false;
        }
        return switch (input.field().name()) {
            case "gross", "tare" -> model.shift().job().checks().grossAndTare() == YesNo.YES;
            case "number" -> beganEmpty(form, input) || shared(model, form);
            case "loaded", Reading.TIME -> notes;
            case "plant" ->
                input.field().measure().isPresent()
                        ? heat(model, form, false)
                        : input.text().isEmpty();
            case "paver" -> input.field().measure().isPresent() && heat(model, form, true);
            case "before", "after" -> !strapped(model, form);
            case "depth_before", "depth_after" -> strapped(model, form);
            default -> beganEmpty(form, input);
        };
    }

    /** What was not carried on is asked; that does not change while it is typed. */
    private static boolean beganEmpty(Form form, Input input) {
        return form.started().getOrDefault(input.name(), "").isEmpty();
    }

    private static boolean strapped(Model model, Form form) {
        return model.shift()
                .job()
                .distributor(form.text("distributor"))
                .map(d -> d.strapping() != null && !d.strapping().isEmpty())
                .orElse(false);
    }

    private static boolean heat(Model model, Form form, boolean paver) {
        Checks.HeatWhere where = model.shift().job().checks().heatWhere();
        boolean here = where == Checks.HeatWhere.BOTH || (where == Checks.HeatWhere.PAVER) == paver;
        return here && model.shift().heatDue(form.text("mix"));
    }

    /** An entry's blanks with what stands in them now, to be given other values. */
    static Form amend(Model model, Standing<?> standing) {
        Map<String, String> texts = new HashMap<>(texts((Record) standing.entry()));
        texts.putAll(texts(standing.aside()));
        if (standing.time() != null) {
            texts.put(Reading.TIME, Moment.clock(standing.time()));
        }
        List<Input> inputs = new ArrayList<>();
        for (Field field : blanks(standing.line().kind())) {
            Input input = Input.empty(field, model.shift().job().system());
            String text = texts.getOrDefault(input.name(), "");
            inputs.add(text.isEmpty() ? input : input.carrying(text));
        }
        inputs.add(Input.empty(REASON, model.shift().job().system()).due(true));
        Form form = new Form(
                standing.line().kind(), Source.NOTES, standing.ref(), List.copyOf(inputs), 0, Map.of(), Map.of());
        Form ready = started(form);
        return ready.at(main(ready));
    }

    private static int main(Form form) {
        for (int i = 0; i < form.inputs().size(); i++) {
            if (form.inputs().get(i).field().due() == Blank.Due.ALWAYS) {
                return i;
            }
        }
        return 0;
    }

    /** What of a form has to be kept, so that it can be typed on after a crash. */
    static Draft draft(Form form) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Input input : form.inputs()) {
            if (!input.text().equals(form.started().getOrDefault(input.name(), ""))) {
                typed.put(input.name(), input.text());
            }
        }
        return new Draft(
                form.kind(), form.source(), form.amends(), typed, form.active().name());
    }

    /** A form as it was half typed; empty when the entry that it was to amend is not there. */
    static Optional<Form> of(Model model, Draft draft) {
        if (draft.of() == null) {
            return Optional.of(typed(fresh(model.with(draft.source()), draft.kind()), draft));
        }
        return model.shift().find(draft.of()).map(s -> typed(amend(model, s), draft));
    }

    private static Form typed(Form form, Draft draft) {
        for (Map.Entry<String, String> each : draft.typed().entrySet()) {
            form = form.change(each.getKey(), i -> i.typed(each.getValue()));
        }
        return form.at(draft.at());
    }
}
