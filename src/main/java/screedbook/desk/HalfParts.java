package screedbook.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;

/** Forms of the job sheet that are half typed, as plain values that outlive the program, and back. */
final class HalfParts {
    private HalfParts() {}

    /** By the path to what a form speaks of, what was typed into its blanks. */
    static Map<String, Object> plain(Map<List<Object>, Form> forms) {
        Map<String, Object> parts = new LinkedHashMap<>();
        forms.forEach((path, form) -> {
            Map<String, Object> typed = new LinkedHashMap<>();
            for (Input input : form.inputs()) {
                if (!input.text().equals(form.started().getOrDefault(input.name(), ""))) {
                    typed.put(input.name(), input.text());
                }
            }
            parts.put(Sheet.text(path), typed);
        });
        return parts;
    }

    /** The forms as they were; the cursor stands in the last blank that was typed into. What leads nowhere is left out. */
    static Map<List<Object>, Form> of(Sheet sheet, Object parts) {
        Map<List<Object>, Form> forms = new LinkedHashMap<>();
        if (parts instanceof Map<?, ?> map) {
            map.forEach((path, typed) -> {
                try {
                    List<Object> to = Sheet.path(path.toString());
                    Form form = form(SheetForms.of(sheet, to), typed);
                    if (form.touched()) {
                        forms.put(to, form);
                    }
                } catch (NoSuchElementException | ClassCastException leadsNowhere) {
                    return;
                }
            });
        }
        return forms;
    }

    private static Form form(Form fresh, Object typed) {
        Form form = fresh;
        if (typed instanceof Map<?, ?> blanks) {
            for (Map.Entry<?, ?> each : blanks.entrySet()) {
                String name = each.getKey().toString();
                form = form.change(name, i -> i.typed(each.getValue().toString()))
                        .at(name);
            }
        }
        return form;
    }
}
