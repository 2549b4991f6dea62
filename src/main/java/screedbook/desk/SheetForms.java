package screedbook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Blank;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Told;
import screedbook.unit.UnitSystem;

/** Forms of the job sheet made ready, and its parts told in a line. */
final class SheetForms {
    static final String WHO = "who";
    static final String WHY = "why";

    private static final Field WHO_WRITES = line(WHO, "who writes it", 5, Blank.Pick.PERSON, "initials");
    private static final Field REASON = line(
            WHY, "why", 50, Blank.Pick.NONE, "stands with the revision for good: what was agreed, when, with whom");

    private SheetForms() {}

    private static Field line(String name, String label, int width, Blank.Pick pick, String help) {
        return new Field(
                name,
                label,
                String.class,
                Optional.empty(),
                pick,
                Blank.Due.ALWAYS,
                false,
                width,
                help,
                List.of(),
                Optional.empty());
    }

    /** What a path leads to, as a form; as it was left where it was left half typed. */
    static Form of(Sheet sheet, List<Object> path) {
        Form left = sheet.half().get(path);
        return left == null ? fresh(sheet, path) : nested(sheet, path, left);
    }

    private static Form fresh(Sheet sheet, List<Object> path) {
        Map<String, Object> record = path.isEmpty() ? sheet.values() : sheet.record(path);
        List<Input> inputs = new ArrayList<>();
        for (Field field : Sheet.blanks(path)) {
            Input input = Input.empty(field, sheet.system()).due(true);
            String text = Sheet.nested(field)
                    ? summary(sheet, field, Sheet.step(path, field.name()))
                    : Sheet.typed(record.get(input.name()));
            inputs.add(text.isEmpty() ? input : input.carrying(text));
        }
        return started(inputs);
    }

    /** Who writes the sheet, and why. */
    static Form reason(Sheet sheet, String who) {
        Input writes = Input.empty(WHO_WRITES, sheet.system()).due(true);
        Input why = Input.empty(REASON, sheet.system()).due(true);
        Form form = started(List.of(who.isEmpty() ? writes : writes.carrying(who), why));
        return who.isEmpty() ? form : form.at(1);
    }

    private static Form started(List<Input> inputs) {
        Map<String, String> started = new HashMap<>();
        inputs.forEach(i -> started.put(i.name(), i.text()));
        return new Form(null, null, null, List.copyOf(inputs), 0, Map.of(), started);
    }

    /** The form with what it says of the lists inside as they are now. */
    static Form nested(Sheet sheet, List<Object> path, Form form) {
        List<Input> inputs = new ArrayList<>();
        Map<String, String> started = new HashMap<>(form.started());
        for (Input input : form.inputs()) {
            if (Sheet.nested(input.field())) {
                String text = summary(
                        sheet, input.field(), Sheet.step(path, input.field().name()));
                started.put(input.name(), text);
                inputs.add(input.carrying(text));
            } else {
                inputs.add(input);
            }
        }
        return new Form(null, null, null, List.copyOf(inputs), form.at(), form.before(), started);
    }

    /** The record that a form comes to; what the form has no blank for stays. */
    static Map<String, Object> record(Map<String, Object> old, Form form, Filled filled) {
        Map<String, Object> record = new LinkedHashMap<>(old);
        for (Input input : form.inputs()) {
            if (!Sheet.nested(input.field())) {
                boolean said = filled.plain().containsKey(input.name());
                for (UnitSystem system : said ? UnitSystem.values() : new UnitSystem[0]) {
                    record.remove(input.field().key(system));
                }
                record.remove(input.name());
                if (said) {
                    record.put(input.name(), filled.plain().get(input.name()));
                }
            }
        }
        return record;
    }

    /** A part in a few words: what a record holds, how many items a list has and what they are called. */
    static String summary(Sheet sheet, Field field, List<Object> path) {
        if (!Sheet.list(field)) {
            Map<String, Object> record = sheet.record(path);
            return record.isEmpty() ? "not settled" : told(path, record);
        }
        List<?> list = sheet.list(path);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            names.add(sheet.name(Sheet.step(path, i)));
        }
        return list.isEmpty() ? "none" : list.size() + ": " + String.join(", ", names);
    }

    /** A record in one line with its units; what cannot be read is left out here and told among what is wrong. */
    static String told(List<Object> path, Map<String, Object> record) {
        Record built = Fields.build(Sheet.type(path), record).value();
        List<String> words = new ArrayList<>();
        for (Field field : Fields.of(built.getClass())) {
            Object value = field.get(built);
            if (value instanceof List<?> list && Sheet.nested(field)) {
                if (!list.isEmpty()) {
                    words.add(list.size() + " " + field.label());
                }
            } else if (value != null) {
                words.add(Told.value(value));
            }
        }
        return String.join("  ", words);
    }
}
