package screedbook.desk;

import screedbook.entry.Field;
import screedbook.unit.UnitSystem;

/**
 * One blank of a form with what stands in it.
 *
 * @param name the key of the blank as a line of the job has it: {@code net_ston}
 * @param text as typed
 * @param caret where the next character goes, from 0 to the text's length
 * @param carried whether the text was put there by the program and not yet touched
 * @param due whether Enter stops here
 */
record Input(Field field, String name, String text, int caret, boolean carried, boolean due) {
    static Input empty(Field field, UnitSystem system) {
        return new Input(field, field.key(system), "", 0, false, false);
    }

    boolean touched() {
        return !carried && !text.isEmpty();
    }

    Input carrying(String value) {
        return new Input(field, name, value, value.length(), true, due);
    }

    Input typed(String value) {
        return new Input(field, name, value, value.length(), false, due);
    }

    Input due(boolean is) {
        return new Input(field, name, text, caret, carried, is);
    }

    /** A character or more at the caret; the first one takes the place of a carried value. */
    Input insert(String more) {
        if (carried) {
            return new Input(field, name, more, more.length(), false, due);
        }
        return new Input(
                field,
                name,
                text.substring(0, caret) + more + text.substring(caret),
                caret + more.length(),
                false,
                due);
    }

    Input backspace() {
        if (carried) {
            return new Input(field, name, "", 0, false, due);
        }
        if (caret == 0) {
            return this;
        }
        int from = text.offsetByCodePoints(caret, -1);
        return new Input(field, name, text.substring(0, from) + text.substring(caret), from, false, due);
    }

    Input delete() {
        if (carried) {
            return new Input(field, name, "", 0, false, due);
        }
        if (caret == text.length()) {
            return this;
        }
        int to = text.offsetByCodePoints(caret, 1);
        return new Input(field, name, text.substring(0, caret) + text.substring(to), caret, false, due);
    }

    /** The caret moved; a carried value becomes typed, for it is being worked on. */
    Input caret(int to) {
        return new Input(field, name, text, Math.max(0, Math.min(text.length(), to)), false, due);
    }
}
