package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Source;

/**
 * An entry being keyed: its blanks with what stands in them, and which one holds the cursor.
 *
 * @param amends the entry that gets other values; null for a new one
 * @param before the texts of the last entry of the kind, for {@code .} and steps, by blank
 * @param started the texts that the form began with; what differs from them was touched
 */
record Form(
        Kind kind,
        Source source,
        Ref amends,
        List<Input> inputs,
        int at,
        Map<String, String> before,
        Map<String, String> started) {

    /** Under what kind it is kept half typed: corrections together, apart from new entries. */
    Kind slot() {
        return amends == null ? kind : Kind.AMEND;
    }

    Input active() {
        return inputs.get(at);
    }

    /** A blank by its key, or by its name without the unit where no other has that. */
    Optional<Input> input(String name) {
        int index = index(name);
        return index < 0 ? Optional.empty() : Optional.of(inputs.get(index));
    }

    private int index(String name) {
        int without = -1;
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).name().equals(name)) {
                return i;
            }
            if (without < 0 && inputs.get(i).field().name().equals(name)) {
                without = i;
            }
        }
        return without;
    }

    String text(String name) {
        return input(name).map(Input::text).orElse("");
    }

    /** Whether anything differs from how the form began. */
    boolean touched() {
        return inputs.stream().anyMatch(i -> !i.text().equals(started.getOrDefault(i.name(), "")));
    }

    /** Whether somebody typed anything: what the program put there by itself is lost by nobody. */
    boolean keyed() {
        return inputs.stream().anyMatch(i -> !i.carried() && !i.text().equals(started.getOrDefault(i.name(), "")));
    }

    Form at(int index) {
        int size = inputs.size();
        return new Form(kind, source, amends, inputs, Math.floorMod(index, size), before, started);
    }

    Form at(String name) {
        int index = index(name);
        return index < 0 ? this : at(index);
    }

    Form with(List<Input> others) {
        return new Form(kind, source, amends, List.copyOf(others), at, before, started);
    }

    Form with(Source other) {
        return new Form(kind, other, amends, inputs, at, before, started);
    }

    /** With the blank under the cursor changed. */
    Form active(UnaryOperator<Input> change) {
        List<Input> others = new ArrayList<>(inputs);
        others.set(at, change.apply(others.get(at)));
        return with(others);
    }

    /** With one named blank changed, wherever the cursor is. */
    Form change(String name, UnaryOperator<Input> change) {
        int index = index(name);
        if (index < 0) {
            return this;
        }
        List<Input> others = new ArrayList<>(inputs);
        others.set(index, change.apply(others.get(index)));
        return with(others);
    }

    /** The first blank that Enter stops at; the first of all where none is due. */
    int firstDue() {
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).due()) {
                return i;
            }
        }
        return 0;
    }

    /** The next blank after the cursor that Enter stops at; -1 behind the last one. */
    int nextDue() {
        for (int i = at + 1; i < inputs.size(); i++) {
            if (inputs.get(i).due()) {
                return i;
            }
        }
        return -1;
    }
}
