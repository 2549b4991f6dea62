package screedbook.desk;

import java.util.List;

/** Keys that no row of the table claims: text for the blank or the line that holds the cursor. */
final class Typing {
    private Typing() {}

    static Step key(Model model, Key key) {
        boolean text = key.code() == Key.Code.PASTE || (key.code() == Key.Code.CHAR && !key.ctrl() && !key.alt());
        if (model.top() instanceof Screen.Keying && text) {
            return FormKeys.typed(model, oneLine(key.text()));
        }
        boolean form = model.top() instanceof Screen.Item || model.top() instanceof Screen.Reason;
        if (form && text) {
            return ItemKeys.typed(model, oneLine(key.text()));
        }
        if (model.top() instanceof Screen.Search search) {
            String words = edited(search.words(), key, text);
            return Step.of(
                    words.equals(search.words())
                            ? model
                            : model.top(new Screen.Search(words, List.of(), Walk.NOWHERE, false)));
        }
        if (model.top() instanceof Screen.OtherFolder folder) {
            return Step.of(model.top(new Screen.OtherFolder(edited(folder.typed(), key, text))));
        }
        if (model.top() instanceof Screen.PlantFile file) {
            return Step.of(model.top(new Screen.PlantFile(file.plant(), edited(file.typed(), key, text))));
        }
        return Step.of(model);
    }

    /** A pasted text goes into one blank: line ends and tabs become blanks. */
    private static String oneLine(String text) {
        return text.replaceAll("[\\r\\n\\t]+", " ");
    }

    private static String edited(String old, Key key, boolean text) {
        if (text) {
            return old + oneLine(key.text());
        }
        if (key.code() == Key.Code.BACKSPACE && !old.isEmpty()) {
            return old.substring(0, old.offsetByCodePoints(old.length(), -1));
        }
        return old;
    }
}
